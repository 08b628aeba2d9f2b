import { addDays } from '@/lib/core/days';
import type { MixDays } from '@/lib/model/mix/certainty';
import type { MixFigures } from '@/lib/model/mix/mix-model';
import { day } from '../../books';

/** The figures of an item of which only the margin matters. */
export function withMargin(margin: number): MixFigures {
  return { sold: 0, expected: 0, margin, netPrice: margin, food: 0, labour: null };
}

/** Days from Monday, 5 October 2026 on; sold is a row a day, each item at its margin. */
export function mixOf(
  sold: readonly (readonly number[])[],
  margins: readonly (number | null)[],
  changed: Partial<MixDays> = {},
): MixDays {
  const items = margins.length;
  const portions = sold.map((row) => row.reduce((sum, count) => sum + count, 0));
  return {
    days: sold.map((_, index) => addDays(day('2026-10-05'), index)),
    items,
    onSale: Uint8Array.from(sold.flatMap((row) => row.map(() => 1))),
    sold: Float64Array.from(sold.flat()),
    expected: Float64Array.from(sold.flatMap((row, index) => row.map(() => (portions[index] ?? 0) / items))),
    contribution: Float64Array.from(sold.flatMap((row) => row.map((count, item) => count * (margins[item] ?? 0)))),
    revenue: new Float64Array(sold.length * items),
    food: new Float64Array(sold.length * items),
    figures: margins.map((margin) => (margin === null ? null : withMargin(margin))),
    popularityFactor: 0.7,
    variableCost: null,
    ...changed,
  };
}
