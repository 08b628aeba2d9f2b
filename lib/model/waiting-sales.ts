import type { DayRange } from '../core/days';
import { isWithin } from '../core/days';
import { byText, grouped } from '../core/grouped';
import { nameKey } from '../core/name-key';
import type { WaitingSales } from './facts';
import type { Issue } from './issue';
import type { Thing } from './things';

/** What was sold in a period under names that nobody knows yet. */
export interface WaitingInPeriod {
  readonly rows: number;
  /** Of the rows whose number can be read. */
  readonly portions: number;
  /** Most portions first. */
  readonly names: readonly { readonly name: string; readonly rows: number; readonly portions: number }[];
}

const NAMED = 3;

/** Sales that wait for a name, summed over the days of a range by name. */
export function waitingIn(waiting: readonly WaitingSales[], range: DayRange): WaitingInPeriod {
  return summed(waiting.filter(({ day }) => isWithin(day, range)));
}

/** What waited in several periods, together. */
export function sumOfWaiting(periods: readonly WaitingInPeriod[]): WaitingInPeriod {
  return summed(periods.flatMap(({ names }) => names));
}

function summed(waiting: readonly Pick<WaitingSales, 'name' | 'rows' | 'portions'>[]): WaitingInPeriod {
  const sumOf = (some: typeof waiting) => ({
    rows: some.reduce((sum, { rows }) => sum + rows, 0),
    portions: some.reduce((sum, { portions }) => sum + (portions ?? 0), 0),
  });
  const names = [...grouped(waiting, ({ name }) => nameKey(name))].map(([key, some]) => ({
    ...{ key, name: some[0]?.name ?? key },
    ...sumOf(some),
  }));
  names.sort((a, b) => b.portions - a.portions || byText(a.key, b.key));
  return { ...sumOf(waiting), names: names.map(({ key: _, ...each }) => each) };
}

/** Paid portions of everything that has a name. */
export function portionsSold(things: readonly Thing[]): number {
  return things.reduce((sum, { sales }) => sales.reduce((of, { sold }) => of + sold, sum), 0);
}

/** One issue for all that waits: how many portions of how many names, the largest by name, and their share of all that was sold. */
export function waitingIssues(
  about: string,
  { rows, portions, names }: WaitingInPeriod,
  sold: number,
): readonly Issue[] {
  if (rows === 0) return [];
  const largest = names.slice(0, NAMED).map(({ name }) => name);
  const all = sold + portions;
  const facts = { names: names.length, rows, portions, largest, share: all > 0 ? portions / all : null };
  return [{ code: 'sales-waiting', about, facts }];
}
