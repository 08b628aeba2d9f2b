import { randomBytes } from 'node:crypto';
import { setTimeout as pause } from 'node:timers/promises';
import { Client, DatabaseError } from 'pg';
import { afterAll, inject } from 'vitest';
import { type Database, openAt } from '@/lib/db/database';

/** A migrated, empty database of a test file's own. */
export interface FreshDatabase {
  readonly db: Database;
  /** For programs that a test starts: DATABASE_URL. */
  readonly url: string;
}

/** Makes one; it is dropped when the file's tests are through. Call it at the top of the file: const { db } = await freshDatabase(). */
export async function freshDatabase(): Promise<FreshDatabase> {
  const { url, drop } = await newDatabase(`template ${inject('testServer').template}`);
  const db = await openAt({ connectionString: url });
  afterAll(async () => {
    await db.close();
    await drop();
  });
  return { db, url };
}

/** A database made as `like` says (template, encoding ...), and how to drop it. */
export async function newDatabase(like: string): Promise<{ readonly url: string; readonly drop: () => Promise<void> }> {
  const { template: _, ...server } = inject('testServer');
  const database = `test_${randomBytes(6).toString('hex')}`;
  await onServer(`create database ${database} ${like}`);
  return {
    url: `postgresql://${server.user}:${encodeURIComponent(server.password)}@${server.host}:${server.port}/${database}`,
    drop: () => dropDatabase(database),
  };
}

const INSUFFICIENT_PRIVILEGE = '42501';

/**
 * Drops a database with whoever is still in it. Where the server is vacuuming it at that moment, a user who is no superuser may not
 * stop the vacuum and has to wait for its end.
 */
async function dropDatabase(database: string, tries = 20): Promise<void> {
  try {
    await onServer(`drop database ${database} with (force)`);
  } catch (error) {
    const isVacuumed = error instanceof DatabaseError && error.code === INSUFFICIENT_PRIVILEGE;
    if (!isVacuumed || tries === 0) throw error;
    await pause(500);
    await dropDatabase(database, tries - 1);
  }
}

/** Runs a statement on the tests' server, outside any database of theirs. */
async function onServer(statement: string): Promise<void> {
  const { template: _, ...server } = inject('testServer');
  const client = new Client({ ...server, database: 'postgres' });
  await client.connect();
  try {
    await client.query(statement);
  } finally {
    await client.end();
  }
}
