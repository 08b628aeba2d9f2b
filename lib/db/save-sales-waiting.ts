import type { VenueTx } from './in-venue';
import type { SalesLoad } from './save-sales';
import { undatedLoads } from './save-sales-fold';

const SAME = 'line, raw, rule, about_column, about_value, facts';
const INSERT = `insert into waiting_row
  (venue_id, load_id, kind, source, line, raw, row_key, day, rule, about_column, about_value, facts)
  select $1, $2, 'sales', $3, r.line, r.raw, to_char(r.day, 'YYYY-MM-DD'), r.day, r.rule, r.about_column, r.about_value, r.facts
  from refused_sale r`;

/**
 * Keeps the rows in refused_sale, and lets go of the earlier ones that the file replaces: those of its complete days. On a day that is not
 * complete those about an item and channel that it names again are superseded, and of rows without a day the ones that it holds again
 * or has mended: nobody has to mend them any more, but they still decide what their own load said (see foldDays).
 * Marks the days of sale_scope on which anything about that altered.
 */
export async function keepRefusedSales(tx: VenueTx, load: SalesLoad): Promise<{ readonly altered: boolean }> {
  const placed = await keepPlaced(tx, load);
  const unplaced = await keepUnplaced(tx, load);
  return { altered: placed || unplaced };
}

/** Rows whose day is one that the file speaks for. */
async function keepPlaced(tx: VenueTx, { load, source }: SalesLoad): Promise<boolean> {
  await tx.bulk.query('drop table if exists replaced_sale');
  await tx.bulk.query('create temporary table replaced_sale (id bigint primary key, day date not null) on commit drop');
  await tx.bulk.query(
    `insert into replaced_sale select w.id, w.day from waiting_row w join sale_scope d on d.day = w.day
     where w.venue_id = $1 and w.kind = 'sales' and w.source = $2 and w.status <> 'superseded'
       and (d.complete or exists (select from incoming_sale s where s.day = w.day and s.item_key = w.facts ->> 'itemKey'
                                  and s.channel = w.facts ->> 'channel'))`,
    [tx.venue, source],
  );
  const refused = `select day, ${SAME} from refused_sale where day is not null and rule <> 'outside-days'`;
  // against what the load that is live for the day had refused; on a closed day nothing becomes live, so against all that is replaced
  const there = `select w.day, ${SAME} from waiting_row w join sale_scope d on d.day = w.day
    left join (select distinct day, load_id from sale_live) l on l.day = w.day
    where w.venue_id = $1 and w.kind = 'sales' and w.source = $2 and w.status <> 'superseded' and (w.load_id = l.load_id or d.closed and w.id in (select id from replaced_sale))`;
  await tx.bulk.query(
    `update sale_scope set waiting_differs = true where day in (select day from (
       (${refused} except all (${there})) union all ((${there}) except all ${refused})) differing)`,
    [tx.venue, source],
  );
  await tx.bulk.query(
    `update sale_scope d set waiting_differs = true from sale_live l
     where l.day = d.day and not d.closed
       and exists (select from refused_sale r where r.day is null) <> (l.load_id in (${undatedLoads(tx)}))`,
  );
  const altered = 'select day from sale_scope where waiting_differs or (facts_differ and not closed)';
  const gone = await tx.bulk.query(
    `update waiting_row w set status = 'superseded' from replaced_sale p
     where w.venue_id = $1 and w.id = p.id and p.day in (${altered})`,
    [tx.venue],
  );
  await tx.bulk.query(
    `delete from waiting_row w using sale_scope d
     where w.venue_id = $1 and w.kind = 'sales' and w.source = $2 and w.day = d.day and d.complete and d.day in (${altered})`,
    [tx.venue, source],
  );
  const kept = await tx.bulk.query(`${INSERT} where r.rule <> 'outside-days' and r.day in (${altered})`, [
    tx.venue,
    load,
    source,
  ]);
  return (gone.rowCount ?? 0) + (kept.rowCount ?? 0) > 0;
}

/**
 * Rows without a day, or outside the days that the file was loaded for. Where the load alters anything it keeps its own,
 * though the same are there already: what it could not read keeps its days incomplete.
 */
async function keepUnplaced(tx: VenueTx, { load, source }: SalesLoad): Promise<boolean> {
  const unplaced = `(day is null or rule = 'outside-days')`;
  await tx.bulk.query('drop table if exists unplaced_sale');
  await tx.bulk.query(`create temporary table unplaced_sale on commit drop as
    select w.id, ${SAME} from waiting_row w where w.venue_id = ${tx.venue} and w.kind = 'sales' and ${unplaced} and false`);
  await tx.bulk.query(
    `insert into unplaced_sale select w.id, ${SAME} from waiting_row w
     where w.venue_id = $1 and w.kind = 'sales' and w.source = $2 and w.status <> 'superseded' and ${unplaced}
       and (exists (select from refused_sale s where s.raw = w.raw and (s.day is null or s.rule = 'outside-days'))
         or w.day is null and exists (select from incoming_sale s where s.line = w.line
              and s.raw::jsonb - w.about_column = w.raw - w.about_column))`,
    [tx.venue, source],
  );
  const refused = `select ${SAME} from refused_sale where ${unplaced}`;
  const { rows } = await tx.bulk.query<{ differ: boolean; altered: boolean }>(
    `select exists ((${refused} except all select ${SAME} from unplaced_sale)
         union all (select ${SAME} from unplaced_sale except all ${refused})) as differ,
       exists (select from sale_scope where not closed and (facts_differ or waiting_differs)) as altered`,
  );
  if (!rows[0]?.differ && !rows[0]?.altered) return false;
  await tx.bulk.query(
    `update waiting_row w set status = 'superseded' from unplaced_sale p where w.venue_id = $1 and w.id = p.id`,
    [tx.venue],
  );
  await tx.bulk.query(`${INSERT} where (r.day is null or r.rule = 'outside-days')`, [tx.venue, load, source]);
  return rows[0].differ;
}
