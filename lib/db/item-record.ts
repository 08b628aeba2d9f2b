import type { VenueTx } from './in-venue';

/** The tables that hold what is stated of one item, children before what they belong to. */
export const ITEM_TABLES = [
  'recipe_line',
  'recipe_version',
  'ingredient_version',
  'named_measure',
  'part',
  'yield_use',
  'item',
] as const;

export type ItemTable = (typeof ITEM_TABLES)[number];

/** One row of the record of changes. Null before: it was added; null after: it was taken away. */
export interface RecordedChange {
  readonly id: number;
  /** ISO time stamp; all changes of one write share it. */
  readonly at: string;
  readonly person: string;
  readonly thing: ItemTable;
  readonly thingId: number;
  readonly before: Readonly<Record<string, unknown>> | null;
  readonly after: Readonly<Record<string, unknown>> | null;
}

const AS_READ = `c.id::int as id, to_char(c.at at time zone 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.US"Z"') as at, c.person, c.thing,
  c.thing_id as "thingId", c.before, c.after`;

/** Changes of one item ($2): its name, its versions and their lines, its measures, parts and yields, those that are gone too. */
const OF_ITEM = `c.venue_id = $1 and (
  (c.thing = 'item' and c.thing_id = $2)
  or (c.thing = any('{ingredient_version,named_measure,part,yield_use,recipe_version}')
      and (coalesce(c.after, c.before) ->> 'item_id')::int = $2)
  or (c.thing = 'recipe_line' and (coalesce(c.after, c.before) ->> 'version_id')::int in (
      select v.thing_id from change v
      where v.venue_id = $1 and v.thing = 'recipe_version' and (coalesce(v.after, v.before) ->> 'item_id')::int = $2)))`;

/** The revision of an item: the number of the last change that touched anything stated of it; 0 where there is none. */
export async function itemRevision(tx: VenueTx, item: number): Promise<number> {
  const { rows } = await tx.bulk.query<{ id: number }>(
    `select coalesce(max(c.id), 0)::int as id from change c where ${OF_ITEM}`,
    [tx.venue, item],
  );
  return rows[0]?.id ?? 0;
}

/** What was changed of an item after a revision of it, oldest first. */
export async function changesAfter(tx: VenueTx, item: number, revision: number): Promise<readonly RecordedChange[]> {
  const { rows } = await tx.bulk.query<RecordedChange>(
    `select ${AS_READ} from change c where ${OF_ITEM} and c.id > $3 order by c.id`,
    [tx.venue, item, revision],
  );
  return rows;
}

/** The number of the item that went by a name or a number until it was deleted; null where there never was one. */
export async function deletedItem(tx: VenueTx, key: string, number: number | null): Promise<number | null> {
  const { rows } = await tx.bulk.query<{ id: number }>(
    `select thing_id as id from change where venue_id = $1 and thing = 'item' and after is null
       and (before ->> 'name_key' = $2 or thing_id = $3) order by change.id desc limit 1`,
    [tx.venue, key, number],
  );
  return rows[0]?.id ?? null;
}

/** The number of the write that this transaction is: its last change; null where it changed nothing that is recorded. */
export async function thisWrite(tx: VenueTx): Promise<number | null> {
  const { rows } = await tx.bulk.query<{ id: number | null }>(
    'select max(id)::int as id from change where venue_id = $1 and at = now() and xmin = pg_current_xact_id()::xid',
    [tx.venue],
  );
  return rows[0]?.id ?? null;
}

/** A write by its number: all that it changed in its one transaction, oldest first; empty where there is no such number. */
export async function changesOfWrite(tx: VenueTx, write: number): Promise<readonly RecordedChange[]> {
  const { rows } = await tx.bulk.query<RecordedChange>(
    `select ${AS_READ} from change c join change last on last.venue_id = c.venue_id and last.at = c.at and last.xmin::text = c.xmin::text
     where c.venue_id = $1 and last.id = $2 order by c.id`,
    [tx.venue, write],
  );
  return rows;
}

/** The items of which these changes are; null among them where a change is of nothing that belongs to an item. */
export async function itemsChanged(
  tx: VenueTx,
  changes: readonly RecordedChange[],
): Promise<ReadonlySet<number | null>> {
  const { rows } = await tx.bulk.query<{ item: number | null }>(
    `select distinct case
       when c.thing = 'item' then c.thing_id
       when c.thing = 'recipe_line' then (select (coalesce(v.after, v.before) ->> 'item_id')::int from change v
         where v.venue_id = c.venue_id and v.thing = 'recipe_version'
           and v.thing_id = (coalesce(c.after, c.before) ->> 'version_id')::int limit 1)
       when c.thing = any($3) then (coalesce(c.after, c.before) ->> 'item_id')::int end as item
     from change c where c.venue_id = $1 and c.id = any($2::bigint[])`,
    [tx.venue, changes.map(({ id }) => id), ITEM_TABLES],
  );
  return new Set(rows.map(({ item }) => item));
}

/** Whether a write was the loading of a file: such a load keeps its own record. */
export async function cameWithFile(tx: VenueTx, write: number): Promise<boolean> {
  const { rows } = await tx.bulk.query<{ found: boolean }>(
    `select exists (select from load l join change c on c.venue_id = l.venue_id and c.at = l.at
                    where l.venue_id = $1 and c.id = $2) as found`,
    [tx.venue, write],
  );
  return rows[0]?.found === true;
}
