import { z } from 'zod';
import type { Day } from '../../core/days';
import type { DecimalText } from '../../core/decimal-text';
import type { BaseUnit } from '../../core/units';
import type { Department } from '../../model/facts';
import { declaration, needed, oneOf, optional, text, yesNo } from '../cells';
import { day } from '../dates';
import { perCent, positive } from '../numbers';
import { keyOf, keyOfDay, keyOfName, type RowKind } from './row-kind';

/** What is stated of an ingredient from a day on. Blank: null; a column that the file does not have: undefined. */
export interface IngredientRow {
  readonly ingredient: string;
  readonly validFrom: Day | null;
  readonly measure: BaseUnit;
  readonly productGroup: string | null | undefined;
  readonly department: Department | null | undefined;
  readonly densityGPerMl: DecimalText | null | undefined;
  readonly gramsEach: DecimalText | null | undefined;
  readonly usableYield: DecimalText | null | undefined;
  /** Empty: declared to hold none; null: unknown. */
  readonly contains: readonly string[] | null | undefined;
  readonly mayContain: readonly string[] | null | undefined;
  readonly counted: boolean | null | undefined;
  readonly storagePlace: string | null | undefined;
}

export const ingredientRows: RowKind<IngredientRow> = {
  columns: {
    needed: ['ingredient', 'measure'],
    optional: [
      'valid_from',
      'product_group',
      'department',
      'density_g_per_ml',
      'grams_each',
      'usable_yield_pct',
      'contains',
      'may_contain',
      'counted',
      'storage_place',
    ],
    later: [],
  },
  schema: ({ style }) =>
    z
      .object({
        ingredient: needed(text()),
        measure: needed(oneOf(['g', 'ml', 'each'])),
        valid_from: optional(day),
        product_group: optional(text()),
        department: optional(oneOf(['food', 'drink', 'packaging'])),
        density_g_per_ml: optional(positive(style)),
        grams_each: optional(positive(style)),
        usable_yield_pct: optional(perCent({ from: 0, to: 100, open: 'from' }, style)),
        contains: optional(declaration),
        may_contain: optional(declaration),
        counted: optional(yesNo),
        storage_place: optional(text()),
      })
      .transform((row) => ({
        ingredient: row.ingredient,
        validFrom: row.valid_from ?? null,
        measure: row.measure,
        productGroup: row.product_group,
        department: row.department,
        densityGPerMl: row.density_g_per_ml,
        gramsEach: row.grams_each,
        usableYield: row.usable_yield_pct,
        contains: row.contains,
        mayContain: row.may_contain,
        counted: row.counted,
        storagePlace: row.storage_place,
      })),
  key: (cells) => keyOf(keyOfName(cells.ingredient), keyOfDay(cells.valid_from)),
};
