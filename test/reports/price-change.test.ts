import fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import { priceModelOf } from '@/lib/model/price-model/price-model-of';
import { menuMix } from '@/lib/reports/menu-mix';
import { priceChange } from '@/lib/reports/price-change';
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
