import { z } from 'zod';
import type { Day } from '../../core/days';
import type { DecimalText } from '../../core/decimal-text';
import { needed, optional, text } from '../cells';
import { day } from '../dates';
import { notNegative } from '../numbers';
import { keyOf, keyOfDay, keyOfName, type RowKind } from './row-kind';

/** What an hour of a grade costs from a day on, in venue currency. validFrom null: from the beginning. */
export interface LabourRow {
  readonly grade: string;
  readonly validFrom: Day | null;
  readonly costPerHour: DecimalText;
}

export const labourRows: RowKind<LabourRow> = {
  columns: { needed: ['grade', 'valid_from', 'cost_per_hour'], optional: [], later: [] },
  schema: ({ style }) =>
    z
      .object({ grade: needed(text()), valid_from: optional(day), cost_per_hour: needed(notNegative(style)) })
      .transform((row) => ({
        grade: row.grade,
        validFrom: row.valid_from ?? null,
        costPerHour: row.cost_per_hour,
      })),
  key: (cells) => keyOf(keyOfName(cells.grade), keyOfDay(cells.valid_from)),
};
