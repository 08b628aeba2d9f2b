import { nameKey } from '../core/name-key';
import type { Database } from '../db/database';
import { type VenueName, venuesSeenBy } from '../db/venues';
import { noSuchVenue, noVenueYet, whichVenue } from '../format/words/problems';
import type { Asker } from '../session/asker';
import { type Answered, answered, refused } from './problem';

/**
 * The venue that a question is about: by name or number among those that the asker may see; where none is named, the only one.
 * What the asker may not see is answered as if it did not exist.
 */
export async function askedVenue(db: Database, asker: Asker, named: string | null): Promise<Answered<VenueName>> {
  const seen = await venuesSeenBy(db, asker.person);
  const names = seen.map((venue) => venue.name);
  if (seen.length === 0) return refused(404, noVenueYet);
  if (named === null) {
    const [only] = seen;
    return only && seen.length === 1 ? answered(only) : refused(400, whichVenue(names));
  }
  const found =
    seen.find((venue) => nameKey(venue.name) === nameKey(named)) ?? seen.find((venue) => String(venue.id) === named);
  return found ? answered(found) : refused(404, noSuchVenue(named, names));
}
