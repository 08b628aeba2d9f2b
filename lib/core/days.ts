/**
 * A business day, counted from 1970-01-01 (day 0). No time, no zone: which hours belong to a day is the venue's setting,
 * settled before a Day is made.
 */
export type Day = number & { readonly __brand: 'Day' };

/** A half-open range of business days: `from` is in it, `to` is not. */
export interface DayRange {
  readonly from: Day;
  readonly to: Day;
}

const MS_PER_DAY = 86_400_000;
const ISO = /^(\d{4})-(\d{2})-(\d{2})$/;

/** The day written as year-month-day (ISO 8601 calendar date, years 0001 to 9999), or null where that day does not exist. */
export function parseDay(text: string): Day | null {
  const parts = ISO.exec(text);
  if (!parts) return null;
  const year = Number(parts[1]);
  const month = Number(parts[2]);
  const day = Number(parts[3]);
  if (year < 1) return null;
  const date = new Date(0);
  date.setUTCFullYear(year, month - 1, day);
  const exists = date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
  return exists ? dayOfDate(date) : null;
}

/** The day as ISO 8601 text, 2026-10-01. */
export function dayText(day: Day): string {
  return dateOfDay(day).toISOString().slice(0, 10);
}

/** The day that holds the UTC instant of a Date: how DATE columns arrive from the database. */
export function dayOfDate(date: Date): Day {
  return Math.floor(date.getTime() / MS_PER_DAY) as Day;
}

/** The Date at UTC midnight of a day: how DATE columns are handed to the database. */
export function dateOfDay(day: Day): Date {
  return new Date(day * MS_PER_DAY);
}

/** The day `count` days later (earlier where negative). */
export function addDays(day: Day, count: number): Day {
  return (day + count) as Day;
}

/** ISO weekday: 1 Monday to 7 Sunday. 1970-01-01 was a Thursday. */
export function weekday(day: Day): number {
  return ((((day + 3) % 7) + 7) % 7) + 1;
}

/** Number of days in the range; never negative. */
export function dayCount(range: DayRange): number {
  return Math.max(0, range.to - range.from);
}

export function isWithin(day: Day, range: DayRange): boolean {
  return day >= range.from && day < range.to;
}
