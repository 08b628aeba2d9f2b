import type { DecimalText } from '../core/decimal-text';
import { nameKey } from '../core/name-key';
import type { VenueTx } from './in-venue';
import { kept, planKeyed, type Saved, type Stated } from './plan-keyed';
import { type FactRow, factTable, insertRows, storedRows, updateRows } from './save-rows';

/** What is stated of a supplier. Null: not known; undefined: not said. */
export interface StatedSupplier {
  readonly supplier: string;
  readonly contact: string | null | undefined;
  readonly email: string | null | undefined;
  readonly orderDays: string | null | undefined;
  readonly minimumOrder: DecimalText | null | undefined;
  readonly deliveryCharge: DecimalText | null | undefined;
}

const TABLE = factTable('supplier', {
  name: 'text',
  name_key: 'text',
  contact: 'text',
  email: 'text',
  order_days: 'text',
  minimum_order: 'numeric',
  delivery_charge: 'numeric',
});

/** Saves rows of suppliers.csv by name. They have no date, so no closed period holds them. */
export async function saveSuppliers(tx: VenueTx, rows: readonly Stated<StatedSupplier>[]): Promise<Saved> {
  const stored = new Map(
    (await storedRows(tx, TABLE)).map(({ id, name_key, ...values }) => [name_key ?? '', { id, values }]),
  );
  const wanted = rows.map(({ line, row }) => ({
    line,
    row,
    key: nameKey(row.supplier),
    values: (before: Omit<FactRow<typeof TABLE.columns>, 'name_key'> | null) => ({
      name: row.supplier,
      contact: kept(row.contact, before?.contact, null),
      email: kept(row.email, before?.email, null),
      order_days: kept(row.orderDays, before?.order_days, null),
      minimum_order: kept(row.minimumOrder, before?.minimum_order, null),
      delivery_charge: kept(row.deliveryCharge, before?.delivery_charge, null),
    }),
  }));
  const plan = planKeyed(wanted, stored, null);
  await insertRows(
    tx,
    TABLE,
    plan.create.map(({ row, values }) => ({ name_key: nameKey(row.supplier), ...values })),
  );
  await updateRows(
    tx,
    TABLE,
    plan.change.map(({ id, values }) => ({ id, ...values })),
  );
  return { outcomes: plan.outcomes, withdrawn: 0 };
}

/** Suppliers by nameKey, those named here for the first time made. */
export async function suppliersNamed(tx: VenueTx, names: readonly string[]): Promise<ReadonlyMap<string, number>> {
  const known = await knownSuppliers(tx);
  const fresh = new Map<string, string>();
  for (const name of names) {
    const key = nameKey(name);
    if (!known.has(key) && !fresh.has(key)) fresh.set(key, name);
  }
  if (fresh.size === 0) return known;
  const unsaid = { contact: null, email: null, order_days: null, minimum_order: null, delivery_charge: null };
  await insertRows(
    tx,
    TABLE,
    [...fresh].map(([name_key, name]) => ({ name, name_key, ...unsaid })),
  );
  return knownSuppliers(tx);
}

export async function knownSuppliers(tx: VenueTx): Promise<ReadonlyMap<string, number>> {
  return new Map((await storedRows(tx, TABLE)).map(({ id, name_key }) => [name_key ?? '', id]));
}
