import type { PoolClient } from 'pg';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { parseDay } from '@/lib/core/days';
import { inVenue, PeriodClosed, type VenueTx } from '@/lib/db/in-venue';
import { createVenue } from '@/lib/db/venues';
import type { VenueId } from '@/lib/model/facts';
import { freshDatabase } from '../fresh-database';
import { everyTable } from './every-table';

const { db } = await freshDatabase();

const CLOSED = '2026-10-31';
const BEFORE = '2026-10-31'; // the last closed day itself
const AFTER = '2026-11-01'; // the first open one

/** Dated columns that closing does not guard, each with its reason. */
const UNGUARDED = new Map([
  ['load.days_from', 'what was said of the file; the days themselves are in load_scope'],
  ['load.days_to', 'the same'],
  ['price_point.valid_to', 'an end may be set later; the price of a closed day is guarded by its valid_from'],
  ['purchase_line.delivered_on', 'goods on their way may arrive later; the line of a closed day is guarded by its day'],
  ['venue.closed_through', 'it is the closing'],
  ['waiting_row.day', 'a refused row is no fact'],
]);
const { rows: dated } = await db.pool.query<{ table: string; column: string; nullable: boolean }>(`
  select c.relname as table, a.attname as column, not a.attnotnull as nullable from pg_attribute a join pg_class c on c.oid = a.attrelid
  where c.relnamespace = 'public'::regnamespace and c.relkind = 'r' and a.atttypid = 'date'::regtype order by 1, 2`);
const guarded = dated.filter(({ table, column }) => !UNGUARDED.has(`${table}.${column}`));

let venue: VenueId;
let count = 0;
beforeEach(async () => {
  venue = (await createVenue(db, 'ada', { name: `Venue ${count++}` })).id;
});

const write = <T>(work: (tx: VenueTx) => Promise<T>) => inVenue(db, { venue, person: 'ada' }, 'write', work);
const run = (statement: string) => write(({ bulk }) => bulk.query(statement));
const close = (through: string | null) =>
  write(({ bulk }) => bulk.query('update venue set closed_through = $2 where id = $1', [venue, through]));

async function expectRefused(statement: string): Promise<void> {
  const error = await run(statement).catch((caught: unknown) => caught);
  expect(error, statement).toBeInstanceOf(PeriodClosed);
  expect(error).toMatchObject({ closedThrough: parseDay(CLOSED) });
}

test('the catalogue of dated columns is guarded against a closed day, or has a reason why not', () => {
  expect(guarded.map(({ table, column }) => `${table}.${column}`)).toEqual([
    'covers_day.day',
    'exchange_rate.valid_from',
    'ingredient_version.valid_from',
    'labour_rate.valid_from',
    'load_scope.day',
    'menu_price.valid_from',
    'offer_choice.valid_from',
    'price_point.valid_from',
    'purchase_line.day',
    'recipe_version.valid_from',
    'sales_day.day',
    'stock_count.day',
    'stock_move.day',
    'trial.day',
  ]);
});

test.each(guarded)(
  'inVenue(write) of $table on a closed day is refused, on an open one not',
  async ({ table, column, nullable }) => {
    await write((tx) => everyTable(tx, [BEFORE, AFTER]));
    await close(CLOSED);
    const { rows } = await db.pool.query<{ columns: string }>(
      `select string_agg(quote_ident(attname), ', ') as columns from pg_attribute
     where attrelid = $1::regclass and attnum > 0 and attidentity = '' and attname <> $2`,
      [table, column],
    );
    const columns = rows[0]?.columns;
    const copyTo = (day: string) =>
      `insert into ${table} (${columns}, ${column}) select ${columns}, ${day} from ${table} where ${column} = '${AFTER}' and venue_id = ${venue}`;
    await expectRefused(copyTo(`date '2026-10-30'`));
    await expectRefused(`update ${table} set ${column} = ${column} where ${column} = '${BEFORE}'`);
    await expectRefused(`update ${table} set ${column} = '2027-01-01' where ${column} = '${BEFORE}'`); // out of the closed period
    await expectRefused(`update ${table} set ${column} = '2026-10-30' where ${column} = '${AFTER}'`); // into it
    await expectRefused(`delete from ${table} where ${column} = '${BEFORE}'`);
    await expectRefused(`delete from ${table}`); // one closed row among open ones
    if (nullable) await expectRefused(copyTo('null')); // from the beginning is before any closing

    expect(await run(copyTo(`date '2026-12-24'`))).toMatchObject({ rowCount: 1 });
    expect(await run(`update ${table} set ${column} = '2026-12-26' where ${column} = '2026-12-24'`)).toMatchObject({
      rowCount: 1,
    });
    expect(await run(`delete from ${table} where ${column} = '2026-12-26'`)).toMatchObject({ rowCount: 1 });
    await close('2026-09-30'); // reopened
    expect(await run(`update ${table} set ${column} = ${column} where ${column} = '${BEFORE}'`)).toMatchObject({
      rowCount: 1,
    });
  },
);

