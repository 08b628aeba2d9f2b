import { addDays, type Day, type DayRange, dayText, parseDay } from './days';

/** The twelve months that end with a day, which is excluded: to 2026-11-01 from 2025-11-01; to 29 February from 28 February. */
export function twelveMonthsTo(to: Day): DayRange {
  const [year = '', ...rest] = dayText(to).split('-');
  const text = (days: readonly string[]): string => [String(Number(year) - 1).padStart(4, '0'), ...days].join('-');
  const from = parseDay(text(rest)) ?? parseDay(text(['02', '28'])) ?? addDays(to, -365);
  return { from, to };
}
