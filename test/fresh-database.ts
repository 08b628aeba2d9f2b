import { randomBytes } from 'node:crypto';
import { Client } from 'pg';
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
    drop: () => onServer(`drop database ${database} with (force)`),
  };
}

/** Runs a statement on the tests' server, outside any database of theirs. */
async function onServer(statement: string): Promise<void> {
  const { template: _, ...server } = inject('testServer');
  const client = new Client({ ...server, database: 'postgres' });
  await client.connect();
  await client.query(statement);
  await client.end();
}
