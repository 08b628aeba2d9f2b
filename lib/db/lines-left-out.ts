import type { VenueTx } from './in-venue';
import { recipeLineKey } from './load-recipes';
import { CLOSED_KEY } from './save-waiting';

/*
 * Lines of recipe_lines.csv that were refused wait until they are mended. Whoever writes the lines of that version anew in the kitchen has
 * seen them and speaks for the whole of it: they are dismissed, never deleted, and wait again when that write is undone.
 */

const lineKeys = (recipe: string, validFrom: string): string[] => {
  const key = recipeLineKey(recipe, validFrom);
  return [key, `${CLOSED_KEY}${key}`];
};

/** How many refused lines wait for versions of a recipe, whichever the version. */
export async function refusedLinesOf(tx: VenueTx, recipe: string): Promise<number> {
  const key = recipeLineKey(recipe, '');
  const { rows } = await tx.bulk.query<{ lines: number }>(
    `select count(*)::int as lines from waiting_row
     where venue_id = $1 and kind = 'recipe_lines' and status = 'waiting' and (starts_with(row_key, $2) or starts_with(row_key, $3))`,
    [tx.venue, key, `${CLOSED_KEY}${key}`],
  );
  return rows[0]?.lines ?? 0;
}

/** Dismisses the lines that wait for a version, in the name of this write. */
export async function dismissLines(tx: VenueTx, recipe: string, validFrom: string): Promise<void> {
  await tx.bulk.query(
    `update waiting_row set status = 'dismissed', facts = facts || jsonb_build_object('settledBy', ${THIS_WRITE})
     where venue_id = $1 and kind = 'recipe_lines' and status = 'waiting' and row_key = any($2)`,
    [tx.venue, lineKeys(recipe, validFrom)],
  );
}

const THIS_WRITE = `to_char(now() at time zone 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.US"Z"')`;

/** What a write dismissed waits again, what it let wait again is dismissed; in the name of this write. `at` is the time of the other. */
export async function turnBackLines(tx: VenueTx, at: string): Promise<void> {
  await tx.bulk.query(
    `update waiting_row set status = (case status when 'waiting' then 'dismissed' else 'waiting' end)::waiting_status,
       facts = facts || jsonb_build_object('settledBy', ${THIS_WRITE})
     where venue_id = $1 and kind = 'recipe_lines' and status in ('waiting', 'dismissed') and facts ->> 'settledBy' = $2`,
    [tx.venue, at],
  );
}
