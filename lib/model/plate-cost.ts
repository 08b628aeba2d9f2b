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
 * f = food * (1 + q) + packaging + estimate, per portion sold in a channel, in venue currency; without a channel, what it costs in
 * every one.
 *
 * q, the venue's stated share for what is not measured, is added once, on what is sold: unit costs inside it carry none. Packaging
 * is counted out piece by piece, and an estimate is the owner's whole figure: neither takes q.
 */
export function plateCost(
  period: CostedPeriod,
  node: number,
  segment: number,
  channel: string | null = null,
): PlateCost {
  const { complete, costs, estimated, segments, venue } = period;
  const packing = channel === null ? undefined : period.packings.get(node)?.get(channel);
  const cells = [node, ...(packing === undefined ? [] : [packing])].map((each) => each * segments.count + segment);
  const portion = portionOf(period, node, segment);
  const each = (of: Float64Array): number => cells.reduce((sum, cell) => sum + (of[cell] ?? 0), 0) * (portion ?? 0);
  const food = each(costs.food) * (1 + venue.qFactor) + each(costs.estimate);
  return {
    complete: cells.every((cell) => complete[cell] === 1) && portion !== null,
    food,
    total: food + each(costs.packaging),
    estimated: cells.some((cell) => estimated[cell] !== 0),
  };
}
