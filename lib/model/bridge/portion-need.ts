import type { CostedPeriod } from '../costed-period';
import { downward } from '../passes';
import { portionOf } from '../plate-cost';
import type { PortionWeight } from '../portion-weights';

/**
 * What one portion of an item takes of everything, as a mean over its portions of a period; what it is packed in by channel included.
 *
 * need(k, g) = (s_g / s) R_g(k): base units, entry node * segments + segment, so that the sum over segments is that of one portion.
 * All zero where there is nothing to weigh by.
 */
export function portionNeed(period: CostedPeriod, node: number, weights: readonly PortionWeight[]): Float64Array {
  const { count } = period.segments;
  const wanted = new Float64Array(period.things.length * count);
  const whole = weights.reduce((sum, { weight }) => sum + weight, 0);
  for (const { segment, channel, weight } of weights) {
    const packing = channel === null ? undefined : period.packings.get(node)?.get(channel);
    const amount = (weight / whole) * (portionOf(period, node, segment) ?? 0);
    for (const each of packing === undefined ? [node] : [node, packing]) {
      const cell = each * count + segment;
      wanted[cell] = (wanted[cell] as number) + amount;
    }
  }
  return downward(period.lines, wanted, count);
}
