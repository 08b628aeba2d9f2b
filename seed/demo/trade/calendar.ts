import { addDays, type Day, dayText, parseDay, weekday } from '../../../lib/core/days';

function day(text: string): Day {
  const read = parseDay(text);
  if (read === null) throw new Error(`${text} is no day`);
  return read;
}

export const FIRST_DAY = day('2025-05-01');
export const LAST_DAY = day('2026-10-31');
/** Stock was taken for the first time at the end of the day before the first. */
export const OPENING_COUNT = addDays(FIRST_DAY, -1);

const MONDAY = 1;
const TUESDAY = 2;

/** Closed beside the usual days off: Christmas, New Year's Day, the winter break. */
const CLOSED: readonly (readonly [from: string, to: string])[] = [
  ['2025-12-24', '2025-12-26'],
  ['2026-01-01', '2026-01-01'],
  ['2026-01-05', '2026-01-13'],
];

/** How much busier than its weekday a day is; a Monday or Tuesday in this list is open. */
const OCCASIONS: ReadonlyMap<string, number> = new Map([
  ['2025-05-05', 1.05],
  ['2025-06-02', 1.1],
  ['2025-08-08', 1.15],
  ['2025-08-09', 1.15],
  ['2025-10-27', 1],
  ['2025-10-31', 1.25],
  ['2025-12-12', 1.2],
  ['2025-12-13', 1.15],
  ['2025-12-19', 1.3],
  ['2025-12-20', 1.2],
  ['2025-12-23', 1.4],
  ['2025-12-31', 1.7],
  ['2026-02-13', 1.3],
  ['2026-02-14', 1.2],
  ['2026-03-15', 1.45],
  ['2026-04-03', 1.15],
  ['2026-04-04', 1.2],
  ['2026-04-05', 1.3],
  ['2026-04-06', 1.15],
  ['2026-05-04', 1.05],
  ['2026-06-01', 1.1],
  ['2026-08-07', 1.15],
  ['2026-08-08', 1.15],
  ['2026-10-26', 1],
  ['2026-10-31', 1.2],
]);

export function occasion(date: Day): number | null {
  return OCCASIONS.get(dayText(date)) ?? null;
}

/** Closed on Mondays and Tuesdays; in July and August on Mondays only. */
export function isOpen(date: Day): boolean {
  const text = dayText(date);
  if (CLOSED.some(([from, to]) => from <= text && text <= to)) return false;
  if (OCCASIONS.has(text)) return true;
  const isHighSummer = ['07', '08'].includes(text.slice(5, 7));
  const off = weekday(date);
  return off !== MONDAY && (off !== TUESDAY || isHighSummer);
}

/** Every day from `from` to `to`, both included. */
export function daysBetween(from: Day, to: Day): readonly Day[] {
  return Array.from({ length: to - from + 1 }, (_, at) => addDays(from, at));
}

export const TRADING_DAYS: readonly Day[] = daysBetween(FIRST_DAY, LAST_DAY).filter(isOpen);

/** The last day of each month on the books. */
export const MONTH_ENDS: readonly Day[] = daysBetween(FIRST_DAY, LAST_DAY).filter((each) =>
  dayText(addDays(each, 1)).endsWith('-01'),
);

/** Stocktakes: the opening one and the end of every month. */
export const COUNT_DAYS: readonly Day[] = [OPENING_COUNT, ...MONTH_ENDS];

/** Years since the first day. */
export function yearsOpen(date: Day): number {
  return (date - FIRST_DAY) / 365;
}

/** 1 at midsummer, -1 at midwinter. */
export function summerness(date: Day): number {
  const midsummer = day('2025-07-20');
  return Math.cos((2 * Math.PI * (date - midsummer)) / 365.25);
}
