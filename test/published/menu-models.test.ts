import { describe, expect, test } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import { goalValue } from '@/lib/model/mix/goal-value';
import { MIX_MODELS } from '@/lib/model/mix/mix-models';
import { menuMix } from '@/lib/reports/menu-mix';
import { Book, days } from '../books';
import { EIGHT_ITEMS } from '../published-folders';

/** The published eight items, everything sold on one day. */
function eightItems(model: keyof typeof MIX_MODELS) {
  const book = new Book();
  for (const { name, sold, price, cost } of EIGHT_ITEMS.items) {
    const dish = book.dish(name, {}, [1, 'each', book.ingredient(`${name}, all of it`, 'each', Number(cost))]);
    book.menu(dish, Number(price));
    book.sell(dish, '2026-10-01', sold, sold * Number(price));
  }
  return menuMix(costPeriod(book.facts(), days('2026-10')), { section: null, model: MIX_MODELS[model] });
}
const classes = (model: keyof typeof MIX_MODELS) =>
  Object.fromEntries(eightItems(model).items.map(({ item, class: mixClass }) => [item, mixClass]));

/*
 * The eight items of Dittmer & Keefe (2009). Axes of Miller (1980) and Pavesic (1983) seen in JAKO200311921611480; which quadrant bears
 * which name is partly from memory; classes and thresholds are derived: food cost 32.1333 %, mean contribution 884.4688.
 */
describe('menuMix by other models', () => {
  test('menuMix(eight items, Miller) has food cost against the menu’s 32.1333 % and how often each sells', () => {
    expect((eightItems('miller').thresholds.foodCost ?? 0) * 100).toBeCloseTo(32.1333, 4);
    expect(classes('miller')).toEqual({
      'Strip Steak': 'marginal',
      'Fried Chicken': 'winner',
      'Lamb Chops': 'loser',
      'Fried Scallops': 'winner',
      'Broiled Haddock': 'winner',
      'Roast Turkey': 'winner',
      'Baked Stuffed Shrimp': 'marginal',
      'Veal Marsala': 'marginal',
    });
  });

  test('menuMix(eight items, Pavesic) has food cost and what each left against the mean of 884.4688', () => {
    expect(eightItems('pavesic').thresholds.contribution).toBeCloseTo(884.46875, 8);
    expect(classes('pavesic')).toEqual({
      'Strip Steak': 'standard',
      'Fried Chicken': 'sleeper',
      'Lamb Chops': 'problem',
      'Fried Scallops': 'prime',
      'Broiled Haddock': 'prime',
      'Roast Turkey': 'sleeper',
      'Baked Stuffed Shrimp': 'standard',
      'Veal Marsala': 'problem',
    });
  });

  // One item is a puzzle, a problem and a loser under three methods: a class says nothing without its method.
  test('menuMix(lamb chops) has a class of its own by each model', () => {
    const of = (model: keyof typeof MIX_MODELS) => classes(model)['Lamb Chops'];
    expect([of('kasavana-smith'), of('pavesic'), of('miller')]).toEqual(['puzzle', 'problem', 'loser']);
  });
});

/*
 * Hayes & Huffman (1985), Menu analysis: a better way, Cornell HRA Quarterly 25(4). Rows 1 to 6: a course exercise after Dopson & Hayes,
 * inputs seen, values derived; the others from memory after Dopson & Hayes, Food and Beverage Cost Control, ch. 10.
 */
const GOAL_VALUES: readonly (readonly [string, number, number, number, number, number])[] = [
  ['Beef and broccoli', 0.25, 773, 1.99, 0.35, 461.481],
  ['Sweet and sour pork', 0.18, 321, 3.99, 0.35, 493.6165],
  ['Three-item combo', 0.41, 310, 6.99, 0.35, 306.833],
  ['Coconut shrimp', 0.24, 185, 5.99, 0.35, 345.2995],
  ['Taco dinner', 0.26, 225, 5.95, 0.28, 455.7105],
  ['Overall menu of the tacos', 0.32, 152, 8.95, 0.28, 370.0288],
  ['Overall menu', 0.35, 100, 16.55, 0.3, 376.5125],
  ['Strip steak', 0.45, 73, 17.95, 0.3, 180.1731],
  ['Coconut shrimp of that menu', 0.3, 121, 16.95, 0.3, 574.266],
  ['Grilled tuna', 0.4, 105, 17.95, 0.3, 339.255],
  ['Chicken breast', 0.22, 140, 13.95, 0.3, 731.2032],
  ['Lobster stir-fry', 0.55, 51, 21.95, 0.3, 75.5629],
  ['Scallops and pasta', 0.24, 85, 14.95, 0.3, 444.2542],
];

test.each(GOAL_VALUES)('goalValue(%s) is the published one', (_, foodCost, sold, price, variable, value) => {
  expect(goalValue(foodCost, sold, price, variable)).toBeCloseTo(value, 3);
});
