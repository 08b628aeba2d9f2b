import { seededRandom } from '../../../lib/core/random';
import { between } from '../dice';
import { SEED } from '../house';
import { INGREDIENTS } from '../ingredients/all-ingredients';
import type { Ingredient } from '../shapes';

/** How much more of a thing is used than the recipes say, from the best month to the worst: cream is poured by eye. */
const BY_NAME: Readonly<Record<string, readonly [number, number]>> = {
  'Double cream': [0.07, 0.125],
  'Whole milk': [0.015, 0.045],
  'Unsalted butter': [0.008, 0.025],
};
const BY_GROUP: Readonly<Record<string, readonly [number, number]>> = {
  Dairy: [0.01, 0.03],
  Eggs: [0.01, 0.03],
  Cocoa: [0.002, 0.014],
  Fruit: [0.015, 0.04],
  Cellar: [0.01, 0.03],
  Packaging: [0.01, 0.03],
};
const ELSEWHERE = [0, 0.015] as const;

/** Cream got worse in the summer of 2026, when two new cooks came. */
const NEW_COOKS = { item: 'Double cream', from: '2026-06', to: '2026-08', more: 0.03 };

function range(ingredient: Ingredient): readonly [number, number] {
  return BY_NAME[ingredient.name] ?? BY_GROUP[ingredient.group] ?? ELSEWHERE;
}

function drawMonth(month: string, at: number): ReadonlyMap<string, number> {
  const random = seededRandom(SEED + 1000 + at);
  return new Map(
    INGREDIENTS.map((ingredient) => {
      const [low, high] = range(ingredient);
      const isNew = ingredient.name === NEW_COOKS.item && NEW_COOKS.from <= month && month <= NEW_COOKS.to;
      return [ingredient.name, 1 + between(random, low, high) + (isNew ? NEW_COOKS.more : 0)];
    }),
  );
}

const SEEN = new Map<string, ReadonlyMap<string, number>>();

/** Used / should have used of an ingredient in a month (2026-10). */
export function heavyHand(ingredient: string, month: string): number {
  const known = SEEN.get(month) ?? drawMonth(month, Number(month.replace('-', '')));
  SEEN.set(month, known);
  return known.get(ingredient) ?? 1;
}
