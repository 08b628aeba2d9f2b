import { csvText } from '../format/csv-text';
import type { DishCostsAnswer } from './dish-costs-shape';
import { dishCostsShape } from './dish-costs-shape';
import type { MenuMixAnswer } from './menu-mix-shape';
import { menuMixShape } from './menu-mix-shape';

/** Fields of the mix that hold several values: they stand in the JSON only. */
const MANY_VALUED = new Set(['classShares', 'between', 'spread']);

/** One line an item, the JSON names in snake_case. */
export function menuMixCsv(answer: MenuMixAnswer): string {
  const columns = Object.keys(menuMixShape.shape.items.element.shape).filter((name) => !MANY_VALUED.has(name));
  return csvText(columns, answer.items);
}

export function dishCostsCsv(answer: DishCostsAnswer): string {
  return csvText(Object.keys(dishCostsShape.shape.items.element.shape), answer.items);
}
