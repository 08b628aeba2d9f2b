import { nameKey } from '../core/name-key';
import type { VenueTx } from './in-venue';
import { ITEM_TABLES } from './item-record';

/** What an ingredient has by name, beside its versions. */
export type NamedOfIngredient = 'named_measure' | 'part' | 'yield_use';

/** Takes out what an ingredient no longer has: all of a kind but those of these names. */
export async function takeOutOthers(
  tx: VenueTx,
  table: NamedOfIngredient,
  item: number,
  names: readonly string[],
): Promise<void> {
  await tx.bulk.query(`delete from ${table} where venue_id = $1 and item_id = $2 and name_key <> all($3)`, [
    tx.venue,
    item,
    names.map(nameKey),
  ]);
}

/** Takes out one version of an item with its lines. `from` is ISO text, null from the beginning. */
export async function takeOutVersion(
  tx: VenueTx,
  table: 'ingredient_version' | 'recipe_version',
  item: number,
  from: string | null,
): Promise<void> {
  const at = 'venue_id = $1 and item_id = $2 and valid_from is not distinct from $3::date';
  if (table === 'recipe_version') {
    await tx.bulk.query(
      `delete from recipe_line where venue_id = $1 and version_id in (select id from recipe_version where ${at})`,
      [tx.venue, item, from],
    );
  }
  await tx.bulk.query(`delete from ${table} where ${at}`, [tx.venue, item, from]);
}

/** Takes out an item that nothing uses, with all that is stated of it. */
export async function takeOutItem(tx: VenueTx, item: number): Promise<void> {
  for (const table of ITEM_TABLES) {
    const of =
      table === 'recipe_line'
        ? 'version_id in (select id from recipe_version where venue_id = $1 and item_id = $2)'
        : table === 'item'
          ? 'id = $2'
          : 'item_id = $2';
    await tx.bulk.query(`delete from ${table} where venue_id = $1 and ${of}`, [tx.venue, item]);
  }
}
