import type { VenueTx } from './in-venue';
import { ITEM_TABLES, type ItemTable, type RecordedChange } from './item-record';

/** What one write did to one row over all: the first state that it found there, the last that it left. */
interface NetChange {
  readonly thing: ItemTable;
  readonly thingId: number;
  readonly first: RecordedChange;
  readonly last: RecordedChange;
}

function netChanges(changes: readonly RecordedChange[]): readonly NetChange[] {
  const net = new Map<string, NetChange>();
  for (const change of changes) {
    const key = `${change.thing} ${change.thingId}`;
    const { thing, thingId } = change;
    net.set(key, { thing, thingId, first: net.get(key)?.first ?? change, last: change });
  }
  return [...net.values()];
}

/**
 * Whether everything that these later changes touched stands again as it did before the first of them: what was changed and undone
 * since is no hindrance.
 */
export async function standsAsBefore(tx: VenueTx, later: readonly RecordedChange[]): Promise<boolean> {
  for (const table of ITEM_TABLES) {
    const firsts = netChanges(later)
      .filter(({ thing }) => thing === table)
      .map(({ first }) => first.id);
    if (firsts.length === 0) continue;
    const { rows } = await tx.bulk.query(
      `select 1 from change c left join ${table} t on t.venue_id = c.venue_id and t.id = c.thing_id
       where c.venue_id = $1 and c.id = any($2::bigint[]) and to_jsonb(t) is distinct from c.before limit 1`,
      [tx.venue, firsts],
    );
    if (rows.length > 0) return false;
  }
  return true;
}

/**
 * Puts back what a write found: rows that it added go, rows that it changed or took away are as they were. What belongs to something goes
 * before it and comes after it. The triggers record it as a write of its own and refuse closed days.
 */
export async function putBack(tx: VenueTx, changes: readonly RecordedChange[]): Promise<void> {
  const net = netChanges(changes);
  for (const table of ITEM_TABLES) {
    const added = net.filter(({ thing, first, last }) => thing === table && !first.before && last.after);
    if (added.length === 0) continue;
    await tx.bulk.query(`delete from ${table} where venue_id = $1 and id = any($2::int[])`, [
      tx.venue,
      added.map(({ thingId }) => thingId),
    ]);
  }
  for (const table of ITEM_TABLES.toReversed()) {
    const before = net.filter(({ thing, first }) => thing === table && first.before);
    const gone = before.filter(({ last }) => !last.after).map(({ first }) => first.id);
    const changed = before.filter(({ last }) => last.after).map(({ first }) => first.id);
    if (gone.length > 0) {
      await tx.bulk.query(
        `insert into ${table} select (jsonb_populate_record(null::${table}, c.before)).* from change c
         where c.venue_id = $1 and c.id = any($2::bigint[])`,
        [tx.venue, gone],
      );
    }
    if (changed.length > 0) await writeOver(tx, table, changed);
  }
}

async function writeOver(tx: VenueTx, table: ItemTable, changes: readonly number[]): Promise<void> {
  const { rows } = await tx.bulk.query<{ name: string }>(
    `select quote_ident(attname) as name from pg_attribute
     where attrelid = $1::regclass and attnum > 0 and not attisdropped and attname not in ('venue_id', 'id')`,
    [table],
  );
  const names = rows.map(({ name }) => name);
  await tx.bulk.query(
    `update ${table} t set ${names.map((name) => `${name} = r.${name}`).join(', ')}
     from change c, lateral jsonb_populate_record(null::${table}, c.before) r
     where c.venue_id = $1 and c.id = any($2::bigint[]) and t.venue_id = c.venue_id and t.id = c.thing_id`,
    [tx.venue, changes],
  );
}

/** The name of another item that stands in the way of a name that would come back; null where none does. */
export async function nameInTheWay(tx: VenueTx, changes: readonly RecordedChange[]): Promise<string | null> {
  const firsts = netChanges(changes).filter(({ thing, first }) => thing === 'item' && first.before);
  const { rows } = await tx.bulk.query<{ name: string }>(
    `select i.name from change c join item i on i.venue_id = c.venue_id and i.name_key = c.before ->> 'name_key' and i.id <> c.thing_id
     where c.venue_id = $1 and c.id = any($2::bigint[])`,
    [tx.venue, firsts.map(({ first }) => first.id)],
  );
  return rows[0]?.name ?? null;
}
