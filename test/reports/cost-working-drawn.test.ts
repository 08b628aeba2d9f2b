import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import type { Day } from '@/lib/core/days';
import { isNear } from '@/lib/core/near';
import { costPeriod } from '@/lib/model/costed-period';
import { costWorking } from '@/lib/reports/cost-working';
import { dishCosts } from '@/lib/reports/dish-costs';
import { menuMix } from '@/lib/reports/menu-mix';
import { expectParts } from '../cost-parts';
import { acyclicBooks, BOOK_DAYS, RUNS } from '../generated-books';
import { plainCost } from '../plain-recursion';

vi.setConfig({ testTimeout: 300_000 });

describe('costWorking over generated books', () => {
  test('costWorking(book, item, day): the parts sum to the whole, which is plain recursion in exact decimals', () => {
    let known = 0;
    let unknown = 0;
    fc.assert(
      fc.property(acyclicBooks, fc.integer({ min: 0, max: 19 }), (facts, later) => {
        const on = (BOOK_DAYS.from + later) as Day;
        const period = costPeriod(facts, { from: on, to: (on + 1) as Day }, 'everything');
        for (const { id, kind } of facts.items) {
          const working = costWorking(period, id, on) ?? expect.unreachable('everything has a working');
          expectParts(working);
          if (kind !== 'dish') continue;
          const plain = plainCost(facts, id, on);
          expect(working.plateCost === null).toBe(plain === null);
          if (plain === null) unknown += 1;
          else known += 1;
          if (plain && working.plateCost !== null) expect(isNear(working.plateCost, plain.toNumber())).toBe(true);
        }
      }),
      RUNS,
    );
    // a generator that makes only one of the two would test nothing
    expect(Math.min(known, unknown) / (known + unknown)).toBeGreaterThan(0.1);
  });

  test('costWorking(book, item, day) is the plate cost that menuMix and dishCosts give for a period of that one day', () => {
    fc.assert(
      fc.property(acyclicBooks, fc.integer({ min: 0, max: 19 }), (facts, later) => {
        const on = (BOOK_DAYS.from + later) as Day;
        const range = { from: on, to: (on + 1) as Day };
        const offered = costPeriod(facts, range);
        const everything = costPeriod(facts, range, 'everything');
        for (const row of dishCosts(offered).items) {
          const working = costWorking(everything, row.id, on, row.channel);
          expect(working?.plateCost === null).toBe(row.plateCost === null);
          expect(isNear(working?.plateCost ?? 0, row.plateCost ?? 0)).toBe(true);
          expect(working?.halfKnown?.missing).toBe(row.halfKnown?.missing);
          expect(isNear(working?.halfKnown?.floor ?? 0, row.halfKnown?.floor ?? 0)).toBe(true);
          expect(working?.estimated).toBe(row.estimated);
          expect(isNear(working?.recipeLabour ?? 0, row.recipeLabour ?? 0)).toBe(true);
        }
        for (const row of menuMix(offered, { section: null, resamples: 0 }).items) {
          // the mix has all channels together: by paid portions, or alike where none was sold
          const sales = facts.sales.filter(({ item, day: when }) => item === row.id && when === on);
          const listed = facts.menuPrices
            .filter(({ item }) => item === row.id)
            .map(({ channel }) => ({ channel, sold: 1 }));
          const weights = row.sold > 0 ? sales : listed;
          const costs = weights.map(({ channel }) => costWorking(everything, row.id, on, channel)?.plateCost ?? null);
          expect(costs.includes(null)).toBe(row.plateCost === null);
          const whole = weights.reduce((total, { sold }) => total + sold, 0);
          const mean = weights.reduce((total, { sold }, index) => total + sold * (costs[index] ?? 0), 0) / whole;
          if (row.plateCost !== null) expect(isNear(mean, row.plateCost)).toBe(true);
        }
      }),
      RUNS,
    );
  });
});
