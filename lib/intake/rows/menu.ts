import { z } from 'zod';
import type { Day } from '../../core/days';
import type { DecimalText } from '../../core/decimal-text';
import { nameKey } from '../../core/name-key';
import { CellFault, issueOf, needed, optional, text, yesNo } from '../cells';
import { day } from '../dates';
import { notNegative, perCent } from '../numbers';
import { channel, USUAL_CHANNEL } from './channel';
import { keyOf, keyOfDay, keyOfName, type RowKind } from './row-kind';

/** The price of an item in a channel from a day on; price null: off the menu from then. */
export interface MenuRow {
  readonly item: string;
  readonly channel: string;
  readonly validFrom: Day | null;
  readonly price: DecimalText | null;
  readonly tax: DecimalText;
  readonly taxIncluded: boolean;
  /** What the channel keeps of the net price, a fraction. Blank: null; no such column: undefined. */
  readonly commission: DecimalText | null | undefined;
}

export const menuRows: RowKind<MenuRow> = {
  columns: {
    needed: ['item', 'valid_from', 'price', 'tax_pct', 'tax_included'],
    optional: ['channel', 'commission_pct', 'off_menu'],
    later: [],
  },
  schema: ({ style }) =>
    z
      .object({
        item: needed(text()),
        channel: optional(channel),
        valid_from: optional(day),
        price: optional(notNegative(style)),
        tax_pct: needed(perCent({ from: 0, to: 100, open: 'to' }, style)),
        tax_included: needed(yesNo),
        commission_pct: optional(perCent({ from: 0, to: 100, open: 'to' }, style)),
        off_menu: optional(yesNo),
      })
      .transform((row, context) => {
        const price = row.off_menu ? null : (row.price ?? null);
        if (price === null && !row.off_menu) context.addIssue(issueOf(new CellFault('blank'), 'price'));
        return {
          item: row.item,
          channel: row.channel ?? USUAL_CHANNEL,
          validFrom: row.valid_from ?? null,
          price,
          tax: row.tax_pct,
          taxIncluded: row.tax_included,
          commission: row.commission_pct,
        };
      }),
  key: (cells) =>
    keyOf(keyOfName(cells.item), nameKey(cells.channel ?? '') || USUAL_CHANNEL, keyOfDay(cells.valid_from)),
};
