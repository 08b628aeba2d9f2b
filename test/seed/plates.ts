import { PARTS } from '@/seed/demo/ingredients/measures-and-parts';
import { baseAmount, batchSizes, convert, ingredientSizes } from '@/seed/demo/kitchen/measures';
import { type Needs, needsOf } from '@/seed/demo/kitchen/needs';
import { ingredientNamed, recipeOn } from '@/seed/demo/kitchen/recipe-book';
import type { Line, Recipe } from '@/seed/demo/shapes';
import { unitPriceOn } from '@/seed/demo/trade/price-in-force';

const CREDIT_A_GRAM = 1.5 / 300;

/** Euros for what is bought, by the prices of a day; what has no price costs nothing here. */
function costOf(needs: Needs, day: string): number {
  let cost = 0;
  for (const [resource, amount] of needs) {
    const [ingredient = '', part] = resource.split('/');
    if (ingredientNamed(ingredient)?.department === 'packaging') continue;
    const price = ingredient === 'Brownie trimmings' ? CREDIT_A_GRAM : (unitPriceOn(ingredient, day) ?? 0);
    const split =
      part === undefined ? null : PARTS.find((each) => each.ingredient === ingredient && each.part === part);
    cost += amount * price * (split ? split.costSharePct / 100 / split.output[0] : 1);
  }
  return cost;
}

/** Food on one plate in euros, by the prices of a day. */
export function plateCost(dish: string, day: string): number {
  return recipeOn(dish, day).estimatedCost ?? costOf(needsOf(dish, day), day);
}

/** Grams of one line as it goes in or onto the plate. */
export function gramsOf([item, quantity, unit, detail = {}]: Line, day: string): number {
  const ingredient = ingredientNamed(item);
  const { base, amount } = baseAmount(item, quantity, unit);
  if (detail.part !== undefined) return base === 'g' ? amount : amount * (ingredient?.gramsEach ?? 0);
  if (ingredient) return convert(item, amount, base, 'g', ingredientSizes(ingredient));
  return convert(item, amount, base, 'g', batchSizes(recipeOn(item, day)));
}

/** Grams of food on a plate, without boxes and what stands below it. */
export function plateGrams(dish: Recipe, day: string): number {
  const eaten = dish.lines.filter(([item, , , detail]) => detail?.channel === undefined && item !== 'Dry ice pellets');
  return eaten.reduce((sum, line) => sum + gramsOf(line, day), 0);
}

/** Minutes of hands on one batch of everything that a dish is made of, each component once. */
export function minutesFromScratch(dish: string, day: string): number {
  const made = new Set<string>([dish]);
  for (const name of made) {
    for (const [item] of recipeOn(name, day).lines) if (!ingredientNamed(item)) made.add(item);
  }
  made.delete(dish);
  return [...made].reduce((sum, name) => sum + (recipeOn(name, day).handsOn?.[0] ?? 0), 0);
}

/** How many recipes lie below each other in a dish: 1 for one that is plated from what is bought. */
export function depthOf(name: string, day: string): number {
  const below = recipeOn(name, day).lines.filter(([item]) => !ingredientNamed(item));
  return 1 + Math.max(0, ...below.map(([item]) => depthOf(item, day)));
}
