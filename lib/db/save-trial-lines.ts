import { type Day, dayText, parseDay } from '../core/days';
import type { DecimalText } from '../core/decimal-text';
import { grouped } from '../core/grouped';
import { nameKey } from '../core/name-key';
import type { RowFault } from '../model/refusal';
import type { VenueTx } from './in-venue';
import { fault, type Outcome, type Saved, type Stated } from './plan-keyed';
import { type LinesPlan, planLines, type StoredLine } from './plan-recipe-lines';
import { itemId, type KnownItems, knownItems } from './save-items';
import { deleteRows, type FactRow, factTable, insertRows, storedRows, updateRows } from './save-rows';
import { TRIAL } from './save-trials';

/** Something that a trial used. */
export interface StatedTrialLine {
  readonly recipe: string;
  readonly day: Day;
  readonly item: string;
  readonly quantity: DecimalText;
  readonly unit: string;
}

/** A line with its place among the lines that its file writes for the trial, refused ones counted. */
export interface PlacedTrialLine extends Stated<StatedTrialLine> {
  readonly position: number;
}

const TABLE = factTable('trial_line', {
  trial_id: 'int',
  position: 'int',
  item_id: 'int',
  quantity: 'numeric',
  unit: 'text',
});

type Values = Omit<FactRow<typeof TABLE.columns>, 'trial_id' | 'position'>;

interface TrialLines {
  readonly id: number;
  readonly day: Day | null;
  readonly lines: readonly StoredLine<Values>[];
}

/**
 * Saves rows of trial_lines.csv. `speaksFor` holds the trials (dish and day) for which the file is the whole truth, also those of whose lines
 * none could be read; null: the rows are lines that had waited and join the lines that are there.
 */
export async function saveTrialLines(
  tx: VenueTx,
  rows: readonly PlacedTrialLine[],
  closedThrough: Day | null,
  speaksFor: ReadonlySet<string> | null,
): Promise<Saved> {
  const items = await knownItems(tx);
  const trials = await storedTrials(tx, items);
  const outcomes: Outcome[] = rows.map(({ row }) => unknownIn(row, trials, items) ?? 'unchanged');
  const sound = rows.map((line, place) => ({ ...line, place })).filter(({ place }) => outcomes[place] === 'unchanged');
  const byTrial = grouped(sound, ({ row }) => keyOf(row));
  const plans: { readonly trial: number; readonly plan: LinesPlan<Values> }[] = [];
  for (const key of new Set([...byTrial.keys(), ...(speaksFor ?? [])])) {
    const trial = trials.get(key);
    if (!trial) continue;
    const lines = byTrial.get(key) ?? [];
    const wanted = lines.map(({ row, position }) => {
      const values = { item_id: itemId(items, row.item), quantity: row.quantity, unit: row.unit };
      return { position, values: () => values };
    });
    const plan = planLines<Values>(wanted, trial.lines, speaksFor !== null, trial.day, closedThrough, 'date');
    for (const [index, { place }] of lines.entries()) outcomes[place] = plan.outcomes[index] ?? 'unchanged';
    plans.push({ trial: trial.id, plan });
  }
  await deleteRows(
    tx,
    TABLE,
    plans.flatMap(({ plan }) => plan.remove),
  );
  await updateRows(
    tx,
    TABLE,
    plans.flatMap(({ plan }) => plan.change.map(({ id, values }) => ({ id, ...values }))),
  );
  const fresh = plans.flatMap(({ trial, plan }) =>
    plan.create.map(({ position, values }) => ({ trial_id: trial, position, ...values })),
  );
  await insertRows(tx, TABLE, fresh);
  return { outcomes, withdrawn: plans.reduce((sum, { plan }) => sum + plan.remove.length, 0) };
}

function keyOf(row: StatedTrialLine): string {
  return `${nameKey(row.recipe)}|${dayText(row.day)}`;
}

function unknownIn(row: StatedTrialLine, trials: ReadonlyMap<string, TrialLines>, items: KnownItems): RowFault | null {
  if (!trials.has(keyOf(row))) return fault('unknown-trial', 'recipe', row.recipe, { day: dayText(row.day) });
  return items.has(nameKey(row.item)) ? null : fault('unknown-item', 'item', row.item);
}

/** Every trial with its lines, by dish and day. */
async function storedTrials(tx: VenueTx, items: KnownItems): Promise<ReadonlyMap<string, TrialLines>> {
  const names = new Map([...items].map(([key, { id }]) => [id, key]));
  const lines = grouped(await storedRows(tx, TABLE), ({ trial_id }) => trial_id);
  return new Map(
    (await storedRows(tx, TRIAL)).map(({ id, item_id, day }) => {
      const stored = (lines.get(id) ?? []).map(({ id: line, trial_id: _, position, ...values }) => ({
        id: line,
        position: position ?? 0,
        values,
      }));
      return [`${names.get(item_id ?? 0)}|${day}`, { id, day: day === null ? null : parseDay(day), lines: stored }];
    }),
  );
}
