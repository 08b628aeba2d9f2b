import type { PoolClient } from 'pg';
import type { VenueId } from '../model/facts';
import type { Prisma } from './client/client';
import type { Database } from './database';

/** In milliseconds: how long to wait for a connection, and the longest that one transaction may take (a large load). */
export const PATIENCE = { maxWait: 60_000, timeout: 30 * 60_000 };

/** Binds a transaction that has just begun to a venue and a person, and finds the connection that it runs on. */
export async function bind(
  db: Database,
  prisma: Prisma.TransactionClient,
  venue: VenueId,
  person: string,
  mode: 'read' | 'write',
): Promise<{ connection: Pick<PoolClient, 'query'>; end: () => void }> {
  const rows = await prisma.$queryRaw<{ process: number }[]>`
    select pg_backend_pid() as process, set_config('role', 'plateworth_app', true), set_config('app.venue', ${String(venue)}, true),
           set_config('app.person', ${person}, true), set_config('timezone', 'UTC', true),
           set_config('transaction_read_only', ${mode === 'read' ? 'on' : 'off'}, true)`;
  const client = db.connections.get(rows[0]?.process ?? 0);
  if (!client)
    throw new Error(
      'the connection of this transaction is not known: connect to the server itself, not through a pooler',
    );
  let ended = false;
  const latest = Date.now() + PATIENCE.timeout;
  const query: PoolClient['query'] = (...given: unknown[]) => {
    if (ended || Date.now() > latest) throw new Error('this transaction has ended');
    return Reflect.apply(client.query, client, given);
  };
  return {
    connection: { query },
    end() {
      ended = true;
    },
  };
}
