import type { DecimalText } from '../core/decimal-text';
import { nameKey } from '../core/name-key';
import type { VenueTx } from './in-venue';
import { planKeyed, type Saved, type Stated } from './plan-keyed';
import { ingredientFault, itemId, knownItems } from './save-items';
import { type FactRow, factTable, insertRows, storedRows, updateRows } from './save-rows';

/** A part of a split ingredient; its share of the price is a fraction. */
export interface StatedPart {
  readonly ingredient: string;
  readonly part: string;
  readonly outputQuantity: DecimalText;
  readonly outputUnit: string;
  readonly costShare: DecimalText;
}

const TABLE = factTable('part', {
  item_id: 'int',
  name: 'text',
  name_key: 'text',
  output_quantity: 'numeric',
  output_unit: 'text',
  cost_share: 'numeric',
});

type Values = Omit<FactRow<typeof TABLE.columns>, 'item_id' | 'name_key'>;

/** Saves rows of parts.csv, by ingredient and part. They have no date, so no closed period holds them. */
export async function saveParts(tx: VenueTx, rows: readonly Stated<StatedPart>[]): Promise<Saved> {
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
    const key = `${itemId(items, row.ingredient)}|${nameKey(row.part)}`;
    const values: Values = {
      name: row.part,
      output_quantity: row.outputQuantity,
      output_unit: row.outputUnit,
      cost_share: row.costShare,
    };
    return { line, row, key, values: () => values };
  });
  const plan = planKeyed<StatedPart, Values>(wanted, stored, null);
  const fresh = plan.create.map(({ row, values }) => ({
    item_id: itemId(items, row.ingredient),
    name_key: nameKey(row.part),
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
