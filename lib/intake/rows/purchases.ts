import { z } from 'zod';
import type { Day } from '../../core/days';
import type { DecimalText } from '../../core/decimal-text';
import type { PurchaseKind } from '../../model/facts';
import { CellFault, issueOf, needed, oneOf, optional, text } from '../cells';
import { day } from '../dates';
import { signed } from '../numbers';
import { keyOf, keyOfDay, keyOfName, type RowKind } from './row-kind';

/**
 * A line of an invoice, or of a delivery whose invoice has not come. The unit may be a measure of the ingredient's own, so it is kept as
 * written. Returned goods are negative; a price credit has an amount and no quantity.
 */
export interface PurchaseRow {
  readonly day: Day;
  readonly supplier: string;
  readonly invoice: string | null;
  readonly kind: PurchaseKind;
  readonly code: string | null;
  readonly packs: DecimalText | null;
  readonly quantity: DecimalText | null;
  readonly unit: string | null;
  /** Net of recoverable tax; null: goods that are accrued at the agreed price. */
  readonly amount: DecimalText | null;
  readonly deliveredOn: Day | null;
}

const KINDS: readonly PurchaseKind[] = ['goods', 'credit', 'freight', 'deposit', 'rebate', 'non_food'];

type Read = Pick<PurchaseRow, 'kind' | 'code' | 'packs' | 'quantity' | 'unit' | 'amount'>;

/** What is wrong between the cells of a row, with the column to mend; null where nothing is. */
function faultBetween({ kind, code, packs, quantity, unit, amount }: Read): readonly [CellFault, string] | null {
  if (quantity && !unit) return [new CellFault('pair-incomplete', { other: 'quantity' }), 'unit'];
  if (unit && !quantity) return [new CellFault('pair-incomplete', { other: 'unit' }), 'quantity'];
  if (kind !== 'goods') return amount === null ? [new CellFault('blank'), 'amount'] : null;
  if (code === null) return [new CellFault('goods-without-code'), 'code'];
  return packs === null && quantity === null ? [new CellFault('nothing-delivered'), 'packs'] : null;
}

export const purchaseRows: RowKind<PurchaseRow> = {
  columns: {
    needed: ['date', 'supplier', 'invoice', 'amount'],
    optional: ['kind', 'code', 'packs', 'quantity', 'unit', 'delivered_on'],
    later: [],
  },
  schema: ({ style }) =>
    z
      .object({
        date: needed(day),
        supplier: needed(text()),
        invoice: optional(text()),
        kind: optional((cell) => oneOf(KINDS)(cell.replace(/[\s-]+/g, '_'))),
        code: optional(text()),
        packs: optional(signed(style)),
        quantity: optional(signed(style)),
        unit: optional(text()),
        amount: optional(signed(style)),
        delivered_on: optional(day),
      })
      .transform((row, context) => {
        const read: PurchaseRow = {
          day: row.date,
          supplier: row.supplier,
          invoice: row.invoice ?? null,
          kind: row.kind ?? 'goods',
          code: row.code ?? null,
          packs: row.packs ?? null,
          quantity: row.quantity ?? null,
          unit: row.unit ?? null,
          amount: row.amount ?? null,
          deliveredOn: row.delivered_on ?? null,
        };
        const fault = faultBetween(read);
        if (fault) context.addIssue(issueOf(...fault));
        return read;
      }),
  // what has no invoice yet is known by its day
  key(cells) {
    const invoiced = (cells.invoice ?? '').trim() !== '';
    return keyOf(
      keyOfName(cells.supplier),
      ...(invoiced ? [keyOfName(cells.invoice)] : ['', keyOfDay(cells.date) || null]),
    );
  },
};
