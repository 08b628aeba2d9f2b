import { type Day, parseDay } from '../core/days';
import type { DecimalText } from '../core/decimal-text';
import { grouped } from '../core/grouped';
import { nameKey } from '../core/name-key';
import type { RowFault } from '../model/refusal';
import type { VenueTx } from './in-venue';
import { recipeLineKey } from './load-recipes';
import { fault, isoDay, kept, type Outcome, type Saved, type Stated } from './plan-keyed';
import { type LinesPlan, planLines, type StoredLine } from './plan-recipe-lines';
import { type KnownItems, knownItems } from './save-items';
import { RECIPE_VERSION } from './save-recipes';
import { deleteRows, type FactRow, factTable, insertRows, storedRows, updateRows } from './save-rows';

/** One line of a version of a recipe. Null: none; undefined: not said. */
export interface StatedRecipeLine {
  readonly recipe: string;
  readonly validFrom: Day | null;
  readonly item: string;
  readonly quantity: DecimalText;
  readonly unit: string;
  readonly usedAs: 'prepared' | 'bought';
  readonly use: string | null | undefined;
  readonly part: string | null | undefined;
  readonly choice: string | null | undefined;
  readonly choiceShare: DecimalText | null | undefined;
  readonly channel: string | null | undefined;
  readonly byProductCredit: DecimalText | null | undefined;
  readonly note: string | null | undefined;
}

/** A line with its place among the lines that its file writes for the version, refused ones counted. */
export interface PlacedLine extends Stated<StatedRecipeLine> {
  readonly position: number;
}

const TABLE = factTable('recipe_line', {
  version_id: 'int',
  position: 'int',
  item_id: 'int',
  quantity: 'numeric',
  unit: 'text',
  used_as: 'line_as',
  use: 'text',
  part: 'text',
  choice: 'text',
  choice_share: 'numeric',
  channel: 'text',
  by_product_credit: 'numeric',
  note: 'text',
});

type Values = Omit<FactRow<typeof TABLE.columns>, 'version_id' | 'position'>;

interface Version {
  readonly id: number;
  readonly from: Day | null;
  readonly lines: readonly StoredLine<Values>[];
}

/**
 * Saves rows of recipe_lines.csv. `speaksFor` holds the versions (by recipeLineKey) for which the file is the whole truth, also those of whose
 * lines none could be read; null: the rows are lines that had waited and join the lines that are there.
 */
export async function saveRecipeLines(
  tx: VenueTx,
  rows: readonly PlacedLine[],
  closedThrough: Day | null,
  speaksFor: ReadonlySet<string> | null,
): Promise<Saved> {
  const items = await knownItems(tx);
  const versions = await storedVersions(tx, items);
  const daysKnown = startsOf(versions.keys());
  const outcomes: Outcome[] = rows.map(
    ({ row }) =>
      (versions.has(keyOf(row)) ? null : versionFault(row, daysKnown, items)) ?? itemFault(row, items) ?? 'unchanged',
  );
  const sound = rows.map((line, place) => ({ ...line, place })).filter(({ place }) => outcomes[place] === 'unchanged');
  const byVersion = grouped(sound, ({ row }) => keyOf(row));
  const plans: { readonly version: number; readonly plan: LinesPlan<Values> }[] = [];
  for (const key of new Set([...byVersion.keys(), ...(speaksFor ?? [])])) {
    const version = versions.get(key);
    if (!version) continue;
    const lines = byVersion.get(key) ?? [];
    const wanted = lines.map(({ row, position }) => ({
      position,
      values: (stored: Values | null) => valuesOf(row, items, stored),
    }));
    const plan = planLines(wanted, version.lines, speaksFor !== null, version.from, closedThrough);
    for (const [index, { place }] of lines.entries()) outcomes[place] = plan.outcomes[index] ?? 'unchanged';
    plans.push({ version: version.id, plan });
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
  const fresh = plans.flatMap(({ version, plan }) =>
    plan.create.map(({ position, values }) => ({ version_id: version, position, ...values })),
  );
  await insertRows(tx, TABLE, fresh);
  return { outcomes, withdrawn: plans.reduce((sum, { plan }) => sum + plan.remove.length, 0) };
}

function keyOf(row: StatedRecipeLine): string {
  return recipeLineKey(row.recipe, isoDay(row.validFrom) ?? '');
}

/** Every version of every recipe with its lines, by recipeLineKey. */
async function storedVersions(tx: VenueTx, items: KnownItems): Promise<ReadonlyMap<string, Version>> {
  const names = new Map([...items].map(([key, { id }]) => [id, key]));
  const lines = grouped(await storedRows(tx, TABLE), ({ version_id }) => version_id);
  const versions = await storedRows(tx, RECIPE_VERSION);
  return new Map(
    versions.map(({ id, item_id, valid_from }) => {
      const stored = (lines.get(id) ?? []).map(({ id: line, version_id: _, position, ...values }) => ({
        id: line,
        position: position ?? 0,
        values,
      }));
      const from = valid_from === null ? null : parseDay(valid_from);
      return [recipeLineKey(names.get(item_id ?? 0) ?? '', valid_from ?? ''), { id, from, lines: stored }];
    }),
  );
}

/** From which days each recipe has a version, by its nameKey. */
function startsOf(keys: Iterable<string>): ReadonlyMap<string, readonly string[]> {
  const parts = [...keys]
    .sort()
    .map((key) => [key.slice(0, key.lastIndexOf('|')), key.slice(key.lastIndexOf('|') + 1)]);
  return new Map(
    [...grouped(parts, ([recipe]) => recipe ?? '')].map(([recipe, of]) => [recipe, of.map(([, day]) => day ?? '')]),
  );
}

function versionFault(
  row: StatedRecipeLine,
  daysKnown: ReadonlyMap<string, readonly string[]>,
  items: KnownItems,
): RowFault {
  const recipe = nameKey(row.recipe);
  return fault('unknown-recipe', 'recipe', row.recipe, {
    kind: items.get(recipe)?.kind ?? null,
    validFrom: isoDay(row.validFrom) ?? '',
    known: daysKnown.get(recipe) ?? [],
  });
}

function itemFault(row: StatedRecipeLine, items: KnownItems): RowFault | null {
  return items.has(nameKey(row.item)) ? null : fault('unknown-item', 'item', row.item);
}

function valuesOf(row: StatedRecipeLine, items: KnownItems, stored: Values | null): Values {
  return {
    item_id: items.get(nameKey(row.item))?.id ?? 0,
    quantity: row.quantity,
    unit: row.unit,
    used_as: row.usedAs,
    use: kept(row.use, stored?.use, null),
    part: kept(row.part, stored?.part, null),
    choice: kept(row.choice, stored?.choice, null),
    choice_share: kept(row.choiceShare, stored?.choice_share, null),
    channel: kept(row.channel, stored?.channel, null),
    by_product_credit: kept(row.byProductCredit, stored?.by_product_credit, null),
    note: kept(row.note, stored?.note, null),
  };
}
