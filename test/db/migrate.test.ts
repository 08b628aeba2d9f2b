import { cpSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Client } from 'pg';
import { afterEach, expect, test } from 'vitest';
import { openAt } from '@/lib/db/database';
import { DatabaseTrouble } from '@/lib/db/database-trouble';
import { migrate } from '@/lib/db/migrate';
import { newDatabase } from '../fresh-database';

const OURS = readdirSync('prisma/migrations').sort();
const undo: (() => unknown)[] = [];
afterEach(async () => {
  for (const step of undo.splice(0).reverse()) await step();
});

async function emptyDatabase(like = 'template template0'): Promise<{ connectionString: string }> {
  const { url, drop } = await newDatabase(like);
  undo.push(drop);
  return { connectionString: url };
}

/** The migrations in a folder of the test's own, with one more. */
function withOneMore(sql: string): string {
  const folder = mkdtempSync(join(tmpdir(), 'plateworth-migrations-'));
  undo.push(() => rmSync(folder, { recursive: true }));
  cpSync('prisma/migrations', folder, { recursive: true });
  mkdirSync(join(folder, '29990101000000_one_more'));
  writeFileSync(join(folder, '29990101000000_one_more', 'migration.sql'), sql);
  return folder;
}

async function ask(connection: { connectionString: string }, question: string) {
  const client = new Client(connection);
  await client.connect();
  const { rows } = await client.query(question).finally(() => client.end());
  return rows;
}
const applied = (connection: { connectionString: string }) =>
  ask(
    connection,
    'select migration_name as name, checksum, applied_steps_count as steps, finished_at >= started_at as done from _prisma_migrations order by 1',
  );

async function sentenceOf(trying: Promise<unknown>): Promise<string> {
  const error = await trying.then(
    () => expect.unreachable('it went through'),
    (caught: unknown) => caught,
  );
  expect(error).toBeInstanceOf(DatabaseTrouble);
  return error instanceof Error ? error.message : '';
}

test('migrate(connection) of an empty database by four at once applies every migration once', async () => {
  const database = await emptyDatabase();
  await Promise.all([1, 2, 3, 4].map(() => migrate(database)));
  const done = await applied(database);
  expect(done.map(({ name }) => name)).toEqual(OURS);
  for (const one of done)
    expect(one).toMatchObject({ checksum: expect.stringMatching(/^[0-9a-f]{64}$/), steps: 1, done: true });
  await migrate(database);
  expect(await applied(database)).toEqual(done);
});

test('migrate(connection) refuses a migration that was edited after it was applied', async () => {
  const database = await emptyDatabase();
  const folder = withOneMore('create table spoon (id int)');
  await migrate(database, folder);
  writeFileSync(join(folder, '29990101000000_one_more', 'migration.sql'), 'create table fork (id int)');
  expect(await sentenceOf(migrate(database, folder))).toMatch(
    /29990101000000_one_more was edited .* write a new migration/,
  );
});

test('migrate(connection) refuses a database that a newer program made', async () => {
  const database = await emptyDatabase();
  await migrate(database, withOneMore('create table spoon (id int)'));
  expect(await sentenceOf(migrate(database))).toMatch(/29990101000000_one_more, which this program does not know/);
});

test('migrate(connection) where one fails keeps those before it and nothing of it', async () => {
  const database = await emptyDatabase();
  const folder = withOneMore('create table spoon (id int); select 1 / 0');
  expect(await sentenceOf(migrate(database, folder))).toMatch(/29990101000000_one_more failed: division by zero/);
  expect((await applied(database)).map(({ name }) => name)).toEqual(OURS);
  expect(await ask(database, `select to_regclass('spoon') as there`)).toEqual([{ there: null }]);
});

test('migrate(connection) refuses a database that is not UTF-8', async () => {
  const database = await emptyDatabase(`template template0 encoding 'LATIN1' locale 'C'`);
  expect(await sentenceOf(migrate(database))).toBe(
    `This database is encoded in LATIN1; create one with ENCODING 'UTF8'.`,
  );
});

test('openAt(connection) says in a sentence that the server, the password or the database is not there', async () => {
  const { connectionString } = await emptyDatabase();
  const other = (part: 'password' | 'pathname' | 'port', value: string) => {
    const url = new URL(connectionString);
    url[part] = value;
    return sentenceOf(openAt({ connectionString: url.href }));
  };
  const nobodyListens = await new Promise<number>((resolve) => {
    const probe = createServer().listen(0, '127.0.0.1', () => {
      const address = probe.address();
      probe.close(() => resolve(address !== null && typeof address === 'object' ? address.port : 0));
    });
  });
  expect(await other('port', String(nobodyListens))).toMatch(
    /^The database cannot be reached: connect ECONNREFUSED .* Check DATABASE_URL\.$/,
  );
  expect(await other('password', 'wrong')).toMatch(/password authentication failed/);
  expect(await other('pathname', '/nowhere')).toMatch(/database "nowhere" does not exist/);
});
