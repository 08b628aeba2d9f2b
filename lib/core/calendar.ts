import { firstWeek, weekYear } from './calendar-weeks';
import { addDays, type Day, type DayRange } from './days';

/** How a venue divides its year: calendar months, quarters of 4, 4 and 5 weeks, or thirteen times four weeks. */
export type Calendar = 'months' | '4-4-5' | '13x4';

/** A numbered period and the year that it belongs to: period 10 of 2026. */
export interface NumberedPeriod {
  readonly year: number;
  readonly number: number;
  readonly range: DayRange;
}

const QUARTER = [4, 4, 5];
const WEEKS: Readonly<Record<Calendar, readonly number[]>> = {
  months: [],
  '4-4-5': [...QUARTER, ...QUARTER, ...QUARTER, ...QUARTER],
  '13x4': Array.from({ length: 13 }, () => 4),
};

/** How many numbered periods a year has: twelve of 4, 4 and 5 weeks, thirteen of four; none where months are kept. */
export function periodsInYear(calendar: Calendar): number {
  return WEEKS[calendar].length;
}

/**
 * The days of a numbered period, or null where the calendar has none of that number.
 *
 * The year is that of ISO 8601's weeks: it starts on the Monday of week 1, the week that holds 4 January, so that a period is whole
 * weeks of one year and W40 means the same days in every calendar. In a year of 53 weeks the last period has the week more.
 */
export function numberedPeriod(calendar: Calendar, year: number, number: number): DayRange | null {
  const weeks = WEEKS[calendar];
  if (year < 1 || number < 1 || number > weeks.length) return null;
  const before = weeks.slice(0, number - 1).reduce((sum, count) => sum + count, 0);
  const from = addDays(firstWeek(year), 7 * before);
  const to = number === weeks.length ? firstWeek(year + 1) : addDays(from, 7 * (weeks[number - 1] ?? 0));
  return { from, to };
}

/** The numbered period that holds a day; null where months are kept. */
export function numberedPeriodOf(day: Day, calendar: Calendar): NumberedPeriod | null {
  const year = weekYear(day);
  for (let number = periodsInYear(calendar); number >= 1; number--) {
    const range = numberedPeriod(calendar, year, number);
    if (range !== null && range.from <= day) return { year, number, range };
  }
  return null;
}
