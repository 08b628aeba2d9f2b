import { nameKey } from '../core/name-key';
import type { VenueId } from '../model/facts';
import { bind, PATIENCE } from './bind';
import type { Prisma } from './client/client';
import type { Database } from './database';

/** A venue by the name that it goes by. */
export interface VenueName {
  readonly id: VenueId;
  readonly name: string;
}

/** A venue as it is listed. */
export interface SeenVenue extends VenueName {
  /** Whether the program loaded it by itself, as a demo. */
  readonly demo: boolean;
}

/** The venues that a person may see, by name. The one question that is asked outside a venue. */
export async function venuesSeenBy(db: Database, person: string): Promise<SeenVenue[]> {
  const { rows } = await db.pool.query<SeenVenue>('select id, name, demo from venues_seen_by($1)', [person]);
  return rows;
}

/** What a new venue is given; what is left out takes the default of its column. */
export type NewVenue = Omit<Prisma.VenueUncheckedCreateInput, 'id' | 'nameKey' | 'revision'>;

/**
 * Makes a venue, or finds the one that already goes by that name (two people may make it at once: they end up in the same one).
 * Its number is taken first, so that the transaction is bound to the venue that it makes.
 */
export async function createVenue(
  db: Database,
  person: string,
  venue: NewVenue,
): Promise<VenueName & { readonly made: boolean }> {
  const key = nameKey(venue.name);
  const { rows } = await db.pool.query<{ id: VenueId }>(
    `select nextval(pg_get_serial_sequence('venue', 'id'))::int as id`,
  );
  const id = rows[0]?.id;
  if (id === undefined) throw new Error('no number for a new venue');
  const made = await db.prisma.$transaction(async (prisma) => {
    const { end } = await bind(db, prisma, id, person, 'write');
    const { count } = await prisma.venue.createMany({ data: [{ ...venue, id, nameKey: key }], skipDuplicates: true });
    end();
    return count === 1;
  }, PATIENCE);
  if (made) return { id, name: venue.name, made };
  const seen = (
    await db.pool.query<VenueName>('select id, name from venues_seen_by($1) where name_key = $2', [person, key])
  ).rows[0];
  if (!seen) throw new Error(`a venue named ${venue.name} exists and is not seen by ${person}`);
  return { ...seen, made: false };
}
