import { z } from 'zod';
import { type Day, dayText } from '../../core/days';
import { type DecimalText, decimalText } from '../../core/decimal-text';
import type { PriceKind } from '../../model/facts';
import { CellFault, issueOf, needed, oneOf, optional, text } from '../cells';
import { day } from '../dates';
import { notNegative, positive } from '../numbers';
import { keyOf, keyOfDay, keyOfName, type RowKind } from './row-kind';
import { currency } from './venue';

/** A dated price of one pack. A kind that is not stated is taken as the supplier's list price, the weaker of the two that enter a cost. */
export interface OfferPriceRow {
  readonly supplier: string;
  readonly code: string;
  readonly validFrom: Day;
  readonly price: DecimalText;
  readonly kind: PriceKind;
  readonly validTo: Day | null | undefined;
  readonly minimumPacks: DecimalText | null;
  readonly currency: string | null | undefined;
}

const KINDS: readonly PriceKind[] = ['agreed', 'list', 'quote', 'invoice'];
const kind = oneOf(KINDS);

function keyOfKind(cell: string | undefined): string | null {
  const read = cell?.trim() ? kind(cell.trim()) : 'list';
  return read instanceof CellFault ? null : read;
}

export const offerPriceRows: RowKind<OfferPriceRow> = {
  columns: {
    needed: ['supplier', 'code', 'valid_from', 'price'],
    optional: ['kind', 'valid_to', 'minimum_packs', 'currency'],
    later: [],
  },
  schema: ({ style }) =>
    z
      .object({
        supplier: needed(text()),
        code: needed(text()),
        valid_from: needed(day),
        price: needed(notNegative(style)),
        kind: optional(kind),
        valid_to: optional(day),
        minimum_packs: optional(positive(style)),
        currency: optional(currency),
      })
      .transform((row, context) => {
        const kindOrList = row.kind ?? 'list';
        if (row.valid_to && kindOrList !== 'agreed') {
          context.addIssue(issueOf(new CellFault('end-without-agreed', { kind: kindOrList }), 'valid_to'));
        } else if (row.valid_to && row.valid_to < row.valid_from) {
          context.addIssue(issueOf(new CellFault('end-before-start', { start: dayText(row.valid_from) }), 'valid_to'));
        }
        return {
          supplier: row.supplier,
          code: row.code,
          validFrom: row.valid_from,
          price: row.price,
          kind: kindOrList,
          validTo: row.valid_to,
          minimumPacks: row.minimum_packs ?? null,
          currency: row.currency,
        };
      }),
  key(cells, { style }) {
    const packs = cells.minimum_packs?.trim() ?? '';
    const read = packs === '' ? '' : positive(style)(packs);
    return keyOf(
      keyOfName(cells.supplier),
      keyOfName(cells.code),
      keyOfDay(cells.valid_from) || null,
      keyOfKind(cells.kind),
      read instanceof CellFault ? null : (decimalText(read) ?? ''),
    );
  },
};
