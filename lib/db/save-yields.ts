import type { DecimalText } from '../core/decimal-text';
import { nameKey } from '../core/name-key';
import type { VenueTx } from './in-venue';
import { planKeyed, type Saved, type Stated } from './plan-keyed';
import { ingredientFault, itemId, knownItems } from './save-items';
import { factTable, insertRows, storedRows, updateRows } from './save-rows';

/** What of an ingredient is usable for one use of it, a fraction. */
export interface StatedYield {
  readonly ingredient: string;
  readonly use: string;
  readonly usableYield: DecimalText;
}

const TABLE = factTable('yield_use', { item_id: 'int', name: 'text', name_key: 'text', usable_yield: 'numeric' });

/** Saves rows of yields.csv, by ingredient and use. They have no date, so no closed period holds them. */
export async function saveYields(tx: VenueTx, rows: readonly Stated<StatedYield>[]): Promise<Saved> {
  const items = await knownItems(tx);
  const stored = new Map(
    (await storedRows(tx, TABLE)).map(({ id, item_id, name_key, ...values }) => [
      `${item_id}|${name_key}`,
      { id, values },
    ]),
  );
  const wanted = rows.map(({ line, row }) => {
    const unknown = ingredientFault(items, row.ingredient);
    if (unknown) return unknown;
    const key = `${itemId(items, row.ingredient)}|${nameKey(row.use)}`;
    return { line, row, key, values: () => ({ name: row.use, usable_yield: row.usableYield }) };
  });
  const plan = planKeyed<StatedYield, { name: string | null; usable_yield: string | null }>(wanted, stored, null);
  const fresh = plan.create.map(({ row, values }) => ({
    item_id: itemId(items, row.ingredient),
    name_key: nameKey(row.use),
    ...values,
  }));
  await insertRows(tx, TABLE, fresh);
  await updateRows(
    tx,
    TABLE,
    plan.change.map(({ id, values }) => ({ id, ...values })),
  );
  return { outcomes: plan.outcomes, withdrawn: 0 };
}
