import { beforeAll, expect, test } from 'vitest';
import { inVenue, type VenueTx } from '@/lib/db/in-venue';
import { createVenue } from '@/lib/db/venues';
import type { VenueId } from '@/lib/model/facts';
import { freshDatabase } from '../fresh-database';
import { everyTable } from './every-table';

const { db } = await freshDatabase();

/** Tables that belong to no venue, each with its reason. */
const OUTSIDE = new Map([['_prisma_migrations', 'the state of the database itself; the app’s role may not touch it']]);
/** Tables without the record's trigger, each with its reason. */
const UNRECORDED = new Map([
  ['change', 'it is the record'],
  ['load', 'it is its own record: who, when, which file'],
  ['load_file', 'recorded by its load'],
  ['load_scope', 'recorded by its load'],
  ['waiting_row', 'recorded by its load'],
  ['sales_day', 'recorded by its load'],
  ['covers_day', 'recorded by its load'],
  ['purchase_line', 'recorded by its load'],
  ['stock_count', 'recorded by its load'],
  ['stock_move', 'recorded by its load'],
]);

interface Table {
  readonly name: string;
  readonly hasVenue: boolean;
  readonly enabled: boolean;
  readonly forced: boolean;
  readonly policies: readonly string[];
  readonly recorded: boolean;
}

const { rows: tables } = await db.pool.query<Table>(`
  select c.relname as name, c.relrowsecurity as enabled, c.relforcerowsecurity as forced,
    exists (select from pg_attribute a where a.attrelid = c.oid and a.attname = 'venue_id' and a.attnotnull) as "hasVenue",
    array(select pg_get_expr(p.polqual, p.polrelid) || ' / ' || pg_get_expr(p.polwithcheck, p.polrelid) from pg_policy p
          where p.polrelid = c.oid and p.polcmd = '*' and p.polroles = '{0}') as policies,
    exists (select from pg_trigger t join pg_proc f on f.oid = t.tgfoid where t.tgrelid = c.oid and f.proname = 'record_change'
            and t.tgtype = 29 and t.tgenabled = 'O') as recorded
  from pg_class c where c.relnamespace = 'public'::regnamespace and c.relkind in ('r', 'p') order by 1`);
const ofVenues = tables.filter(({ name }) => !OUTSIDE.has(name));

let hers: VenueId;
let his: VenueId;
beforeAll(async () => {
  hers = (await createVenue(db, 'ada', { name: 'Marram House' })).id;
  his = (await createVenue(db, 'bo', { name: 'Dune Kiosk' })).id;
  await inVenue(db, { venue: hers, person: 'ada' }, 'write', (tx) => everyTable(tx, ['2026-10-01']));
});

const asHim = <T>(work: (tx: VenueTx) => Promise<T>) => inVenue(db, { venue: his, person: 'bo' }, 'write', work);

test('the catalogue of every table shows its venue, or a reason why it has none', () => {
  expect(ofVenues.length).toBeGreaterThan(15);
  expect(ofVenues.filter(({ name, hasVenue }) => !hasVenue && name !== 'venue')).toEqual([]);
});

test('the catalogue of every table of a venue shows row-level security forced and one policy for all its rows', () => {
  for (const { name, enabled, forced, policies } of ofVenues) {
    const column = name === 'venue' ? 'id' : 'venue_id';
    expect([name, enabled, forced, policies]).toEqual([
      name,
      true,
      true,
      [`(${column} = app_venue()) / (${column} = app_venue())`],
    ]);
  }
});

test('the catalogue of every table of a venue shows the record of changes (insert, update and delete, row by row), or a reason', () => {
  expect(ofVenues.filter(({ recorded }) => !recorded).map(({ name }) => name)).toEqual([...UNRECORDED.keys()].sort());
});

test('the catalogue of every key of a table of a venue shows the venue first, and every reference the venue on both sides', async () => {
  const { rows } = await db.pool.query<{ key: string }>(`
    select c.relname || ' ' || i.indexrelid::regclass as key from pg_index i join pg_class c on c.oid = i.indrelid
    where c.relnamespace = 'public'::regnamespace and c.relname not in ('venue', '_prisma_migrations') and i.indkey[0] <>
      (select attnum from pg_attribute a where a.attrelid = c.oid and a.attname = 'venue_id')
    union all
    select k.conrelid::regclass || ' ' || k.conname from pg_constraint k
    where k.contype = 'f' and k.confrelid <> 'venue'::regclass
      and not exists (
        select from unnest(k.conkey, k.confkey) as pair(here, there)
        join pg_attribute a on a.attrelid = k.conrelid and a.attnum = pair.here and a.attname = 'venue_id'
        join pg_attribute b on b.attrelid = k.confrelid and b.attnum = pair.there and b.attname = 'venue_id')`);
  expect(rows).toEqual([]);
});

