import type { Day } from '../core/days';
import type { CostedPeriod } from './costed-period';
import type { SalesDay } from './facts';
import { netPriceOn } from './menu-price';
import { segmentOf } from './segments';

/** Portions (or days on sale) of a segment in a channel; null: in whichever. */
export interface PortionWeight {
  readonly segment: number;
  readonly channel: string | null;
  readonly weight: number;
}

/**
 * What a mean over a period is weighted by: paid portions by segment and channel; where there are none, the days on sale, each in the
 * channels on whose menu the item is that day. Rows and days come by day, so the weights come by segment.
 */
export function portionWeights(
  period: CostedPeriod,
  node: number,
  rows: readonly SalesDay[],
  daysOnSale: readonly Day[],
  channels: readonly string[],
): readonly PortionWeight[] {
  const menu = period.things[node]?.menu ?? [];
  const weights = new Map<string, PortionWeight>();
  const add = (day: Day, channel: string | null, portions: number): void => {
    const segment = segmentOf(period.segments, day);
    const key = `${segment} ${channel ?? ''}`;
    weights.set(key, { segment, channel, weight: (weights.get(key)?.weight ?? 0) + portions });
  };
  const sold = rows.reduce((sum, row) => sum + row.sold, 0);
  if (sold > 0) for (const row of rows) add(row.day, row.channel, row.sold);
  else {
    for (const day of daysOnSale) {
      const on = channels.filter((channel) => netPriceOn(menu, channel, day) !== null);
      for (const channel of on.length > 0 ? on : [null]) add(day, channel, 1);
    }
  }
  return [...weights.values()].filter(({ weight }) => weight !== 0);
}

/** The mean of something over portions; null where there is nothing to weigh by. */
export function weightedMean(weights: readonly PortionWeight[], of: (at: PortionWeight) => number): number | null {
  const whole = weights.reduce((sum, { weight }) => sum + weight, 0);
  if (weights.length === 0) return null;
  return weights.reduce((sum, at) => sum + at.weight * of(at), 0) / whole;
}
