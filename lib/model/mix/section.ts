import { nameKey } from '../../core/name-key';
import type { CostedPeriod } from '../costed-period';
import { itemDepartment } from '../departments';
import type { Thing } from '../things';

/** The menu section of an item: the one its latest recipe in the period states; null where none does. */
export function itemSection(thing: Thing): string | null {
  return thing.recipes.at(-1)?.fact.section ?? null;
}

/** Whether an item is on the menu or sold in the period. */
export function isOffered({ menu, sales }: Thing): boolean {
  const isSold = sales.some(({ sold, comps }) => sold !== 0 || comps !== 0);
  return isSold || menu.some(({ prices }) => prices.some(({ fact }) => fact.price !== null));
}

/**
 * The nodes of a menu section's items: everything in it that is on the menu or sold. No section named is the whole menu: the items
 * of department food that are not set menus.
 */
export function sectionNodes(period: CostedPeriod, section: string | null): readonly number[] {
  const key = section === null ? null : nameKey(section);
  return period.things.flatMap((thing, node) => {
    if (!isOffered(thing)) return [];
    if (key === null) return thing.kind !== 'set_menu' && itemDepartment(period, node) === 'food' ? [node] : [];
    return nameKey(itemSection(thing) ?? '') === key ? [node] : [];
  });
}