test('the catalogue of every view shows that it asks as who reads it, and of every definer function that no temporary table can stand in', async () => {
  const { rows } = await db.pool.query(`
    select c.relname as name from pg_class c where c.relnamespace = 'public'::regnamespace and c.relkind = 'v'
      and not coalesce('security_invoker=true' = any (c.reloptions), false)
    union all
    select p.proname from pg_proc p where p.pronamespace = 'public'::regnamespace and p.prosecdef
      and not coalesce('search_path=pg_catalog, public, pg_temp' = any (p.proconfig), false)`);
  expect(rows).toEqual([]);
});

test.each(ofVenues)(
  'inVenue(his) of $name sees, alters and deletes nothing of hers, and writes nothing into hers',
  async ({ name }) => {
    const own = name === 'venue' ? 'id' : 'venue_id';
    const count = (tx: VenueTx) =>
      tx.bulk.query<{ n: number }>(`select count(*)::int as n from ${name} where ${own} = $1`, [hers]);
    const seenByHer = await inVenue(db, { venue: hers, person: 'ada' }, 'read', count);
    expect(seenByHer.rows[0]?.n).toBeGreaterThan(0);
    expect((await asHim(count)).rows[0]?.n).toBe(0);

    const tries = [
      `update ${name} set ${own} = ${own} where ${own} = ${hers}`,
      `delete from ${name} where ${own} = ${hers}`,
    ];
    for (const statement of tries) {
      const tried = asHim((tx) => tx.bulk.query(statement));
      // either the app's role may not do it at all, or it finds no row
      expect(
        await tried.then(
          ({ rowCount }) => rowCount,
          ({ code }) => code,
        ),
      ).toSatisfy((end) => end === 0 || end === '42501');
    }
    const { rows } = await db.pool.query<{ columns: string }>(
      `select string_agg(quote_ident(attname), ', ') as columns from pg_attribute
     where attrelid = $1::regclass and attnum > 0 and attname <> $2`,
      [name, own],
    );
    const stolen = `insert into ${name} (${own}, ${rows[0]?.columns}) select ${hers}, ${rows[0]?.columns} from jsonb_populate_record(null::${name}, $1)`;
    const row = await inVenue(
      db,
      { venue: hers, person: 'ada' },
      'read',
      async ({ bulk }) =>
        (
          await bulk.query<{ row: object }>(
            `select to_jsonb(t) - 'id' || '{"id": 999999}' as row from ${name} t limit 1`,
          )
        ).rows[0]?.row,
    );
    await expect(asHim((tx) => tx.bulk.query(stolen, [row]))).rejects.toMatchObject({ code: '42501' });
  },
);

test('inVenue(his) cannot hang a row of his on an item of hers', async () => {
  const item = await inVenue(db, { venue: hers, person: 'ada' }, 'read', ({ prisma }) =>
    prisma.item.findFirstOrThrow(),
  );
  const hung = asHim(({ bulk }) =>
    bulk.query(
      `insert into menu_price (venue_id, item_id, channel, tax, tax_included) values ($1, $2, 'dine_in', 0, true)`,
      [his, item.id],
    ),
  );
  await expect(hung).rejects.toMatchObject({ code: '23503' });
});

test('inVenue(db, who, mode, work) works as the app’s own role, and leaves none of it on the connection', async () => {
  const asked = `select current_user as role, nullif(current_setting('app.venue', true), '') as venue, nullif(current_setting('app.person', true), '') as person`;
  const inside = await asHim(async (tx) => {
    const same = await tx.prisma.$queryRawUnsafe<object[]>('select pg_backend_pid() as process');
    const { rows } = await tx.bulk.query('select pg_backend_pid() as process');
    expect(rows).toEqual(same);
    return (await tx.bulk.query(asked)).rows[0];
  });
  expect(inside).toEqual({ role: 'plateworth_app', venue: String(his), person: 'bo' });
  const clients = await Promise.all(Array.from({ length: db.pool.idleCount }, () => db.pool.connect()));
  expect(clients.length).toBeGreaterThan(0);
  for (const client of clients) {
    const { rows } = await client.query(asked);
    expect(rows[0]).toMatchObject({ venue: null, person: null });
    expect(rows[0].role).not.toBe('plateworth_app');
    client.release();
  }
});
