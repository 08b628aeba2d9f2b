/** The step nearest above span / count that reads well: 1, 2 or 5 times a power of ten. Span and count are positive. */
export function niceStep(span: number, count: number): number {
  const rough = span / count;
  const power = 10 ** Math.floor(Math.log10(rough));
  const times = rough / power;
  return (times <= 1 ? 1 : times <= 2 ? 2 : times <= 5 ? 5 : 10) * power;
}

/** Multiples of a nice step within the span, about so many; both ends included where they are multiples. */
export function niceTicks(low: number, high: number, count: number): number[] {
  if (!(high > low)) return [low];
  const step = niceStep(high - low, count);
  const digits = Math.max(0, -Math.floor(Math.log10(step)));
  const first = Math.ceil(low / step - 1e-9);
  const last = Math.floor(high / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, index) => Number(((first + index) * step).toFixed(digits)) + 0);
}

/** Decimals that tell the ticks apart. */
export function tickDecimals(ticks: readonly number[]): number {
  const [a, b] = ticks;
  if (a === undefined || b === undefined) return 2;
  return Math.max(0, -Math.floor(Math.log10(Math.abs(b - a)) + 1e-9));
}
