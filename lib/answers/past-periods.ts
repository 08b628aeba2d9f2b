import { type Period, periodsUpTo } from '../core/periods';
import type { Database } from '../db/database';
import { inVenue } from '../db/in-venue';
import { salesDays } from '../db/load-sales';
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

/** A period and those of its kind before it, eighteen at most, oldest first, from the first with sales on; it itself in any case. */
export async function pastPeriods(
  db: Database,
  asker: Asker,
  venue: VenueId,
  period: Period,
): Promise<readonly PastPeriod[]> {
  const { calendar, sold } = await inVenue(db, { venue, person: asker.person }, 'read', async (tx) => ({
    calendar: (await loadVenue(tx)).periods,
    sold: await salesDays(tx),
  }));
  const first = sold[0] ?? period.range.to;
  const shown = periodsUpTo(period, LOOKED_BACK, calendar).filter(
    ({ range }) => range.to > first || range.to === period.range.to,
  );
  const ranges = shown.map(({ range }) => range);
  const { periods } = await costedPeriods(db, asker, venue, ranges);
  return shown.flatMap((each, at) => {
    const costed = periods[at];
    return costed ? [{ period: each, costed }] : [];
  });
}
