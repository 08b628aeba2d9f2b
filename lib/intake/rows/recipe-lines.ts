import { z } from 'zod';
import type { Day } from '../../core/days';
import type { DecimalText } from '../../core/decimal-text';
import { NOTE_LIMIT, needed, oneOf, optional, text } from '../cells';
import { day } from '../dates';
import { positive } from '../numbers';
import { notCarried } from './not-carried';
import { keyOf, keyOfDay, keyOfName, type RowKind } from './row-kind';

/** One line of a version of a recipe. The unit may be a measure of the item's own, so it is kept as written. */
export interface RecipeLineRow {
  readonly recipe: string;
  readonly validFrom: Day | null;
  readonly item: string;
  readonly quantity: DecimalText;
  readonly unit: string;
  readonly usedAs: 'prepared' | 'bought';
  readonly note: string | null | undefined;
}

export const recipeLineRows: RowKind<RecipeLineRow> = {
  columns: {
    needed: ['recipe', 'valid_from', 'item', 'quantity', 'unit'],
    optional: ['as', 'use', 'part', 'choice', 'choice_share_pct', 'channel', 'by_product_credit', 'note'],
    later: [],
  },
  schema: ({ style }) =>
    z
      .object({
        recipe: needed(text()),
        valid_from: optional(day),
        item: needed(text()),
        quantity: needed(positive(style)),
        unit: needed(text()),
        as: optional(oneOf(['prepared', 'bought'])),
        use: notCarried,
        part: notCarried,
        choice: notCarried,
        choice_share_pct: notCarried,
        channel: notCarried,
        by_product_credit: notCarried,
        note: optional(text(NOTE_LIMIT)),
      })
      .transform((row) => ({
        recipe: row.recipe,
        validFrom: row.valid_from ?? null,
        item: row.item,
        quantity: row.quantity,
        unit: row.unit,
        usedAs: row.as ?? 'prepared',
        note: row.note,
      })),
  // loadRecipes counts the lines that wait by this key
  key: (cells) => keyOf(keyOfName(cells.recipe), keyOfDay(cells.valid_from)),
};
