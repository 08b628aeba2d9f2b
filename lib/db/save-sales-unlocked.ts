import { type Day, dayText } from '../core/days';
import type { VenueTx } from './in-venue';
import { saleItems } from './save-sales';
import { foldDays } from './save-sales-fold';
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
  await tx.bulk.query(
    `declare unlocked no scroll cursor for
     select w.id::text as id, w.raw from waiting_row w
     where w.venue_id = $1 and w.kind = 'sales' and w.rule = 'unknown-item' and w.status <> 'dismissed'
       and (w.day > $2 or $2 is null) and w.facts ->> 'itemKey' in (select name_key from sale_item)`,
    [tx.venue, closedThrough === null ? null : dayText(closedThrough)],
  );
  let any = false;
  for (;;) {
    const { rows } = await tx.bulk.query<UnlockedSale>(`fetch ${AT_ONCE} from unlocked`);
    if (rows.length === 0) break;
    any = true;
    await tx.bulk.query(
      `insert into unlocked_sale select id, "itemKey", channel, sold, comps, net, gross, tax, discount
       from jsonb_to_recordset($1::jsonb) as r (id bigint, "itemKey" text, channel text, sold numeric, comps numeric, net numeric,
         gross numeric, tax numeric, discount numeric)`,
      [JSON.stringify(read(rows))],
    );
  }
  await tx.bulk.query('close unlocked');
  return any;
}

/** What came of it. */
export interface SavedUnlocked {
  /** Rows that somebody waited for, by their load. */
  readonly taken: ReadonlyMap<number, number>;
  /** Rows that counted before and no more: carried over only as long as the day was not whole. */
  readonly withdrawn: number;
}

/** Adds the collected sales to what their own loads said, and works the days out anew from there. */
export async function saveUnlocked(tx: VenueTx): Promise<SavedUnlocked> {
  await tx.bulk.query('drop table if exists unlocked_sum, counted_before');
  await tx.bulk.query(`create temporary table unlocked_sum on commit drop as
    select w.source, w.day, w.load_id, i.id as item_id, u.channel, count(*)::int as rows,
           (count(*) filter (where w.status = 'waiting'))::int as waited, sum(u.sold) as sold, sum(coalesce(u.comps, 0)) as comps,
           sum(coalesce(u.net, round(u.gross::numeric(40, 20) / (1 + u.tax), 10), 0)) as net,
           sum(case when u.net is null and u.gross is null then u.sold else 0 end) as sold_without_revenue, sum(u.discount) as discount
    from unlocked_sale u
    join waiting_row w on w.venue_id = ${tx.venue} and w.id = u.id
    join sale_item i on i.name_key = u.item_key
    group by w.source, w.day, w.load_id, i.id, u.channel`);
  const { rows } = await tx.bulk.query<{ load: number; rows: number }>(
    'select load_id as load, sum(waited)::int as rows from unlocked_sum group by load_id',
  );
  await tx.bulk.query(`create temporary table counted_before on commit drop as
    select d.load_id, d.day, d.item_id, d.channel, d.rows from sales_day d
    join load_scope s on s.venue_id = d.venue_id and s.load_id = d.load_id and s.day = d.day and s.kind = 'sales' and s.live
    where d.venue_id = ${tx.venue} and d.carried_from is not null and (s.source, s.day) in (select source, day from unlocked_sum)`);
  const added = ['rows', 'sold', 'comps', 'net', 'sold_without_revenue', 'discount'].map((name) => {
    const sum = `coalesce(d.${name} + excluded.${name}, d.${name}, excluded.${name})`;
    return `${name} = case when d.carried_from is null then ${sum} else excluded.${name} end`;
  });
  await tx.bulk.query(
    `insert into sales_day as d (venue_id, load_id, day, item_id, channel, rows, sold, comps, net, sold_without_revenue, discount)
     select $1, load_id, day, item_id, channel, rows, sold, comps, net, sold_without_revenue, discount from unlocked_sum
     on conflict (venue_id, load_id, day, item_id, channel) do update set ${added.join(', ')}, carried_from = null`,
    [tx.venue],
  );
  await tx.bulk.query('delete from waiting_row w using unlocked_sale u where w.venue_id = $1 and w.id = u.id', [
    tx.venue,
  ]);
  await foldDays(tx, 'select distinct source, day from unlocked_sum');
  const gone = await tx.bulk.query<{ withdrawn: number }>(
    `select coalesce(sum(b.rows), 0)::int as withdrawn from counted_before b
     where not exists (select from sales_day d where d.venue_id = $1
       and (d.load_id, d.day, d.item_id, d.channel) = (b.load_id, b.day, b.item_id, b.channel))`,
    [tx.venue],
  );
  return {
    taken: new Map(rows.map(({ load, rows: taken }) => [load, taken])),
    withdrawn: gone.rows[0]?.withdrawn ?? 0,
  };
}
