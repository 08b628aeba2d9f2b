import { z } from 'zod';
import type { Day } from '../../core/days';
import type { DecimalText } from '../../core/decimal-text';
import { CellFault, issueOf, NOTE_LIMIT, needed, oneOf, optional, text } from '../cells';
import { day } from '../dates';
import { notNegative, perCent, positive } from '../numbers';
import { channel } from './channel';
import { keyOf, keyOfDay, keyOfName, type RowKind } from './row-kind';

/**
 * One line of a version of a recipe. The unit may be a measure of the item's own, and use and part are names that other files give it, so
 * they are kept as written. Blank: null; a column that the file does not have: undefined.
 */
export interface RecipeLineRow {
  readonly recipe: string;
  readonly validFrom: Day | null;
  readonly item: string;
  readonly quantity: DecimalText;
  readonly unit: string;
  readonly usedAs: 'prepared' | 'bought';
  readonly use: string | null | undefined;
  readonly part: string | null | undefined;
  readonly choice: string | null | undefined;
  /** A fraction; filled in where the line is one of a choice, and only there. */
  readonly choiceShare: DecimalText | null | undefined;
  readonly channel: string | null | undefined;
  readonly byProductCredit: DecimalText | null | undefined;
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
        use: optional(text()),
        part: optional(text()),
        choice: optional(text()),
        choice_share_pct: optional(perCent({ from: 0, to: 100 }, style)),
        channel: optional(channel),
        by_product_credit: optional(notNegative(style)),
        note: optional(text(NOTE_LIMIT)),
      })
      .transform((row, context) => {
        const { choice, choice_share_pct: share } = row;
        if (choice && share == null) {
          context.addIssue(issueOf(new CellFault('pair-incomplete', { other: 'choice' }), 'choice_share_pct'));
        } else if (!choice && share != null) {
          context.addIssue(issueOf(new CellFault('pair-incomplete', { other: 'choice_share_pct' }), 'choice'));
        }
        return {
          recipe: row.recipe,
          validFrom: row.valid_from ?? null,
          item: row.item,
          quantity: row.quantity,
          unit: row.unit,
          usedAs: row.as ?? 'prepared',
          use: row.use,
          part: row.part,
          // one of the two blank means neither, also where the file lacks the other's column
          choice: share === null ? null : choice,
          choiceShare: choice === null ? null : share,
          channel: row.channel,
          byProductCredit: row.by_product_credit,
          note: row.note,
        };
      }),
  // loadRecipes counts the lines that wait by this key
  key: (cells) => keyOf(keyOfName(cells.recipe), keyOfDay(cells.valid_from)),
};
