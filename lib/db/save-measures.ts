import type { DecimalText } from '../core/decimal-text';
import { nameKey } from '../core/name-key';
import type { VenueTx } from './in-venue';
import { planKeyed, type Saved, type Stated } from './plan-keyed';
import { ingredientFault, itemId, knownItems } from './save-items';
import { factTable, insertRows, storedRows, updateRows } from './save-rows';

/** A measure of an ingredient's own: a pod = 3 g. */
export interface StatedMeasure {
  readonly ingredient: string;
  readonly name: string;
  readonly quantity: DecimalText;
  readonly unit: string;
}

const TABLE = factTable('named_measure', {
  item_id: 'int',
  name: 'text',
  name_key: 'text',
  quantity: 'numeric',
  unit: 'text',
});

/** Saves rows of measures.csv, by ingredient and name. They have no date, so no closed period holds them. */
export async function saveMeasures(tx: VenueTx, rows: readonly Stated<StatedMeasure>[]): Promise<Saved> {
  const items = await knownItems(tx);
  const stored = new Map(
    (await storedRows(tx, TABLE)).map(({ id, item_id, name_key, name, quantity, unit }) => [
      `${item_id}|${name_key}`,
      { id, values: { name, quantity, unit } },
    ]),
  );
  const wanted = rows.map(({ line, row }) => {
    const unknown = ingredientFault(items, row.ingredient);
    if (unknown) return unknown;
    const key = `${itemId(items, row.ingredient)}|${nameKey(row.name)}`;
    const { name, quantity, unit } = row;
    return { line, row, key, values: () => ({ name, quantity, unit }) };
  });
  const plan = planKeyed<StatedMeasure, { name: string | null; quantity: string | null; unit: string | null }>(
    wanted,
    stored,
    null,
  );
  const fresh = plan.create.map(({ row, values }) => ({
    item_id: itemId(items, row.ingredient),
    name_key: nameKey(row.name),
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
