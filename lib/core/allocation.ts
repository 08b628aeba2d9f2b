/**
 * Whole numbers that stand for some parts and sum to `whole` exactly: each part rounded down, then one more for those that lost most,
 * until the sum is met (the method of largest remainders).
 *
 * For figures printed under each other whose sum is printed too. `whole` is a whole number near the sum of the parts; where two parts
 * lost the same, the earlier one gains. Negative parts are allowed.
 */
export function allocated(whole: number, parts: readonly number[]): readonly number[] {
  const down = parts.map(Math.floor);
  const left = whole - down.reduce((sum, part) => sum + part, 0);
  const lost = (index: number): number => (parts[index] ?? 0) - (down[index] ?? 0);
  const order = [...parts.keys()].sort((a, b) => lost(b) - lost(a) || a - b);
  const more = new Map(order.map((index, rank) => [index, Math.floor((left - rank - 1) / order.length) + 1]));
  return down.map((part, index) => part + (more.get(index) ?? 0));
}
