import { z } from 'zod';
import type { Day } from '../../core/days';
import type { DecimalText } from '../../core/decimal-text';
import { CellFault, issueOf, NOTE_LIMIT, needed, optional, type ReadCell, text, yesNo } from '../cells';
import { day } from '../dates';
import { isGtin } from '../gtin';
import { positive } from '../numbers';
import { keyOf, keyOfName, type RowKind } from './row-kind';

/** What a supplier offers of an ingredient: a pack is packCount pieces of packSize packUnit. */
export interface OfferRow {
  readonly supplier: string;
  readonly code: string;
  readonly ingredient: string;
  readonly packCount: DecimalText;
  readonly packSize: DecimalText;
  readonly packUnit: string;
  readonly description: string | null | undefined;
  readonly gtin: string | null | undefined;
  /** Whether it is the one bought; null or undefined where the file does not say. */
  readonly chosen: boolean | null | undefined;
  readonly chosenFrom: Day | null;
}

const gtin: ReadCell<string> = (cell) => {
  const digits = cell.replace(/[\s-]/g, '');
  return isGtin(digits) ? digits : new CellFault('gtin');
};

export const offerRows: RowKind<OfferRow> = {
  columns: {
    needed: ['supplier', 'code', 'ingredient', 'pack_count', 'pack_size', 'pack_unit'],
    optional: ['description', 'gtin', 'chosen', 'chosen_from'],
    later: [],
  },
  schema: ({ style }) =>
    z
      .object({
        supplier: needed(text()),
        code: needed(text()),
        ingredient: needed(text()),
        pack_count: needed(positive(style)),
        pack_size: needed(positive(style)),
        pack_unit: needed(text()),
        description: optional(text(NOTE_LIMIT)),
        gtin: optional(gtin),
        chosen: optional(yesNo),
        chosen_from: optional(day),
      })
      .transform((row, context) => {
        if (row.chosen_from && !row.chosen)
          context.addIssue(issueOf(new CellFault('chosen-from-alone'), 'chosen_from'));
        return {
          supplier: row.supplier,
          code: row.code,
          ingredient: row.ingredient,
          packCount: row.pack_count,
          packSize: row.pack_size,
          packUnit: row.pack_unit,
          description: row.description,
          gtin: row.gtin,
          chosen: row.chosen,
          chosenFrom: row.chosen_from ?? null,
        };
      }),
  key: (cells) => keyOf(keyOfName(cells.supplier), keyOfName(cells.code)),
};
