import { z } from 'zod';
import type { DecimalText } from '../../core/decimal-text';
import { needed, text } from '../cells';
import { perCent } from '../numbers';
import { keyOf, keyOfName, type RowKind } from './row-kind';

/** What of an ingredient is usable for one use of it, a fraction: zest, juice. */
export interface YieldRow {
  readonly ingredient: string;
  readonly use: string;
  readonly usableYield: DecimalText;
}

export const yieldRows: RowKind<YieldRow> = {
  columns: { needed: ['ingredient', 'use', 'usable_yield_pct'], optional: [], later: [] },
  schema: ({ style }) =>
    z
      .object({
        ingredient: needed(text()),
        use: needed(text()),
        usable_yield_pct: needed(perCent({ from: 0, to: 100, open: 'from' }, style)),
      })
      .transform((row) => ({ ingredient: row.ingredient, use: row.use, usableYield: row.usable_yield_pct })),
  key: (cells) => keyOf(keyOfName(cells.ingredient), keyOfName(cells.use)),
};
