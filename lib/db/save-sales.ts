import { type Day, dayText } from '../core/days';
import type { RowRefusal } from '../model/refusal';
import type { VenueTx } from './in-venue';
import type { LoadCounts } from './save-load';
import { writeSalesDays } from './save-sales-days';
import { keepRefusedSales } from './save-sales-waiting';

/** Which load the rows in incoming_sale belong to, and what they speak for. */
export interface SalesLoad {
  readonly load: number;
  readonly source: string;
  /** Days for which the file is the whole truth whether they are in it or not, both included; null: the days that are in it. */
  readonly days: { readonly from: Day; readonly to: Day } | null;
}

export interface SavedSales extends LoadCounts {
  /** The first refused rows, in the order of the file. */
  readonly refusals: readonly RowRefusal[];
  readonly altered: boolean;
}

/** A query for the names that can be sold: what has a recipe or stands on the menu. An ingredient alone is no such thing. */
export function saleItems(tx: VenueTx): string {
  return `select i.id, i.name_key from item i where i.venue_id = ${tx.venue}
    and (i.kind <> 'ingredient' or exists (select from menu_price m where m.venue_id = i.venue_id and m.item_id = i.id))`;
}

/**
 * Makes day sums of the rows in incoming_sale and lets them speak for their source and days. A day on which nothing differs is left as it
 * is; a day with a refused row withdraws nothing, and what it did not say again is carried over from the load before; a row whose
 * day cannot be read stops every withdrawal. Rows of a closed day that would change it are refused.
 */
export async function saveSales(
  tx: VenueTx,
  load: SalesLoad,
  closedThrough: Day | null,
  atMost: number,
): Promise<SavedSales> {
  await sumUp(tx, load);
  await compareWithLive(tx, load);
  if (closedThrough !== null) await refuseClosed(tx, closedThrough);
  const waiting = await keepRefusedSales(tx, load);
  const withdrawn = await writeSalesDays(tx, load);
  const counts = await count(tx);
  return {
    ...counts,
    withdrawn,
    refusals: counts.refused === 0 ? [] : await firstRefusals(tx, atMost),
    altered: waiting.altered || (await anyDay(tx)),
  };
}

const TEMPORARY = ['sale_item', 'refused_sale', 'sale_sum', 'sale_scope', 'sale_live', 'sale_final'];

/** refused_sale: rows that cannot be taken; sale_sum: exact sums of the others; sale_scope: the days spoken for, and which are complete. */
async function sumUp(tx: VenueTx, { days }: SalesLoad): Promise<void> {
  await tx.bulk.query(`drop table if exists ${TEMPORARY.join(', ')}`);
  await tx.bulk.query('analyze incoming_sale');
  await tx.bulk.query(`create temporary table sale_item on commit drop as ${saleItems(tx)}`);
  await tx.bulk.query(`create temporary table refused_sale on commit drop as
    select s.line, s.day, s.item_key, s.channel, s.raw::jsonb as raw, coalesce(s.rule, 'unknown-item') as rule,
           case when s.rule is null then 'item' else s.about_column end as about_column,
           case when s.rule is null then btrim(s.raw::jsonb ->> 'item') else s.about_value end as about_value,
           coalesce(s.facts::jsonb, '{}') || jsonb_build_object('itemKey', s.item_key, 'channel', s.channel) as facts
    from incoming_sale s left join sale_item i on i.name_key = s.item_key
    where s.rule is not null or i.id is null`);
  // net = gross / (1 + rate), to ten decimals; the cast gives the division room for them
  await tx.bulk.query(`create temporary table sale_sum on commit drop as
    select s.day, i.id as item_id, s.channel, count(*)::int as rows, sum(s.sold) as sold, sum(coalesce(s.comps, 0)) as comps,
           sum(coalesce(s.net, round(s.gross::numeric(40, 20) / (1 + s.tax), 10), 0)) as net,
           sum(case when s.net is null and s.gross is null then s.sold else 0 end) as sold_without_revenue,
           sum(s.discount) as discount
    from incoming_sale s join sale_item i on i.name_key = s.item_key
    where s.rule is null group by s.day, i.id, s.channel`);
  await tx.bulk.query(`create temporary table sale_scope (
    day date primary key, complete boolean not null, facts_differ boolean not null default false,
    waiting_differs boolean not null default false, closed boolean not null default false) on commit drop`);
  await tx.bulk.query(
    `insert into sale_scope (day, complete)
     select d.day, not exists (select from refused_sale r where r.day is null)
       and not exists (select from refused_sale r where r.day = d.day and r.rule <> 'outside-days')
     from (select distinct day from incoming_sale where day is not null and rule is distinct from 'outside-days'
           union select generate_series($1::date, $2::date, interval '1 day')::date) d`,
    [days && dayText(days.from), days && dayText(days.to)],
  );
}

