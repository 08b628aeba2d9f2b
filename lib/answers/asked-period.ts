import { type Period, periodBefore, periodNamed } from '../core/periods';
import type { Database } from '../db/database';
import { inVenue } from '../db/in-venue';
import { loadVenue } from '../db/load-venue';
import type { VenueName } from '../db/venues';
import { noSuchPeriod } from '../format/words/problems';
import type { Asker } from '../session/asker';
import { type Answered, answered, refused } from './problem';

/** A period and the one of its kind before it. */
export interface AskedPeriod {
  readonly period: Period;
  readonly before: Period;
}

/** The period of a venue that a question is about, by its name: a numbered one is looked up in the venue's calendar. */
export async function askedPeriod(
  db: Database,
  asker: Asker,
  venue: VenueName,
  name: string,
): Promise<Answered<AskedPeriod>> {
  const inMonths = periodNamed(name);
  if (inMonths.period) return answered({ period: inMonths.period, before: periodBefore(inMonths.period) });
  if (inMonths.refusal !== 'needs-calendar') return refused(400, noSuchPeriod(name, inMonths.refusal));
  const { periods } = await inVenue(db, { venue: venue.id, person: asker.person }, 'read', loadVenue);
  const { period, refusal } = periodNamed(name, periods);
  return period
    ? answered({ period, before: periodBefore(period, periods) })
    : refused(400, noSuchPeriod(name, refusal));
}
