/** Two figures nearer to each other than this share of the larger are the same figure: far above rounding, far below a cent. */
const SAME = 1e-9;

/** Whether two figures agree within a relative 1e-9 of the larger. */
export function isNear(a: number, b: number): boolean {
  return Math.abs(a - b) <= SAME * Math.max(Math.abs(a), Math.abs(b));
}

/** value >= threshold, where a value on the threshold (within a relative 1e-9) counts as the favourable side. */
export function atLeast(value: number, threshold: number): boolean {
  return value >= threshold || isNear(value, threshold);
}
