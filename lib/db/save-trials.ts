import { type Day, dayText } from '../core/days';
import type { DecimalText } from '../core/decimal-text';
import { nameKey } from '../core/name-key';
import type { VenueTx } from './in-venue';
import { dayOfFault, fault, kept, planKeyed, type Saved, type Stated } from './plan-keyed';
import { itemId, knownItems } from './save-items';
import { type FactRow, factTable, insertRows, storedRows, updateRows } from './save-rows';

/** A day of trying a dish. Outcome null: none noted; undefined: not said. */
export interface StatedTrial {
  readonly recipe: string;
  readonly day: Day;
  readonly hours: DecimalText;
  readonly grade: string;
  readonly outcome: string | null | undefined;
}

export const TRIAL = factTable('trial', {
  item_id: 'int',
  day: 'date',
  hours: 'numeric',
  grade: 'text',
  outcome: 'text',
});

type Values = Pick<FactRow<typeof TRIAL.columns>, 'hours' | 'grade' | 'outcome'>;

/** Saves rows of trials.csv, by dish and day. */
export async function saveTrials(
  tx: VenueTx,
  rows: readonly Stated<StatedTrial>[],
  closedThrough: Day | null,
): Promise<Saved> {
  const items = await knownItems(tx);
  const stored = new Map(
    (await storedRows(tx, TRIAL)).map(({ id, item_id, day, ...values }) => [`${item_id}|${day}`, { id, values }]),
  );
  const wanted = rows.map(({ line, row }) => {
    const there = items.get(nameKey(row.recipe));
    if (!there) return fault('unknown-item', 'recipe', row.recipe);
    if (there.kind === 'ingredient') return fault('not-tried', 'recipe', row.recipe);
    return {
      line,
      row,
      key: `${there.id}|${dayText(row.day)}`,
      from: row.day,
      values: (before: Values | null) => ({
        hours: row.hours,
        grade: row.grade,
        outcome: kept(row.outcome, before?.outcome, null),
      }),
    };
  });
  const plan = planKeyed<StatedTrial, Values>(wanted, stored, closedThrough);
  const fresh = plan.create.map(({ row, values }) => ({
    item_id: itemId(items, row.recipe),
    day: dayText(row.day),
    ...values,
  }));
  await insertRows(tx, TRIAL, fresh);
  await updateRows(
    tx,
    TRIAL,
    plan.change.map(({ id, values }) => ({ id, ...values })),
  );
  return { outcomes: plan.outcomes.map(dayOfFault), withdrawn: 0 };
}
