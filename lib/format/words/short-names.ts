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

/**
 * Names at most so many letters long that still tell the dishes apart. Where two would be cut to the same, the middle goes instead: the
 * beginning, and the words from where a name parts from all others; a name that even so is like another stays whole.
 */
export function cutNames(names: readonly string[], longest: number): readonly string[] {
  const apart = withoutTwins(
    names,
    (name) => cutName(name, longest),
    (name) => middleCut(name, names, longest),
  );
  return withoutTwins(
    names,
    (_, index) => apart[index] ?? '',
    (name) => name,
  );
}

type Cut = (name: string, index: number) => string;

/** The first cut of each name, or the second where the first is the same for several. */
function withoutTwins(names: readonly string[], first: Cut, second: Cut): readonly string[] {
  const cuts = names.map(first);
  const times = new Map<string, number>();
  for (const cut of cuts) times.set(cut, (times.get(cut) ?? 0) + 1);
  return cuts.map((cut, index) => (times.get(cut) === 1 ? cut : second(names[index] ?? cut, index)));
}

/** At most so many letters, cut between words where that is possible. */
function cutName(name: string, longest: number): string {
  if (name.length <= longest) return name;
  const head = name.slice(0, longest - 1);
  const space = head.lastIndexOf(' ');
  return `${(space > longest / 2 ? head.slice(0, space) : head).trimEnd()}…`;
}

/** Chocolate tart with raspberry and rye as Chocolate…rye, where another ends in rose. */
function middleCut(name: string, names: readonly string[], longest: number): string {
  const alike = names.reduce((most, other) => (other === name ? most : Math.max(most, alikeUpTo(name, other))), 0);
  const parts = Math.min(alike, name.length - 1);
  const tail = cutName(name.slice(name.lastIndexOf(' ', parts) + 1), Math.ceil(longest / 2));
  const room = longest - 1 - tail.length;
  const head = name.slice(0, room);
  const space = head.lastIndexOf(' ');
  return `${(space > room / 2 ? head.slice(0, space) : head).trimEnd()}…${tail}`;
}

function alikeUpTo(a: string, b: string): number {
  let at = 0;
  while (at < a.length && a[at] === b[at]) at++;
  return at;
}
