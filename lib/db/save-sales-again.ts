import { type Day, parseDay } from '../core/days';
import type { VenueTx } from './in-venue';
import type { SalesLoad } from './save-sales';

/**
 * Takes out everything that sources with time stamps have said of sales, and answers the loads that said it, oldest first: their rows may
 * belong to other days now that the venue's clock is another, and are to be read again from the bytes that were kept.
 */
export async function forgetStampedSales(tx: VenueTx): Promise<readonly SalesLoad[]> {
  const { rows } = await tx.bulk.query<{ load: number; source: string; from: string | null; to: string | null }>(
    `select l.id as load, l.source, to_char(l.days_from, 'YYYY-MM-DD') as from, to_char(l.days_to, 'YYYY-MM-DD') as to
     from load l where l.venue_id = $1 and l.kind = 'sales' and l.undone_at is null
       and exists (select from load s where s.venue_id = l.venue_id and s.kind = 'sales' and s.source = l.source and s.stamped)
       and exists (select from load_file f where f.venue_id = l.venue_id and f.load_id = l.id)
     order by l.id`,
    [tx.venue],
  );
  const sources = [...new Set(rows.map(({ source }) => source))];
  const scopes = `select day, load_id from load_scope where venue_id = $1 and kind = 'sales' and source = any($2)`;
  await tx.bulk.query(
    `delete from sales_day d using (${scopes}) s where d.venue_id = $1 and d.load_id = s.load_id and d.day = s.day`,
    [tx.venue, sources],
  );
  await tx.bulk.query(`delete from load_scope where venue_id = $1 and kind = 'sales' and source = any($2)`, [
    tx.venue,
    sources,
  ]);
  await tx.bulk.query(`delete from waiting_row where venue_id = $1 and kind = 'sales' and source = any($2)`, [
    tx.venue,
    sources,
  ]);
  return rows.map(({ load, source, from, to }) => {
    const first: Day | null = from === null ? null : parseDay(from);
    const last: Day | null = to === null ? null : parseDay(to);
    return { load, source, days: first === null || last === null ? null : { from: first, to: last } };
  });
}

/** The bytes of a load's file as they were kept (gzip), in order. */
export async function keptBytes(tx: VenueTx, load: number): Promise<readonly Uint8Array[]> {
  const { rows } = await tx.bulk.query<{ bytes: Buffer }>(
    'select bytes from load_file where venue_id = $1 and load_id = $2 order by chunk',
    [tx.venue, load],
  );
  return rows.map(({ bytes }) => bytes);
}
