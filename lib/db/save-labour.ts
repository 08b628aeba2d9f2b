import type { Day } from '../core/days';
import type { DecimalText } from '../core/decimal-text';
import { nameKey } from '../core/name-key';
import type { VenueTx } from './in-venue';
import { isoDay, planKeyed, type Saved, type Stated } from './plan-keyed';
import { type FactRow, factTable, insertRows, storedRows, updateRows } from './save-rows';

/** What an hour of a grade costs from a day on. */
export interface StatedLabour {
  readonly grade: string;
  readonly validFrom: Day | null;
  readonly costPerHour: DecimalText;
}

const TABLE = factTable('labour_rate', {
  grade: 'text',
  grade_key: 'text',
  valid_from: 'date',
  cost_per_hour: 'numeric',
});

type Values = Pick<FactRow<typeof TABLE.columns>, 'grade' | 'cost_per_hour'>;

/** Saves rows of labour.csv, by grade and valid_from. */
export async function saveLabour(
  tx: VenueTx,
  rows: readonly Stated<StatedLabour>[],
  closedThrough: Day | null,
): Promise<Saved> {
  const stored = new Map(
    (await storedRows(tx, TABLE)).map(({ id, grade_key, valid_from, ...values }) => [
      `${grade_key}|${valid_from ?? ''}`,
      { id, values },
    ]),
  );
  const wanted = rows.map(({ line, row }) => ({
    line,
    row,
    key: `${nameKey(row.grade)}|${isoDay(row.validFrom) ?? ''}`,
    from: row.validFrom,
    values: () => ({ grade: row.grade, cost_per_hour: row.costPerHour }),
  }));
  const plan = planKeyed<StatedLabour, Values>(wanted, stored, closedThrough);
  const fresh = plan.create.map(({ row, values }) => ({
    grade_key: nameKey(row.grade),
    valid_from: isoDay(row.validFrom),
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
