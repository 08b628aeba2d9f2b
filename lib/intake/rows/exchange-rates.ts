import { z } from 'zod';
import type { Day } from '../../core/days';
import type { DecimalText } from '../../core/decimal-text';
import { needed } from '../cells';
import { day } from '../dates';
import { positive } from '../numbers';
import { keyOf, keyOfDay, keyOfName, type RowKind } from './row-kind';
import { currency } from './venue';

/** What one unit of another currency costs in the venue's from a day on. */
export interface ExchangeRateRow {
  readonly currency: string;
  readonly validFrom: Day;
  readonly rate: DecimalText;
}

export const exchangeRateRows: RowKind<ExchangeRateRow> = {
  columns: { needed: ['currency', 'valid_from', 'rate'], optional: [], later: [] },
  schema: ({ style }) =>
    z
      .object({ currency: needed(currency), valid_from: needed(day), rate: needed(positive(style)) })
      .transform((row) => ({ currency: row.currency, validFrom: row.valid_from, rate: row.rate })),
  key: (cells) => keyOf(keyOfName(cells.currency), keyOfDay(cells.valid_from) || null),
};
