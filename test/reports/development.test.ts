import { describe, expect, test } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import type { ItemId } from '@/lib/model/facts';
import { trialCosts } from '@/lib/model/trial-costs';
import { type Development, type DevelopmentOptions, development, paybackPortions } from '@/lib/reports/development';
import { Book, day, days } from '../books';

const OCTOBER = days('2026-10');
const developmentOf = (book: Book, options?: DevelopmentOptions): Development =>
  development(costPeriod(book.facts(), OCTOBER, 'everything'), trialCosts(book.facts()), options);

/** Two trials of a tart: 3 h of a chef at 20.00 in August, 2 h of a commis at 16.00 in September, flour of 2.00 and later 3.00 a kilogram. */
function house(): { book: Book; tart: ItemId; cake: ItemId; pudding: ItemId } {
  const book = new Book({ qFactor: 0.1 });
  book.labour('Chef', 20);
  book.labour('chef', 30, '2026-09-15');
  book.labour('commis', 16, '2026-09-01');
  const flour = book.item('ingredient', 'Flour');
  book.ingredientVersion(flour, 'g', { usableYield: 0.5 });
  const offer = book.offer(flour, 1, 1, 'kg');
  book.price(offer, 2);
  book.price(offer, 3, { from: '2026-09-01' });
  const cream = book.component('Cream', { yields: [1, 'kg'] }, [1, 'kg', flour, 'bought']);
  const dish = (name: string, grams: number) => book.dish(name, { section: 'Sweet' }, [grams, 'g', flour, 'bought']);
  const [tart, cake, pudding] = [dish('Tart', 500), dish('Cake', 1000), dish('Pudding', 2000)] as const;
  book.menu(cake, 10);
  book.menu(pudding, 12);
  book.sell(cake, '2026-10-02', 3, 30);
  book.sell(pudding, '2026-10-02', 1, 12);
  book.trial(tart, '2026-08-10', 3, 'chef', [500, 'g', flour]);
  book.trial(tart, '2026-09-10', 2, 'Commis', [1, 'kg', flour], [0.2, 'kg', cream]);
  return { book, tart, cake, pudding };
}

describe('development', () => {
  // labour 3 * 20 + 2 * 16 = 92.00; flour as taken 500 g * 2.00 + 1,000 g * 3.00, cream 200 g * 3.00: 1 + 3 + 0.60 = 4.60; no q
  test('development(period, trials) adds hours at their grade and what was used, at the prices of each day', () => {
    const [dish] = developmentOf(house().book).dishes;
    expect(dish).toMatchObject({ item: 'Tart', hours: 5, payback: null, margin: null });
    expect(dish?.labour).toBeCloseTo(92, 12);
    expect(dish?.ingredients).toBeCloseTo(4.6, 12);
    expect(dish?.cost).toBeCloseTo(96.6, 12);
    expect(
      dish?.trials.map(({ day: on, labour, ingredients }) => [on, labour?.toFixed(9), ingredients?.toFixed(9)]),
    ).toEqual([
      [day('2026-08-10'), '60.000000000', '1.000000000'],
      [day('2026-09-10'), '32.000000000', '3.600000000'],
    ]);
    expect(developmentOf(house().book).issues).toEqual([]);
  });

  // planned at 11.00 less 500 g at 3.30 a kilogram = 9.35; otherwise (3 * 6.70 + 5.40) / 4 = 6.375: 96.60 / 2.975
  test('development(a planned price) pays back against the mean of the others in its section', () => {
    const { book, tart } = house();
    const [dish] = developmentOf(book, { prices: new Map([[tart, 11]]) }).dishes;
    expect(dish?.margin).toBeCloseTo(9.35, 12);
    expect(dish?.otherwise).toBeCloseTo(6.375, 12);
    expect(dish?.payback).toBeCloseTo(96.6 / 2.975, 9);
  });

  test('development(a dish that is sold) takes its own margin, and what its guests are said to have ordered instead', () => {
    const { book, tart, pudding } = house();
    book.sell(tart, '2026-10-05', 2, 18);
    const [dish] = developmentOf(book, { prices: new Map([[tart, 99]]), instead: new Map([[tart, pudding]]) }).dishes;
    expect(dish?.margin).toBeCloseTo(9 - 1.65, 12);
    expect(dish?.otherwise).toBeCloseTo(12 - 6.6, 12);
    expect(dish?.payback).toBeCloseTo(96.6 / (7.35 - 5.4), 9);
  });

  test('development(a grade without rate, or a good without price) is not known, and says which', () => {
    const { book, tart } = house();
    book.trial(tart, '2026-08-20', 1, 'commis');
    book.trial(tart, '2026-08-21', 1, 'chef', [1, 'g', book.ingredient('Gold leaf', 'g', null)]);
    const { dishes, issues } = developmentOf(book, { prices: new Map([[tart, 11]]) });
    expect(dishes[0]).toMatchObject({ labour: null, ingredients: null, cost: null, payback: null });
    expect(dishes[0]?.trials[2]).toMatchObject({ labour: null, ingredients: 0 });
    expect(issues).toEqual([
      { code: 'no-offer', about: 'Gold leaf', facts: {}, day: day('2026-08-21') },
      { code: 'no-labour-rate', about: 'commis', facts: { recipe: 'Tart' }, day: day('2026-08-20') },
    ]);
  });

  test('development(no trials) is none', () => {
    expect(developmentOf(new Book()).dishes).toEqual([]);
  });
});

describe('paybackPortions', () => {
  test('paybackPortions(cost, margin, otherwise) is cost / difference, null where the difference is not positive', () => {
    expect(paybackPortions(300, 8, 6.5)).toBe(200);
    expect(paybackPortions(0, 8, 6.5)).toBe(0);
    expect(paybackPortions(300, 6.5, 6.5)).toBeNull();
    expect(paybackPortions(300, 6, 6.5)).toBeNull();
    expect(paybackPortions(null, 8, 6.5)).toBeNull();
    expect(paybackPortions(300, null, 6.5)).toBeNull();
    expect(paybackPortions(300, 8, null)).toBeNull();
  });
});
