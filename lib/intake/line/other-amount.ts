import { unitNamed } from '../../core/units';
import { type LineQuestion, lineQuestion, type StatedAmount } from '../../model/line-question';
import type { LineStyle } from './plain-amount';
import type { SpokenAmount } from './spoken-amount';

const NEAR_ENOUGH = 0.01; // 450 g (1 lb) are one amount

/** Whether a second amount says nothing else than the first: it is as much, or a help beside a weight. */
function saysTheSame(amount: SpokenAmount, other: StatedAmount, style: LineStyle): boolean {
  const [one, two] = [unitNamed(amount.unit, style.measures), unitNamed(other.unit, style.measures)];
  if (!one || amount.measure) return false;
  if (!two || one.base !== two.base) return one.base === 'g';
  return Math.abs((other.quantity * two.size) / (amount.quantity * one.size) - 1) <= NEAR_ENOUGH;
}

/** What is asked about an amount that stands beside the first: the size of a pack, or which of the two holds; nothing where they agree. */
export function otherAmount(
  amount: SpokenAmount,
  other: StatedAmount,
  pack: boolean,
  style: LineStyle,
): LineQuestion[] {
  if (pack || amount.measure) {
    const facts = { count: amount.quantity, size: other.quantity, unit: other.unit };
    return [lineQuestion('pack-size', facts, { quantity: amount.quantity * other.quantity, unit: other.unit })];
  }
  const words = `${other.quantity} ${other.unit}`;
  return saysTheSame(amount, other, style) ? [] : [lineQuestion('two-quantities', { other: words }, other)];
}
