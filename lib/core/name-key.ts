/**
 * What two spellings of one name share: Unicode form NFKC, no surrounding space, no case.
 * Every lookup and every unique key of names goes through here; the name itself is kept as it was written.
 */
export function nameKey(name: string): string {
  return name.normalize('NFKC').trim().toLowerCase();
}
