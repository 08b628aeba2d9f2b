import type { CostedPeriod } from '../costed-period';
import { rowRevenue } from '../item-figures';
import { plateCost } from '../plate-cost';
import { segmentOf } from '../segments';
import type { MixDays } from './certainty';
import type { MixFigures } from './mix-model';
import type { SectionDays } from './section-days';

/** What each item brought and cost on each trading day. Entry day * items + item; venue currency. */
type DayMoney = Pick<MixDays, 'revenue' | 'food' | 'contribution'>;

/** Revenue of the paid portions, their food at the f of the day, and revenue less their whole plate cost. */
export function moneyByDay(period: CostedPeriod, nodes: readonly number[], section: SectionDays): DayMoney {
  const rowOf = new Map(section.days.map((day, index) => [day, index]));
  const cells = section.days.length * nodes.length;
  const [revenue, food, contribution] = [new Float64Array(cells), new Float64Array(cells), new Float64Array(cells)];
  const add = (to: Float64Array, cell: number, money: number): void => {
    to[cell] = (to[cell] as number) + money;
  };
  nodes.forEach((node, item) => {
    for (const row of period.things[node]?.sales ?? []) {
      const index = rowOf.get(row.day);
      if (index === undefined) continue;
      const cell = index * nodes.length + item;
      const cost = plateCost(period, node, segmentOf(period.segments, row.day), row.channel);
      const brought = rowRevenue(period, node, row) ?? row.net;
      add(revenue, cell, brought);
      add(food, cell, row.sold * cost.food);
      add(contribution, cell, brought - row.sold * cost.total);
    }
  });
  return { revenue, food, contribution };
}

/** The days of a section as they are resampled. */
export function mixDays(
  period: CostedPeriod,
  nodes: readonly number[],
  section: SectionDays,
  expected: Float64Array,
  figures: readonly (MixFigures | null)[],
): MixDays {
  const { popularityFactor, variableCost } = period.venue;
  return { ...section, ...moneyByDay(period, nodes, section), expected, figures, popularityFactor, variableCost };
}
