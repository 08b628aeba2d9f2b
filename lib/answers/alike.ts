import { nameKey } from '../core/name-key';

const MOST = 5;

/** Names that share a word of three letters or more with what was written, those that share most first; at most five. */
export function alike(written: string, names: readonly string[]): readonly string[] {
  const wordsOf = (name: string): ReadonlySet<string> =>
    new Set(
      nameKey(name)
        .split(/[^\p{L}\p{N}]+/u)
        .filter((word) => word.length >= 3),
    );
  const asked = wordsOf(written);
  const shared = (name: string): number => [...wordsOf(name)].filter((word) => asked.has(word)).length;
  return names
    .map((name) => ({ name, shared: shared(name) }))
    .filter((each) => each.shared > 0)
    .sort((a, b) => b.shared - a.shared)
    .slice(0, MOST)
    .map(({ name }) => name);
}
