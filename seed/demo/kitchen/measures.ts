import { type BaseUnit, unitNamed } from '../../../lib/core/units';
import { MEASURES } from '../ingredients/measures-and-parts';
import type { Amount, Ingredient, Recipe } from '../shapes';

/** How much of a thing one gram, one millilitre and one piece are, in any unit they share; null where nobody has said. */
export type Sizes = Readonly<Record<BaseUnit, number | null>>;

/** A quantity in base units: a tub of double cream is 2,000 ml. Throws where the unit does not exist: the tables are wrong. */
export function baseAmount(
  item: string,
  quantity: number,
  unit: string,
): { readonly base: BaseUnit; readonly amount: number } {
  const own = MEASURES.find(([ingredient, name]) => ingredient === item && name === unit);
  const read = unitNamed(own ? own[3] : unit, 'metric');
  if (!read) throw new Error(`${item}: no unit is called ${unit}`);
  return { base: read.base, amount: quantity * (own ? own[2] : 1) * read.size };
}

/** A quantity in the dimension `into`: amount * size(from) / size(into), where sizes are grams (or batches) per base unit. */
export function convert(item: string, amount: number, from: BaseUnit, into: BaseUnit, sizes: Sizes): number {
  if (from === into) return amount;
  const a = sizes[from];
  const b = sizes[into];
  if (a === null || b === null) throw new Error(`${item}: nothing leads from ${from} to ${into}`);
  return (amount * a) / b;
}

export function ingredientSizes(ingredient: Ingredient): Sizes {
  return { g: 1, ml: ingredient.gramsPerMl ?? null, each: ingredient.gramsEach ?? null };
}

/**
 * What is left of one batch in each dimension: overrun fills volume only, and what stays in the bowl shrinks every output alike.
 * A plate is one piece.
 */
export function batchOutputs(recipe: Recipe): Sizes {
  if (recipe.kind !== 'component') return { g: null, ml: null, each: 1 };
  const outputs: Record<BaseUnit, number | null> = { g: null, ml: null, each: null };
  for (const stated of [recipe.gives, recipe.also]) {
    if (!stated) continue;
    const { base, amount } = statedOutput(recipe, stated);
    outputs[base] = amount;
  }
  const grams = outputs.g;
  const kept = grams === null ? 1 : (grams - (recipe.lossG ?? 0)) / grams;
  const left = (output: number | null): number | null => (output === null ? null : output * kept);
  return { g: left(outputs.g), ml: left(outputs.ml), each: left(outputs.each) };
}

function statedOutput(recipe: Recipe, [quantity, unit]: Amount): { readonly base: BaseUnit; readonly amount: number } {
  const { base, amount } = baseAmount(recipe.name, quantity, unit);
  return { base, amount: base === 'ml' ? amount * (1 + (recipe.overrunPct ?? 0) / 100) : amount };
}

/** Batches in one gram, one millilitre, one piece. */
export function batchSizes(recipe: Recipe): Sizes {
  const outputs = batchOutputs(recipe);
  const share = (output: number | null): number | null => (output === null ? null : 1 / output);
  return { g: share(outputs.g), ml: share(outputs.ml), each: share(outputs.each) };
}
