import type { CostedPeriod } from './costed-period';
import type { Department } from './facts';
import { reachedFrom } from './reached';

/**
 * The department an item is sold in: the one its latest recipe states; else drink where all its ingredients are drink, and food
 * otherwise. What it is packed in does not count; an item of which nothing is known is food.
 */
export function itemDepartment(period: CostedPeriod, node: number): Department {
  const thing = period.things[node];
  const stated = thing?.recipes.at(-1)?.fact.department ?? thing?.versions.at(-1)?.fact.department;
  if (stated) return stated;
  const ingredients = [...reachedFrom(period, [node])].flatMap((each) => period.things[each]?.versions ?? []);
  const departments = new Set(ingredients.map(({ fact }) => fact.department));
  return departments.has('drink') && !departments.has('food') ? 'drink' : 'food';
}
