import { z } from 'zod';
import type { Day } from '../../core/days';
import type { DecimalText } from '../../core/decimal-text';
import { nameKey } from '../../core/name-key';
import { needed, optional, text } from '../cells';
import { day } from '../dates';
import { notNegative } from '../numbers';
import { keyOf, keyOfDay, keyOfName, type RowKind } from './row-kind';

/** What stood in one place at the end of a business day. The unit may be a measure of the item's own, so it is kept as written. */
export interface CountRow {
  readonly day: Day;
  readonly item: string;
  readonly part: string | null;
  readonly quantity: DecimalText;
  readonly unit: string;
  readonly place: string | null;
}

export const countRows: RowKind<CountRow> = {
  columns: { needed: ['date', 'item', 'quantity', 'unit'], optional: ['part', 'place'], later: [] },
  schema: ({ style }) =>
    z
      .object({
        date: needed(day),
        item: needed(text()),
        part: optional(text()),
        quantity: needed(notNegative(style)),
        unit: needed(text()),
        place: optional(text()),
      })
      .transform(({ date, part, place, ...row }) => ({ ...row, day: date, part: part ?? null, place: place ?? null })),
  key: (cells) =>
    keyOf(keyOfDay(cells.date) || null, keyOfName(cells.item), nameKey(cells.part ?? ''), nameKey(cells.place ?? '')),
};
