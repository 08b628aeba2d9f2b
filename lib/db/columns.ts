import { type Day, type DayRange, dateOfDay, dayOfDate } from '../core/days';
import type { Prisma } from './client/client';

/** A DATE column as a day. */
export function dayIn(date: Date): Day;
export function dayIn(date: Date | null): Day | null;
export function dayIn(date: Date | null): Day | null {
  return date === null ? null : dayOfDate(date);
}

/** A NUMERIC column as a double: exact decimals end in this folder. */
export function numberIn(decimal: Prisma.Decimal): number;
export function numberIn(decimal: Prisma.Decimal | null): number | null;
export function numberIn(decimal: Prisma.Decimal | null): number | null {
  return decimal === null ? null : decimal.toNumber();
}

/** What was stated to hold from before the end of a range: from a day, or from the beginning. */
export function statedBefore(range: DayRange) {
  return [{ validFrom: null }, { validFrom: { lt: dateOfDay(range.to) } }];
}

interface Dated {
  readonly validFrom: Date | null;
}

/** Oldest first; what holds from the beginning before all. */
export function byStart(a: Dated, b: Dated): number {
  return (
    (a.validFrom?.getTime() ?? Number.NEGATIVE_INFINITY) - (b.validFrom?.getTime() ?? Number.NEGATIVE_INFINITY) || 0
  );
}

/** Compares by the place that a list gives to each number; two of the same number are equal. */
export function byPlaceIn(inOrder: readonly { readonly id: number }[]): (a: number, b: number) => number {
  const places = new Map(inOrder.map(({ id }, place) => [id, place]));
  return (a, b) => (places.get(a) ?? -1) - (places.get(b) ?? -1);
}
