import { type Day, type DayRange, dayText } from '../core/days';
import { grouped } from '../core/grouped';
import type { CoversDay, ItemId, SalesDay } from '../model/facts';
import type { VenueTx } from './in-venue';
import { WAITING_SALES } from './load-waiting-sales';

// Which rows speak: those of the load that has their day (live) and was not undone.
const LIVE = `
  load_scope s
  join load l on l.venue_id = s.venue_id and l.id = s.load_id and l.undone_at is null`;

/**
 * What was sold on the days of a range: one row for each day, item and channel, summed over sources and loads; by day, item name and channel.
 * Quantities and money were added as exact decimals and leave as doubles.
 */
export async function loadSales(tx: VenueTx, range: DayRange): Promise<SalesDay[]> {
  const { rows } = await tx.bulk.query<Omit<SalesDay, 'day'> & { day: number; item: ItemId }>(
    `select d.day - date '1970-01-01' as day, d.item_id as item, d.channel, sum(d.sold)::float8 as sold, sum(d.comps)::float8 as comps,
            sum(d.net)::float8 as net, sum(d.sold_without_revenue)::float8 as "soldWithoutRevenue"
     from ${LIVE}
     join sales_day d on d.venue_id = s.venue_id and d.load_id = s.load_id and d.day = s.day
     join item i on i.venue_id = d.venue_id and i.id = d.item_id
     where s.venue_id = $1 and s.live and s.day >= $2 and s.day < $3
     group by d.day, d.item_id, d.channel, i.name_key
     order by d.day, i.name_key collate "C", d.channel collate "C"`,
    [tx.venue, dayText(range.from), dayText(range.to)],
  );
  return rows.map((row) => ({ ...row, day: row.day as Day }));
}

/** The covers of the days of a range, by day, over all sources. */
export async function loadCovers(tx: VenueTx, range: DayRange): Promise<CoversDay[]> {
  const { rows } = await tx.bulk.query<{ day: number; covers: number }>(
    `select d.day - date '1970-01-01' as day, sum(d.covers)::float8 as covers
     from ${LIVE}
     join covers_day d on d.venue_id = s.venue_id and d.load_id = s.load_id and d.day = s.day
     where s.venue_id = $1 and s.live and s.day >= $2 and s.day < $3
     group by d.day order by d.day`,
    [tx.venue, dayText(range.from), dayText(range.to)],
  );
  return rows.map(({ day, covers }) => ({ day: day as Day, covers }));
}

/** The business days on which something was sold, ascending: under a name that is known, or under one that waits for its item. */
export async function salesDays(tx: VenueTx): Promise<readonly Day[]> {
  const { rows } = await tx.bulk.query<{ day: number }>(
    `select day - date '1970-01-01' as day from (
       select s.day
       from ${LIVE}
       where s.venue_id = $1 and s.live
         and exists (select from sales_day d where d.venue_id = s.venue_id and d.load_id = s.load_id and d.day = s.day)
       union
       select w.day from ${WAITING_SALES} and w.venue_id = $1 and w.day is not null
     ) days
     order by day`,
    [tx.venue],
  );
  return rows.map(({ day }) => day as Day);
}

/** The calendar months in which something was sold (2026-10), oldest first, with the number of business days that have sales. */
export async function salesSpan(tx: VenueTx): Promise<ReadonlyMap<string, number>> {
  const months = grouped(await salesDays(tx), (day) => dayText(day).slice(0, 7));
  return new Map([...months].map(([month, days]) => [month, days.length]));
}
