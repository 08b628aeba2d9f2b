import fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import { priceModelOf } from '@/lib/model/price-model/price-model-of';
import { menuMix } from '@/lib/reports/menu-mix';
import { priceChange } from '@/lib/reports/price-change';
import { Book, days } from '../books';
import { editedFacts, pricedBooks, someEdits } from '../edited-facts';
import { BOOK_DAYS, RUNS } from '../generated-books';
import { expectNear } from '../near';

vi.setConfig({ testTimeout: 300_000 });

const SECTIONS = fc.constantFrom(null, 'Plated', 'To share');

test('priceChange(model, edits of all kinds) is the mix before, and after it the mix of facts with those prices', () => {
  let moved = 0;
  fc.assert(
    fc.property(pricedBooks, someEdits, SECTIONS, (facts, drawn, section) => {
      const period = costPeriod(facts, BOOK_DAYS);
      const model = priceModelOf(period, section);
      const isInside = new Set(model.items.map(({ name }) => name));
      const edits = drawn.filter(({ target }) => section === null || target.of !== 'item' || isInside.has(target.name));
      const change = priceChange(model, edits);
      if (change.contributionChange !== 0) moved += 1;
      const edited = costPeriod(editedFacts(facts, edits, period.things), BOOK_DAYS);
      for (const [side, costed] of [
        ['before', period],
        ['after', edited],
      ] as const) {
        const mix = menuMix(costed, { section, resamples: 0 });
        const { totals } = mix;
        const money = Math.max(totals.costedRevenue, totals.plateCost ?? 0, 1);
        expectNear(change[side].plateCost, totals.plateCost ?? 0, 'cost of the period');
        expectNear(change[side].foodCost, totals.foodCost, 'food cost of the period');
        expectNear(change[side].contribution, totals.margin, 'contribution of the period', money);
        expectNear(change[side].meanMargin, mix.thresholds.margin, 'mean margin', money);
        expect(change.items).toHaveLength(mix.items.length);
        for (const row of mix.items) {
          const stand = change.items.find(({ item }) => item.name === row.item)?.[side];
          if (!stand) throw new Error(`${row.item} is missing`);
          const size = Math.max(row.netPrice ?? 0, row.plateCost ?? 0);
          expectNear(stand.netPrice, row.netPrice, `price of ${row.item}`);
          expectNear(stand.plateCost, row.plateCost, `plate cost of ${row.item}`);
          expectNear(stand.foodCost, row.foodCost, `food cost of ${row.item}`);
          expectNear(stand.margin, row.margin, `margin of ${row.item}`, size);
          expectNear(stand.contribution, row.contribution, `contribution of ${row.item}`, size * row.sold);
          expect(stand.class).toBe(row.class);
        }
      }
    }),
    RUNS,
  );
  expect(moved).toBeGreaterThan(20);
});

/**
 * Torte: 100 g of couverture at 20 a kilogram, 11 on the menu with 10 % tax inside, sold 10 times at 9.50 net; fool: 200 ml of cream at 5 a
 * litre, 6 on the menu without tax, sold 30 times. q is 10 %, menu prices go by 0.50.
 */
function house() {
  const book = new Book({ qFactor: 0.1, priceStep: 0.5 });
  const torte = book.dish('Torte', {}, [100, 'g', book.ingredient('Couverture', 'g', 0.02)]);
  const fool = book.dish('Fool', {}, [200, 'ml', book.ingredient('Cream', 'ml', 0.005)]);
  book.menu(torte, 11, { tax: 0.1, taxIncluded: true });
  book.menu(fool, 6);
  for (const [dish, sold, net] of [
    [torte, 10, 95],
    [fool, 30, 180],
  ] as const) {
    book.sell(dish, '2026-10-02', sold, net);
  }
  return priceModelOf(costPeriod(book.facts(), days('2026-10')), null);
}

test('priceChange(couverture a quarter dearer) is worked by hand', () => {
  const dearer = { target: { of: 'ingredient', name: 'couverture' }, step: { how: 'share', by: 0.25 } } as const;
  const { before, after, contributionChange, items } = priceChange(house(), [dearer]);
  // a torte costs 2.00 with q 2.20, then 2.75; a fool 1.00 with q 1.10. Left: 10 * 7.30 + 30 * 4.90 = 220, then 5.50 less
  expect(before.contribution).toBeCloseTo(220, 12);
  expect(after.contribution).toBeCloseTo(214.5, 12);
  expect(contributionChange).toBeCloseTo(-5.5, 12);
  expect(after.foodCost).toBeCloseTo((27.5 + 33) / 275, 12);
  expect(after.meanMargin).toBeCloseTo(214.5 / 40, 12);
  const [torte, fool] = items;
  expect(torte?.item.name).toBe('Torte');
  expect(torte?.after.plateCost).toBeCloseTo(2.75, 12);
  // 0.55 * 10 / 9.50 * 1.1 = 0.637 more on the menu, 12 on a step; for food cost a quarter more, 9.5 * 0.25 * 10 / 9.5 * 1.1 = 2.75: 14
  expect([torte?.holdMarginPrice, torte?.holdPctPrice]).toEqual([12, 14]);
  // 7.30 a portion before, 6.75 after
  expect(torte?.breakEvenSalesChange).toBeCloseTo(0.55 / 6.75, 12);
  expect([fool?.contributionChange, fool?.holdMarginPrice, fool?.breakEvenSalesChange]).toEqual([0, 6, 0]);
});

test('priceChange(a menu price 1.10 higher) lifts what was achieved by the same share', () => {
  const dearer = { target: { of: 'item', name: 'Torte' }, step: { how: 'amount', by: 1.1 } } as const;
  const { contributionChange, items } = priceChange(house(), [dearer]);
  // a tenth more on the menu: 9.50 becomes 10.45, and 7.30 left becomes 8.25
  expect(contributionChange).toBeCloseTo(9.5, 12);
  const torte = items.find(({ item }) => item.name === 'Torte');
  expect(torte?.after.netPrice).toBeCloseTo(10.45, 12);
  expect(torte?.breakEvenSalesChange).toBeCloseTo(-0.95 / 8.25, 12);
});
