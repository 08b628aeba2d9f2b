import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, expect, test, vi } from 'vitest';
import { closeDatabase, type Database, openDatabase } from '@/lib/db/database';
import { postmasterOf } from '@/lib/db/embedded/postmaster';
import { inVenue } from '@/lib/db/in-venue';
import { createVenue, venuesSeenBy } from '@/lib/db/venues';
import type { VenueId } from '@/lib/model/facts';
import { otherProcess } from '../other-process';

// A server of its own, with every setting as a restaurant has it: what was committed is on disk.
const folder = mkdtempSync(join(tmpdir(), 'plateworth-faults-'));
process.env.DATA_DIR = folder;
delete process.env.DATABASE_URL;
afterAll(async () => {
  await closeDatabase();
  rmSync(folder, { recursive: true });
});

function killServer(): void {
  const server = postmasterOf(join(folder, 'postgres'));
  expect(server?.pid).toBeGreaterThan(0);
  if (server) process.kill(server.pid, 'SIGKILL');
}

const add = (db: Database, venue: VenueId, name: string) =>
  inVenue(db, { venue, person: 'ada' }, 'write', ({ prisma }) =>
    prisma.item.create({ data: { venueId: venue, kind: 'dish', name, nameKey: name }, select: { id: true } }),
  );
const names = async (db: Database, venue: VenueId) => {
  const items = await inVenue(db, { venue, person: 'ada' }, 'read', ({ prisma }) =>
    prisma.item.findMany({ orderBy: { id: 'asc' } }),
  );
  return items.map(({ name }) => name);
};

test('openDatabase() after the server was killed starts it again with every committed row and no other', async () => {
  const db = await openDatabase();
  const { id: venue } = await createVenue(db, 'ada', { name: 'Marram House' });
  const committed: string[] = [];
  for (let count = 0; count < 20; count++) {
    await add(db, venue, `dish ${count}`);
    committed.push(`dish ${count}`);
  }
  // one more is under way when the server dies
  const underWay = inVenue(db, { venue, person: 'ada' }, 'write', async ({ prisma }) => {
    await prisma.item.create({ data: { venueId: venue, kind: 'dish', name: 'never', nameKey: 'never' } });
    killServer();
    await vi.waitUntil(() => postmasterOf(join(folder, 'postgres')) === null, 10_000);
    await sleep(500); // its connections see that it is gone
    await prisma.item.count();
  });
  await expect(underWay).rejects.toThrow();

  const again = await openDatabase();
  expect(await names(again, venue)).toEqual(committed);
  expect(await openDatabase()).toBe(again);
});

test('openDatabase() while the server is killed under a stream of writes loses none that was answered', async () => {
  const db = await openDatabase();
  const [venue] = await venuesSeenBy(db, 'ada');
  if (!venue) return expect.unreachable('the venue is gone');
  const answered = await names(db, venue.id);
  setTimeout(killServer, 300);
  for (let count = 0; ; count++) {
    try {
      await add(db, venue.id, `late ${count}`);
      answered.push(`late ${count}`);
    } catch {
      break;
    }
  }
  await vi.waitUntil(() => postmasterOf(join(folder, 'postgres')) === null, 10_000);
  expect(answered.length).toBeGreaterThan(20);
  const kept = await names(await openDatabase(), venue.id);
  // the one whose answer was lost may be there; every answered one is
  expect(kept.slice(0, answered.length)).toEqual(answered);
  expect(kept.length - answered.length).toBeLessThanOrEqual(1);
});

test('openDatabase() of another process after server and owner were killed finds what was committed', async () => {
  const db = await openDatabase();
  const [venue] = await venuesSeenBy(db, 'ada');
  const before = await names(db, venue?.id as VenueId);
  await closeDatabase();
  const writer = otherProcess('test/db/writer.ts', [String(venue?.id), 'last'], { env: { DATA_DIR: folder } });
  expect(await writer.line()).toBe('written');
  writer.child.stdin?.write('go\n');
  expect(await writer.line()).toBe('committed');
  killServer();
  writer.child.kill('SIGKILL');
  await writer.end;
  expect(await names(await openDatabase(), venue?.id as VenueId)).toEqual([...before, 'last']);
});
