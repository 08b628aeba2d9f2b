import { PARTS, YIELDS } from '../ingredients/measures-and-parts';
import type { Ingredient, Line, LineDetail, Recipe } from '../shapes';
import { baseAmount, batchOutputs, batchSizes, convert, ingredientSizes } from './measures';
import { CHANGE_DAYS, ingredientNamed, recipeOn } from './recipe-book';

/** What has to be bought, by resource: an ingredient in its base unit, or a part of one ("Shell eggs/yolk") in its own. */
export type Needs = ReadonlyMap<string, number>;

export function partKey(ingredient: string, part: string): string {
  return `${ingredient}/${part}`;
}

export function addNeeds(into: Map<string, number>, needs: Needs, times: number): void {
  for (const [resource, amount] of needs) into.set(resource, (into.get(resource) ?? 0) + amount * times);
}

const SEEN = new Map<string, Needs>();

/**
 * Need of everything bought for one served piece, gram or millilitre (as the recipe gives it) of a recipe on a day, by plain
 * recursion: lines / usable output of the batch / (1 - breakage). Choices of a set menu count by their shares.
 */
export function needsOf(name: string, day: string, channel = 'dine_in'): Needs {
  const epoch = CHANGE_DAYS.filter((from) => from <= day).at(-1) ?? '';
  const key = `${name}|${epoch}|${channel}`;
  const before = SEEN.get(key);
  if (before) return before;
  const recipe = recipeOn(name, day);
  const needs = new Map<string, number>();
  const made = outputOf(recipe) * (1 - (recipe.breakagePct ?? 0) / 100);
  for (const line of recipe.lines) addNeeds(needs, needsOfLine(line, day, channel), 1 / made);
  SEEN.set(key, needs);
  return needs;
}

/** Usable output of a batch in the unit that comes first. */
export function outputOf(recipe: Recipe): number {
  const base = recipe.gives ? baseAmount(recipe.name, 1, recipe.gives[1]).base : 'each';
  const output = batchOutputs(recipe)[base];
  if (output === null) throw new Error(`${recipe.name}: no output`);
  return output;
}

function needsOfLine([item, quantity, unit, detail = {}]: Line, day: string, channel: string): Needs {
  if (detail.channel !== undefined && detail.channel !== channel) return new Map();
  const share = (detail.sharePct ?? 100) / 100;
  const sign = detail.credit === undefined ? 1 : -1;
  const needs = new Map<string, number>();
  addNeeds(needs, needsOfAmount(item, quantity, unit, day, detail), share * sign);
  return needs;
}

/** Need of everything bought for a quantity of anything. */
export function needsOfAmount(
  item: string,
  quantity: number,
  unit: string,
  day: string,
  detail: LineDetail = {},
): Needs {
  const ingredient = ingredientNamed(item);
  const { base, amount } = baseAmount(item, quantity, unit);
  if (ingredient) return ingredientNeeds(ingredient, amount, base, detail);
  const recipe = recipeOn(item, day);
  const into = recipe.gives ? baseAmount(item, 1, recipe.gives[1]).base : 'each';
  const needs = new Map<string, number>();
  addNeeds(needs, needsOf(item, day), convert(item, amount, base, into, batchSizes(recipe)));
  return needs;
}

function ingredientNeeds(ingredient: Ingredient, amount: number, base: 'g' | 'ml' | 'each', detail: LineDetail): Needs {
  if (detail.part !== undefined) return new Map([[partKey(ingredient.name, detail.part), amount]]);
  const bought = convert(ingredient.name, amount, base, ingredient.measure, ingredientSizes(ingredient));
  const byUse = YIELDS.find(([name, use]) => name === ingredient.name && use === detail.use);
  if (detail.use !== undefined && !byUse) throw new Error(`${ingredient.name}: no yield for ${detail.use}`);
  const usable = (byUse ? byUse[2] : (ingredient.usablePct ?? 100)) / 100;
  return new Map([[ingredient.name, detail.as === 'bought' ? bought : bought / usable]]);
}

/** Whole units that the parts call for: the largest of need / output, for each ingredient that is split. */
export function wholeUnitsForParts(needs: Needs): Needs {
  const units = new Map<string, number>();
  for (const { ingredient, part, output } of PARTS) {
    const need = (needs.get(partKey(ingredient, part)) ?? 0) / output[0];
    units.set(ingredient, Math.max(units.get(ingredient) ?? 0, need));
  }
  return units;
}
