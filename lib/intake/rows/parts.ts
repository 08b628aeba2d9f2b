import { z } from 'zod';
import type { DecimalText } from '../../core/decimal-text';
import { needed, text } from '../cells';
import { perCent, positive } from '../numbers';
import { keyOf, keyOfName, type RowKind } from './row-kind';
import { unit } from './unit';

/** A part of a split ingredient: how much of it one base unit of the whole gives, and its share of the price, a fraction. */
export interface PartRow {
  readonly ingredient: string;
  readonly part: string;
  readonly outputQuantity: DecimalText;
  readonly outputUnit: string;
  readonly costShare: DecimalText;
}

export const partRows: RowKind<PartRow> = {
  columns: {
    needed: ['ingredient', 'part', 'output_quantity', 'output_unit', 'cost_share_pct'],
    optional: [],
    later: [],
  },
  schema: ({ style }) =>
    z
      .object({
        ingredient: needed(text()),
        part: needed(text()),
        output_quantity: needed(positive(style)),
        output_unit: needed(unit),
        cost_share_pct: needed(perCent({ from: 0, to: 100 }, style)),
      })
      .transform((row) => ({
        ingredient: row.ingredient,
        part: row.part,
        outputQuantity: row.output_quantity,
        outputUnit: row.output_unit,
        costShare: row.cost_share_pct,
      })),
  key: (cells) => keyOf(keyOfName(cells.ingredient), keyOfName(cells.part)),
};
