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
  const { template, ...server } = inject('testServer');
  const database = `test_${randomBytes(6).toString('hex')}`;
  await onServer(`create database ${database} template ${template}`);
  const url = `postgresql://${server.user}:${encodeURIComponent(server.password)}@${server.host}:${server.port}/${database}`;
  const db = await openAt({ connectionString: url });
  afterAll(async () => {
    await db.close();
    await onServer(`drop database ${database} with (force)`);
  });
  return { db, url };
}

/** Runs a statement on the tests' server, outside any database of theirs. */
async function onServer(statement: string): Promise<void> {
  const { template: _, ...server } = inject('testServer');
  const client = new Client({ ...server, database: 'postgres' });
  await client.connect();
  await client.query(statement);
  await client.end();
}
