import { type Day, dayText } from '../core/days';
import type { VenueTx } from './in-venue';

/** What a load says of itself before its rows are counted. */
export interface NewLoad {
  readonly kind: string;
  readonly source: string;
  readonly file: string;
  /** The days that it was asked to speak for, both included; null: the days that are in it. */
  readonly days: { readonly from: Day; readonly to: Day } | null;
  /** Whether rows carry time stamps, whose day follows the venue's clock. */
  readonly stamped: boolean;
}

/** Rows read = taken + changed + unchanged + refused; withdrawn stands apart. */
export interface LoadCounts {
  readonly read: number;
  readonly taken: number;
  readonly changed: number;
  readonly unchanged: number;
  readonly refused: number;
  readonly withdrawn: number;
}

/** Begins the record of a load and gives its number. Counts and digest are written by finishLoad. */
export async function beginLoad(tx: VenueTx, load: NewLoad): Promise<number> {
  const { rows } = await tx.bulk.query<{ id: number }>(
    `insert into load (venue_id, kind, source, file, digest, person, days_from, days_to, stamped)
     values ($1, $2, $3, $4, '', $5, $6, $7, $8) returning id`,
    [
      tx.venue,
      load.kind,
      load.source,
      load.file,
      tx.person,
      load.days && dayText(load.days.from),
      load.days && dayText(load.days.to),
      load.stamped,
    ],
  );
  const id = rows[0]?.id;
  if (id === undefined) throw new Error('the load was given no number');
  return id;
}

/** Ends the record of a load: what it came to, the digest (SHA-256) of its bytes, and the bytes themselves (gzip) where they are to be kept. */
export async function finishLoad(
  tx: VenueTx,
  load: number,
  counts: LoadCounts,
  digest: string,
  kept: readonly Uint8Array[],
): Promise<void> {
  await tx.bulk.query(
    `update load set rows_read = $3, taken = $4, changed = $5, unchanged = $6, refused = $7, withdrawn = $8, digest = $9
     where venue_id = $1 and id = $2`,
    [
      tx.venue,
      load,
      counts.read,
      counts.taken,
      counts.changed,
      counts.unchanged,
      counts.refused,
      counts.withdrawn,
      digest,
    ],
  );
  for (const [chunk, bytes] of kept.entries()) {
    await tx.bulk.query('insert into load_file (venue_id, load_id, chunk, bytes) values ($1, $2, $3, $4)', [
      tx.venue,
      load,
      chunk,
      bytes,
    ]);
  }
}

/** Rows of earlier loads that had waited and are taken now count as taken there. */
export async function countUnlocked(tx: VenueTx, taken: ReadonlyMap<number, number>): Promise<void> {
  for (const [load, rows] of taken) {
    await tx.bulk.query('update load set taken = taken + $3, refused = refused - $3 where venue_id = $1 and id = $2', [
      tx.venue,
      load,
      rows,
    ]);
  }
}
