import { type Day, dayText } from '../core/days';
import type { DecimalText } from '../core/decimal-text';
import type { VenueTx } from './in-venue';
import { planKeyed, type Saved, type Stated } from './plan-keyed';
import { factTable, insertRows, storedRows, updateRows } from './save-rows';

/** What one unit of another currency costs from a day on. */
export interface StatedExchangeRate {
  readonly currency: string;
  readonly validFrom: Day;
  readonly rate: DecimalText;
}

const TABLE = factTable('exchange_rate', { currency: 'text', valid_from: 'date', rate: 'numeric' });

/** Saves rows of exchange_rates.csv, by currency and day. */
export async function saveExchangeRates(
  tx: VenueTx,
  rows: readonly Stated<StatedExchangeRate>[],
  closedThrough: Day | null,
): Promise<Saved> {
  const stored = new Map(
    (await storedRows(tx, TABLE)).map(({ id, currency, valid_from, rate }) => [
      `${currency}|${valid_from}`,
      { id, values: { rate } },
    ]),
  );
  const wanted = rows.map(({ line, row }) => ({
    line,
    row,
    key: `${row.currency}|${dayText(row.validFrom)}`,
    from: row.validFrom,
    values: () => ({ rate: row.rate }),
  }));
  const plan = planKeyed<StatedExchangeRate, { rate: string | null }>(wanted, stored, closedThrough);
  const fresh = plan.create.map(({ row, values }) => ({
    currency: row.currency,
    valid_from: dayText(row.validFrom),
    ...values,
  }));
  await insertRows(tx, TABLE, fresh);
  await updateRows(
    tx,
    TABLE,
    plan.change.map(({ id, values }) => ({ id, ...values })),
  );
  return { outcomes: plan.outcomes, withdrawn: 0 };
}
