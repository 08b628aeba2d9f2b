import { setTimeout as sleep } from 'node:timers/promises';
import { nameKey } from '../core/name-key';
import type { Database } from './database';

const LOADS = 72707371;
const MS_BETWEEN_TRIES = 50;

/**
 * Runs work on a venue's data after every other such work on it has ended, in this process or another: what is loaded file by file,
 * one transaction each, comes out as if one load had followed the other. Should the process die, its turn ends with its connection.
 */
export async function inTurn<T>(db: Database, venueName: string, work: () => Promise<T>): Promise<T> {
  const key = nameKey(venueName); // the venue may not be there yet
  for (;;) {
    const connection = await db.pool.connect();
    let sound = true;
    try {
      const { rows } = await connection.query<{ mine: boolean }>(
        'select pg_try_advisory_lock($1, hashtext($2)) as mine',
        [LOADS, key],
      );
      if (rows[0]?.mine) {
        try {
          return await work();
        } finally {
          const unlock = connection.query('select pg_advisory_unlock($1, hashtext($2))', [LOADS, key]);
          sound = await unlock.then(
            () => true,
            () => false,
          );
        }
      }
    } finally {
      connection.release(!sound); // a connection that may still hold the turn is not used again
    }
    await sleep(MS_BETWEEN_TRIES);
  }
}
