import { describe, expect, test } from 'vitest';
import { INGREDIENTS } from '@/seed/demo/ingredients/all-ingredients';
import { batchOutputs } from '@/seed/demo/kitchen/measures';
import { needsOf, needsOfAmount, wholeUnitsForParts } from '@/seed/demo/kitchen/needs';
import { ingredientNamed, isOnBooks, RECIPES, recipeOn } from '@/seed/demo/kitchen/recipe-book';
import { menuPriceOn } from '@/seed/demo/menu';
import { chosenOn } from '@/seed/demo/trade/price-in-force';
import { depthOf, gramsOf, minutesFromScratch, plateCost, plateGrams } from './plates';

/** One day under each menu. */
const MENUS = ['2025-06-15', '2025-12-13', '2026-05-16', '2026-10-17'] as const;

// EU 1169/2011, Annex II, as listed in published checks
const ANNEX_II = [
  'gluten',
  'crustaceans',
  'eggs',
  'fish',
  'peanuts',
  'soybeans',
  'milk',
  'nuts',
  'celery',
  'mustard',
  'sesame',
  'sulphites',
  'lupin',
  'molluscs',
];

function dishesOn(day: string) {
  const names = [...new Set(RECIPES.filter((recipe) => recipe.kind === 'dish').map((recipe) => recipe.name))];
  const onMenu = names.filter((name) => isOnBooks(name, day) && menuPriceOn(name, 'dine_in', day) !== null);
  return onMenu.map((name) => recipeOn(name, day)).filter((recipe) => recipe.department !== 'drink');
}