const SUMS = 'day, item_id, channel, sold, comps, net, sold_without_revenue, discount, carried_from is not null';

/** sale_live: what is live for the days spoken for; sale_final: what is to be; and which days differ. */
async function compareWithLive(tx: VenueTx, { source }: SalesLoad): Promise<void> {
  await tx.bulk.query(`create temporary table sale_live on commit drop as
    select d.day, s.load_id, f.item_id, f.channel, f.rows, f.sold, f.comps, f.net, f.sold_without_revenue, f.discount, f.carried_from
    from sale_scope d
    join load_scope s on s.venue_id = ${tx.venue} and s.kind = 'sales' and s.source = ${literal(source)} and s.day = d.day and s.live
    left join sales_day f on f.venue_id = s.venue_id and f.load_id = s.load_id and f.day = s.day`);
  await tx.bulk.query(`create temporary table sale_final on commit drop as
    select *, null::int as carried_from from sale_sum
    union all
    select l.day, l.item_id, l.channel, l.rows, l.sold, l.comps, l.net, l.sold_without_revenue, l.discount,
           coalesce(l.carried_from, l.load_id)
    from sale_live l join sale_scope d on d.day = l.day
    where not d.complete and l.item_id is not null
      and not exists (select from sale_sum s where (s.day, s.item_id, s.channel) = (l.day, l.item_id, l.channel))`);
  await tx.bulk.query(`update sale_scope d set facts_differ = true
    where not exists (select from sale_live l where l.day = d.day)
       or d.day in (select day from (
            (select ${SUMS} from sale_final except select ${SUMS} from sale_live where item_id is not null) union all
            (select ${SUMS} from sale_live where item_id is not null except select ${SUMS} from sale_final)) differing)`);
}

/** What would change a closed day is refused row by row; the day stays. */
async function refuseClosed(tx: VenueTx, closedThrough: Day): Promise<void> {
  const through = dayText(closedThrough);
  await tx.bulk.query('update sale_scope set closed = true where day <= $1', [through]);
  await tx.bulk.query(
    `insert into refused_sale
     select s.line, s.day, s.item_key, s.channel, s.raw::jsonb, 'closed', case when s.raw::jsonb ? 'date' then 'date' else 'sold_at' end,
            $1, jsonb_build_object('through', $1::text, 'itemKey', s.item_key, 'channel', s.channel)
     from incoming_sale s join sale_item i on i.name_key = s.item_key join sale_scope d on d.day = s.day
     where s.rule is null and d.closed and d.facts_differ`,
    [through],
  );
}

/** Rows by what became of them: a row shares the fate of the sum that it is in. */
async function count(tx: VenueTx): Promise<Omit<LoadCounts, 'withdrawn'>> {
  const { rows } = await tx.bulk.query<Record<'taken' | 'changed' | 'unchanged' | 'refused' | 'read', number>>(`
    with fate as (
      select s.rows, case when l.item_id is null then 'taken'
        when (s.sold, s.comps, s.net, s.sold_without_revenue) = (l.sold, l.comps, l.net, l.sold_without_revenue)
          and s.discount is not distinct from l.discount then 'unchanged' else 'changed' end as fate
      from sale_sum s join sale_scope d on d.day = s.day
      left join sale_live l on (l.day, l.item_id, l.channel) = (s.day, s.item_id, s.channel)
      where not (d.closed and d.facts_differ))
    select coalesce(sum(rows) filter (where fate = 'taken'), 0)::int as taken,
           coalesce(sum(rows) filter (where fate = 'changed'), 0)::int as changed,
           coalesce(sum(rows) filter (where fate = 'unchanged'), 0)::int as unchanged,
           (select count(*) from refused_sale)::int as refused, (select count(*) from incoming_sale)::int as read
    from fate`);
  return rows[0] ?? { taken: 0, changed: 0, unchanged: 0, refused: 0, read: 0 };
}

async function firstRefusals(tx: VenueTx, atMost: number): Promise<readonly RowRefusal[]> {
  const { rows } = await tx.bulk.query<RowRefusal>(
    `select line, rule, about_column as column, about_value as value, facts from refused_sale order by line limit $1`,
    [atMost],
  );
  return rows;
}

async function anyDay(tx: VenueTx): Promise<boolean> {
  const { rows } = await tx.bulk.query(
    'select from sale_scope where not closed and (facts_differ or waiting_differs) limit 1',
  );
  return rows.length > 0;
}

/** A text inside a statement that takes no parameters (a table made from a query). */
function literal(text: string): string {
  return `E'${text.replace(/[\\']/g, (letter) => (letter === "'" ? "''" : '\\\\'))}'`;
}
