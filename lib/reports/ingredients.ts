import type { Day } from '../core/days';
import { boughtLine, type CostLine } from '../model/cost-line';
import type { CostedPeriod } from '../model/costed-period';
import type { IngredientVersion, ItemId } from '../model/facts';
import { onDay } from '../model/in-force';
import type { Issue } from '../model/issue';
import { itemCost } from '../model/item-cost';
import { segmentOf } from '../model/segments';

/** One ingredient on a day. */
export interface IngredientRow {
  readonly id: ItemId;
  readonly item: string;
  /** Null: no version is in force yet. */
  readonly version: IngredientVersion | null;
  /** A kilogram, a litre or a piece of it, as it is bought, with the offer and the price that make its cost. */
  readonly bought: CostLine;
  /** The same amount that can be used: cost / usable yield; null where the cost is not known. */
  readonly usableCost: number | null;
  /** What is missing of the ingredient itself. */
  readonly issues: readonly Issue[];
}

/** Every ingredient on a day of the period, by name. The period has to be costed for everything. */
export function ingredients(period: CostedPeriod, day: Day): readonly IngredientRow[] {
  const segment = segmentOf(period.segments, day);
  return period.things.flatMap((thing, node): IngredientRow[] => {
    if (thing.kind !== 'ingredient' || thing.part !== null || thing.channel !== null) return [];
    const version = onDay(thing.versions, day);
    const bought = boughtLine(period, node, segment, itemCost(period, node, segment).need);
    return [
      {
        ...{ id: thing.id, item: thing.name, version, bought },
        usableCost: bought.cost === null || version === null ? null : bought.cost / version.usableYield,
        issues: period.issues.filter(({ about }) => about === thing.name),
      },
    ];
  });
}
