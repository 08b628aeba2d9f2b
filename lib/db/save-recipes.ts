import type { Day } from '../core/days';
import type { DecimalText } from '../core/decimal-text';
import { nameKey } from '../core/name-key';
import type { Department, ItemKind } from '../model/facts';
import type { RowFault } from '../model/refusal';
import type { VenueTx } from './in-venue';
import { closedFault, fault, isoDay, kept, planKeyed, type Saved, type Stated } from './plan-keyed';
import { itemId, type KnownItems, knownItems, settleItems } from './save-items';
import { type FactRow, factTable, insertRows, storedRows, updateRows } from './save-rows';

/** A version of a recipe. Null: not known; undefined: not said. */
export interface StatedRecipe {
  readonly recipe: string;
  readonly kind: Exclude<ItemKind, 'ingredient'>;
  readonly validFrom: Day | null;
  readonly section: string | null | undefined;
  readonly department: Department | null | undefined;
  readonly yieldQuantity: DecimalText | null | undefined;
  readonly yieldUnit: string | null | undefined;
  readonly alsoQuantity: DecimalText | null | undefined;
  readonly alsoUnit: string | null | undefined;
  readonly batchLossG: DecimalText | null | undefined;
  readonly breakage: DecimalText | null | undefined;
  readonly estimatedCost: DecimalText | null | undefined;
  readonly overrun: DecimalText | null | undefined;
  readonly handsOnMinutes: DecimalText | null | undefined;
  readonly grade: string | null | undefined;
  readonly platingMinutes: DecimalText | null | undefined;
  readonly platingGrade: string | null | undefined;
  readonly shelfLifeDays: number | null | undefined;
  readonly smallestBatch: DecimalText | null | undefined;
  readonly thrownAtClose: boolean | null | undefined;
  readonly cautions: readonly string[] | null | undefined;
}

export const RECIPE_VERSION = factTable('recipe_version', {
  item_id: 'int',
  valid_from: 'date',
  section: 'text',
  department: 'department',
  yield_quantity: 'numeric',
  yield_unit: 'text',
  also_quantity: 'numeric',
  also_unit: 'text',
  batch_loss_g: 'numeric',
  breakage: 'numeric',
  estimated_cost: 'numeric',
  overrun: 'numeric',
  hands_on_minutes: 'numeric',
  grade: 'text',
  plating_minutes: 'numeric',
  plating_grade: 'text',
  shelf_life_days: 'int',
  smallest_batch: 'numeric',
  thrown_at_close: 'boolean',
  cautions: 'text[]',
});

type Values = Omit<FactRow<typeof RECIPE_VERSION.columns>, 'item_id' | 'valid_from'>;

const versionKey = (row: StatedRecipe): string => `${nameKey(row.recipe)}|${isoDay(row.validFrom) ?? ''}`;

/** Saves rows of recipes.csv, by name and valid_from. What only the menu knew gets its true kind; an ingredient's name is taken. */
export async function saveRecipes(
  tx: VenueTx,
  rows: readonly Stated<StatedRecipe>[],
  closedThrough: Day | null,
): Promise<Saved> {
  const known = await knownItems(tx);
  const stored = await storedVersions(tx, known);
  const kindFault = kindsInFile(rows, known, stored, closedThrough);
  const wanted = rows.map(({ line, row }) => {
    if (known.get(nameKey(row.recipe))?.kind === 'ingredient') {
      return fault('name-taken', 'recipe', row.recipe, { kind: 'ingredient' });
    }
    return (
      kindFault(line, row) ?? {
        line,
        row,
        key: versionKey(row),
        from: row.validFrom,
        values: (before: Values | null) => valuesOf(row, before),
      }
    );
  });
  const plan = planKeyed(wanted, stored, closedThrough);
  const named = rows.map(({ row }) => ({ name: row.recipe, kind: row.kind }));
  const { items, outcomes } = await settleItems(tx, known, named, plan.outcomes);
  const fresh = plan.create.map(({ row, values }) => ({
    item_id: itemId(items, row.recipe),
    valid_from: isoDay(row.validFrom),
    ...values,
  }));
  await insertRows(tx, RECIPE_VERSION, fresh);
  await updateRows(
    tx,
    RECIPE_VERSION,
    plan.change.map(({ id, values }) => ({ id, ...values })),
  );
  return { outcomes, withdrawn: 0 };
}

