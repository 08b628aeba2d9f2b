import type { QuadrantClass } from '../mix/mix-model';
import { isPopular } from '../mix/popular';
import type { PriceEdit } from './edits';
import type { PriceModel } from './price-model';
import { type PricedMix, pricedMix } from './priced-mix';

/** Where an item turns from one class to another while one price moves and nothing else does. */
export interface TurningValue {
  readonly item: string;
  readonly value: number;
  readonly below: QuadrantClass;
  readonly above: QuadrantClass;
}

/**
 * The values of one moved price at which items change their Kasavana & Smith class.
 *
 * Margin and mean margin are both linear in the price, so that they meet at the root of one linear equation:
 * value = a + (b - a) (mean(a) - CM(a)) / ((CM(b) - CM(a)) - (mean(b) - mean(a))). The mean moves too: many turn that are not made of
 * it. `edits` gives all changes with the price at a value; `a` and `b` are two values apart. An item without a class has none, nor has
 * one that moves exactly as the mean does.
 */
export function turningValues(
  model: PriceModel,
  edits: (value: number) => readonly PriceEdit[],
  a: number,
  b: number,
): readonly TurningValue[] {
  const first = pricedMix(model, edits(a));
  const second = pricedMix(model, edits(b));
  const { popularityFactor } = model.venue;
  return model.items.flatMap((item, index): TurningValue[] => {
    const distance = distanceOf(first, index);
    const change = difference(distanceOf(second, index), distance);
    if (distance === null || change === null || !item.hasDays) return [];
    const scale = Math.max(Math.abs(first.meanMargin ?? 0), Math.abs(distance));
    if (Math.abs(change) <= NO_SLOPE * scale) return [];
    const value = a - ((b - a) * distance) / change;
    const [little, much] = isPopular(item, { popularityFactor }) ? POPULAR : OTHERS;
    const [below, above] = change > 0 === b > a ? [little, much] : [much, little];
    return [{ item: item.name, value, below, above }];
  });
}

/** What leaves less than the mean, and what leaves more. */
const POPULAR = ['plowhorse', 'star'] as const;
const OTHERS = ['dog', 'puzzle'] as const;

/** Less than this share of the mean is no slope, but the rounding of doubles. */
const NO_SLOPE = 1e-9;

/** How far the margin of an item is above the mean. */
function distanceOf({ items, meanMargin }: PricedMix, index: number): number | null {
  return difference(items[index]?.margin ?? null, meanMargin);
}

function difference(from: number | null, less: number | null): number | null {
  return from === null || less === null ? null : from - less;
}
