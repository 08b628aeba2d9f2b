import { addDays, type Day } from '../core/days';
import { openDatabase } from '../db/database';
import { inVenue, type VenueTx } from '../db/in-venue';
import { kitchenDay } from '../db/kitchen-day';
import type { CostedPeriod } from '../model/costed-period';
import type { Asker } from '../session/asker';
import { askedVenue } from './asked-venue';
import { costedPeriods } from './costed-periods';
import { dayNamed } from './day-named';
import { type Answered, answered } from './problem';

/** A question about a venue's kitchen on a day. Null: the only venue; the last day of the latest month with sales, else today. */
export interface KitchenAsked {
  readonly venue: string | null;
  readonly date: string | null;
}

/** The kitchen on a day: everything costed, and what was read beside it of the very same state of the venue. */
export interface KitchenOn<Read> {
  readonly venue: string;
  readonly day: Day;
  readonly costed: CostedPeriod;
  readonly read: Read;
}

/** `weeksBack`: costed with so many weeks before the day, for what asks what was sold in them. */
export async function kitchenOn<Read>(
  asker: Asker,
  asked: KitchenAsked,
  read: (tx: VenueTx, at: { readonly venue: string; readonly day: Day }) => Promise<Read>,
  weeksBack = 0,
): Promise<Answered<KitchenOn<Read>>> {
  const db = await openDatabase();
  const venue = await askedVenue(db, asker, asked.venue);
  if (!venue.ok) return venue;
  const named = asked.date === null ? null : dayNamed(asked.date);
  if (named && !named.ok) return named;
  const { id, name } = venue.answer;
  const who = { venue: id, person: asker.person };
  for (;;) {
    const beside = await inVenue(db, who, 'read', async (tx) => {
      const day = named?.answer ?? (await kitchenDay(tx));
      return { day, revision: tx.revision(), read: await read(tx, { venue: name, day }) };
    });
    const { day } = beside;
    const range = { from: addDays(day, -7 * weeksBack), to: addDays(day, 1) };
    const { revision, periods } = await costedPeriods(db, asker, id, [range], 'everything');
    const [costed] = periods;
    if (!costed) throw new Error('a day was asked for');
    // somebody wrote in between: read both again
    if (revision === beside.revision) return answered({ venue: name, day, costed, read: beside.read });
  }
}
