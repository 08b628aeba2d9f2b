import type { DayRange } from '../core/days';
import { byText } from '../core/grouped';
import type { IngredientVersion, ItemId, NamedMeasure } from '../model/facts';
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
    },
  });
  rows.sort((a, b) => byItem(a.itemId, b.itemId) || byStart(a, b));
  return rows.map(({ itemId, validFrom, densityGPerMl, gramsEach, usableYield, ...same }) => ({
    ...same,
    item: itemId as ItemId,
    validFrom: dayIn(validFrom),
    densityGPerMl: numberIn(densityGPerMl),
    gramsEach: numberIn(gramsEach),
    usableYield: numberIn(usableYield),
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
