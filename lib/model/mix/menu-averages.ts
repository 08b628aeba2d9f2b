import { goalValue } from './goal-value';
import type { MenuAverages, MixFigures } from './mix-model';

/**
 * The menu as a whole, from its items with a known margin (null: an item without one). Null where none of those was sold.
 *
 * mean margin = sum(CM sold) / sum(sold); food cost = sum(food sold) / sum(price sold); mean contribution = sum(CM sold) / items; the
 * goal value is of that food cost, the mean portions of an item and the mean price.
 */
export function menuAverages(
  items: readonly (MixFigures | null)[],
  popularityFactor: number,
  variableCost: number | null,
): MenuAverages | null {
  let [costed, sold, contribution, revenue, food, labour, worked] = [0, 0, 0, 0, 0, 0, 0];
  for (const item of items) {
    if (item === null) continue;
    costed += 1;
    sold += item.sold;
    contribution += item.margin * item.sold;
    revenue += item.netPrice * item.sold;
    food += item.food * item.sold;
    if (item.labour === null) continue;
    worked += item.sold;
    labour += item.labour * item.sold;
  }
  if (sold <= 0) return null;
  const foodCost = revenue > 0 ? food / revenue : null;
  return {
    popularityFactor,
    meanMargin: contribution / sold,
    foodCost,
    meanContribution: contribution / costed,
    goalValue:
      foodCost === null || variableCost === null
        ? null
        : goalValue(foodCost, sold / costed, revenue / sold, variableCost),
    variableCost,
    meanLabour: worked > 0 ? labour / worked : null,
  };
}
