import { type Period, periodNamed, periodsUpTo } from '../core/periods';
import type { Database } from '../db/database';
import { inVenue } from '../db/in-venue';
import { salesSpan } from '../db/load-sales';
import { loadVenue } from '../db/load-venue';
import type { CostedPeriod } from '../model/costed-period';
import type { VenueId } from '../model/facts';
import type { Asker } from '../session/asker';
import { costedPeriods } from './costed-periods';

/** So many periods are looked back on, the one asked about counted. */
const LOOKED_BACK = 18;

export interface PastPeriod {
  readonly period: Period;
  readonly costed: CostedPeriod;
}

/**
 * A period and those of its kind before it, eighteen at most, oldest first, from the first with sales on. Of months only those with
 * sales.
 */
export async function pastPeriods(
  db: Database,
  asker: Asker,
  venue: VenueId,
  period: Period,
): Promise<readonly PastPeriod[]> {
  const { calendar, months } = await inVenue(db, { venue, person: asker.person }, 'read', async (tx) => ({
    calendar: (await loadVenue(tx)).periods,
    months: [...(await salesSpan(tx)).keys()].flatMap((name) => periodNamed(name).period ?? []),
  }));
  const first = months[0]?.range.from ?? period.range.from;
  const isMonth = /^\d{4}-\d{2}$/.test(period.name);
  const asked = isMonth ? months : periodsUpTo(period, LOOKED_BACK, calendar);
  const known = asked.filter(({ range }) => range.to > first);
  const ranges = known.map(({ range }) => range);
  const { periods } = await costedPeriods(db, asker, venue, ranges);
  return known
    .flatMap((each, at) => {
      const costed = periods[at];
      return costed && each.range.to <= period.range.to ? [{ period: each, costed }] : [];
    })
    .slice(-LOOKED_BACK);
}
