import { dateOfDay, parseDay } from '../core/days';

const MONTH = /^\d{4}-\d{2}$/;
const WEEK = /^(\d{4})-W(\d{2})$/;
const FOUR_WEEKS = /^(\d{4})-P(\d{2})$/;

/** Names of days and months are English like every other word; an English locale sets their order, any other only figures. */
function spoken(locale: string): string {
  return /^en\b/i.test(locale) ? locale : 'en-GB';
}

function dated(isoDay: string, locale: string, parts: Intl.DateTimeFormatOptions): string | null {
  const day = parseDay(isoDay);
  if (day === null) return null;
  return new Intl.DateTimeFormat(spoken(locale), {
    ...parts,
    calendar: 'gregory',
    numberingSystem: 'latn',
    timeZone: 'UTC',
  }).format(dateOfDay(day));
}

/** 2026-10-02 as 2 October 2026; a text that is no day is handed back as it is. */
export function dayName(isoDay: string, locale: string): string {
  return dated(isoDay, locale, { day: 'numeric', month: 'long', year: 'numeric' }) ?? isoDay;
}

/** An ISO time stamp as the clock of a place says it: 2 October 2026, 13:50. */
export function momentName(
  iso: string,
  { locale, timeZone }: { readonly locale: string; readonly timeZone: string },
): string {
  const moment = new Date(iso);
  const parts = { calendar: 'gregory', numberingSystem: 'latn', timeZone } as const;
  const day = new Intl.DateTimeFormat(spoken(locale), { ...parts, day: 'numeric', month: 'long', year: 'numeric' });
  const time = new Intl.DateTimeFormat('en-GB', { ...parts, hour: '2-digit', minute: '2-digit' });
  return `${day.format(moment)}, ${time.format(moment)}`;
}

/** The days of a span, both ends included: 19 to 25 October 2026, 26 October to 1 November 2026. */
export function spanName(first: string, last: string, locale: string): string {
  const [from, to] = [parseDay(first), parseDay(last)];
  if (from === null || to === null) return `${first} to ${last}`;
  const parts = {
    day: 'numeric',
    month: 'long',
    year: 'numeric',
    calendar: 'gregory',
    numberingSystem: 'latn',
  } as const;
  const format = new Intl.DateTimeFormat(spoken(locale), { ...parts, timeZone: 'UTC' });
  return format.formatRange(dateOfDay(from), dateOfDay(to)).replace(/\s*\u2013\s*/, ' to ');
}

/** 2026-10-19 as Mon 19 Oct. */
export function weekdayName(isoDay: string, locale: string): string {
  return dated(isoDay, locale, { weekday: 'short', day: 'numeric', month: 'short' })?.replace(',', '') ?? isoDay;
}

/** 2026-10-19 as Mon, and 19 Oct. */
export function weekdayLabel(isoDay: string, locale: string): { readonly short: string; readonly day: string } {
  const short = dated(isoDay, locale, { weekday: 'short' }) ?? isoDay;
  return { short, day: dated(isoDay, locale, { day: 'numeric', month: 'short' }) ?? isoDay };
}

/** 2026-10 as October 2026; a text that is no month is handed back as it is. */
export function monthName(month: string, locale: string): string {
  return dated(`${month}-01`, locale, { month: 'long', year: 'numeric' }) ?? month;
}

/** 2026-10 as Oct, at most three letters, for a cell of the ribbon. */
export function monthAbbreviation(month: string, locale: string): string {
  return (dated(`${month}-01`, locale, { month: 'short' }) ?? month).replace('.', '').slice(0, 3);
}

/** A period for an axis: Oct, W41, P10; with the year where one begins, or where the axis does. */
export function shortPeriod(
  period: string,
  isFirst: boolean,
  locale: string,
): { readonly short: string; readonly year: string | null } {
  const year = period.slice(0, 4);
  if (MONTH.test(period)) {
    return { short: monthAbbreviation(period, locale), year: isFirst || period.endsWith('-01') ? year : null };
  }
  const numbered = (WEEK.exec(period) ?? FOUR_WEEKS.exec(period))?.[2];
  if (numbered !== undefined) return { short: period.slice(5), year: isFirst || numbered === '01' ? year : null };
  return { short: period.slice(5, 10), year: isFirst ? year : null };
}

/**
 * A period by its name: a month, a week, one of thirteen periods, or the days from A up to but not including B.
 * A text that is none of these is handed back as it is.
 */
export function periodName(period: string, locale: string): string {
  if (MONTH.test(period)) return monthName(period, locale);
  const week = WEEK.exec(period);
  if (week) return `Week ${Number(week[2])} of ${week[1]}`;
  const fourWeeks = FOUR_WEEKS.exec(period);
  if (fourWeeks) return `Period ${Number(fourWeeks[2])} of ${fourWeeks[1]}`;
  const [from = '', to] = period.split('..');
  const end = to === undefined ? null : parseDay(to);
  const start = parseDay(from);
  if (end === null || start === null || end <= start) return period;
  const last = new Date(dateOfDay(end).getTime() - 86_400_000).toISOString().slice(0, 10);
  return from === last ? dayName(from, locale) : `${dayName(from, locale)} to ${dayName(last, locale)}`;
}
