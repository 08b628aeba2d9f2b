import { type Day, dayText } from '../core/days';
import type { DecimalText } from '../core/decimal-text';
import type { VenueTx } from './in-venue';
import { dayOfFault, planKeyed, type Saved, type Stated } from './plan-keyed';

/** Guests of a business day. Till total: null: not known; undefined: not said. */
export interface StatedCovers {
  readonly day: Day;
  readonly covers: DecimalText;
  readonly tillTotal: DecimalText | null | undefined;
}

interface Values {
  readonly covers: string;
  readonly till_total: string | null;
}

/** Saves rows of covers.csv, by source and day: the load that states a day anew speaks for it from now on. */
export async function saveCovers(
  tx: VenueTx,
  rows: readonly Stated<StatedCovers>[],
  closedThrough: Day | null,
  by: { readonly load: number; readonly source: string },
): Promise<Saved> {
  const stored = await liveCovers(tx, by.source);
  const wanted = rows.map(({ line, row }) => ({
    line,
    row,
    key: dayText(row.day),
    from: row.day,
    values: (before: Values | null) => ({
      covers: row.covers,
      till_total: row.tillTotal === undefined ? (before?.till_total ?? null) : row.tillTotal,
    }),
  }));
  const plan = planKeyed<StatedCovers, Values>(wanted, stored, closedThrough);
  const fresh = [...plan.create, ...plan.change].map(({ row, values }) => ({ day: dayText(row.day), ...values }));
  if (fresh.length > 0) await writeCovers(tx, by, fresh);
  return { outcomes: plan.outcomes.map(dayOfFault), withdrawn: 0 };
}

async function liveCovers(tx: VenueTx, source: string): Promise<ReadonlyMap<string, { id: number; values: Values }>> {
  const { rows } = await tx.bulk.query<Values & { day: string }>(
    `select to_char(s.day, 'YYYY-MM-DD') as day, trim_scale(d.covers)::text as covers, trim_scale(d.till_total)::text as till_total
     from load_scope s join covers_day d on d.venue_id = s.venue_id and d.load_id = s.load_id and d.day = s.day
     where s.venue_id = $1 and s.kind = 'covers' and s.source = $2 and s.live`,
    [tx.venue, source],
  );
  return new Map(rows.map(({ day, ...values }) => [day, { id: 0, values }]));
}

async function writeCovers(
  tx: VenueTx,
  { load, source }: { readonly load: number; readonly source: string },
  days: readonly (Values & { readonly day: string })[],
): Promise<void> {
  const given = JSON.stringify(days);
  const stated = 'jsonb_to_recordset($3::jsonb) as r (day date, covers numeric, till_total numeric)';
  await tx.bulk.query(
    `update load_scope s set live = false from ${stated}
     where s.venue_id = $1 and s.kind = 'covers' and s.source = $2 and s.live and s.day = r.day`,
    [tx.venue, source, given],
  );
  await tx.bulk.query(
    `insert into load_scope (venue_id, kind, source, day, load_id, live) select $1, 'covers', $2, r.day, $4, true from ${stated}`,
    [tx.venue, source, given, load],
  );
  await tx.bulk.query(
    `insert into covers_day (venue_id, load_id, day, covers, till_total) select $1, $2, r.day, r.covers, r.till_total from ${stated}`,
    [tx.venue, load, given],
  );
}
