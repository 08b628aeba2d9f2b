import fc from 'fast-check';
import { expect, test } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import { priceModelOf } from '@/lib/model/price-model/price-model-of';
import { priceChange } from '@/lib/reports/price-change';
import { tornado } from '@/lib/reports/tornado';
import { Book, days } from '../books';
import { pricedBooks } from '../edited-facts';
import { BOOK_DAYS, RUNS } from '../generated-books';
import { costedMenus } from '../generated-menus';
import { expectNear } from '../near';

/** Cream at 2 a litre for the first ten portions and at 3 for the next ten, 100 ml each; salt at 1 a kilogram, 10 g each. */
function model() {
  const book = new Book({ qFactor: 0.1 });
  const cream = book.ingredient('Cream', 'ml', 0.002);
  const salt = book.ingredient('Salt', 'g', 0.001);
  book.price(1 as Parameters<Book['price']>[0], 0.003, { from: '2026-10-11' });
  const dish = book.dish('Fool', {}, [100, 'ml', cream], [10, 'g', salt]);
  book.menu(dish, 5);
  book.sell(dish, '2026-10-05', 10, 50);
  book.sell(dish, '2026-10-15', 10, 50);
  return priceModelOf(costPeriod(book.facts(), days('2026-10')), null);
}

test('tornado(model) moves each ingredient over what was paid, and names what never moved', () => {
  const { bars, unmoved } = tornado(model());
  // 1 litre before and 1 litre after: at 2 all month one litre is 1 cheaper, with q of 10 % 1.10; at 3 one litre is 1 dearer
  expect(bars).toEqual([
    {
      goods: expect.objectContaining({ name: 'Cream' }),
      range: { lowest: expect.closeTo(2, 12), highest: expect.closeTo(3, 12) },
      isNamed: false,
      atLowest: expect.closeTo(1.1, 12),
      atHighest: expect.closeTo(-1.1, 12),
    },
  ]);
  expect(unmoved).toEqual(['Salt']);
});

test('tornado(model, ranges) moves an ingredient over the range named for it', () => {
  const { bars, unmoved } = tornado(model(), new Map([['salt', { lowest: 0, highest: 11 }]]));
  // 200 g of salt at 1: free it saves 0.20 with q 0.22, at 11 it costs 2 more, with q 2.20
  expect(bars.map(({ goods, isNamed, atLowest, atHighest }) => [goods.name, isNamed, atLowest, atHighest])).toEqual([
    ['Salt', true, expect.closeTo(0.22, 12), expect.closeTo(-2.2, 12)],
    ['Cream', false, expect.closeTo(1.1, 12), expect.closeTo(-1.1, 12)],
  ]);
  expect(unmoved).toEqual([]);
});

test('tornado(generated books) says of each end what priceChange says of that price', () => {
  let compared = 0;
  fc.assert(
    fc.property(fc.oneof(pricedBooks, costedMenus), (facts) => {
      const book = priceModelOf(costPeriod(facts, BOOK_DAYS), null);
      const scale = Math.max(...book.items.map(({ revenue }) => Math.abs(revenue ?? 0)), 1);
      for (const { goods, range, atLowest, atHighest } of tornado(book).bars) {
        const target = { of: 'ingredient', name: goods.name } as const;
        for (const [price, change] of [
          [range.lowest, atLowest],
          [range.highest, atHighest],
        ] as const) {
          const { before, contributionChange } = priceChange(book, [{ target, step: { how: 'flat', to: price } }]);
          expectNear(change, contributionChange, goods.name, Math.max(scale, before.plateCost) + Math.abs(change));
          compared += 1;
        }
      }
    }),
    RUNS,
  );
  expect(compared).toBeGreaterThan(20);
});
