import { describe, expect, test } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import { dishCosts } from '@/lib/reports/dish-costs';
import { menuMix } from '@/lib/reports/menu-mix';
import { Book, days } from '../books';

const costed = (book: Book) => costPeriod(book.facts(), days('2026-10'));
const mixOf = (book: Book) => menuMix(costed(book), { section: null });

describe('menuMix: what is not known', () => {
  test('menuMix(portions without any price) has no revenue: unknown, not zero', () => {
    const book = new Book();
    const free = book.dish('Free', { estimatedCost: 1 });
    book.sell(free, '2026-10-01', 4, 0, { soldWithoutRevenue: 4 });
    expect(mixOf(book).items[0]).toMatchObject({ sold: 4, revenue: null, netPrice: null, margin: null });
    expect(mixOf(book).totals).toMatchObject({ sold: 4, revenue: null, costedRevenue: 0 });
    book.sell(book.dish('Paid', { estimatedCost: 1 }), '2026-10-01', 1, 8);
    expect(mixOf(book).totals.revenue).toBe(8);
    expect(mixOf(book).items.map(({ revenue }) => revenue)).toEqual([8, null]);
    // given away for nothing is known to bring nothing
    book.sell(free, '2026-10-02', 1, 0);
    expect(mixOf(book).items.find(({ item }) => item === 'Free')?.revenue).toBe(0);
  });

  test('menuMix(a dish whose estimate begins in the period) is neither costed nor estimated, and has no floor', () => {
    const book = new Book();
    const cake = book.dish('Cake', { from: '2026-10-10', estimatedCost: 2 });
    book.sell(cake, '2026-10-03', 1, 9);
    book.sell(cake, '2026-10-12', 1, 9);
    expect(mixOf(book).items[0]).toMatchObject({ plateCost: null, estimated: false, halfKnown: null });
    expect(mixOf(book).issues[0]).toMatchObject({ code: 'begins-late', about: 'Cake' });
  });

  test('menuMix(estimates) counts the costed portions that stand on one', () => {
    const book = new Book();
    book.sell(book.dish('Guess', { estimatedCost: 2 }), '2026-10-01', 3, 30);
    book.sell(book.dish('Known', {}, [1, 'g', book.ingredient('Sugar', 'g', 1)]), '2026-10-01', 5, 50);
    book.sell(book.dish('Unknown', {}, [1, 'g', book.ingredient('Salt', 'g', null)]), '2026-10-01', 7, 70);
    expect(mixOf(book).totals).toMatchObject({ costedSold: 8, estimatedSold: 3 });
  });

  test('menuMix(counts) says whether stock was counted on the days of the period', () => {
    const book = new Book();
    const sugar = book.ingredient('Sugar', 'g', 1);
    book.count('2026-09-30', sugar, 1, 'kg');
    expect(mixOf(book).stockCounted).toBe(false);
    book.count('2026-10-31', sugar, 1, 'kg');
    expect(mixOf(book).stockCounted).toBe(true);
  });

  test('menuMix(sales that wait for a name) counts them beside all figures; nothing has to be loaded then', () => {
    const book = new Book();
    book.wait('Creme brul#', '2026-10-01', 620, 31);
    const mix = mixOf(book);
    expect(mix.waiting).toMatchObject({ rows: 31, portions: 620 });
    expect(mix.totals.sold).toBe(0);
    expect(mix.issues.map(({ code }) => code)).toEqual(['sales-waiting']);
    expect(dishCosts(costed(book)).issues.map(({ code }) => code)).toEqual(['sales-waiting']);
  });
});

describe('menuMix: the order of issues', () => {
  /** Salt keeps 4 + 6 portions without a cost, Pepper 6, Cloud 8; Tea is sold 9 times without a price; 7 wait for a name. */
  function book(): Book {
    const made = new Book({ defaulted: ['currency'] });
    const salt = made.ingredient('Salt', 'g', null);
    const pepper = made.ingredient('Pepper', 'g', null);
    const base = made.component('Base', { yields: [1, 'kg'] }, [1, 'kg', salt], [1, 'g', pepper]);
    made.sell(made.dish('Plain', {}, [1, 'g', salt]), '2026-10-01', 4, 40);
    made.sell(made.dish('Rich', {}, [1, 'g', base]), '2026-10-01', 6, 60);
    made.sell(made.item('dish', 'Cloud'), '2026-10-01', 8, 80);
    made.sell(made.dish('Tea', { estimatedCost: 1 }), '2026-10-01', 9, 0, { soldWithoutRevenue: 9 });
    made.wait('Tarte', '2026-10-01', 7);
    return made;
  }

  test('menuMix(issues) begin with what keeps most portions without cost or price, and end with settings', () => {
    expect(mixOf(book()).issues.map(({ code, about }) => `${code} ${about}`)).toEqual([
      'no-offer Salt',
      'no-menu-price Tea',
      'no-recipe Cloud',
      'sales-waiting Marram House',
      'no-offer Pepper',
      'few-items Marram House',
      'few-trading-days Marram House',
      'setting-defaulted currency',
    ]);
  });

  test('dishCosts(issues) stand in the same order', () => {
    expect(dishCosts(costed(book())).issues.map(({ code, about }) => `${code} ${about}`)).toEqual([
      'no-offer Salt',
      'no-menu-price Tea',
      'no-recipe Cloud',
      'sales-waiting Marram House',
      'no-offer Pepper',
      'setting-defaulted currency',
    ]);
  });
});
