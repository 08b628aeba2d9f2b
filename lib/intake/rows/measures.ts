import { z } from 'zod';
import type { DecimalText } from '../../core/decimal-text';
import { needed, text } from '../cells';
import { positive } from '../numbers';
import { keyOf, keyOfName, type RowKind } from './row-kind';
import { unit } from './unit';

/** A measure of an ingredient's own: a pod = 3 g. */
export interface MeasureRow {
  readonly ingredient: string;
  readonly name: string;
  readonly quantity: DecimalText;
  readonly unit: string;
}

export const measureRows: RowKind<MeasureRow> = {
  columns: { needed: ['ingredient', 'name', 'quantity', 'unit'], optional: [], later: [] },
  schema: ({ style }) =>
    z.object({
      ingredient: needed(text()),
      name: needed(text()),
      quantity: needed(positive(style)),
      unit: needed(unit),
    }),
  key: (cells) => keyOf(keyOfName(cells.ingredient), keyOfName(cells.name)),
};
