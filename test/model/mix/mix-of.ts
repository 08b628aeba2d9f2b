import { addDays } from '@/lib/core/days';
import type { MixDays } from '@/lib/model/mix/certainty';
import { day } from '../../books';

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
    margins,
    factor: 0.7,
    ...changed,
  };
}
