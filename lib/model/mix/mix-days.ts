import type { CostedPeriod } from '../costed-period';
import { rowRevenue } from '../item-figures';
import { plateCost } from '../plate-cost';
import { segmentOf } from '../segments';
import type { MixDays } from './certainty';
import type { SectionDays } from './section-days';

/** What each item left on each trading day: revenue - paid portions * f of the day. Entry day * items + item. */
export function contributionByDay(period: CostedPeriod, nodes: readonly number[], section: SectionDays): Float64Array {
  const rowOf = new Map(section.days.map((day, index) => [day, index]));
  const contribution = new Float64Array(section.days.length * nodes.length);
  nodes.forEach((node, item) => {
    for (const row of period.things[node]?.sales ?? []) {
      const index = rowOf.get(row.day);
      if (index === undefined) continue;
      const cell = index * nodes.length + item;
      const segment = segmentOf(period.segments, row.day);
      const cost = row.sold * plateCost(period, node, segment, row.channel).total;
      contribution[cell] = (contribution[cell] as number) + (rowRevenue(period, node, row) ?? row.net) - cost;
    }
  });
  return contribution;
}

/** The days of a section as they are resampled. */
export function mixDays(
  period: CostedPeriod,
  nodes: readonly number[],
  section: SectionDays,
  expected: Float64Array,
  margins: readonly (number | null)[],
): MixDays {
  const contribution = contributionByDay(period, nodes, section);
  return { ...section, expected, contribution, margins, factor: period.venue.popularityFactor };
}
