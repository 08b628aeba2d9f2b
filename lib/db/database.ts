import { PrismaPg } from '@prisma/adapter-pg';
import { type ClientConfig, Pool, type PoolClient } from 'pg';
import { PrismaClient } from './client/client';
import { DatabaseTrouble, wordsOf } from './database-trouble';
import { openEmbedded } from './embedded/open-embedded';
import type { Presence } from './embedded/presence';
import { migrate } from './migrate';

/** A migrated database, ready for inVenue (the one door to what is in it). */
export interface Database {
  readonly prisma: PrismaClient;
  readonly pool: Pool;
  /** The pool's connections by the number of the server process behind each, so that COPY can share Prisma's transaction. */
  readonly connections: ReadonlyMap<number, PoolClient>;
  /** Where it is embedded: this process's presence at the server. Null where DATABASE_URL names it. */
  readonly presence: Presence | null;
  /** Ends the connections; the last process to leave an embedded server stops it. */
  close(): Promise<void>;
}

// Next loads a module more than once: what must be one in a process stands here.
const shared = globalThis as { plateworthDatabase?: Promise<Database> };

/**
 * The program's database: the one that DATABASE_URL names, else the embedded server of DATA_DIR (.data); opened and migrated once a process,
 * and again after its embedded server was ended from outside. Throws DatabaseTrouble with a sentence where it cannot be used.
 */
export async function openDatabase(): Promise<Database> {
  const current = shared.plateworthDatabase;
  const open = await current?.catch(() => null);
  if (open && !open.presence?.lost()) return open;
  if (shared.plateworthDatabase !== current) return openDatabase(); // somebody else is opening it already
  open?.close().catch(() => {});
  const { DATABASE_URL, DATA_DIR } = process.env;
  const opening = DATABASE_URL ? openAt({ connectionString: DATABASE_URL }) : openIn(DATA_DIR || '.data');
  shared.plateworthDatabase = opening;
  return opening;
}

/** Closes the program's database where it was opened: every process does so before it ends. */
export async function closeDatabase(): Promise<void> {
  const open = await shared.plateworthDatabase?.catch(() => null); // what could not be opened has said so already
  delete shared.plateworthDatabase;
  await open?.close();
}

async function openIn(dataFolder: string): Promise<Database> {
  const presence = await openEmbedded(dataFolder);
  try {
    return await openAt(presence.connection, presence);
  } catch (error) {
    await presence.leave();
    throw error;
  }
}

/** Migrates the database at a connection and opens it. */
export async function openAt(connection: ClientConfig, presence: Presence | null = null): Promise<Database> {
  try {
    await migrate(connection);
  } catch (error) {
    if (error instanceof DatabaseTrouble) throw error;
    throw new DatabaseTrouble(
      `The database cannot be reached: ${wordsOf(error)}. ${presence ? '' : 'Check DATABASE_URL.'}`.trim(),
    );
  }
  const pool = new Pool({ ...connection, max: 20 });
  const connections = new Map<number, PoolClient>();
  pool.on('error', () => {}); // an idle connection was lost; the next query opens another or fails by itself
  pool.on('connect', (client) => connections.set(serverProcess(client), client));
  pool.on('remove', (client) => connections.delete(serverProcess(client)));
  const prisma = new PrismaClient({ adapter: new PrismaPg(pool) });
  let closing: Promise<void> | null = null;
  const close = async () => {
    await prisma.$disconnect();
    await pool.end();
    await presence?.leave();
  };
  return {
    prisma,
    pool,
    connections,
    presence,
    close() {
      closing ??= close();
      return closing;
    },
  };
}

/** pg keeps the number that the server sent when the connection began; its types do not say so. */
function serverProcess(client: PoolClient & { readonly processID?: number }): number {
  return client.processID ?? 0;
}