describe('the recipes of the demo restaurant', () => {
  test('RECIPES: every line leads to something that is bought or was written down by then', () => {
    const lost = RECIPES.flatMap((recipe) =>
      recipe.lines
        .filter(([item]) => !ingredientNamed(item) && !isOnBooks(item, recipe.from))
        .map(([item]) => `${recipe.name}: ${item}`),
    );
    expect(lost).toEqual([]);
    const used = new Set(RECIPES.flatMap((recipe) => recipe.lines.map(([item]) => item)));
    expect(INGREDIENTS.filter(({ name }) => !used.has(name))).toEqual([]);
    expect(INGREDIENTS.length).toBeGreaterThanOrEqual(85);
  });

  test('batchOutputs(component) weighs no more than what goes in, and most of it is still there', () => {
    const odd = RECIPES.filter((recipe) => recipe.kind === 'component').flatMap((recipe) => {
      const into = recipe.lines.reduce(
        (sum, line) => sum + (line[3]?.credit === undefined ? 1 : -1) * gramsOf(line, recipe.from),
        0,
      );
      const out = (batchOutputs(recipe).g ?? Number.NaN) + (recipe.lossG ?? 0);
      return out <= into && out >= 0.5 * into ? [] : [`${recipe.name}: ${into} g in, ${out} g out`];
    });
    expect(odd).toEqual([]);
  });

  test('wholeUnitsForParts(180 g of yolk, 320 g of white) is ten eggs, 18 g and 32 g an egg', () => {
    const needs = new Map([
      ['Shell eggs/yolk', 180],
      ['Shell eggs/white', 320],
    ]);
    expect(wholeUnitsForParts(needs).get('Shell eggs')).toBe(10);
    // for whole ones the shell is off: 57 g bought, 12 % of it shell (USDA SR28), 50.16 g to use
    expect(needsOfAmount('Shell eggs', 501.6, 'g', MENUS[0]).get('Shell eggs')).toBeCloseTo(10, 12);
  });

  test('needsOf(Three scoops) is lines / usable output, worked by hand for its milk powder', () => {
    // 70 ml of milk ice; batch 1880 ml mix, 30 % overrun, 60 of 2030 g stay behind; 90 g of powder a batch
    const usableMl = 1880 * 1.3 * ((2030 - 60) / 2030);
    expect(needsOf('Three scoops', MENUS[0]).get('Skimmed milk powder')).toBeCloseTo((70 * 90) / usableMl, 12);
  });

  test.each(MENUS)('plates on %s: sixteen, two of ten components or more, six in ten led by chocolate', (day) => {
    const dishes = dishesOn(day);
    expect(dishes).toHaveLength(16);
    const components = dishes.map(({ lines }) => lines.filter(([item]) => !ingredientNamed(item)).length);
    expect(components.filter((count) => count >= 10)).toHaveLength(2);
    expect(components.filter((count) => count === 3 || count === 4).length).toBeGreaterThanOrEqual(4);
    const chocolate = dishes.filter(({ section }) => section === 'Chocolate').length / dishes.length;
    expect(chocolate).toBeCloseTo(0.625, 12);
  });

  test.each(MENUS)('plates on %s: 110 to 220 g, 1.30 to 4.50 of food, 17.5 to 36 %% of the net price', (day) => {
    const odd = dishesOn(day).flatMap((dish) => {
      const grams = plateGrams(dish, day);
      const cost = plateCost(dish.name, day);
      const share = (cost / ((menuPriceOn(dish.name, 'dine_in', day) ?? 0) / 1.1)) * 100;
      const isPlausible = cost >= 1.3 && cost <= 4.5 && share >= 17.5 && share <= 36;
      const isPlateful = dish.lines.length === 0 || (grams >= 110 && grams <= 221);
      return isPlausible && isPlateful ? [] : [`${dish.name}: ${grams} g, ${cost}, ${share} %`];
    });
    expect(odd).toEqual([]);
  });

  test('minutesFromScratch(dish): the components of a complex dessert take about three hours (common practice)', () => {
    expect(minutesFromScratch('Marram slate', MENUS[3])).toBe(176);
    expect(minutesFromScratch('Sea fret', MENUS[3])).toBe(164);
  });

  test('depthOf(dish): recipes lie up to four deep below a plate', () => {
    // vanilla sugar, pastry cream, diplomat cream, coffee diplomat, plate
    expect(depthOf('Coffee and cardamom choux', MENUS[0])).toBe(5);
    expect(Math.max(...dishesOn(MENUS[0]).map(({ name }) => depthOf(name, MENUS[0])))).toBe(5);
  });

  test('gramsOf(30 ml of whipped cream) is one bed for a plate by its own density: about 15 g', () => {
    // USDA SR28: a US cup (236.588 ml) of whipped cream weighs 120 g; 30 ml weigh 15.2 g
    expect(gramsOf(['Soft whipped cream', 30, 'ml'], MENUS[0])).toBeCloseTo((30 * 120) / 236.588, 0);
  });

  test('recipeOn(set menu): the shares of each course are whole, and every dish in it is on the menu', () => {
    const odd = RECIPES.filter((recipe) => recipe.kind === 'set_menu').flatMap((recipe) => {
      const shares = new Map<string, number>();
      for (const [, , , detail] of recipe.lines) {
        if (detail?.choice !== undefined)
          shares.set(detail.choice, (shares.get(detail.choice) ?? 0) + (detail.sharePct ?? 0));
      }
      const absent = recipe.lines
        .filter(([item]) => menuPriceOn(item, 'dine_in', recipe.from) === null)
        .map(([item]) => item);
      return [...[...shares].filter(([, share]) => share !== 100), ...absent];
    });
    expect(odd).toEqual([]);
  });

  test('INGREDIENTS: allergens are words of Annex II, all fourteen occur, and only one thing has no price', () => {
    const words = INGREDIENTS.flatMap((each) => [
      ...each.contains.split(';'),
      ...(each.mayContain ?? 'none').split(';'),
    ]);
    expect([...new Set(words)].filter((word) => word !== 'none').sort()).toEqual([...ANNEX_II].sort());
    const unpriced = INGREDIENTS.filter(({ name }) => chosenOn(name, MENUS[3]) === null).map(({ name }) => name);
    expect(unpriced).toEqual(['Fig leaves', 'Brownie trimmings']); // trimmings are made here: their price is their credit
  });
});
