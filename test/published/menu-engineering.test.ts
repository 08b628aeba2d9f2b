import { describe, expect, test } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import { type MenuMix, type MixClass, menuMix } from '@/lib/reports/menu-mix';
import { Book, days } from '../books';

interface Row {
  readonly name: string;
  readonly sold: number;
  readonly price: number;
  readonly cost: number;
}

/** The mix of a table with everything sold on one day: every cost is what one ingredient costs. */
function mixOf(rows: readonly Row[]): MenuMix {
  const book = new Book();
  for (const { name, sold, price, cost } of rows) {
    const dish = book.dish(name, {}, [1, 'each', book.ingredient(`${name}, all of it`, 'each', cost)]);
    book.menu(dish, price);
    book.sell(dish, '2026-10-01', sold, sold * price);
  }
  return menuMix(costPeriod(book.facts(), days('2026-10')), { section: null });
}
const classes = (mix: MenuMix): Record<string, MixClass | null> =>
  Object.fromEntries(mix.items.map(({ item, class: mixClass }) => [item, mixClass]));

// Lee B.-S., Shin S.-Y. & Choi M.-K. (2006), Using Activity-Based Cost in Menu Engineering for Restaurant Menu Analysis
// (abstract): share in %, margin in won, printed class; the printed mean margin is 21,957.
const LEE_SHIN_CHOI: readonly (readonly [name: string, share: number, margin: number, printed: MixClass])[] = [
  ['Beef sirloin steak', 61.95, 21_200, 'plowhorse'],
  ['Beef tenderloin steak', 17.13, 21_900, 'plowhorse'],
  ['BBQ pork ribs', 4.94, 29_000, 'puzzle'],
  ['Salmon fillet', 2.66, 25_810, 'puzzle'],
  ['Seafood platter', 5.77, 22_400, 'puzzle'],
  ['Teriyaki chicken', 7.56, 22_000, 'puzzle'],
];

// Dittmer P. R. & Keefe J. D. (2009), Principles of Food, Beverage, and Labor Cost Controls, 9th ed., ch. 11, problem 1. The inputs are
// published; shares, margins and classes are derived. Lamb chops are 0.006 points under the threshold.
const DITTMER_KEEFE: readonly (readonly [string, number, number, number, number, number, MixClass])[] = [
  ['Strip Steak', 73, 6.5, 18.9, 11.6057, 34.3915, 'star'],
  ['Fried Chicken', 90, 3.9, 12.75, 14.3084, 30.5882, 'plowhorse'],
  ['Lamb Chops', 55, 7, 20.35, 8.744, 34.398, 'puzzle'],
  ['Fried Scallops', 92, 5.9, 18.5, 14.6264, 31.8919, 'star'],
  ['Broiled Haddock', 85, 4.5, 15.65, 13.5135, 28.754, 'plowhorse'],
  ['Roast Turkey', 92, 3, 12, 14.6264, 25, 'plowhorse'],
  ['Baked Stuffed Shrimp', 77, 6.7, 18.5, 12.2417, 36.2162, 'star'],
  ['Veal Marsala', 65, 6.5, 18.75, 10.3339, 34.6667, 'star'],
];

// From memory, after Ninemeier, Planning and Control for Food and Beverage Operations, following Kasavana & Smith: mean margin 3.44,
// food cost 50.9 %, threshold 17.5 %, and these classes. The further digits are derived.
const FOUR_ITEMS: readonly (readonly [string, number, number, number, MixClass])[] = [
  ['Chicken Dinner', 420, 2.21, 4.95, 'plowhorse'],
  ['N.Y. Strip Steak', 360, 4.5, 8.5, 'star'],
  ['Lobster Tail', 150, 4.95, 9.5, 'puzzle'],
  ['Tenderloin Tips', 70, 4, 6.45, 'dog'],
];

describe('menuMix: published tables', () => {
  test('menuMix(six items with printed classes) prints the same classes and mean margin', () => {
    const mix = mixOf(
      LEE_SHIN_CHOI.map(([name, share, margin]) => ({ name, sold: share * 100, cost: 1, price: margin + 1 })),
    );
    expect(Math.abs((mix.thresholds.margin ?? 0) - 21_957)).toBeLessThan(1);
    expect(mix.thresholds.popularity).toBeCloseTo(0.116667, 6);
    expect(classes(mix)).toEqual(Object.fromEntries(LEE_SHIN_CHOI.map(([name, , , printed]) => [name, printed])));
    for (const [name, share, margin] of LEE_SHIN_CHOI) {
      const item = mix.items.find((each) => each.item === name);
      expect(item?.share).toBeCloseTo(share / 100.01, 9); // the printed shares add up to 100.01
      expect(item?.margin).toBeCloseTo(margin, 6);
    }
  });

  test('menuMix(eight items) compares unrounded values', () => {
    const mix = mixOf(DITTMER_KEEFE.map(([name, sold, cost, price]) => ({ name, sold, cost, price })));
    expect(mix.totals.sold).toBe(629);
    expect(mix.totals.revenue).toBeCloseTo(10_425.95, 8);
    expect(mix.totals.plateCost).toBeCloseTo(3350.2, 8);
    expect(mix.totals.foodCost).toBeCloseTo(0.321333, 6);
    expect(mix.totals.margin).toBeCloseTo(7075.75, 8);
    expect(mix.thresholds.margin).toBeCloseTo(11.249205, 6);
    expect(mix.thresholds.popularity).toBe(0.0875);
    expect(classes(mix)).toEqual(Object.fromEntries(DITTMER_KEEFE.map((row) => [row[0], row[6]])));
    for (const [name, sold, cost, price, share, foodCost] of DITTMER_KEEFE) {
      const item = mix.items.find((each) => each.item === name);
      expect((item?.share ?? 0) * 100).toBeCloseTo(share, 4);
      expect((item?.foodCost ?? 0) * 100).toBeCloseTo(foodCost, 4);
      expect(item?.margin).toBeCloseTo(price - cost, 10);
      expect(item?.contribution).toBeCloseTo(sold * (price - cost), 8);
    }
  });

  test('menuMix(four items) has one in each class', () => {
    const mix = mixOf(FOUR_ITEMS.map(([name, sold, cost, price]) => ({ name, sold, cost, price })));
    expect(mix.thresholds.popularity).toBeCloseTo(0.175, 12);
    expect(mix.thresholds.margin).toBeCloseTo(3.4448, 8);
    expect(mix.totals.foodCost).toBeCloseTo(0.508973, 6);
    expect(classes(mix)).toEqual(Object.fromEntries(FOUR_ITEMS.map((row) => [row[0], row[4]])));
  });

  // IHM course notes, unit 10, Menu Engineering: 7 % for 10 items. University lecture slides, ch. 12, Pricing: 3.2 % for 22 items.
  test.each([
    [10, 7],
    [22, 3.2],
  ])('menuMix(%d items) has its threshold of popularity at %d per cent', (count, percent) => {
    const mix = mixOf(
      Array.from({ length: count }, (_, index) => ({ name: `Item ${index}`, sold: 10, cost: 1, price: 2 })),
    );
    expect(Math.abs((mix.thresholds.popularity ?? 0) * 100 - percent)).toBeLessThan(0.05);
  });
});
