import type { CostedPeriod } from './costed-period';
import { inSegment } from './segments';

/** What one portion costs in a segment. */
export interface PlateCost {
  /** Whether all of it is known; else the sums are a floor: the known part. */
  readonly complete: boolean;
  /** Food, drink and estimates, q included: what food-cost % counts. */
  readonly food: number;
  /** f: food and packaging together. */
  readonly total: number;
  /** Whether an owner's estimate has a part in it. */
  readonly estimated: boolean;
}

/** Base units of a thing that make one portion: 1 for a plate, one piece of what is sold as it is; null where nobody said. */
export function portionOf(period: CostedPeriod, node: number, segment: number): number | null {
  return inSegment(period.measures[node] ?? [], segment)?.measure?.per.each ?? null;
}

/**
 * f = food * (1 + q) + packaging + estimate, per portion, in venue currency.
 *
 * q, the venue's stated share for what is not measured, is added once, on what is sold: unit costs inside it carry none. Packaging
 * is counted out piece by piece, and an estimate is the owner's whole figure: neither takes q.
 */
export function plateCost(period: CostedPeriod, node: number, segment: number): PlateCost {
  const { complete, costs, estimated, segments, venue } = period;
  const cell = node * segments.count + segment;
  const portion = portionOf(period, node, segment);
  const each = (of: Float64Array): number => (of[cell] ?? 0) * (portion ?? 0);
  const food = each(costs.food) * (1 + venue.qFactor) + each(costs.estimate);
  return {
    complete: complete[cell] === 1 && portion !== null,
    food,
    total: food + each(costs.packaging),
    estimated: estimated[cell] !== 0,
  };
}
