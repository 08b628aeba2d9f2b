import type { Day } from '../core/days';
import type { CostedPeriod } from '../model/costed-period';
import type { ItemId, ItemKind, RecipeVersion } from '../model/facts';
import { onDay } from '../model/in-force';
import { type ItemCost, itemCost } from '../model/item-cost';
import { isOnMenu } from '../model/menu-price';
import { segmentOf } from '../model/segments';

/** One thing that is made, on a day. */
export interface RecipeRow {
  readonly id: ItemId;
  readonly item: string;
  readonly kind: ItemKind;
  /** Null: no version is in force yet, or there is none. */
  readonly version: RecipeVersion | null;
  readonly onMenu: boolean;
  /** Of a portion of what is plated, of a batch of a component. */
  readonly cost: ItemCost;
}

/** Components, dishes, set menus and extras on a day of the period, by name. The period has to be costed for everything. */
export function recipes(period: CostedPeriod, day: Day): readonly RecipeRow[] {
  const segment = segmentOf(period.segments, day);
  return period.things.flatMap((thing, node): RecipeRow[] => {
    if (thing.kind === 'ingredient' || thing.part !== null || thing.channel !== null) return [];
    return [
      {
        ...{ id: thing.id, item: thing.name, kind: thing.kind, version: onDay(thing.recipes, day) },
        onMenu: isOnMenu(thing.menu, day),
        cost: itemCost(period, node, segment),
      },
    ];
  });
}
