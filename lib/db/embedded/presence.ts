import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Client, type ClientConfig } from 'pg';
import { codeOf, isOutOfReach } from '../database-trouble';
import { PASSWORD_FILE, SERVER_OWNER } from './cluster';
import { type Postmaster, postmasterOf, stopPostmaster } from './postmaster';

/** Locks of the maintenance database: who is here (shared by all), and who serves pages (one at most). */
const PRESENT = 7_528_001;
const SERVING = 7_528_002;
const DATABASE = 'plateworth';

/** This process's presence at an embedded server, which it shares with other processes. */
export interface Presence {
  readonly connection: ClientConfig;
  /** Whether the server is gone, whoever ended it. */
  lost(): boolean;
  /** Whether this process may serve pages on this folder: false where another one already does. Holds until it leaves. */
  claim(): Promise<boolean>;
  /** Leaves; the last one to leave stops the server. */
  leave(): Promise<void>;
}

/** Joins a running server; null where its last user is just stopping it. Makes the database on the first visit. */
export async function enter(folder: string, { pid, port }: Postmaster): Promise<Presence | null> {
  const password = readFileSync(join(folder, PASSWORD_FILE), 'utf8');
  const server = { host: '127.0.0.1', port, user: SERVER_OWNER, password, ssl: false, connectionTimeoutMillis: 10_000 };
  const client = new Client({ ...server, database: 'postgres' });
  let lost = false;
  const isGone = () => {
    lost = true;
  };
  client.on('error', isGone).on('end', isGone);
  const tries = async (question: string, lock: number) => {
    const { rows } = await client.query<{ held: boolean }>(`select ${question}($1) as held`, [lock]);
    return rows[0]?.held === true;
  };
  try {
    await client.connect();
    if (!(await tries('pg_try_advisory_lock_shared', PRESENT))) {
      await client.end();
      return null;
    }
    await makeDatabase(client);
  } catch (error) {
    await client.end().catch(() => {});
    throw error;
  }
  return {
    connection: { ...server, database: DATABASE },
    lost: () => lost || postmasterOf(folder)?.pid !== pid, // a killed server's connections may outlive it for a moment
    claim: () => tries('pg_try_advisory_lock', SERVING),
    async leave() {
      if (lost) return;
      try {
        // let go first: two that leave at once and both still held on would leave the server to nobody
        await tries('pg_advisory_unlock_shared', PRESENT);
        if (await tries('pg_try_advisory_lock', PRESENT)) await stopPostmaster(folder);
      } catch (error) {
        if (!lost && !isOutOfReach(error)) throw error; // one who left at the same time stops it
      }
      await client.end();
    },
  };
}

async function makeDatabase(client: Client): Promise<void> {
  const { rowCount } = await client.query('select from pg_database where datname = $1', [DATABASE]);
  if (rowCount) return;
  try {
    await client.query(`create database ${DATABASE} encoding 'UTF8' locale 'C' template template0`);
  } catch (error) {
    const code = codeOf(error); // another process was first
    if (code !== '42P04' && code !== '23505' && code !== '55006') throw error;
  }
}
