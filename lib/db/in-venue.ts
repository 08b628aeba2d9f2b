import { setTimeout as sleep } from 'node:timers/promises';
import type { PoolClient } from 'pg';
import { type Day, parseDay } from '../core/days';
import type { VenueId } from '../model/facts';
import { bind, PATIENCE } from './bind';
import type { Prisma } from './client/client';
import type { Database } from './database';
import { detailsOf } from './failure';

/** What a piece of work in a venue is given: one transaction, seen through Prisma and through the driver. */
export interface VenueTx {
  readonly venue: VenueId;
  readonly person: string;
  readonly prisma: Prisma.TransactionClient;
  /** The same connection and transaction, for COPY and set-based SQL, one statement at a time. It refuses once the transaction has ended. */
  readonly bulk: Pick<PoolClient, 'query'>;
  /** The venue's revision as this transaction found it; null before the lock where it is taken later. */
  revision(): number | null;
  /**
   * Takes the venue's lock, once: no other write to this venue runs until this transaction ends. Written work has it from the start,
   * unless it said lockLater: then it may fill temporary tables first, and must call lock() before it reads what it will
   * decide by and before it writes to any table of the venue.
   */
  lock(): Promise<void>;
  /** Nothing that a figure could depend on was altered: the revision stays, and what was cached by it. */
  nothingChanged(): void;
}

/** A write touched a day that is closed; the transaction is undone. */
export class PeriodClosed extends Error {
  override readonly name = 'PeriodClosed';
  constructor(
    /** The last closed business day. */
    readonly closedThrough: Day | null,
  ) {
    super('the period is closed');
  }
}

/** There is no such venue, or not any more. */
export class NoSuchVenue extends Error {
  override readonly name = 'NoSuchVenue';
}

const TRIES = 4;

/**
 * The one function through which every access to a venue runs: one transaction as the app's database role, bound to this venue by
 * row-level security, with `person` named in the record of changes.
 *
 * read: REPEATABLE READ and read-only, so that one answer sees one state. write: takes the venue's lock first (see lock()) and raises the venue's
 * revision at the end. Work that meets a conflict with another transaction is run again from its start, a few times: it must not
 * use up anything outside the transaction. Throws PeriodClosed where a closed day was touched, NoSuchVenue where there is none.
 */
export async function inVenue<T>(
  db: Database,
  who: { readonly venue: VenueId; readonly person: string },
  mode: 'read' | 'write',
  work: (tx: VenueTx) => Promise<T>,
  options: { readonly lockLater?: boolean } = {},
): Promise<T> {
  for (let attempt = 1; ; attempt++) {
    try {
      return await once(db, who, mode, work, options.lockLater === true);
    } catch (error) {
      const { conflict, closedThrough } = detailsOf(error);
      if (closedThrough !== null) throw new PeriodClosed(parseDay(closedThrough));
      if (!conflict || attempt === TRIES) throw error;
      await sleep(20 * 2 ** attempt * Math.random());
    }
  }
}

function once<T>(
  db: Database,
  { venue, person }: { readonly venue: VenueId; readonly person: string },
  mode: 'read' | 'write',
  work: (tx: VenueTx) => Promise<T>,
  lockLater: boolean,
): Promise<T> {
  return db.prisma.$transaction(
    async (prisma) => {
      const { connection, end } = await bind(db, prisma, venue, person, mode);
      let revision: number | null = null;
      let locked = false;
      let changed = true;
      const look = async (locking: string) => {
        const { rows } = await connection.query<{ revision: number }>(
          `select revision from venue where id = $1 ${locking}`,
          [venue],
        );
        if (!rows[0]) throw new NoSuchVenue(`no venue has the number ${venue}`);
        revision = rows[0].revision;
      };
      const lock = async () => {
        if (mode === 'read') throw new Error('a read takes no lock');
        if (!locked) await look('for no key update');
        locked = true;
      };
      try {
        if (mode === 'read') await look('');
        else if (!lockLater) await lock();
        const result = await work({
          venue,
          person,
          prisma,
          bulk: connection,
          revision: () => revision,
          lock,
          nothingChanged() {
            changed = false;
          },
        });
        if (mode === 'write' && changed) {
          if (!locked) throw new Error('this write never took the lock of its venue');
          await connection.query('update venue set revision = revision + 1 where id = $1', [venue]);
        }
        return result;
      } finally {
        end();
      }
    },
    { ...PATIENCE, isolationLevel: mode === 'read' ? 'RepeatableRead' : 'ReadCommitted' },
  );
}
