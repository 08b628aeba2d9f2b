import { atLeast } from '../../core/near';
import type { MenuAverages, MixFigures, MixModel } from './mix-model';

/**
 * Hayes & Huffman (1985), Menu analysis: a better way: A * B * C * D with A = 1 - food-cost %, B = portions sold, C = price,
 * D = 1 - (variable cost % + food-cost %). Fractions, and venue currency.
 */
export function goalValue(foodCost: number, sold: number, price: number, variableCost: number): number {
  return (1 - foodCost) * sold * price * (1 - (variableCost + foodCost));
}

/** An item's goal value against the menu's own, which has the mean portions of an item; null where a share in it is not known. */
export function againstGoalValue(item: MixFigures, menu: MenuAverages): 'above' | 'below' | null {
  if (menu.goalValue === null || menu.variableCost === null || item.netPrice <= 0) return null;
  const own = goalValue(item.food / item.netPrice, item.sold, item.netPrice, menu.variableCost);
  return atLeast(own, menu.goalValue) ? 'above' : 'below';
}

export const GOAL_VALUE: MixModel = {
  name: 'goal-value',
  classes: ['above', 'below'],
  asksLabour: false,
  classOf: againstGoalValue,
};
