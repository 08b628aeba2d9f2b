import { COMPONENTS } from '../components/all-components';
import { DISHES } from '../dishes/all-dishes';
import { INGREDIENTS } from '../ingredients/all-ingredients';
import type { Ingredient, Recipe } from '../shapes';

export const RECIPES: readonly Recipe[] = [...COMPONENTS, ...DISHES];

const VERSIONS = new Map<string, Recipe[]>();
for (const recipe of RECIPES) VERSIONS.set(recipe.name, [...(VERSIONS.get(recipe.name) ?? []), recipe]);

const INGREDIENT_NAMED = new Map(INGREDIENTS.map((ingredient) => [ingredient.name, ingredient]));

/** Days on which some recipe changes, in order. */
export const CHANGE_DAYS: readonly string[] = [...new Set(RECIPES.map((recipe) => recipe.from))].sort();

export function ingredientNamed(name: string): Ingredient | null {
  return INGREDIENT_NAMED.get(name) ?? null;
}

/** The version in force on a day, the latest on or before it. Throws where there is none: the tables are wrong. */
export function recipeOn(name: string, day: string): Recipe {
  const versions = VERSIONS.get(name) ?? [];
  const inForce = versions.filter((recipe) => recipe.from <= day).sort((a, b) => a.from.localeCompare(b.from));
  const latest = inForce.at(-1);
  if (!latest) throw new Error(`no recipe of ${name} on ${day}`);
  return latest;
}

/** Whether a recipe has been written down by a day. */
export function isOnBooks(name: string, day: string): boolean {
  return (VERSIONS.get(name) ?? []).some((recipe) => recipe.from <= day);
}
