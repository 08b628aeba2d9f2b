import { type Day, dayText } from '../core/days';
import type { DecimalText } from '../core/decimal-text';
import { nameKey } from '../core/name-key';
import type { PurchaseKind } from '../model/facts';
import type { VenueTx } from './in-venue';
import { fault, isoDay, type Saved, type Stated } from './plan-keyed';
import { knownOffers } from './save-offers';
import { factTable } from './save-rows';
import { type SpokenBy, saveSpoken } from './save-spoken';
import type { SpokenKind } from './save-spoken-scopes';
import { suppliersNamed } from './save-suppliers';

/** A line of an invoice, or of a delivery whose invoice has not come. */
export interface StatedPurchase {
  readonly day: Day;
  readonly supplier: string;
  readonly invoice: string | null;
  readonly kind: PurchaseKind;
  readonly code: string | null;
  readonly packs: DecimalText | null;
  readonly quantity: DecimalText | null;
  readonly unit: string | null;
  readonly amount: DecimalText | null;
  readonly deliveredOn: Day | null;
}

const PURCHASES: SpokenKind = {
  kind: 'purchases',
  table: factTable('purchase_line', {
    day: 'date',
    delivered_on: 'date',
    supplier_id: 'int',
    invoice: 'text',
    kind: 'purchase_kind',
    offer_id: 'int',
    packs: 'numeric',
    quantity: 'numeric',
    unit: 'text',
    amount: 'numeric',
  }),
  names: ({ kind, offer_id }) => `${kind}|${offer_id ?? ''}`,
};

/**
 * Saves rows of purchases.csv: the file is the whole truth for each supplier and invoice in it, or for the supplier's day where the invoice has
 * not come. A supplier named here first is made; a code that no offer has waits.
 */
export async function savePurchases(
  tx: VenueTx,
  rows: readonly Stated<StatedPurchase>[],
  by: SpokenBy,
): Promise<Saved> {
  const suppliers = await suppliersNamed(
    tx,
    rows.map(({ row }) => row.supplier),
  );
  const offers = await knownOffers(tx);
  const wanted = rows.map(({ line, row }) => {
    const supplier = suppliers.get(nameKey(row.supplier)) ?? null;
    const offer = row.code === null ? null : offers.get(`${supplier}|${nameKey(row.code)}`);
    if (offer === undefined) {
      return { line, scope: scopeOf(row), says: fault('unknown-offer', 'code', row.code, { supplier: row.supplier }) };
    }
    const says = {
      day: dayText(row.day),
      delivered_on: isoDay(row.deliveredOn),
      supplier_id: supplier,
      invoice: row.invoice,
      kind: row.kind,
      offer_id: offer,
      packs: row.packs,
      quantity: row.quantity,
      unit: row.unit,
      amount: row.amount,
    };
    return { line, scope: scopeOf(row), says };
  });
  return saveSpoken(tx, PURCHASES, wanted, by);
}

function scopeOf({ supplier, invoice, day }: StatedPurchase): string {
  return invoice === null ? `${nameKey(supplier)}||${dayText(day)}` : `${nameKey(supplier)}|${nameKey(invoice)}`;
}
