import { byText } from '../../core/grouped';
import { nameKey } from '../../core/name-key';
import { type Allergen, type AllergenList, allergensOn, readAllergen } from './allergen-lists';
import type { Declared } from './declared';

/**
 * What is known of one allergen in something. `none-declared` says only that everything in it is declared and nothing declares it: it
 * says nothing of cross-contact. `unknown` is never free of it.
 */
export type AllergenState = 'contains' | 'may-contain' | 'unknown' | 'none-declared';

export interface AllergenAnswer {
  readonly allergen: Allergen;
  readonly state: AllergenState;
  /** Ingredients because of which it contains, or may contain it; of `unknown`, what is not known. */
  readonly from: readonly string[];
}

export interface ItemAllergens {
  readonly allergens: readonly AllergenAnswer[];
  /** What is not known of it at all: with these, even what is answered may be more. */
  readonly unknownFrom: readonly string[];
  /** Declared words that are on no list that is known. */
  readonly otherWords: readonly string[];
}

const sorted = (names: Iterable<string>): readonly string[] =>
  [...new Set(names)].sort((a, b) => byText(nameKey(a), nameKey(b)));

/** The allergens of a list in something, each in one of four states: contains before may contain before unknown before none declared. */
export function itemAllergens({ contains, mayContain, unknownFrom }: Declared, list: AllergenList): ItemAllergens {
  const from = { contains: new Map<Allergen, string[]>(), mayContain: new Map<Allergen, string[]>() };
  const open = new Map<Allergen, string[]>();
  const otherWords: string[] = [];
  const unread: string[] = [];
  const add = (into: Map<Allergen, string[]>, allergen: Allergen, names: readonly string[]): void => {
    into.set(allergen, [...(into.get(allergen) ?? []), ...names]);
  };
  for (const [kind, words] of [['contains', contains] as const, ['mayContain', mayContain] as const]) {
    for (const [word, names] of words) {
      const reading = readAllergen(word, list);
      if (reading === null) {
        otherWords.push(word);
        unread.push(...names);
      } else if ('open' in reading) add(open, reading.open, names);
      else if (reading.is !== null) add(from[kind], reading.is, names);
    }
  }
  const answer = (allergen: Allergen): AllergenAnswer => {
    const inIt = from.contains.get(allergen);
    if (inIt) return { allergen, state: 'contains', from: sorted(inIt) };
    const maybe = from.mayContain.get(allergen);
    if (maybe) return { allergen, state: 'may-contain', from: sorted(maybe) };
    const unknown = [...unknownFrom, ...unread, ...(open.get(allergen) ?? [])];
    return { allergen, state: unknown.length > 0 ? 'unknown' : 'none-declared', from: sorted(unknown) };
  };
  return {
    allergens: allergensOn(list).map(answer),
    unknownFrom: sorted([...unknownFrom, ...unread]),
    otherWords: sorted(otherWords),
  };
}

/** How much an answer asks of a guest: a change to a higher one is said before it takes effect. */
const WEIGHT: Readonly<Record<AllergenState, number>> = {
  'none-declared': 0,
  unknown: 1,
  'may-contain': 2,
  contains: 3,
};

/** The allergens that something has more than before. */
export function allergensAdded(before: ItemAllergens, after: ItemAllergens): readonly AllergenAnswer[] {
  const was = new Map(before.allergens.map(({ allergen, state }) => [allergen, state]));
  return after.allergens.filter(({ allergen, state }) => WEIGHT[state] > WEIGHT[was.get(allergen) ?? 'none-declared']);
}
