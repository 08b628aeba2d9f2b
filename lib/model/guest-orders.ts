import { dayText } from '../core/days';
import { nameKey } from '../core/name-key';
import type { CostedPeriod } from './costed-period';
import { itemDepartment } from './departments';
import type { Issue } from './issue';
import { isOnMenu } from './menu-price';
import { isOffered, itemSection } from './offered';

/** The channel whose guests have covers. */
export const SEATED = 'dine_in';

/**
 * The days on which more food was served at the tables than the guests could have ordered: portions, paid and comps, above covers *
 * sections on sale that day. A guest orders at most one item of each section; where none is named, all are one. Drinks and what is
 * taken away are not counted, days without covers are not judged.
 */
export function portionsAboveCovers(period: CostedPeriod): readonly Issue[] {
  const food = period.things.flatMap((thing, node) =>
    isOffered(thing) && itemDepartment(period, node) === 'food'
      ? [{ thing, section: nameKey(itemSection(thing) ?? '') }]
      : [],
  );
  return period.covers.flatMap(({ day, covers }): Issue[] => {
    const served = food.map(({ thing, section }) => {
      const rows = thing.sales.filter((row) => row.day === day && row.channel === SEATED);
      return { thing, section, portions: rows.reduce((sum, { sold, comps }) => sum + sold + comps, 0) };
    });
    const portions = served.reduce((sum, row) => sum + row.portions, 0);
    const onSale = served.filter((row) => row.portions > 0 || isOnMenu(row.thing.menu, day));
    const each = new Set(onSale.map(({ section }) => section)).size;
    if (portions <= covers * each) return [];
    return [{ code: 'portions-above-covers', about: dayText(day), facts: { portions, covers, each }, day }];
  });
}
