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

/** What a load says of its venue. */
export interface VenueWanted {
  readonly asked: string | null;
  /** By venue.csv. */
  readonly inFile: string | null;
  readonly folder: string;
  /** Whether it is one file, which says less than a folder that a restaurant of its own is meant. */
  readonly oneFile: boolean;
  /** Whether a venue that it makes is the demo. */
  readonly demo: boolean;
}

/**
 * Which venue: the one that was asked for; else the one that the folder's venue.csv names; else the only one there is, the demo not counted;
 * else, where there is none, one named after the folder. Of several none is guessed, and the demo is meant only where it is named.
 */
export async function venueOfLoad(
  db: Database,
  person: string,
  wanted: VenueWanted,
): Promise<VenueOfLoad | { readonly wrong: string }> {
  const seen = await venuesSeenBy(db, person);
  const named = wanted.asked ?? wanted.inFile;
  if (named !== null) return found(db, person, seen, named, wanted.demo);
  const own = seen.filter(({ demo }) => !demo);
  const [only, another] = own;
  if (another) return { wrong: loadingWords.whichVenue(own.map(({ name }) => name)) };
  if (only) return { exists: true, name: only.name, get: async () => only };
  const demo = seen.find(({ name }) => wanted.oneFile || nameKey(name) === nameKey(wanted.folder));
  return demo ? { wrong: loadingWords.demoOnly(demo.name) } : found(db, person, seen, wanted.folder, wanted.demo);
}

function found(db: Database, person: string, seen: readonly VenueName[], named: string, demo: boolean): VenueOfLoad {
  const there = seen.find(({ name }) => nameKey(name) === nameKey(named));
  if (there) return { exists: true, name: there.name, get: async () => there };
  const name = named.trim();
  let made: Promise<VenueName> | null = null;
  return {
    exists: false,
    name,
    get() {
      made ??= createVenue(db, person, { name, demo });
      return made;
    },
  };
}
