import { createHash, randomUUID } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { Client, type ClientConfig } from 'pg';
import { DatabaseTrouble, wordsOf } from './database-trouble';

/** The number on which Prisma's own migration commands lock, so that neither runs beside the other. */
const MIGRATION_LOCK = 72_707_369;
const OLDEST_SERVER = 150_000;

interface Migration {
  readonly name: string;
  readonly sql: string;
  /** sha256 of the file, in hex. */
  readonly checksum: string;
}

/**
 * Brings a database to the newest state: applies the files of prisma/migrations that it has not had yet, in the order of their
 * names, each in a transaction of its own, and notes them in the standard table _prisma_migrations.
 *
 * Throws DatabaseTrouble where the server is older than PostgreSQL 15 or not UTF-8, where an applied migration was edited
 * afterwards or is unknown here, and where one fails (the database then stays at the last one that went through).
 */
export async function migrate(
  connection: ClientConfig,
  folder = join(process.cwd(), 'prisma', 'migrations'),
): Promise<void> {
  const client = new Client(connection);
  client.on('error', () => {}); // a lost connection also fails the query that is under way
  await client.connect();
  try {
    await refuseUnfit(client);
    await client.query('select pg_advisory_lock($1)', [MIGRATION_LOCK]);
    await client.query(`set client_min_messages = warning; create table if not exists _prisma_migrations (
      id varchar(36) primary key not null, checksum varchar(64) not null, finished_at timestamptz,
      migration_name varchar(255) not null, logs text, rolled_back_at timestamptz,
      started_at timestamptz not null default now(), applied_steps_count integer not null default 0)`);
    const applied = await client.query<{ name: string; checksum: string }>(
      'select migration_name as name, checksum from _prisma_migrations where finished_at is not null and rolled_back_at is null',
    );
    const migrations = await migrationsIn(folder);
    for (const { name, checksum } of applied.rows) refuseForeign(name, checksum, migrations);
    const done = new Set(applied.rows.map((row) => row.name));
    for (const migration of migrations) if (!done.has(migration.name)) await apply(client, migration);
  } finally {
    await client.end();
  }
}

async function migrationsIn(folder: string): Promise<Migration[]> {
  const entries = await readdir(folder, { withFileTypes: true });
  const names = entries.filter((entry) => entry.isDirectory()).map((entry) => entry.name);
  return Promise.all(
    names.sort().map(async (name) => {
      const bytes = await readFile(join(folder, name, 'migration.sql'));
      return { name, sql: bytes.toString('utf8'), checksum: createHash('sha256').update(bytes).digest('hex') };
    }),
  );
}

async function refuseUnfit(client: Client): Promise<void> {
  const { rows } = await client.query<{ number: number; version: string; encoding: string }>(
    `select current_setting('server_version_num')::int as number, current_setting('server_version') as version,
            current_setting('server_encoding') as encoding`,
  );
  const server = rows[0];
  if (!server || server.number < OLDEST_SERVER) {
    throw new DatabaseTrouble(
      `This database server is PostgreSQL ${server?.version}; PostgreSQL 15 or newer is needed.`,
    );
  }
  if (server.encoding !== 'UTF8') {
    throw new DatabaseTrouble(`This database is encoded in ${server.encoding}; create one with ENCODING 'UTF8'.`);
  }
}

function refuseForeign(name: string, checksum: string, migrations: readonly Migration[]): void {
  const known = migrations.find((migration) => migration.name === name);
  if (!known) {
    throw new DatabaseTrouble(
      `This database holds the migration ${name}, which this program does not know: a newer program made it. Start the newer program, or use another database.`,
    );
  }
  if (known.checksum !== checksum) {
    throw new DatabaseTrouble(
      `The migration ${name} was edited after this database had it. Put its file back as it was and write a new migration, or use another database.`,
    );
  }
}

async function apply(client: Client, { name, sql, checksum }: Migration): Promise<void> {
  const started = new Date();
  try {
    await client.query('begin');
    await client.query(sql);
    await client.query(
      `insert into _prisma_migrations (id, checksum, migration_name, started_at, finished_at, applied_steps_count)
       values ($1, $2, $3, $4, clock_timestamp(), 1)`,
      [randomUUID(), checksum, name, started],
    );
    await client.query('commit');
  } catch (error) {
    await client.query('rollback').catch(() => {});
    throw new DatabaseTrouble(
      `The database could not be brought up to date: migration ${name} failed: ${wordsOf(error)}.`,
    );
  }
}
