import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { Book } from '../books';
import { costOn } from '../model/plate';

/** What a plate costs that takes so much of one ingredient, bought at a price for a pack. */
function plate(
  bought: {
    readonly price: number;
    readonly unit: string;
    readonly usableYield?: number;
    readonly densityGPerMl?: number;
  },
  quantity: number,
  unit: string,
): number | null {
  const book = new Book({ kitchenMeasures: 'us' });
  const item = book.item('ingredient', 'Ingredient');
  const { usableYield = 1, densityGPerMl = null } = bought;
  book.ingredientVersion(item, bought.unit === 'pt' ? 'ml' : 'g', { usableYield, densityGPerMl });
  book.price(book.offer(item, 1, 1, bought.unit), bought.price);
  const dish = book.dish('Plate', {}, [quantity, unit, item]);
  book.menu(dish, 9);
  return costOn(book.facts(), dish);
}

// USDA ARS, National Nutrient Database for Standard Reference, release 28 (2015), field Refuse: per cent that is thrown away, and what the
// usable part costs for each 1 of the bought price, 100 / (100 - refuse). Peach and pear are pit and core only.
const REFUSE: readonly (readonly [food: string, refuse: number, costFactor: number])[] = [
  ['Apples, raw, with skin', 10, 1.11111],
  ['Apples, raw, without skin', 23, 1.2987],
  ['Apricots, raw', 7, 1.07527],
  ['Bananas, raw', 36, 1.5625],
  ['Blackberries, raw', 4, 1.04167],
  ['Blueberries, raw', 5, 1.05263],
  ['Cherries, sour, red, raw', 10, 1.11111],
  ['Cherries, sweet, raw', 8, 1.08696],
  ['Cranberries, raw', 2, 1.02041],
  ['Currants, red and white, raw', 2, 1.02041],
  ['Figs, raw', 1, 1.0101],
  ['Grapefruit, raw, pink and red, all areas', 49, 1.96078],
  ['Grapes, red or green (European type, such as Thompson seedless), raw', 4, 1.04167],
  ['Kiwifruit, green, raw', 24, 1.31579],
  ['Lemons, raw, without peel', 47, 1.88679],
  ['Limes, raw', 16, 1.19048],
  ['Mangos, raw', 29, 1.40845],
  ['Melons, cantaloupe, raw', 49, 1.96078],
  ['Melons, honeydew, raw', 54, 2.17391],
  ['Nectarines, raw', 9, 1.0989],
  ['Oranges, raw, all commercial varieties', 27, 1.36986],
  ['Oranges, raw, navels', 32, 1.47059],
  ['Tangerines, (mandarin oranges), raw', 26, 1.35135],
  ['Passion-fruit, (granadilla), purple, raw', 48, 1.92308],
  ['Peaches, yellow, raw', 4, 1.04167],
  ['Pears, raw', 10, 1.11111],
  ['Pineapple, raw, all varieties', 49, 1.96078],
  ['Pineapple, raw, traditional varieties', 42, 1.72414],
  ['Plums, raw', 6, 1.06383],
  ['Pomegranates, raw', 44, 1.78571],
  ['Quinces, raw', 39, 1.63934],
  ['Raspberries, raw', 4, 1.04167],
  ['Rhubarb, raw', 25, 1.33333],
  ['Strawberries, raw', 6, 1.06383],
  ['Watermelon, raw', 48, 1.92308],
  ['Pineapple, raw, extra sweet variety', 49, 1.96078],
  ['Clementines, raw', 23, 1.2987],
  ['Apples, raw, granny smith, with skin', 11, 1.1236],
  ['Egg, whole, raw, fresh', 12, 1.13636],
  ['Nuts, coconut meat, raw', 48, 1.92308],
  ['Nuts, pistachio nuts, raw', 47, 1.88679],
  ['Nuts, macadamia nuts, raw', 69, 3.22581],
  ['Nuts, chestnuts, european, raw, unpeeled', 26, 1.35135],
  ['Nuts, almonds', 60, 2.5],
  ['Nuts, hazelnuts or filberts', 59, 2.43902],
  ['Nuts, pecans', 47, 1.88679],
  ['Nuts, walnuts, black, dried', 76, 4.16667],
  ['Nuts, walnuts, english', 55, 2.22222],
];

