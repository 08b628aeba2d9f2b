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
  book.ingredientVersion(item, 'g', { usableYield, densityGPerMl });
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

// USDA ERS, Fruit and Vegetable Prices, 2022: retail price per pound, yield, pounds to a cup, printed price of an edible cup.
const CUP_PRICES: readonly (readonly [fruit: string, price: number, usable: number, size: number, cup: number])[] = [
  ['Apples', 1.8541, 0.9, 0.2425, 0.4996],
  ['Apricots', 3.6162, 0.93, 0.3638, 1.4145],
  ['Bananas', 0.5971, 0.64, 0.3307, 0.3085],
  ['Blackberries', 6.7483, 0.96, 0.3197, 2.2471],
  ['Blueberries', 4.1575, 0.95, 0.3197, 1.399],
  ['Cantaloupe', 0.7523, 0.51, 0.3748, 0.5528],
  ['Cherries', 4.6632, 0.92, 0.3417, 1.7321],
  ['Clementines', 1.5811, 0.77, 0.463, 0.9507],
  ['Grapefruit', 1.4444, 0.49, 0.463, 1.3647],
  ['Grapes', 2.0363, 0.96, 0.3307, 0.7014],
  ['Honeydew', 1.1589, 0.46, 0.3748, 0.9442],
  ['Kiwi', 2.6064, 0.76, 0.3858, 1.3231],
  ['Mangoes', 1.4698, 0.71, 0.3638, 0.7531],
  ['Nectarines', 2.3721, 0.91, 0.3197, 0.8333],
  ['Oranges', 1.4624, 0.68, 0.4079, 0.8771],
  ['Papaya', 1.3375, 0.62, 0.3086, 0.6658],
  ['Peaches', 2.1785, 0.96, 0.3417, 0.7755],
  ['Pears', 1.8472, 0.9, 0.3638, 0.7466],
  ['Pineapple', 0.617, 0.51, 0.3638, 0.4401],
  ['Plum', 2.5259, 0.94, 0.3638, 0.9775],
  ['Pomegranate', 2.4672, 0.56, 0.3417, 1.5055],
  ['Raspberries', 7.7338, 0.96, 0.3197, 2.5753],
  ['Strawberries', 2.9682, 0.94, 0.3197, 1.0094],
  ['Watermelon', 0.382, 0.52, 0.3307, 0.2429],
];

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

  test.each(CUP_PRICES)('costPeriod(%s) has the printed price of a cup', (_, price, usableYield, size, cup) => {
    const cost = plate({ price, unit: 'lb', usableYield }, size, 'lb');
    expect(Math.abs((cost ?? 0) - cup)).toBeLessThan(0.0006);
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
