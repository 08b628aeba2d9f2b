import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import { priceModelOf } from '@/lib/model/price-model/price-model-of';
import { AT_STAKE_BY, atStake, concentration } from '@/lib/reports/at-stake';
import { priceChange } from '@/lib/reports/price-change';
import { Book, days } from '../books';
import { pricedBooks } from '../edited-facts';
import { BOOK_DAYS, RUNS } from '../generated-books';
import { expectNear } from '../near';

/**
 * Torte: 100 g of couverture at 20 a kilogram and a box at 0.50; fool: 200 ml of cream at 5 a litre, with 10 g of couverture. October has ten
 * tortes paid and two comps, five fools, and 40 guests each given 5 g of couverture; September had 100 fools.
 */
function house() {
  const book = new Book({ qFactor: 0.1 });
  const couverture = book.ingredient('Couverture', 'g', null, { productGroup: 'Chocolate' });
  book.price(book.offer(couverture, 1, 1, 'kg', 'Quay Chocolate'), 20);
  const cream = book.ingredient('Cream', 'ml', 0.005, { productGroup: 'Dairy' });
  const box = book.ingredient('Box', 'each', 0.5, { department: 'packaging' });
  const torte = book.dish('Torte', {}, [100, 'g', couverture], [1, 'each', box]);
  const fool = book.dish('Fool', {}, [200, 'ml', cream], [10, 'g', couverture]);
  book.recipe(book.item('extra', 'Square'), {}, [5, 'g', couverture]);
  for (const dish of [torte, fool]) book.menu(dish, 9);
  book.sell(fool, '2026-09-10', 100, 900);
  book.sell(torte, '2026-10-10', 10, 90, { comps: 2 });
  book.sell(fool, '2026-10-10', 5, 45);
  book.cover('2026-10-10', 40);
  const modelOf = (name: string) => priceModelOf(costPeriod(book.facts(), days(name)), null);
  return { october: modelOf('2026-10'), year: modelOf('2025-11-01..2026-11-01') };
}

describe('atStake', () => {
  // couverture: 12 tortes 1200 g, 5 fools 50 g, 40 squares 200 g: 1.45 kg at 20 with q 31.90. cream: 1 l at 5 with q 5.50. boxes: 12 at 0.50
  test('atStake(October, ingredient) counts paid, comps and every guest, q on food only', () => {
    const { october, year } = house();
    const { rows, foodSpend, dishes } = atStake(october, 'ingredient', year);
    expect(foodSpend).toBeCloseTo(37.4, 12);
    expect(dishes).toBe(2);
    // in September 100 fools took 1 kg of couverture and 20 l of cream more
    expect(rows).toEqual([
      {
        name: 'Couverture',
        spend: expect.closeTo(31.9, 12),
        share: expect.closeTo(31.9 / 37.4, 12),
        onePercentPerYear: expect.closeTo(0.319 + 0.22, 12),
        dishes: ['Fool', 'Torte'],
      },
      {
        name: 'Box',
        spend: expect.closeTo(6, 12),
        share: null,
        onePercentPerYear: expect.closeTo(0.06, 12),
        dishes: ['Torte'],
      },
      {
        name: 'Cream',
        spend: expect.closeTo(5.5, 12),
        share: expect.closeTo(5.5 / 37.4, 12),
        onePercentPerYear: expect.closeTo(0.055 + 1.1, 12),
        dishes: ['Fool'],
      },
    ]);
  });

  test('atStake(October, supplier) and (group) add up what belongs together; without a year nothing is said of one', () => {
    const { october } = house();
    const named = (by: 'supplier' | 'group') =>
      atStake(october, by, null).rows.map(({ name, spend, onePercentPerYear }) => [name, spend, onePercentPerYear]);
    expect(named('supplier')).toEqual([
      ['Quay Chocolate', expect.closeTo(31.9, 12), null],
      ['Bay Dairy', expect.closeTo(11.5, 12), null],
    ]);
    expect(named('group')).toEqual([
      ['Chocolate', expect.closeTo(31.9, 12), null],
      [null, expect.closeTo(6, 12), null],
      ['Dairy', expect.closeTo(5.5, 12), null],
    ]);
  });

  test('atStake(generated books) add up to the same however they are added up', () => {
    fc.assert(
      fc.property(pricedBooks, (facts) => {
        const model = priceModelOf(costPeriod(facts, BOOK_DAYS), null);
        const [first = 0, ...others] = AT_STAKE_BY.map((by) => {
          return atStake(model, by, null).rows.reduce((sum, { spend }) => sum + spend, 0);
        });
        for (const other of others) expectNear(other, first, 'all of it');
      }),
      RUNS,
    );
  });

  test('atStake(generated books) names the dishes whose cost a change of that price moves', () => {
    let moved = 0;
    fc.assert(
      fc.property(pricedBooks, (facts) => {
        const model = priceModelOf(costPeriod(facts, BOOK_DAYS), null);
        for (const { name, dishes } of atStake(model, 'ingredient', null).rows) {
          const target = { of: 'ingredient', name: name ?? '' } as const;
          const { items } = priceChange(model, [{ target, step: { how: 'amount', by: 4000 } }]);
          for (const { item, before, after } of items) {
            if (before.plateCost === null) continue;
            expect(dishes.includes(item.name), `${name} in ${item.name}`).toBe(before.plateCost !== after.plateCost);
            moved += 1;
          }
        }
      }),
      RUNS,
    );
    expect(moved).toBeGreaterThan(20);
  });
});

test('concentration(at stake by group) names the group that most of the food cost stands on, and who leans on it', () => {
  const { october } = house();
  const byGroup = atStake(october, 'group', null);
  expect(concentration(byGroup)).toEqual({
    group: 'Chocolate',
    share: expect.closeTo(31.9 / 37.4, 12),
    dishes: 2,
    of: 2,
    carries: true,
  });
  expect(concentration({ ...byGroup, rows: [] })).toBeNull();
});
