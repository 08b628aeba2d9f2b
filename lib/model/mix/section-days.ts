import type { Day } from '../../core/days';
import type { CostedPeriod } from '../costed-period';
import { isOnMenu } from '../menu-price';

/** What was on sale and sold on each trading day of a section. Tables: entry day * items + item. */
export interface SectionDays {
  /** Days with any sale in the section, ascending. */
  readonly days: readonly Day[];
  readonly items: number;
  readonly onSale: Uint8Array;
  /** Paid portions. */
  readonly sold: Float64Array;
}

/** The trading days of a section of these items. An item is on sale on a day if it is on the menu or is sold. */
export function sectionDays(period: CostedPeriod, nodes: readonly number[]): SectionDays {
  const things = nodes.flatMap((node) => period.things[node] ?? []);
  const served = things.map((thing) => thing.sales.filter((row) => row.sold > 0 || row.comps > 0));
  const days = [...new Set(served.flatMap((rows) => rows.map((row) => row.day)))].sort((a, b) => a - b);
  const rowOf = new Map(days.map((day, index) => [day, index]));
  const onSale = new Uint8Array(days.length * things.length);
  const sold = new Float64Array(days.length * things.length);
  things.forEach((thing, item) => {
    for (const [index, day] of days.entries()) {
      if (isOnMenu(thing.menu, day)) onSale[index * things.length + item] = 1;
    }
    for (const { day } of served[item] ?? []) onSale[(rowOf.get(day) ?? 0) * things.length + item] = 1;
    for (const row of thing.sales) {
      const index = rowOf.get(row.day);
      if (index === undefined) continue;
      const cell = index * things.length + item;
      sold[cell] = (sold[cell] as number) + row.sold;
    }
  });
  return { days, items: things.length, onSale, sold };
}

/** Days on which an item was on sale, of a section's trading days. */
export function daysOnSale({ days, items, onSale }: SectionDays, item: number): readonly Day[] {
  return days.filter((_, index) => onSale[index * items + item] === 1);
}

/** Portions of all items together on each day, from a table of day * items + item. */
export function portionsByDay(sold: Float64Array, items: number): readonly number[] {
  const days = items === 0 ? 0 : sold.length / items;
  return Array.from({ length: days }, (_, day) =>
    sold.subarray(day * items, (day + 1) * items).reduce((sum, portions) => sum + portions, 0),
  );
}

/**
 * Portions each item would have had on each day if the day's portions had been shared equally among the items on sale that day:
 * portions of the section / items on sale, 0 where the item was not on sale. Entry day * items + item.
 */
export function expectedByDay({ items, onSale, sold }: SectionDays): Float64Array {
  const expected = new Float64Array(sold.length);
  for (const [day, portions] of portionsByDay(sold, items).entries()) {
    const cells = [day * items, (day + 1) * items] as const;
    const share = portions / onSale.subarray(...cells).reduce((sum, each) => sum + each, 0);
    for (let cell = cells[0]; cell < cells[1]; cell++) if (onSale[cell]) expected[cell] = share;
  }
  return expected;
}
