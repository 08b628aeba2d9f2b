import { type Calendar, numberedPeriod, numberedPeriodOf } from './calendar';
import { firstOfMonth, firstWeek, weekYear } from './calendar-weeks';
import { addDays, type Day, type DayRange, dayText, parseDay, weekday } from './days';

/** A range of business days and the name it is asked for by: 2026-10, 2026-W41, 2026-P10, 2026-10-01..2026-11-01 (end excluded). */
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
  | 'no-days' // the end is excluded, and it is the start
  | 'end-before-start'
  | 'far-year' // outside the years that books are kept in
  | 'no-such-number' // the venue's calendar has fewer periods in a year
  | 'needs-calendar'; // a numbered period, where months are kept

export type PeriodReading =
  | { readonly period: Period; readonly refusal: null }
  | { readonly period: null; readonly refusal: PeriodRefusal };

/** The years that books are kept in, both included: so that the period before one of them can be written too. */
const BOOK_YEARS = { first: 1900, last: 2199 } as const;

const refused = (refusal: PeriodRefusal): PeriodReading => ({ period: null, refusal });

function read(name: string, from: Day, to: Day): PeriodReading {
  const isFar = from < firstOfMonth(BOOK_YEARS.first, 1) || to > firstOfMonth(BOOK_YEARS.last + 1, 1);
  return isFar ? refused('far-year') : { period: { name, range: { from, to } }, refusal: null };
}

/** The period of that name, or why there is none. Which days a numbered period has, the venue's calendar says. */
export function periodNamed(name: string, calendar: Calendar = 'months'): PeriodReading {
  const text = name.trim();
  const month = /^(\d{4})-(\d{2})$/.exec(text);
  if (month) return monthNamed(text, Number(month[1]), Number(month[2]));
  const week = /^(\d{4})-W(\d{2})$/.exec(text);
  if (week) return weekNamed(text, Number(week[1]), Number(week[2]));
  const numbered = /^(\d{4})-P(\d{2})$/.exec(text);
  if (numbered) return numberedNamed(text, Number(numbered[1]), Number(numbered[2]), calendar);
  const days = /^(\d{4}-\d{2}-\d{2})\.\.(\d{4}-\d{2}-\d{2})$/.exec(text);
  if (!days) return refused('form');
  const from = parseDay(days[1] ?? '');
  const to = parseDay(days[2] ?? '');
  if (from === null || to === null) return refused('no-such-day');
  if (to <= from) return refused(to === from ? 'no-days' : 'end-before-start');
  return read(text, from, to);
}

function monthNamed(name: string, year: number, month: number): PeriodReading {
  if (year < 1 || month < 1 || month > 12) return refused('no-such-month');
  return read(name, firstOfMonth(year, month), firstOfMonth(year, month + 1));
}

function numberedNamed(name: string, year: number, number: number, calendar: Calendar): PeriodReading {
  if (calendar === 'months') return refused('needs-calendar');
  const range = numberedPeriod(calendar, year, number);
  return range === null ? refused('no-such-number') : read(name, range.from, range.to);
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

/** The period of a venue's calendar that holds a day: a month, or a numbered period. */
export function calendarPeriodOf(day: Day, calendar: Calendar): Period {
  const numbered = numberedPeriodOf(day, calendar);
  if (numbered === null) return monthOf(day);
  const { year, number, range } = numbered;
  return { name: `${String(year).padStart(4, '0')}-P${String(number).padStart(2, '0')}`, range };
}

/** The period of the same kind that ends where this one starts: the month, the week, the numbered period before, as many days before. */
export function periodBefore(period: Period, calendar: Calendar = 'months'): Period {
  const { from, to } = period.range;
  const dayBefore = addDays(from, -1);
  if (/^\d{4}-\d{2}$/.test(period.name)) return monthOf(dayBefore);
  if (/^\d{4}-W\d{2}$/.test(period.name)) return weekOf(dayBefore);
  if (/^\d{4}-P\d{2}$/.test(period.name)) return calendarPeriodOf(dayBefore, calendar);
  const range = { from: addDays(from, from - to), to: from };
  return { name: `${dayText(range.from)}..${dayText(range.to)}`, range };
}

/** So many periods of one kind up to and with this one, oldest first, without a gap. */
export function periodsUpTo(period: Period, count: number, calendar: Calendar = 'months'): readonly Period[] {
  const found = [period];
  while (found.length < count) found.unshift(periodBefore(found[0] ?? period, calendar));
  return found;
}

/** The ISO week that holds a day: it belongs to the year of its Thursday. */
export function weekOf(day: Day): Period {
  const monday = addDays(day, 1 - weekday(day));
  const year = weekYear(day);
  const week = (monday - firstWeek(year)) / 7 + 1;
  return {
    name: `${String(year).padStart(4, '0')}-W${String(week).padStart(2, '0')}`,
    range: { from: monday, to: addDays(monday, 7) },
  };
}