async function storedVersions(
  tx: VenueTx,
  known: KnownItems,
): Promise<ReadonlyMap<string, { readonly id: number; readonly item: string; readonly values: Values }>> {
  const names = new Map([...known].map(([key, { id }]) => [id, key]));
  const rows = await storedRows(tx, RECIPE_VERSION);
  return new Map(
    rows.map(({ id, item_id, valid_from, ...values }) => {
      const item = names.get(item_id ?? 0) ?? '';
      return [`${item}|${valid_from ?? ''}`, { id, item, values }];
    }),
  );
}

/**
 * A recipe is of one kind whatever the date: the first row of a file that names it says which. It can change a recipe that is there, but
 * not once a version of it is closed.
 */
function kindsInFile(
  rows: readonly Stated<StatedRecipe>[],
  known: KnownItems,
  stored: ReadonlyMap<string, { readonly item: string }>,
  closedThrough: Day | null,
): (line: number, row: StatedRecipe) => RowFault | null {
  const firsts = new Map<string, Stated<StatedRecipe>>();
  for (const stated of rows) {
    const key = nameKey(stated.row.recipe);
    if (!firsts.has(key)) firsts.set(key, stated);
  }
  const sealed = new Set([...stored].filter(([key]) => isSealed(key, closedThrough)).map(([, { item }]) => item));
  return (_, row) => {
    const key = nameKey(row.recipe);
    const first = firsts.get(key);
    if (first && first.row.kind !== row.kind) {
      return fault('kind-differs', 'kind', row.kind, { kind: first.row.kind, line: first.line });
    }
    const there = known.get(key);
    return there && there.kind !== row.kind && sealed.has(key) ? closedFault(null, closedThrough, 'kind') : null;
  };
}

function isSealed(versionKeyText: string, closedThrough: Day | null): boolean {
  const from = versionKeyText.slice(versionKeyText.lastIndexOf('|') + 1);
  return closedThrough !== null && (from === '' || from <= (isoDay(closedThrough) ?? ''));
}

function valuesOf(row: StatedRecipe, stored: Values | null): Values {
  return {
    section: kept(row.section, stored?.section, null),
    department: kept(row.department, stored?.department, null),
    yield_quantity: kept(row.yieldQuantity, stored?.yield_quantity, null),
    yield_unit: kept(row.yieldUnit, stored?.yield_unit, null),
    also_quantity: kept(row.alsoQuantity, stored?.also_quantity, null),
    also_unit: kept(row.alsoUnit, stored?.also_unit, null),
    batch_loss_g: kept(row.batchLossG, stored?.batch_loss_g, null),
    breakage: kept(row.breakage, stored?.breakage, null) ?? '0',
    estimated_cost: kept(row.estimatedCost, stored?.estimated_cost, null),
    overrun: kept(row.overrun, stored?.overrun, null),
    hands_on_minutes: kept(row.handsOnMinutes, stored?.hands_on_minutes, null),
    grade: kept(row.grade, stored?.grade, null),
    plating_minutes: kept(row.platingMinutes, stored?.plating_minutes, null),
    plating_grade: kept(row.platingGrade, stored?.plating_grade, null),
    shelf_life_days: kept(row.shelfLifeDays, stored?.shelf_life_days, null),
    smallest_batch: kept(row.smallestBatch, stored?.smallest_batch, null),
    thrown_at_close: kept(row.thrownAtClose, stored?.thrown_at_close, null) ?? false,
    cautions: kept(row.cautions, stored?.cautions, null) ?? [],
  };
}
