import { z } from 'zod';
import type { Day } from '../../core/days';
import type { DecimalText } from '../../core/decimal-text';
import { NOTE_LIMIT, needed, optional, text } from '../cells';
import { day } from '../dates';
import { notNegative, positive } from '../numbers';
import { keyOf, keyOfDay, keyOfName, type RowKind } from './row-kind';

/** A day of trying a dish. Outcome null: none noted; undefined: the file has no such column. */
export interface TrialRow {
  readonly recipe: string;
  readonly day: Day;
  readonly hours: DecimalText;
  readonly grade: string;
  readonly outcome: string | null | undefined;
}

/** What a trial used. The unit may be a measure of the item's own, so it is kept as written. */
export interface TrialLineRow {
  readonly recipe: string;
  readonly day: Day;
  readonly item: string;
  readonly quantity: DecimalText;
  readonly unit: string;
}

export const trialRows: RowKind<TrialRow> = {
  columns: { needed: ['recipe', 'date', 'hours', 'grade'], optional: ['outcome'], later: [] },
  schema: ({ style }) =>
    z
      .object({
        recipe: needed(text()),
        date: needed(day),
        hours: needed(notNegative(style)),
        grade: needed(text()),
        outcome: optional(text(NOTE_LIMIT)),
      })
      .transform(({ date, ...row }) => ({ ...row, day: date, outcome: row.outcome })),
  key: (cells) => keyOf(keyOfName(cells.recipe), keyOfDay(cells.date) || null),
};

export const trialLineRows: RowKind<TrialLineRow> = {
  columns: { needed: ['recipe', 'date', 'item', 'quantity', 'unit'], optional: [], later: [] },
  schema: ({ style }) =>
    z
      .object({
        recipe: needed(text()),
        date: needed(day),
        item: needed(text()),
        quantity: needed(positive(style)),
        unit: needed(text()),
      })
      .transform(({ date, ...row }) => ({ ...row, day: date })),
  key: (cells) => keyOf(keyOfName(cells.recipe), keyOfDay(cells.date) || null),
};
