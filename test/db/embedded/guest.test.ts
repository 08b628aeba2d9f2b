import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Client } from 'pg';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { openAt } from '@/lib/db/database';
import { openEmbedded } from '@/lib/db/embedded/open-embedded';
import type { Presence } from '@/lib/db/embedded/presence';
import { inVenue, PeriodClosed } from '@/lib/db/in-venue';
import { createVenue, venuesSeenBy } from '@/lib/db/venues';
import { everyTable } from '../every-table';

// A server of its own, since the app's role belongs to the whole server: who makes it matters from PostgreSQL 16 on.
let folder: string;
let server: Presence;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'plateworth-guest-'));
  server = await openEmbedded(folder, { settings: ['fsync=off'] });
});
afterAll(async () => {
  await server.leave();
  rmSync(folder, { recursive: true });
});

async function asOwner(...statements: string[]): Promise<void> {
  const client = new Client(server.connection);
  await client.connect();
  for (const statement of statements) await client.query(statement);
  await client.end();
}

const guest = async (name: string, rights: string) => {
  await asOwner(
    `create role ${name} login ${rights} password 'guest'`,
    `create database ${name}_house owner ${name} template template0`,
  );
  return { ...server.connection, user: name, password: 'guest', database: `${name}_house` };
};

test('openAt(connection) as a user who owns the database and may make roles, and is no superuser, gives a working database', async () => {
  const db = await openAt(await guest('tenant', 'createrole'));
  const { id: venue } = await createVenue(db, 'ada', { name: 'Marram House' });
  const { id: other } = await createVenue(db, 'ada', { name: 'Dune Kiosk' });
  expect(await venuesSeenBy(db, 'ada')).toHaveLength(2);
  await inVenue(db, { venue, person: 'ada' }, 'write', (tx) => everyTable(tx, ['2026-10-01']));
  await inVenue(db, { venue, person: 'ada' }, 'write', ({ bulk }) =>
    bulk.query(`update venue set closed_through = '2026-10-31'`),
  );
  const late = inVenue(db, { venue, person: 'ada' }, 'write', ({ bulk }) => bulk.query('delete from covers_day'));
  await expect(late).rejects.toBeInstanceOf(PeriodClosed);
  const items = await inVenue(db, { venue: other, person: 'ada' }, 'read', ({ prisma }) => prisma.item.count());
  expect(items).toBe(0);
  // row-level security binds the owner of the tables as well
  expect((await db.pool.query('select from item')).rowCount).toBe(0);
  await db.close();
});

test('openAt(connection) as a user who may not work as the app’s role says what an administrator has to run', async () => {
  const connection = await guest('lodger', 'nocreaterole');
  await expect(openAt(connection)).rejects.toThrow(/GRANT plateworth_app TO lodger/);
  await asOwner('grant plateworth_app to lodger');
  const db = await openAt(connection);
  await createVenue(db, 'ada', { name: 'Marram House' });
  await db.close();
});
