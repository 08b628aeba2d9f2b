import { z } from 'zod';
import type { Day } from '../../core/days';
import type { DecimalText } from '../../core/decimal-text';
import { CellFault, needed, optional } from '../cells';
import { day } from '../dates';
import { signed, whole } from '../numbers';
import { keyOfDay, type RowKind } from './row-kind';

/** Guests of a business day, and what the till took that day in all. */
export interface CoversRow {
  readonly day: Day;
  readonly covers: DecimalText;
  readonly tillTotal: DecimalText | null | undefined;
}

export const coversRows: RowKind<CoversRow> = {
  columns: { needed: ['date', 'covers'], optional: ['till_total'], later: [] },
  schema: ({ style }) =>
    z
      .object({ date: needed(day), covers: needed(whole(style)), till_total: optional(signed(style)) })
      .transform((row) => ({ day: row.date, covers: row.covers, tillTotal: row.till_total })),
  key: (cells) => keyOfDay(cells.date) || null,
  day(cells) {
    const read = day(cells.date?.trim() ?? '');
    return read instanceof CellFault ? null : read;
  },
};
