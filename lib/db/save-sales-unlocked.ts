import { type Day, dayText } from '../core/days';
import type { VenueTx } from './in-venue';
import { saleItems } from './save-sales';
import type { StatedSale } from './save-sales-incoming';

/** A sale that waited for its item, which is known now. */
export interface UnlockedSale {
  readonly id: string;
  readonly raw: Readonly<Record<string, string>>;
}

/** The same, read again. */
export interface ReadSale extends StatedSale {
  readonly id: string;
  readonly itemKey: string;
  readonly channel: string;
}

const AT_ONCE = 10_000;

/** Sales that waited for an item that can be sold now, on open days, in portions: each call of `read` gets some and gives them back read. */
export async function collectUnlocked(
  tx: VenueTx,
  closedThrough: Day | null,
  read: (rows: readonly UnlockedSale[]) => readonly ReadSale[],
): Promise<boolean> {
  await tx.bulk.query('drop table if exists unlocked_sale, sale_item');
  await tx.bulk.query(`create temporary table sale_item on commit drop as ${saleItems(tx)}`);
  await tx.bulk.query(`create temporary table unlocked_sale (id bigint primary key, item_key text not null, channel text not null,
    sold numeric, comps numeric, net numeric, gross numeric, tax numeric, discount numeric) on commit drop`);
  for (let last = '0', any = false; ; any = true) {
    const { rows } = await tx.bulk.query<UnlockedSale>(
      `select w.id::text as id, w.raw from waiting_row w
       where w.venue_id = $1 and w.kind = 'sales' and w.rule = 'unknown-item' and w.status = 'waiting' and w.id > $2
         and (w.day > $3 or $3 is null) and w.facts ->> 'itemKey' in (select name_key from sale_item)
       order by w.id limit ${AT_ONCE}`,
      [tx.venue, last, closedThrough === null ? null : dayText(closedThrough)],
    );
    const newest = rows.at(-1);
    if (!newest) return any;
    last = newest.id;
    await tx.bulk.query(
      `insert into unlocked_sale select id, "itemKey", channel, sold, comps, net, gross, tax, discount
       from jsonb_to_recordset($1::jsonb) as r (id bigint, "itemKey" text, channel text, sold numeric, comps numeric, net numeric,
         gross numeric, tax numeric, discount numeric)`,
      [JSON.stringify(read(rows))],
    );
  }
}

/**
 * Adds the collected sales to the load that is live for their day: to its own sums where it brought them itself, carried from an earlier load
 * where it did not say that sum. A day that is complete now lets go of what it had carried. Answers how many rows each load got taken.
 */
export async function saveUnlocked(tx: VenueTx): Promise<ReadonlyMap<number, number>> {
  await tx.bulk.query('drop table if exists unlocked_sum');
  await tx.bulk.query(`create temporary table unlocked_sum on commit drop as
    select w.source, w.day, w.load_id, s.load_id as live_load, i.id as item_id, u.channel, count(*)::int as rows, sum(u.sold) as sold,
           sum(coalesce(u.comps, 0)) as comps,
           sum(coalesce(u.net, round(u.gross::numeric(40, 20) / (1 + u.tax), 10), 0)) as net,
           sum(case when u.net is null and u.gross is null then u.sold else 0 end) as sold_without_revenue, sum(u.discount) as discount
    from unlocked_sale u
    join waiting_row w on w.venue_id = ${tx.venue} and w.id = u.id
    join sale_item i on i.name_key = u.item_key
    join load_scope s on s.venue_id = w.venue_id and s.kind = 'sales' and s.source = w.source and s.day = w.day and s.live
    group by w.source, w.day, w.load_id, s.load_id, i.id, u.channel`);
  const { rows } = await tx.bulk.query<{ load: number; rows: number }>(
    'select load_id as load, sum(rows)::int as rows from unlocked_sum group by load_id',
  );
  const columns =
    'venue_id, load_id, day, item_id, channel, rows, sold, comps, net, sold_without_revenue, discount, carried_from';
  const sums = 'day, item_id, channel, rows, sold, comps, net, sold_without_revenue, discount';
  const added = ['rows', 'sold', 'comps', 'net', 'sold_without_revenue', 'discount'].map((name) => {
    const sum = `coalesce(d.${name} + excluded.${name}, d.${name}, excluded.${name})`;
    return `${name} = case when d.carried_from is null then ${sum} else excluded.${name} end`;
  });
  await tx.bulk.query(
    `insert into sales_day as d (${columns}) select $1, live_load, ${sums}, null from unlocked_sum where load_id = live_load
     on conflict (venue_id, load_id, day, item_id, channel) do update set ${added.join(', ')}, carried_from = null`,
    [tx.venue],
  );
  await tx.bulk.query(
    `insert into sales_day (${columns}) select $1, live_load, ${sums}, load_id from unlocked_sum where load_id <> live_load
     order by load_id desc on conflict do nothing`,
    [tx.venue],
  );
  await tx.bulk.query('delete from waiting_row w using unlocked_sale u where w.venue_id = $1 and w.id = u.id', [
    tx.venue,
  ]);
  await completeDays(tx);
  return new Map(rows.map(({ load, rows: taken }) => [load, taken]));
}

/** Days of which nothing waits any more are the whole truth now: what was carried into them, and what older loads had waiting, goes. */
async function completeDays(tx: VenueTx): Promise<void> {
  const complete = `select distinct u.source, u.day, u.live_load from unlocked_sum u
    where not exists (select from waiting_row w where w.venue_id = $1 and w.kind = 'sales' and w.status = 'waiting'
      and w.load_id = u.live_load and (w.day = u.day or w.day is null))`;
  await tx.bulk.query(
    `delete from sales_day d using (${complete}) c
     where d.venue_id = $1 and d.load_id = c.live_load and d.day = c.day and d.carried_from is not null`,
    [tx.venue],
  );
  await tx.bulk.query(
    `delete from waiting_row w using (${complete}) c
     where w.venue_id = $1 and w.kind = 'sales' and w.source = c.source and w.day = c.day and w.load_id <> c.live_load`,
    [tx.venue],
  );
}
