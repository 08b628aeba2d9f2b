import type { ItemKind } from '../model/facts';
import type { VenueTx } from './in-venue';

/** A recipe that uses an item, in the versions of it that do. */
export interface RecipeUse {
  readonly id: number;
  readonly item: string;
  readonly kind: ItemKind;
  /** ISO text; null: from the beginning. Oldest first. */
  readonly versions: readonly (string | null)[];
}

/** The recipes that use an item in any of their versions, by name. */
export async function whereUsed(tx: VenueTx, item: number): Promise<readonly RecipeUse[]> {
  const { rows } = await tx.bulk.query<RecipeUse>(
    `select r.id, r.name as item, r.kind::text as kind,
            array_agg(distinct to_char(v.valid_from, 'YYYY-MM-DD') order by to_char(v.valid_from, 'YYYY-MM-DD') nulls first) as versions
     from recipe_line l join recipe_version v on (v.venue_id, v.id) = (l.venue_id, l.version_id)
     join item r on (r.venue_id, r.id) = (v.venue_id, v.item_id)
     where l.venue_id = $1 and l.item_id = $2 group by r.id, r.name, r.kind, r.name_key order by r.name_key collate "C"`,
    [tx.venue, item],
  );
  return rows;
}

/** How many recipes use each item, in any of their versions. */
export async function recipesUsing(tx: VenueTx): Promise<ReadonlyMap<number, number>> {
  const { rows } = await tx.bulk.query<{ item: number; recipes: number }>(
    `select l.item_id as item, count(distinct v.item_id)::int as recipes
     from recipe_line l join recipe_version v on (v.venue_id, v.id) = (l.venue_id, l.version_id)
     where l.venue_id = $1 group by 1`,
    [tx.venue],
  );
  return new Map(rows.map(({ item, recipes }) => [item, recipes]));
}
