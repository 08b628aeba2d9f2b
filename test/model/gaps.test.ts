import { describe, expect, test } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import type { ItemId, OfferId } from '@/lib/model/facts';
import { Book, day, days } from '../books';

const found = (book: Book) =>
  costPeriod(book.facts(), days('2026-10')).issues.map(({ code, about, facts }) => [code, about, facts]);

describe('costPeriod: something begins inside the period', () => {
  test('costPeriod(a recipe that begins after the dish is sold) says from when, and from when it was on sale', () => {
    const book = new Book();
    const cake = book.dish('Cake', { from: '2026-10-10', estimatedCost: 2 });
    book.sell(cake, '2026-10-12', 1, 9);
    expect(found(book)).toEqual([]);
    book.sell(cake, '2026-10-03', 1, 9);
    expect(found(book)).toEqual([['begins-late', 'Cake', { from: '2026-10-03', begins: '2026-10-10', kind: 'dish' }]]);
    book.menu(cake, 9, { from: '2026-10-02' });
    expect(found(book)[0]?.[2]).toMatchObject({ from: '2026-10-02' });
  });

  test('costPeriod(a recipe that begins after the period) says from when, whether its version was read or only its day', () => {
    const book = new Book();
    const cake = book.dish('Cake', { from: '2026-12-01', estimatedCost: 2 });
    book.sell(cake, '2026-10-03', 1, 9);
    const late = [['begins-late', 'Cake', { from: '2026-10-03', begins: '2026-12-01', kind: 'dish' }]];
    expect(found(book)).toEqual(late);
    const facts = book.facts();
    const read = { ...facts, recipeVersions: [], laterRecipes: [{ item: cake, begins: day('2026-12-01') }] };
    const { issues } = costPeriod(read, days('2026-10'));
    expect(issues.map(({ code, about, facts: said }) => [code, about, said])).toEqual(late);
    expect(costPeriod({ ...read, laterRecipes: [] }, days('2026-10')).issues.map(({ code }) => code)).toEqual([
      'no-recipe',
    ]);
  });

  test('costPeriod(an ingredient sold before it is stated) names the ingredient’s first day', () => {
    const book = new Book();
    const juice = book.item('ingredient', 'Juice');
    book.ingredientVersion(juice, 'each', { from: '2026-10-05' });
    book.price(book.offer(juice, 1, 1, 'each'), 1);
    book.sell(juice, '2026-10-01', 1, 4);
    expect(found(book)).toEqual([
      ['begins-late', 'Juice', { from: '2026-10-01', begins: '2026-10-05', kind: 'ingredient' }],
    ]);
  });

  function egg(price: (book: Book, offer: OfferId) => void): Book {
    const book = new Book();
    const item: ItemId = book.item('ingredient', 'Egg');
    book.ingredientVersion(item, 'each');
    price(book, book.offer(item, 1, 1, 'each'));
    book.menu(book.dish('Custard', {}, [2, 'each', item]), 9);
    return book;
  }
  const offer = { supplier: 'Bay Dairy', code: 'P1' };

  test('costPeriod(a price that is not there on all days) names the days', () => {
    expect(found(egg((book, of) => book.price(of, 1, { from: '2026-10-10' })))).toEqual([
      ['no-price', 'Egg', { ...offer, from: null, until: '2026-10-10' }],
    ]);
    const gap = egg((book, of) => {
      book.price(of, 1, { kind: 'agreed', from: '2026-09-01', to: '2026-10-05' });
      book.price(of, 1, { kind: 'agreed', from: '2026-10-20', to: '2026-10-25' });
    });
    expect(found(gap)).toEqual([
      ['no-price', 'Egg', { ...offer, from: '2026-10-06', until: '2026-10-20' }],
      ['no-price', 'Egg', { ...offer, from: '2026-10-26', until: null }],
    ]);
    expect(found(egg(() => undefined))).toEqual([['no-price', 'Egg', offer]]);
  });
});
