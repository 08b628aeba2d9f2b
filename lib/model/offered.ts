import { byText } from '../core/grouped';
import { nameKey } from '../core/name-key';
import type { Thing } from './things';

/** The menu section of an item: the one its latest recipe in the period states; null where none does. */
export function itemSection(thing: Thing): string | null {
  return thing.recipes.at(-1)?.fact.section ?? null;
}

/** Whether an item is on the menu or sold in the period. */
export function isOffered({ menu, sales }: Thing): boolean {
  const isSold = sales.some(({ sold, comps }) => sold !== 0 || comps !== 0);
  return isSold || menu.some(({ prices }) => prices.some(({ fact }) => fact.price !== null));
}

/** The sections of everything on the menu or sold, by name, each once: as the first of its items spells it. */
export function sectionsOf(things: readonly Thing[]): readonly string[] {
  const named = things.filter(isOffered).flatMap((thing) => itemSection(thing) ?? []);
  const spelled = new Map(named.toReversed().map((section) => [nameKey(section), section]));
  return [...spelled].sort(([a], [b]) => byText(a, b)).map(([, section]) => section);
}

/** A section as the menu spells it; null, the whole menu, is itself; undefined where there is none of that name. */
export function spelledSection(sections: readonly string[], asked: string | null): string | null | undefined {
  return asked === null ? null : sections.find((section) => nameKey(section) === nameKey(asked));
}
