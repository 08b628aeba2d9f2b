import type { Day } from '../core/days';
import type { DecimalText } from '../core/decimal-text';
import { nameKey } from '../core/name-key';
import type { BaseUnit } from '../core/units';
import type { Department } from '../model/facts';
import type { VenueTx } from './in-venue';
import { fault, isoDay, kept, planKeyed, type Saved, type Stated, type Wanted } from './plan-keyed';
import { itemId, itemsWithRecipe, type KnownItems, knownItems, settleItems } from './save-items';
import { type FactRow, factTable, insertRows, storedRows, updateRows } from './save-rows';

/** What is stated of an ingredient from a day on. Null: not known; undefined: not said. */
export interface StatedIngredient {
  readonly ingredient: string;
  readonly validFrom: Day | null;
  readonly measure: BaseUnit;
  readonly productGroup: string | null | undefined;
  readonly department: Department | null | undefined;
  readonly densityGPerMl: DecimalText | null | undefined;
  readonly gramsEach: DecimalText | null | undefined;
  readonly usableYield: DecimalText | null | undefined;
  readonly contains: readonly string[] | null | undefined;
  readonly mayContain: readonly string[] | null | undefined;
  readonly counted: boolean | null | undefined;
  readonly storagePlace: string | null | undefined;
}

const TABLE = factTable('ingredient_version', {
  item_id: 'int',
  valid_from: 'date',
  measure: 'base_unit',
  product_group: 'text',
  department: 'department',
  density_g_per_ml: 'numeric',
  grams_each: 'numeric',
  usable_yield: 'numeric',
  contains_declared: 'boolean',
  contains: 'text[]',
  may_contain_declared: 'boolean',
  may_contain: 'text[]',
  counted: 'boolean',
  storage_place: 'text',
});

type Row = FactRow<typeof TABLE.columns>;
type Values = Omit<Row, 'item_id' | 'valid_from'>;

/** Saves rows of ingredients.csv: a name that only the menu knew becomes an ingredient, one that has a recipe cannot. */
export async function saveIngredients(
  tx: VenueTx,
  rows: readonly Stated<StatedIngredient>[],
  closedThrough: Day | null,
): Promise<Saved> {
  const known = await knownItems(tx);
  const stored = await storedVersions(tx, known);
  const withRecipe = await itemsWithRecipe(tx);
  const otherMeasure = measuresBeside(rows, stored);
  const wanted = rows.map((stated) => {
    const { row } = stated;
    const there = known.get(nameKey(row.ingredient));
    if (there && there.kind !== 'ingredient' && withRecipe.has(there.id)) {
      return fault('name-taken', 'ingredient', row.ingredient, { kind: there.kind });
    }
    const other = otherMeasure(row);
    return other ? fault('measure-differs', 'measure', row.measure, { ...other }) : wantedVersion(stated);
  });
  const plan = planKeyed(wanted, stored, closedThrough);
  const named = rows.map(({ row }) => ({ name: row.ingredient, kind: 'ingredient' as const }));
  const { items, outcomes } = await settleItems(tx, known, named, plan.outcomes);
  const fresh = plan.create.map(({ row, values }) => ({
    item_id: itemId(items, row.ingredient),
    valid_from: isoDay(row.validFrom),
    ...values,
  }));
  await insertRows(tx, TABLE, fresh);
  await updateRows(
    tx,
    TABLE,
    plan.change.map(({ id, values }) => ({ id, ...values })),
  );
  return { outcomes, withdrawn: 0 };
}

type Versions = ReadonlyMap<
  string,
  { readonly id: number; readonly item: string; readonly validFrom: string; readonly values: Values }
>;

async function storedVersions(tx: VenueTx, known: KnownItems): Promise<Versions> {
  const names = new Map([...known].map(([key, { id }]) => [id, key]));
  const rows = await storedRows(tx, TABLE);
  return new Map(
    rows.map(({ id, item_id, valid_from, ...values }) => {
      const item = names.get(item_id ?? 0) ?? '';
      const validFrom = valid_from ?? '';
      return [`${item}|${validFrom}`, { id, item, validFrom, values }];
    }),
  );
}

/**
 * All dates of an ingredient share one measure: for a row, the date that states another. Dates that this file states again
 * count as this file states them, so a file may change the measure of them all.
 */
function measuresBeside(rows: readonly Stated<StatedIngredient>[], stored: Versions) {
  const inFile = new Set(rows.map(({ row }) => versionKey(row)));
  const measures = new Map<string, { readonly measure: string; readonly validFrom: string }>();
  for (const [key, { item, validFrom, values }] of stored) {
    if (!inFile.has(key) && !measures.has(item)) measures.set(item, { measure: values.measure ?? '', validFrom });
  }
  return (row: StatedIngredient) => {
    const item = nameKey(row.ingredient);
    const other = measures.get(item);
    if (!other) measures.set(item, { measure: row.measure, validFrom: isoDay(row.validFrom) ?? '' });
    return other && other.measure !== row.measure ? other : null;
  };
}

function versionKey(row: StatedIngredient): string {
  return `${nameKey(row.ingredient)}|${isoDay(row.validFrom) ?? ''}`;
}

function wantedVersion({ line, row }: Stated<StatedIngredient>): Wanted<StatedIngredient, Values> {
  return {
    line,
    row,
    key: versionKey(row),
    from: row.validFrom,
    values: (stored) => ({
      measure: row.measure,
      product_group: kept(row.productGroup, stored?.product_group, null),
      department: kept(row.department, stored?.department, null) ?? 'food',
      density_g_per_ml: kept(row.densityGPerMl, stored?.density_g_per_ml, null),
      grams_each: kept(row.gramsEach, stored?.grams_each, null),
      usable_yield: kept(row.usableYield, stored?.usable_yield, null) ?? '1',
      // what is not declared is unknown, which is never the same as none
      contains_declared: row.contains === undefined ? (stored?.contains_declared ?? false) : row.contains !== null,
      contains: kept(row.contains, stored?.contains, null) ?? [],
      may_contain_declared:
        row.mayContain === undefined ? (stored?.may_contain_declared ?? false) : row.mayContain !== null,
      may_contain: kept(row.mayContain, stored?.may_contain, null) ?? [],
      counted: kept(row.counted, stored?.counted, null),
      storage_place: kept(row.storagePlace, stored?.storage_place, null),
    }),
  };
}
