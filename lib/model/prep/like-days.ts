import { addDays, type Day } from '../../core/days';
import type { CostedPeriod } from '../costed-period';

/** How many days of the same weekday an expectation is the mean of, and how many weeks back they are looked for. */
const DAYS = 4;
export const WEEKS_BACK = 8;

/**
 * The last four days of the same weekday on which anything was sold, the latest first; fewer where there are fewer among the eight before.
 * A day on which the house was shut says nothing of what a day like it takes.
 */
export function likeDays({ things, range }: Pick<CostedPeriod, 'things' | 'range'>, day: Day): readonly Day[] {
  const traded = new Set(
    things.flatMap(({ sales }) => sales.flatMap((row) => (row.sold + row.comps > 0 ? [row.day] : []))),
  );
  return Array.from({ length: WEEKS_BACK }, (_, week) => addDays(day, -7 * (week + 1)))
    .filter((each) => each >= range.from && traded.has(each))
    .slice(0, DAYS);
}
