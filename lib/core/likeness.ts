import { byText } from './grouped';
import { nameKey } from './name-key';

/**
 * Smallest number of letters added, taken out, changed, or swapped with their neighbour that leads from one word to the other, or
 * `atMost` + 1 where it takes more (Damerau 1964, optimal string alignment).
 */
export function lettersApart(a: string, b: string, atMost: number): number {
  if (Math.abs(a.length - b.length) > atMost) return atMost + 1;
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, at) => at);
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const changed = (last[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      const swapped = a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1] ? (before[j - 2] ?? 0) + 1 : changed;
      row.push(Math.min(changed, swapped, (last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1));
    }
    [before, last] = [last, row];
  }
  return Math.min(last[b.length] ?? 0, atMost + 1);
}

const SMALL: ReadonlySet<string> = new Set(['of', 'the', 'and', 'in', 'with', 'a', 'an', 'or', 'for']);

/** A word without its plural: berries is berry, peaches peach, leaves leave. Only ever compared, never shown. */
function single(word: string): string {
  if (word.length > 4 && word.endsWith('ies')) return `${word.slice(0, -3)}y`;
  if (word.length > 4 && /(?:[cs]h|[sxo])es$/.test(word)) return word.slice(0, -2);
  return word.length > 3 && /[^s]s$/.test(word) ? word.slice(0, -1) : word;
}

/** The words of a name as they are compared: no case, no accents, no plurals, no small words. */
export function wordsOf(name: string): readonly string[] {
  const plain = nameKey(name).normalize('NFD').replace(/\p{M}/gu, '');
  const words = plain.match(/[\p{L}\p{N}]+/gu) ?? [];
  return words.filter((word) => !SMALL.has(word)).map(single);
}

function wordLikeness(a: string, b: string): number {
  if (a === b) return 1;
  const shorter = Math.min(a.length, b.length);
  if (shorter >= 3 && (a.startsWith(b) || b.startsWith(a))) return 0.8; // half typed
  const atMost = shorter >= 7 ? 2 : shorter >= 4 ? 1 : 0;
  const apart = lettersApart(a, b, atMost);
  return apart <= atMost ? 0.9 - 0.1 * apart : 0;
}

/** How alike two words are; the same from either side. */
type Alike = (a: string, b: string) => number;

/**
 * How alike two names are, 0 to 1: the likeness of each word to its nearest of the other name, in the mean over all words of both.
 */
export function likeness(a: readonly string[], b: readonly string[], alike: Alike = wordLikeness): number {
  if (a.length === 0 || b.length === 0) return 0;
  let sum = 0;
  for (const word of a) sum += Math.max(...b.map((other) => alike(word, other)));
  for (const other of b) sum += Math.max(...a.map((word) => alike(word, other)));
  return sum / (a.length + b.length);
}

/** wordLikeness that works out each pair once: the names of a kitchen share most of their words. */
function remembered(): Alike {
  const known = new Map<string, Map<string, number>>();
  return (a, b) => {
    const withA = known.get(a) ?? new Map<string, number>();
    if (withA.size === 0) known.set(a, withA);
    const before = withA.get(b);
    if (before !== undefined) return before;
    const alike = wordLikeness(a, b);
    withA.set(b, alike);
    return alike;
  };
}

const ALIKE = 0.5;

/** Finds what is named most like a text, the likest first, as far as it is alike at all: suggestions, never an answer. */
export type NameSearch<Thing> = (name: string, limit?: number) => readonly Thing[];

/** A search over things by all their names, whose words are taken apart once. */
export function nameSearch<Thing>(
  things: Iterable<Thing>,
  namesOf: (thing: Thing) => readonly string[],
): NameSearch<Thing> {
  const known = [...things].map((thing) => {
    const names = namesOf(thing);
    return { thing, name: names[0] ?? '', words: names.map(wordsOf) };
  });
  return (name, limit = 5) => {
    const words = wordsOf(name);
    const alike = remembered();
    const like = (named: readonly (readonly string[])[]): number =>
      Math.max(0, ...named.map((other) => likeness(words, other, alike)));
    return known
      .map(({ thing, name: first, words: named }) => ({ thing, name: first, like: like(named) }))
      .filter(({ like }) => like >= ALIKE)
      .sort((a, b) => b.like - a.like || byText(a.name, b.name))
      .slice(0, limit)
      .map(({ thing }) => thing);
  };
}
