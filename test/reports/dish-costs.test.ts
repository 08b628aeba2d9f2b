import { describe, expect, test } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import { type DishCosts, dishCosts } from '@/lib/reports/dish-costs';
import { Book, days } from '../books';

const costsOf = (book: Book): DishCosts => dishCosts(costPeriod(book.facts(), days('2026-10')));

describe('dishCosts', () => {
  test('dishCosts(period) has a row for each item and channel that is on the menu or sold, whatever its department', () => {
    const book = new Book();
    const wine = book.ingredient('Wine', 'ml', 0.02, { department: 'drink' });
    const glass = book.dish('Glass', { section: 'After' }, [100, 'ml', wine]);
    book.menu(glass, 8);
    book.menu(glass, 7, { channel: 'takeaway' });
    book.menu(glass, null, { channel: 'terrace' });
    book.sell(glass, '2026-10-02', 4, 30);
    book.sell(glass, '2026-10-02', 1, 6, { channel: 'event' });
    const tart = book.dish('Apple tart', { estimatedCost: 3 });
    book.menu(tart, 10);
    const { items, issues } = costsOf(book);
    expect(
      items.map(({ item, channel, sold, netPrice, plateCost, margin, estimated }) => [
        item,
        channel,
        sold,
        netPrice,
        plateCost,
        margin,
        estimated,
      ]),
    ).toEqual([
      ['Apple tart', 'dine_in', 0, 10, 3, 7, true],
      ['Glass', 'dine_in', 4, 7.5, 2, 5.5, false],
      ['Glass', 'event', 1, 6, 2, 4, false],
      ['Glass', 'takeaway', 0, 7, 2, 5, false],
    ]);
    expect(items[1]).toMatchObject({
      kind: 'dish',
      section: 'After',
      recipeLabour: null,
      smallBatchLoss: 0, // nothing in it is made in batches
      marginPerPlatingMinute: null,
    });
    expect(items[1]?.foodCost).toBeCloseTo(2 / 7.5, 12);
    expect(issues).toEqual([]);
  });

  test('dishCosts(nothing sold in a channel) is the mean over the days on its menu', () => {
    const book = new Book();
    const plum = book.item('ingredient', 'Plum');
    book.ingredientVersion(plum, 'each');
    const offer = book.offer(plum, 1, 1, 'each');
    book.price(offer, 1);
    book.price(offer, 2, { from: '2026-10-30' });
    const tart = book.dish('Tart', {}, [1, 'each', plum]);
    book.menu(tart, 9, { from: '2026-10-29' });
    book.menu(tart, 12, { from: '2026-10-31' });
    // 29th to 31st: price 9, 9, 12; cost 1, 2, 2
    expect(costsOf(book).items[0]?.netPrice).toBeCloseTo(10, 12);
    expect(costsOf(book).items[0]?.plateCost).toBeCloseTo(5 / 3, 12);
  });

  test('dishCosts(a channel) has a row where it was on the menu on some days, or served one portion or one comp', () => {
    const book = new Book();
    const tart = book.dish('Tart', { estimatedCost: 3 });
    book.menu(tart, 10, { channel: 'a' });
    book.menu(tart, null, { channel: 'a', from: '2026-10-10' });
    book.sell(tart, '2026-10-02', 1, 9, { channel: 'b' });
    book.sell(tart, '2026-10-02', 0, 0, { channel: 'c', comps: 1 });
    book.sell(tart, '2026-10-02', 0, 0, { channel: 'd' });
    expect(costsOf(book).items.map(({ channel, sold }) => [channel, sold])).toEqual([
      ['a', 0],
      ['b', 1],
      ['c', 0],
    ]);
  });

  test('dishCosts(a half-known plate) has its floor; issues name what is missing and what stands in', () => {
    const book = new Book();
    const lines = [
      [1, 'each', book.ingredient('Plum', 'each', 0.5)],
      [1, 'each', book.ingredient('Leaf', 'each', null)],
    ] as const;
    const tart = book.dish('Tart', {}, ...lines);
    book.menu(tart, 10);
    book.sell(tart, '2026-10-02', 2, 0, { soldWithoutRevenue: 2 });
    const { items, issues } = costsOf(book);
    expect(items[0]).toMatchObject({ plateCost: null, margin: null, foodCost: null, netPrice: 10 });
    expect(items[0]?.halfKnown).toEqual({ floor: 0.5, lines: 2, missing: 1 });
    expect(issues.map(({ code, about }) => `${code} ${about}`)).toEqual(['no-offer Leaf', 'stand-in-revenue Tart']);
  });
});
