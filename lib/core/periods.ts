import { addDays, type Day, type DayRange, dayOfDate, dayText, parseDay, weekday } from './days';

/** A range of business days and the name it is asked for by: 2026-10, 2026-W41, 2026-10-01..2026-11-01 (end excluded). */
export interface Period {
  readonly name: string;
  readonly range: DayRange;
}

/** Why a name is no period. */
export type PeriodRefusal =
  | 'form' // none of the forms
  | 'no-such-month'
  | 'no-such-week'
  | 'no-such-day'
  | 'end-not-after-start'
  | 'needs-calendar'; // a numbered period: the venue's own calendar says which days it has

export type PeriodReading =
  | { readonly period: Period; readonly refusal: null }
  | { readonly period: null; readonly refusal: PeriodRefusal };

const refused = (refusal: PeriodRefusal): PeriodReading => ({ period: null, refusal });
const read = (name: string, from: Day, to: Day): PeriodReading => ({
  period: { name, range: { from, to } },
  refusal: null,
});

/** The period of that name, or why there is none. */
export function periodNamed(name: string): PeriodReading {
  const text = name.trim();
  const month = /^(\d{4})-(\d{2})$/.exec(text);
  if (month) return monthNamed(text, Number(month[1]), Number(month[2]));
  const week = /^(\d{4})-W(\d{2})$/.exec(text);
  if (week) return weekNamed(text, Number(week[1]), Number(week[2]));
  if (/^\d{4}-P\d{2}$/.test(text)) return refused('needs-calendar');
  const days = /^(\d{4}-\d{2}-\d{2})\.\.(\d{4}-\d{2}-\d{2})$/.exec(text);
  if (!days) return refused('form');
  const from = parseDay(days[1] ?? '');
  const to = parseDay(days[2] ?? '');
  if (from === null || to === null) return refused('no-such-day');
  return to > from ? read(text, from, to) : refused('end-not-after-start');
}

/** The first day of a month, months counted on past December where `month` is above 12. */
function firstOfMonth(year: number, month: number): Day {
  const date = new Date(0);
  date.setUTCFullYear(year, month - 1, 1);
  return dayOfDate(date);
}

function monthNamed(name: string, year: number, month: number): PeriodReading {
  if (year < 1 || month < 1 || month > 12) return refused('no-such-month');
  return read(name, firstOfMonth(year, month), firstOfMonth(year, month + 1));
}

/** ISO 8601: weeks start on Monday, and week 1 is the one that holds 4 January. */
function firstWeek(year: number): Day {
  const fourth = addDays(firstOfMonth(year, 1), 3);
  return addDays(fourth, 1 - weekday(fourth));
}

function weekNamed(name: string, year: number, week: number): PeriodReading {
  const from = addDays(firstWeek(year), 7 * (week - 1));
  if (year < 1 || week < 1 || from >= firstWeek(year + 1)) return refused('no-such-week');
  return read(name, from, addDays(from, 7));
}

/** The calendar month that holds a day. */
export function monthOf(day: Day): Period {
  const [year = '', month = ''] = dayText(day).split('-');
  const range = { from: firstOfMonth(Number(year), Number(month)), to: firstOfMonth(Number(year), Number(month) + 1) };
  return { name: `${year}-${month}`, range };
}

/** The period of the same kind that ends where this one starts: the month before, the week before, as many days before. */
export function periodBefore(period: Period): Period {
  const { from, to } = period.range;
  const dayBefore = addDays(from, -1);
  if (/^\d{4}-\d{2}$/.test(period.name)) return monthOf(dayBefore);
  if (/^\d{4}-W\d{2}$/.test(period.name)) return weekOf(dayBefore);
  const range = { from: addDays(from, from - to), to: from };
  return { name: `${dayText(range.from)}..${dayText(range.to)}`, range };
}

/** The ISO week that holds a day: it belongs to the year of its Thursday. */
export function weekOf(day: Day): Period {
  const monday = addDays(day, 1 - weekday(day));
  const year = dayText(addDays(monday, 3)).slice(0, 4);
  const week = (monday - firstWeek(Number(year))) / 7 + 1;
  return { name: `${year}-W${String(week).padStart(2, '0')}`, range: { from: monday, to: addDays(monday, 7) } };
}
