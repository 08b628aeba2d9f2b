import { addDays, type Day, isWithin, weekday } from '../core/days';
import { type Period, periodBefore, weekOf } from '../core/periods';

/**
 * The latest week whose sales are all in: the one that holds the last business day sold on, unless it is still running or a weekday is yet
 * to come that traded in the week before; then that one. `sold` is ascending. Null where nothing was sold.
 */
export function latestWeek(sold: readonly Day[], isRunning: (week: Period) => boolean): Period | null {
  const last = sold.at(-1);
  if (last === undefined) return null;
  const week = weekOf(last);
  const before = periodBefore(week);
  const tradedBefore = sold.filter((day) => isWithin(day, before.range));
  if (tradedBefore.length === 0) return week;
  const isDue = tradedBefore.some((day) => weekday(day) > weekday(last));
  return isDue || isRunning(week) ? before : week;
}

/** The nearest weeks with sales before and after one. */
export function weeksBeside(sold: readonly Day[], { range }: Period): readonly [Period | null, Period | null] {
  const before = sold.findLast((day) => day < range.from);
  const after = sold.find((day) => day >= range.to);
  return [before === undefined ? null : weekOf(before), after === undefined ? null : weekOf(after)];
}

/** The week that is shown with a period: the last one that traded of those that begin in it; null where none did. */
export function weekWithin(sold: readonly Day[], period: Period, latest: Period | null): Period | null {
  const begun = sold.map(weekOf).filter(({ range }) => isWithin(range.from, period.range));
  const last = begun.at(-1) ?? null;
  const isYetToCome = last !== null && latest !== null && last.range.from > latest.range.from;
  return isYetToCome && isWithin(addDays(latest.range.to, -1), period.range) ? latest : last;
}
