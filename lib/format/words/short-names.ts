/**
 * The names that stand in sentences and beside marks: what comes before the first comma, where that still tells all the dishes apart.
 */
export function shortNames(names: readonly string[]): readonly string[] {
  const heads = names.map((name) => name.split(',')[0]?.trim() || name);
  const times = new Map<string, number>();
  for (const head of heads) times.set(head, (times.get(head) ?? 0) + 1);
  return names.map((name, index) => {
    const head = heads[index] ?? name;
    return times.get(head) === 1 ? head : name;
  });
}

/** At most so many letters, cut between words where that is possible. */
export function cutName(name: string, longest: number): string {
  if (name.length <= longest) return name;
  const head = name.slice(0, longest - 1);
  const space = head.lastIndexOf(' ');
  return `${(space > longest / 2 ? head.slice(0, space) : head).trimEnd()}…`;
}
