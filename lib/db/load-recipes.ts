import { type DayRange, dateOfDay, dayText } from '../core/days';
import { nameKey } from '../core/name-key';
import type { Item, ItemId, LaterRecipe, RecipeVersion } from '../model/facts';
import { byStart, dayIn, numberIn, statedBefore } from './columns';
import type { VenueTx } from './in-venue';

/**
 * What a refused line of recipe_lines.csv speaks for, the version that it would have belonged to: the recipe's name and the day
 * from which the version holds, or nothing after the bar where it holds from the beginning.
 */
export function recipeLineKey(recipe: string, validFrom: string): string {
  return `${nameKey(recipe)}|${validFrom}`;
}

/** The versions of recipes stated before the end of a range, by item and start, with their lines as they were written. */
export async function loadRecipes(
  tx: VenueTx,
  range: DayRange,
  items: readonly Item[],
  byItem: (a: number, b: number) => number,
): Promise<RecipeVersion[]> {
  const rows = await tx.prisma.recipeVersion.findMany({
    where: { venueId: tx.venue, OR: statedBefore(range) },
    select: {
      itemId: true,
      validFrom: true,
      section: true,
      department: true,
      yieldQuantity: true,
      yieldUnit: true,
      alsoQuantity: true,
      alsoUnit: true,
      batchLossG: true,
      breakage: true,
      estimatedCost: true,
      overrun: true,
      handsOnMinutes: true,
      grade: true,
      platingMinutes: true,
      platingGrade: true,
      shelfLifeDays: true,
      smallestBatch: true,
      thrownAtClose: true,
      cautions: true,
      lines: {
        select: {
          position: true,
          itemId: true,
          quantity: true,
          unit: true,
          usedAs: true,
          use: true,
          part: true,
          choice: true,
          choiceShare: true,
          channel: true,
          byProductCredit: true,
        },
        orderBy: { position: 'asc' },
      },
    },
  });
  const refused = await refusedLines(tx);
  const nameOf = new Map<number, string>(items.map(({ id, name }) => [id, name]));
  rows.sort((a, b) => byItem(a.itemId, b.itemId) || byStart(a, b));
  return rows.map(({ itemId, lines, ...row }) => {
    const validFrom = dayIn(row.validFrom);
    const key = recipeLineKey(nameOf.get(itemId) ?? '', validFrom === null ? '' : dayText(validFrom));
    return {
      item: itemId as ItemId,
      validFrom,
      section: row.section,
      department: row.department,
      yieldQuantity: numberIn(row.yieldQuantity),
      yieldUnit: row.yieldUnit,
      alsoQuantity: numberIn(row.alsoQuantity),
      alsoUnit: row.alsoUnit,
      batchLossG: numberIn(row.batchLossG),
      breakage: numberIn(row.breakage),
      estimatedCost: numberIn(row.estimatedCost),
      overrun: numberIn(row.overrun),
      handsOnMinutes: numberIn(row.handsOnMinutes),
      grade: row.grade,
      platingMinutes: numberIn(row.platingMinutes),
      platingGrade: row.platingGrade,
      shelfLifeDays: row.shelfLifeDays,
      smallestBatch: numberIn(row.smallestBatch),
      thrownAtClose: row.thrownAtClose,
      cautions: row.cautions,
      lines: lines.map((line) => ({
        position: line.position,
        item: line.itemId as ItemId,
        quantity: numberIn(line.quantity),
        unit: line.unit,
        as: line.usedAs,
        use: line.use,
        part: line.part,
        choice: line.choice,
        choiceShare: numberIn(line.choiceShare),
        channel: line.channel,
        byProductCredit: numberIn(line.byProductCredit),
      })),
      refusedLines: refused.get(key) ?? 0,
    };
  });
}

/** How many lines are refused and still waiting, by the version that they would belong to. */
async function refusedLines(tx: VenueTx): Promise<ReadonlyMap<string, number>> {
  const rows = await tx.prisma.waitingRow.groupBy({
    by: ['rowKey'],
    where: { venueId: tx.venue, kind: 'recipe_lines', status: 'waiting', rowKey: { not: null } },
    _count: true,
  });
  return new Map(rows.flatMap(({ rowKey, _count }) => (rowKey === null ? [] : [[rowKey, _count] as const])));
}

/** The items whose first recipe begins after a range, with the day on which it does. */
export async function loadLaterRecipes(tx: VenueTx, range: DayRange): Promise<LaterRecipe[]> {
  const rows = await tx.prisma.recipeVersion.findMany({
    where: { venueId: tx.venue, validFrom: { gte: dateOfDay(range.to) } },
    select: { itemId: true, validFrom: true },
    orderBy: [{ validFrom: 'desc' }, { itemId: 'asc' }],
  });
  const first = new Map(rows.map(({ itemId, validFrom }) => [itemId as ItemId, dayIn(validFrom)]));
  return [...first].flatMap(([item, begins]) => (begins === null ? [] : [{ item, begins }]));
}
