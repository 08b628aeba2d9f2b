import { nameKey } from '../core/name-key';
import type { Database } from '../db/database';
import { createVenue, type VenueName, venuesSeenBy } from '../db/venues';
import { loadingWords } from '../format/words/loading';

/** The venue that a load is about, found or made when the first file asks for it; or a sentence saying why it cannot be told. */
export interface VenueOfLoad {
  /** Whether it is there already. */
  readonly exists: boolean;
  readonly name: string;
  readonly get: () => Promise<VenueName>;
}

/**
 * Which venue: the one that was asked for; else the one that the folder's venue.csv names; else the only one there is; else, where there
 * is none, one named after the folder. Of several none is guessed.
 */
export async function venueOfLoad(
  db: Database,
  person: string,
  names: { readonly asked: string | null; readonly inFile: string | null; readonly folder: string },
): Promise<VenueOfLoad | { readonly wrong: string }> {
  const seen = await venuesSeenBy(db, person);
  const named = names.asked ?? names.inFile ?? (seen.length === 0 ? names.folder : null);
  const [only, another] = seen;
  if (named === null && another) return { wrong: loadingWords.whichVenue(seen.map(({ name }) => name)) };
  const there = named === null ? only : seen.find(({ name }) => nameKey(name) === nameKey(named));
  if (there) return { exists: true, name: there.name, get: async () => there };
  const name = (named ?? '').trim();
  let made: Promise<VenueName> | null = null;
  return {
    exists: false,
    name,
    get() {
      made ??= createVenue(db, person, { name });
      return made;
    },
  };
}
