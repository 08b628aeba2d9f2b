import { z } from 'zod';
import type { Day } from '../../core/days';
import type { DecimalText } from '../../core/decimal-text';
import type { MoveReason } from '../../model/facts';
import { CellFault, needed, oneOf, optional, text } from '../cells';
import { day } from '../dates';
import { notNegative, positive } from '../numbers';
import { keyOfDay, type RowKind } from './row-kind';

/** What left a place, or came, other than by sale and delivery. The unit may be a measure of the item's own, so it is kept as written. */
export interface MoveRow {
  readonly day: Day;
  readonly item: string;
  readonly quantity: DecimalText;
  readonly unit: string;
  readonly reason: MoveReason;
  /** The agreed value of a transfer. */
  readonly value: DecimalText | null;
  readonly otherVenue: string | null;
}

const REASONS: readonly MoveReason[] = [
  'spoiled',
  'over_production',
  'broken',
  'staff_food',
  'tasting',
  'transfer_in',
  'transfer_out',
];

export const moveRows: RowKind<MoveRow> = {
  columns: { needed: ['date', 'item', 'quantity', 'unit', 'reason'], optional: ['value', 'other_venue'], later: [] },
  schema: ({ style }) =>
    z
      .object({
        date: needed(day),
        item: needed(text()),
        quantity: needed(positive(style)),
        unit: needed(text()),
        reason: needed((cell) => oneOf(REASONS)(cell.replace(/[\s-]+/g, '_'))),
        value: optional(notNegative(style)),
        other_venue: optional(text()),
      })
      .transform(({ date, value, other_venue, ...row }) => ({
        ...row,
        day: date,
        value: value ?? null,
        otherVenue: other_venue ?? null,
      })),
  key: (cells) => keyOfDay(cells.date) || null,
  day(cells) {
    const read = day(cells.date?.trim() ?? '');
    return read instanceof CellFault ? null : read;
  },
};