/**
 * USDA ERS, Fruit and Vegetable Prices, all rows of 2020 and 2022: retail price of a pound (of juice: a pint), yield, what makes a cup
 * once prepared, printed price of that cup.
 */
const CUP_PRICES: readonly Record<string, string>[] = parse(
  readFileSync(new URL('usda-ers-cup-prices.csv', import.meta.url)),
  { columns: true },
);

// USDA SR28, file WEIGHT: grams to a US cup and to a smaller measure of the same food.
const WEIGHTS: readonly (readonly [food: string, cup: number, unit: string, grams: number])[] = [
  ['Milk, whole', 244, 'fl oz', 30.5],
  ['Butter', 227, 'tbsp', 14.2],
  ['Honey', 339, 'tbsp', 21],
  ['Cocoa, unsweetened', 86, 'tbsp', 5.4],
  ['Cream, heavy', 238, 'tbsp', 15],
  ['Sugar, granulated', 200, 'tsp', 4.2],
];

describe('costPeriod: published yields and weights', () => {
  test.each(REFUSE)(
    'costPeriod(%s, %d per cent refuse) costs %d for each 1 of the bought price',
    (_, refuse, factor) => {
      expect(plate({ price: 1, unit: 'kg', usableYield: (100 - refuse) / 100 }, 1, 'kg')).toBeCloseTo(factor, 5);
    },
  );

  test.each(['2020', '2022'])('costPeriod(each food of %s) has the printed price of a cup, to 0.0006', (year) => {
    const rows = CUP_PRICES.filter((row) => row.year === year);
    expect(rows.length).toBeGreaterThan(150);
    for (const { food, form, price, unit = '', usable_yield, cup, cup_unit = '', cup_price } of rows) {
      const bought = { price: Number(price), unit, usableYield: Number(usable_yield) };
      const cost = plate(bought, Number(cup), cup_unit);
      expect(Math.abs((cost ?? Number.NaN) - Number(cup_price)), `${food}, ${form}`).toBeLessThan(0.0006);
    }
  });

  // Wall, Trade Calculations (2007): 5.2 kg of striploin at 11.95 a kg give 4.6 kg; a usable kg costs 13.5087 (derived), and 85 portions
  // of 170 g take 16.3348 kg bought (derived).
  test('costPeriod(striploin) costs 13.5087 a usable kg, and 85 portions take 16.3348 kg', () => {
    const usableYield = 4.6 / 5.2;
    expect(plate({ price: 11.95, unit: 'kg', usableYield }, 1, 'kg')).toBeCloseTo(13.5087, 4);
    expect(plate({ price: 1, unit: 'kg', usableYield }, 85 * 170, 'g')).toBeCloseTo(16.3348, 4);
  });

  // Vancouver Community College, Culinary Math: 10 lb of apples for 5.60 at 75 % cost 7.465 by the rounded factor 1.333 (7.4667 exactly);
  // 20 lb of flour for 10.50 cost 0.525 a pound.
  test('costPeriod(apples, flour) costs what the handout prints', () => {
    expect(Math.abs((plate({ price: 0.56, unit: 'lb', usableYield: 0.75 }, 10, 'lb') ?? 0) - 7.465)).toBeLessThan(
      0.002,
    );
    expect(plate({ price: 10.5 / 20, unit: 'lb' }, 1, 'lb')).toBeCloseTo(0.525, 12);
  });

  // The density of the cup gives the spoon to 1 %: both are rounded averages.
  test.each(WEIGHTS)('costPeriod(%s) by its weight of a cup, %d g, costs a %s as %d g', (_, cup, unit, grams) => {
    const bought = { price: 1, unit: 'g', densityGPerMl: cup / 236.5882365 };
    expect(plate(bought, 1, 'cup')).toBeCloseTo(cup, 9);
    expect(Math.abs((plate(bought, 1, unit) ?? 0) / grams - 1)).toBeLessThan(0.01);
  });
});
