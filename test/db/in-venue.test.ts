import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { from } from 'pg-copy-streams';
import { beforeEach, expect, test } from 'vitest';
import { inVenue, NoSuchVenue, type VenueTx } from '@/lib/db/in-venue';
import { createVenue, venuesSeenBy } from '@/lib/db/venues';
import type { VenueId } from '@/lib/model/facts';
import { freshDatabase } from '../fresh-database';

const { db } = await freshDatabase();

let venue: VenueId;
let made = 0;
beforeEach(async () => {
  venue = (await createVenue(db, 'ada', { name: `Venue ${made++}` })).id;
});

type Work<T> = (tx: VenueTx) => Promise<T>;
const read = <T>(work: Work<T>) => inVenue(db, { venue, person: 'ada' }, 'read', work);
const write = <T>(work: Work<T>, options = {}) => inVenue(db, { venue, person: 'ada' }, 'write', work, options);
const revision = () => read(async (tx) => tx.revision());
const dish =
  (name: string): Work<unknown> =>
  ({ prisma, venue: venueId }) =>
    prisma.item.create({ data: { venueId, kind: 'dish', name, nameKey: name } });
const names = () =>
  read(async ({ prisma }) => (await prisma.item.findMany({ orderBy: { name: 'asc' } })).map(({ name }) => name));

test('createVenue(db, person, venue) of one name by many at once ends in one venue', async () => {
  const before = (await venuesSeenBy(db, 'ada')).length;
  const spellings = ['Marram House', ' marram house', 'MARRAM HOUSE', 'Ｍarram House', 'Marram House'];
  const venues = await Promise.all(spellings.map((name) => createVenue(db, 'ada', { name, currency: 'GBP' })));
  expect(new Set(venues.map(({ id }) => id)).size).toBe(1);
  expect(venues.filter(({ made }) => made)).toHaveLength(1);
  expect(await venuesSeenBy(db, 'ada')).toHaveLength(before + 1);
});

test('venuesSeenBy(db, person) gives them by name', async () => {
  for (const name of ['zest bar', 'Eel Quay', 'éclair room']) await createVenue(db, 'ada', { name });
  const seen = (await venuesSeenBy(db, 'ada'))
    .map(({ name }) => name)
    .filter((name) => !name.startsWith('Venue') && !/marram/i.test(name));
  expect(seen).toEqual(['Eel Quay', 'zest bar', 'éclair room']);
});

test('inVenue(write) raises the revision once, however much it wrote', async () => {
  expect(await revision()).toBe(0);
  await write(async (tx) => {
    expect(tx.revision()).toBe(0);
    for (const name of ['a', 'b', 'c']) await dish(name)(tx);
    await tx.bulk.query(`update item set name = name || '!'`);
  });
  expect(await revision()).toBe(1);
  expect(await names()).toEqual(['a!', 'b!', 'c!']);
});

test('inVenue(write) where nothing changed leaves the revision', async () => {
  await write(async (tx) => tx.nothingChanged());
  expect(await revision()).toBe(0);
});

test('inVenue(write) that fails keeps nothing and leaves the revision', async () => {
  const failed = write(async (tx) => {
    await dish('a')(tx);
    await tx.bulk.query(`insert into supplier (venue_id, name, name_key) values ($1, 'Hill Farm', 'hill farm')`, [
      venue,
    ]);
    throw new Error('no');
  });
  await expect(failed).rejects.toThrow('no');
  expect(await names()).toEqual([]);
  expect(await revision()).toBe(0);
});

test('inVenue(write) that goes on after a refused statement does not pass for kept', async () => {
  const swallowed = write(async (tx) => {
    await dish('a')(tx);
    await tx.bulk
      .query('insert into item (venue_id, kind, name, name_key) values ($1, $2, $3, $3)', [venue, 'dish', ''])
      .catch(() => {});
  });
  await expect(swallowed).rejects.toMatchObject({ code: '25P02' });
  expect(await names()).toEqual([]);
});

test('inVenue(write) by many at once on one venue loses none of them', async () => {
  await write(dish('0'));
  await Promise.all(
    Array.from({ length: 12 }, () =>
      write(async ({ prisma }) => {
        const item = await prisma.item.findFirstOrThrow();
        const key = { venueId_id: { venueId: venue, id: item.id } };
        await prisma.item.update({ where: key, data: { name: String(Number(item.name) + 1) } });
      }),
    ),
  );
  expect(await names()).toEqual(['12']);
  expect(await revision()).toBe(13);
});

test('inVenue(read) refuses to write', async () => {
  await expect(read(dish('a'))).rejects.toThrow(/read-only/);
  await expect(read((tx) => tx.lock())).rejects.toThrow();
});

test('inVenue(read) sees one state from beginning to end', async () => {
  await read(async ({ prisma }) => {
    expect(await prisma.item.count()).toBe(0);
    await write(dish('a'));
    expect(await prisma.item.count()).toBe(0);
  });
  expect(await names()).toEqual(['a']);
});

test.each(['read', 'write'] as const)('inVenue(%s) of a venue that does not exist says so', async (mode) => {
  const nowhere = { venue: 1_000_000 as VenueId, person: 'ada' };
  await expect(inVenue(db, nowhere, mode, async () => {})).rejects.toBeInstanceOf(NoSuchVenue);
});

test('inVenue(write, lockLater) fills a temporary table beside another write, and takes the lock before its own', async () => {
  await write(
    async (tx) => {
      await tx.bulk.query('create temporary table brought (name text) on commit drop');
      await pipeline(Readable.from(['plum\n', 'pear\n']), tx.bulk.query(from('copy brought from stdin')));
      expect(tx.revision()).toBeNull();
      await write(dish('fig')); // would wait for ever if the lock were held
      await tx.lock();
      expect(tx.revision()).toBe(1);
      await tx.bulk.query(
        `insert into item (venue_id, kind, name, name_key) select $1, 'ingredient', name, name from brought`,
        [venue],
      );
    },
    { lockLater: true },
  );
  expect(await names()).toEqual(['fig', 'pear', 'plum']);
  expect(await revision()).toBe(2);
});

test('inVenue(write, lockLater) that never took the lock is undone', async () => {
  await expect(write(dish('a'), { lockLater: true })).rejects.toThrow('never took the lock');
  expect(await names()).toEqual([]);
});

test('inVenue(db, who, mode, work) gives a connection that is of no use once the transaction has ended', async () => {
  const bulk = await write(async (tx) => tx.bulk);
  expect(() => bulk.query('select 1')).toThrow('this transaction has ended');
});

test('inVenue(write) is run again where it and another one waited for each other', async () => {
  let runs = 0;
  const takes = (first: number, second: number) =>
    write(
      async (tx) => {
        runs += 1;
        await tx.bulk.query('select pg_advisory_xact_lock($1)', [first]);
        await new Promise((resolve) => setTimeout(resolve, 100));
        await tx.bulk.query('select pg_advisory_xact_lock($1)', [second]);
        await tx.lock();
        await dish(`${first}`)(tx);
      },
      { lockLater: true },
    );
  await Promise.all([takes(1, 2), takes(2, 1)]);
  expect(runs).toBeGreaterThan(2);
  expect(await names()).toEqual(['1', '2']);
});
