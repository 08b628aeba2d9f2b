import type { VenueTx } from './in-venue';

// Rows that a later load superseded still count: they decide what their own load said.
const refusedBy = (tx: VenueTx): string =>
  `from waiting_row where venue_id = ${tx.venue} and kind = 'sales' and status <> 'dismissed'`;

/** A query for the loads with a row whose day could not be read: they withdraw nothing. */
export function undatedLoads(tx: VenueTx): string {
  return `select load_id ${refusedBy(tx)} and day is null`;
}

/**
 * Works out anew what each load says of some days (a query for source and day), oldest load first: its own sums, and as long as one of its
 * rows is refused the sums of the load before that it does not name again. So the days come out as if what is known now had been known
 * when the files came. What older loads had refused for a day that is complete counts no more.
 */
export async function foldDays(tx: VenueTx, days: string): Promise<void> {
  await tx.bulk.query('drop table if exists fold_scope');
  await tx.bulk.query(`create temporary table fold_scope on commit drop as
    select s.source, s.day, s.load_id, lag(s.load_id) over (partition by s.source, s.day order by s.load_id) as before,
           (s.load_id, s.day) not in (select load_id, day ${refusedBy(tx)} and day is not null and rule <> 'outside-days')
             and s.load_id not in (${undatedLoads(tx)}) as complete
    from load_scope s join (${days}) d on d.source = s.source and d.day = s.day
    where s.venue_id = ${tx.venue} and s.kind = 'sales'`);
  await tx.bulk.query(
    `delete from sales_day d using fold_scope f
     where d.venue_id = $1 and d.load_id = f.load_id and d.day = f.day and d.carried_from is not null`,
    [tx.venue],
  );
  const { rows } = await tx.bulk.query<{ load: number }>(
    'select distinct load_id as load from fold_scope where before is not null and not complete order by load',
  );
  for (const { load } of rows) {
    await tx.bulk.query(
      `insert into sales_day (venue_id, load_id, day, item_id, channel, rows, sold, comps, net, sold_without_revenue, discount, carried_from)
       select d.venue_id, f.load_id, d.day, d.item_id, d.channel, d.rows, d.sold, d.comps, d.net, d.sold_without_revenue, d.discount,
              coalesce(d.carried_from, d.load_id)
       from fold_scope f join sales_day d on d.venue_id = $1 and d.load_id = f.before and d.day = f.day
       where f.load_id = $2 and not f.complete
       on conflict (venue_id, load_id, day, item_id, channel) do nothing`,
      [tx.venue, load],
    );
  }
  await tx.bulk.query(
    `delete from waiting_row w using fold_scope f
     where w.venue_id = $1 and w.kind = 'sales' and w.source = f.source and w.day = f.day and f.complete and w.load_id < f.load_id`,
    [tx.venue],
  );
}
