import { addDays, type Day, parseDay } from '../core/days';
import type { VenueTx } from './in-venue';
import type { RecordedChange } from './item-record';

type VersionTable = 'ingredient_version' | 'recipe_version';

/** From which days an item has versions, ISO text, '' from the beginning; oldest first. */
export async function versionStarts(tx: VenueTx, table: VersionTable, item: number): Promise<readonly string[]> {
  const { rows } = await tx.bulk.query<{ day: string }>(
    `select coalesce(to_char(valid_from, 'YYYY-MM-DD'), '') as day from ${table} where venue_id = $1 and item_id = $2
     order by valid_from nulls first`,
    [tx.venue, item],
  );
  return rows.map(({ day }) => day);
}

/**
 * A day on which a version of an item is in force: its first; of one from the beginning, the last before the next one begins. Null: on
 * every day, since there is no other.
 */
export async function dayInForce(
  tx: VenueTx,
  table: VersionTable,
  item: number | null,
  from: Day | null,
): Promise<Day | null> {
  if (from !== null || item === null) return from;
  const next = (await versionStarts(tx, table, item)).find((start) => start !== '');
  const day = next === undefined ? null : parseDay(next);
  return day === null ? null : addDays(day, -1);
}

/** A day on which the version is in force that some changes touched, by itself or by its lines; null: on every day, or none was touched. */
export async function dayTouched(tx: VenueTx, item: number, changes: readonly RecordedChange[]): Promise<Day | null> {
  const rows = changes.map(({ thing, before, after }) => ({ thing, row: after ?? before ?? {} }));
  const version = rows.find(({ thing }) => thing.endsWith('_version'));
  if (version) return dayInForce(tx, version.thing as VersionTable, item, dayOf(version.row.valid_from));
  const line = rows.find(({ thing }) => thing === 'recipe_line');
  if (!line) return null;
  const { rows: found } = await tx.bulk.query<{ day: string | null }>(
    `select to_char(valid_from, 'YYYY-MM-DD') as day from recipe_version where venue_id = $1 and id = $2`,
    [tx.venue, line.row.version_id],
  );
  return dayInForce(tx, 'recipe_version', item, dayOf(found[0]?.day));
}

function dayOf(text: unknown): Day | null {
  return typeof text === 'string' ? parseDay(text) : null;
}
