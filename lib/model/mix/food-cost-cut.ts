import { atLeast } from '../../core/near';
import type { MenuAverages, MixFigures } from './mix-model';

/**
 * Whether an item's food-cost % is at most the menu's: food / price <= total food cost / total revenue, the cost cut of Miller (1980)
 * and Pavesic (1983). On the threshold counts as low; null where either share is not known.
 */
export function hasLowFoodCost({ food, netPrice }: MixFigures, { foodCost }: MenuAverages): boolean | null {
  return foodCost === null || netPrice <= 0 ? null : atLeast(foodCost, food / netPrice);
}
