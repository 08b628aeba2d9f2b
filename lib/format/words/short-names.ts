const LONGEST = 26;

/** At most so many letters, cut between words where that is possible. */
function cut(name: string): string {
  if (name.length <= LONGEST) return name;
  const head = name.slice(0, LONGEST - 1);
  const space = head.lastIndexOf(' ');
  return `${(space > LONGEST / 2 ? head.slice(0, space) : head).trimEnd()}…`;
}

/** The names that stand beside marks: what comes before the first comma, where that still tells all the dishes apart. */
export function shortNames(names: readonly string[]): readonly string[] {
  const heads = names.map((name) => name.split(',')[0]?.trim() || name);
  const times = new Map<string, number>();
  for (const head of heads) times.set(head, (times.get(head) ?? 0) + 1);
  return names.map((name, index) => {
    const head = heads[index] ?? name;
    return cut(times.get(head) === 1 ? head : name);
  });
}
