import type { PricePoint } from '../shapes';

/** A price list: each price holds from its day until the next one. */
export function listed(...steps: readonly (readonly [from: string, price: number])[]): readonly PricePoint[] {
  return steps.map(([from, price]) => ({ kind: 'list', from, price }));
}

/** What only the invoices say. */
export function invoiced(...steps: readonly (readonly [from: string, price: number])[]): readonly PricePoint[] {
  return steps.map(([from, price]) => ({ kind: 'invoice', from, price }));
}

const HALF_YEARS = [
  ['2025-04-01', '2025-09-30'],
  ['2025-10-01', '2026-03-31'],
  ['2026-04-01', '2026-09-30'],
  ['2026-10-01', '2027-03-31'],
] as const;

/** Prices agreed for half a year each, from April and from October. */
export function agreedByHalfYear(...prices: readonly [number, number, number, number]): readonly PricePoint[] {
  return HALF_YEARS.map(([from, to], at) => ({ kind: 'agreed', from, to, price: prices[at] ?? prices[0] }));
}
