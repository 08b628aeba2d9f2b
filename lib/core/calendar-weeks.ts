import { addDays, type Day, dayOfDate, dayText, weekday } from './days';

/** The first day of a month, months counted on past December where `month` is above 12. */
export function firstOfMonth(year: number, month: number): Day {
  const date = new Date(0);
  date.setUTCFullYear(year, month - 1, 1);
  return dayOfDate(date);
}

/** The Monday of week 1 of a year. ISO 8601: weeks start on Monday, and week 1 is the one that holds 4 January. */
export function firstWeek(year: number): Day {
  const fourth = addDays(firstOfMonth(year, 1), 3);
  return addDays(fourth, 1 - weekday(fourth));
}

/** The year that the week of a day belongs to: that of its Thursday (ISO 8601). */
export function weekYear(day: Day): number {
  return Number(dayText(addDays(day, 4 - weekday(day))).slice(0, 4));
}
