import type { VenueTx } from './in-venue';
import type { SalesLoad } from './save-sales';

/** Lets the load speak for the days of sale_scope that differ. Answers how many rows of earlier loads it withdrew. */
export async function writeSalesDays(tx: VenueTx, { load, source }: SalesLoad): Promise<number> {
  const altered = 'select day from sale_scope where not closed and (facts_differ or waiting_differs)';
  await tx.bulk.query(
    `update load_scope s set live = false
     where s.venue_id = $1 and s.kind = 'sales' and s.source = $2 and s.live and s.day in (${altered})`,
    [tx.venue, source],
  );
  await tx.bulk.query(
    `insert into load_scope (venue_id, kind, source, day, load_id, live) select $1, 'sales', $2, day, $3, true from (${altered}) d`,
    [tx.venue, source, load],
  );
  await tx.bulk.query(
    `insert into sales_day (venue_id, load_id, day, item_id, channel, rows, sold, comps, net, sold_without_revenue, discount, carried_from)
     select $1, $2, day, item_id, channel, rows, sold, comps, net, sold_without_revenue, discount, carried_from
     from sale_final where day in (${altered})`,
    [tx.venue, load],
  );
  const { rows } = await tx.bulk.query<{ withdrawn: number }>(`
    select coalesce(sum(l.rows), 0)::int as withdrawn from sale_live l
    where l.day in (${altered})
      and not exists (select from sale_final f where (f.day, f.item_id, f.channel) = (l.day, l.item_id, l.channel))`);
  return rows[0]?.withdrawn ?? 0;
}
