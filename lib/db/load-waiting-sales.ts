import { type Day, type DayRange, dayText } from '../core/days';
import type { WaitingSales } from '../model/facts';
import type { VenueTx } from './in-venue';

// As the row will be read once its name is known: a decimal comma is one.
const PORTIONS = `replace(btrim(w.raw ->> 'sold'), ',', '.')`;

/** Rows of sales that wait for the name of their item, and for nothing else. */
export const WAITING_SALES = `
  waiting_row w join load l on l.venue_id = w.venue_id and l.id = w.load_id and l.undone_at is null
  where w.kind = 'sales' and w.status = 'waiting' and w.rule = 'unknown-item'`;

/**
 * Sales on the days of a range whose item nobody has named yet, by day and name: they are kept, and in no figure. Rows that wait to be
 * mended are not among them, nor are those that a later file replaced.
 */
export async function loadWaitingSales(tx: VenueTx, range: DayRange): Promise<WaitingSales[]> {
  const { rows } = await tx.bulk.query<Omit<WaitingSales, 'day'> & { day: number }>(
    `select w.day - date '1970-01-01' as day, min(btrim(w.raw ->> 'item') collate "C") as name, count(*)::int as rows,
            (sum(case when ${PORTIONS} ~ '^[+]?([0-9]+[.]?[0-9]*|[.][0-9]+)$' then ${PORTIONS}::numeric end))::float8 as portions
     from ${WAITING_SALES} and w.venue_id = $1 and w.day >= $2 and w.day < $3
     group by w.day, w.facts ->> 'itemKey'
     order by w.day, (w.facts ->> 'itemKey') collate "C"`,
    [tx.venue, dayText(range.from), dayText(range.to)],
  );
  return rows.map((row) => ({ ...row, day: row.day as Day }));
}
