import type { DayRange } from '../core/days';
import { byText } from '../core/grouped';
import type { IngredientVersion, ItemId, NamedMeasure, Part, YieldUse } from '../model/facts';
import { byStart, dayIn, numberIn, statedBefore } from './columns';
import type { VenueTx } from './in-venue';

type ByNumber = (a: number, b: number) => number;

/** The versions of ingredients stated before the end of a range, by item and start. */
export async function loadIngredients(tx: VenueTx, range: DayRange, byItem: ByNumber): Promise<IngredientVersion[]> {
  const rows = await tx.prisma.ingredientVersion.findMany({
    where: { venueId: tx.venue, OR: statedBefore(range) },
    select: {
      itemId: true,
      validFrom: true,
      measure: true,
      productGroup: true,
      department: true,
      densityGPerMl: true,
      gramsEach: true,
      usableYield: true,
      containsDeclared: true,
      contains: true,
      mayContainDeclared: true,
      mayContain: true,
    },
  });
  rows.sort((a, b) => byItem(a.itemId, b.itemId) || byStart(a, b));
  return rows.map((row) => ({
    item: row.itemId as ItemId,
    validFrom: dayIn(row.validFrom),
    measure: row.measure,
    productGroup: row.productGroup,
    department: row.department,
    densityGPerMl: numberIn(row.densityGPerMl),
    gramsEach: numberIn(row.gramsEach),
    usableYield: numberIn(row.usableYield),
    contains: row.containsDeclared ? row.contains : null,
    mayContain: row.mayContainDeclared ? row.mayContain : null,
  }));
}

/** The ingredients' yields by use, by item and use. */
export async function loadYieldUses(tx: VenueTx, byItem: ByNumber): Promise<YieldUse[]> {
  const rows = await tx.prisma.yieldUse.findMany({
    where: { venueId: tx.venue },
    select: { itemId: true, name: true, nameKey: true, usableYield: true },
  });
  rows.sort((a, b) => byItem(a.itemId, b.itemId) || byText(a.nameKey, b.nameKey));
  return rows.map(({ itemId, name, usableYield }) => ({
    item: itemId as ItemId,
    use: name,
    usableYield: numberIn(usableYield),
  }));
}

/** The parts of split ingredients, by item and part. */
export async function loadParts(tx: VenueTx, byItem: ByNumber): Promise<Part[]> {
  const rows = await tx.prisma.part.findMany({
    where: { venueId: tx.venue },
    select: { itemId: true, name: true, nameKey: true, outputQuantity: true, outputUnit: true, costShare: true },
  });
  rows.sort((a, b) => byItem(a.itemId, b.itemId) || byText(a.nameKey, b.nameKey));
  return rows.map(({ itemId, name, outputQuantity, outputUnit, costShare }) => ({
    item: itemId as ItemId,
    name,
    outputQuantity: numberIn(outputQuantity),
    outputUnit,
    costShare: numberIn(costShare),
  }));
}

/** The ingredients' own measures, by item and name. */
export async function loadNamedMeasures(tx: VenueTx, byItem: ByNumber): Promise<NamedMeasure[]> {
  const rows = await tx.prisma.namedMeasure.findMany({
    where: { venueId: tx.venue },
    select: { itemId: true, name: true, nameKey: true, quantity: true, unit: true },
  });
  rows.sort((a, b) => byItem(a.itemId, b.itemId) || byText(a.nameKey, b.nameKey));
  return rows.map(({ itemId, name, quantity, unit }) => ({
    item: itemId as ItemId,
    name,
    quantity: numberIn(quantity),
    unit,
  }));
}
