import { may } from '../../access/may';
import { dayText } from '../../core/days';
import { nameKey } from '../../core/name-key';
import { type Database, openDatabase } from '../../db/database';
import { type inVenue, PeriodClosed } from '../../db/in-venue';
import { venuesSeenBy } from '../../db/venues';
import { booksClosed, notYours } from '../../format/words/kitchen';
import { noSuchVenue, noVenueYet } from '../../format/words/problems';
import { type Asker, roleOf } from '../../session/asker';
import { type Kept, NotKept, refusal } from './kept';

/**
 * Lets an asker who may change the kitchen into the venue, named or numbered, that is to be changed. Work that ends by keeping nothing, or
 * at a closed day, comes out as what it says.
 */
export async function throughKitchenDoor(
  asker: Asker,
  named: string,
  work: (db: Database, who: Parameters<typeof inVenue>[1]) => Promise<Kept>,
): Promise<Kept> {
  if (!may(roleOf(asker), 'change-kitchen')) return { ok: false, refusal: refusal('not-allowed', notYours) };
  const db = await openDatabase();
  const seen = await venuesSeenBy(db, asker.person);
  const venue =
    seen.find(({ name }) => nameKey(name) === nameKey(named)) ?? seen.find(({ id }) => String(id) === named);
  if (!venue) {
    const words =
      seen.length === 0
        ? noVenueYet
        : noSuchVenue(
            named,
            seen.map(({ name }) => name),
          );
    return { ok: false, refusal: refusal('no-venue', words) };
  }
  try {
    return await work(db, { venue: venue.id, person: asker.person });
  } catch (error) {
    if (error instanceof NotKept) return error.result;
    if (!(error instanceof PeriodClosed)) throw error;
    const through = error.closedThrough === null ? '' : dayText(error.closedThrough);
    return { ok: false, refusal: refusal('closed', booksClosed(through)) };
  }
}