test('inVenue(write) of a line of a closed recipe is refused, in and out of it too; of an open one not', async () => {
  await write((tx) => everyTable(tx, [BEFORE, AFTER]));
  await close(CLOSED);
  const version = (day: string) => `(select id from recipe_version where valid_from = '${day}')`;
  const line = (day: string) =>
    `insert into recipe_line (venue_id, version_id, position, item_id, quantity, unit)
     select venue_id, ${version(day)}, 2, item_id, 5, 'g' from recipe_line where version_id = ${version(AFTER)} and position = 1`;
  await expectRefused(line(BEFORE));
  await expectRefused(`update recipe_line set quantity = 81 where version_id = ${version(BEFORE)}`);
  await expectRefused(
    `update recipe_line set version_id = ${version(AFTER)}, position = 9 where version_id = ${version(BEFORE)}`,
  );
  await expectRefused(
    `update recipe_line set version_id = ${version(BEFORE)}, position = 9 where version_id = ${version(AFTER)}`,
  );
  await expectRefused(`delete from recipe_line where version_id = ${version(BEFORE)}`);
  expect(await run(line(AFTER))).toMatchObject({ rowCount: 1 });
  expect(await run(`delete from recipe_line where version_id = ${version(AFTER)}`)).toMatchObject({ rowCount: 2 });
});

test('inVenue(write) through Prisma on a closed day is refused the same way, and nothing of the write is kept', async () => {
  await write((tx) => everyTable(tx, [AFTER]));
  await close(CLOSED);
  const refused = write(async ({ prisma, venue: venueId }) => {
    const item = await prisma.item.create({ data: { venueId, kind: 'dish', name: 'Pear tart', nameKey: 'pear tart' } });
    await prisma.menuPrice.create({
      data: {
        venueId,
        itemId: item.id,
        channel: 'dine_in',
        validFrom: new Date(BEFORE),
        price: '8',
        tax: '0',
        taxIncluded: true,
      },
    });
  });
  await expect(refused).rejects.toBeInstanceOf(PeriodClosed);
  await expect(refused).rejects.toMatchObject({ closedThrough: parseDay(CLOSED) });
  const { rows } = await run('select name from item order by name');
  expect(rows).toEqual([{ name: 'Plum' }, { name: 'Tart' }]);
});

/** Two connections that work in the venue without taking its lock first: the database has to keep them apart by itself. */
const open: PoolClient[] = [];
async function unlocked(): Promise<PoolClient> {
  const client = await db.pool.connect();
  open.push(client);
  await client.query('begin');
  await client.query(`select set_config('role', 'plateworth_app', true), set_config('app.venue', $1, true)`, [
    String(venue),
  ]);
  return client;
}
afterEach(() => {
  for (const client of open.splice(0)) client.release(true);
});

async function isWaiting(client: PoolClient & { processID?: number }): Promise<boolean> {
  for (let tries = 0; tries < 100; tries++) {
    const { rows } = await db.pool.query('select pg_blocking_pids($1) as others', [client.processID]);
    if (rows[0].others.length > 0) return true;
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
  return false;
}

const CLOSING = `update venue set closed_through = '${CLOSED}'`;
const COVERS = `insert into covers_day (venue_id, load_id, day, covers) select venue_id, id, '2026-10-30', 1 from load`;
const LINE = `update recipe_line set quantity = 81 where version_id = (select id from recipe_version where valid_from = '${BEFORE}')`;

test.each([COVERS, LINE])('a closing waits for a write that was first, and then seals it: %s', async (statement) => {
  await write((tx) => everyTable(tx, [BEFORE]));
  const writer = await unlocked();
  const closer = await unlocked();
  expect(await writer.query(statement)).toMatchObject({ rowCount: 1 });
  const closing = closer.query(CLOSING);
  expect(await isWaiting(closer)).toBe(true);
  await writer.query('commit');
  await closing;
  await closer.query('commit');
  await expectRefused(LINE);
});

test.each([COVERS, LINE])('a write waits for a closing that was first, and is then refused: %s', async (statement) => {
  await write((tx) => everyTable(tx, [BEFORE]));
  const writer = await unlocked();
  const closer = await unlocked();
  await closer.query(CLOSING);
  const written = writer.query(statement).catch((error: unknown) => error);
  expect(await isWaiting(writer)).toBe(true);
  await closer.query('commit');
  expect(await written).toMatchObject({ code: 'PW001' });
});
