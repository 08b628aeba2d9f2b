import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { type Day, type DayRange, isWithin } from '@/lib/core/days';
import { type CostedPeriod, costPeriod } from '@/lib/model/costed-period';
import type { Facts, ItemId, RecipeVersion } from '@/lib/model/facts';
import { downward } from '@/lib/model/passes';
import { type PlateCost, plateCost } from '@/lib/model/plate-cost';
import { segmentOf } from '@/lib/model/segments';
import { dishCosts } from '@/lib/reports/dish-costs';
import { menuMix } from '@/lib/reports/menu-mix';
import { acyclicBooks, BOOK_DAYS, RUNS } from '../generated-books';
import { plainCost } from '../plain-recursion';

vi.setConfig({ testTimeout: 300_000 });

const dishes = (facts: Facts): readonly ItemId[] =>
  facts.items.filter(({ kind }) => kind === 'dish').map(({ id }) => id);
const allDays = Array.from({ length: BOOK_DAYS.to - BOOK_DAYS.from }, (_, index) => (BOOK_DAYS.from + index) as Day);

function plateOn(period: CostedPeriod, item: ItemId, on: Day): PlateCost {
  return plateCost(period, period.nodeOf.get(item) ?? -1, segmentOf(period.segments, on));
}
function near(a: number, b: number, digits = 1e-9): void {
  expect(Math.abs(a - b)).toBeLessThanOrEqual(digits * Math.max(Math.abs(a), Math.abs(b)));
}

/** The money that all portions served in some days cost, by item: null where a portion of it is not costed. */
function spent(facts: Facts, range: DayRange): readonly (number | null)[] {
  const period = costPeriod(facts, range);
  return dishes(facts).map((item) => {
    const rows = facts.sales.filter((row) => row.item === item && isWithin(row.day, range));
    return rows.reduce((sum: number | null, row) => {
      const { complete, total } = plateOn(period, item, row.day);
      return sum === null || !complete ? null : sum + row.sold * total;
    }, 0);
  });
}

describe('costPeriod: identities over generated books', () => {
  test('costPeriod(book) equals plain recursion in exact decimals on every day, known or not', () => {
    let known = 0;
    let unknown = 0;
    fc.assert(
      fc.property(acyclicBooks, (facts) => {
        const period = costPeriod(facts, BOOK_DAYS);
        for (const item of dishes(facts)) {
          for (const on of allDays) {
            const plain = plainCost(facts, item, on);
            const { complete, total } = plateOn(period, item, on);
            expect(complete).toBe(plain !== null);
            if (plain === null) unknown += 1;
            else {
              known += 1;
              near(total, plain.toNumber());
            }
          }
        }
      }),
      RUNS,
    );
    // a generator that makes only one of the two would test nothing
    expect(Math.min(known, unknown) / (known + unknown)).toBeGreaterThan(0.1);
  });

  // sum (paid + comps) f = (1 + q) sum need_k p_k + packaging + portions on estimate * estimate
  test('costPeriod(book): cost by dish is cost by ingredient', () => {
    fc.assert(
      fc.property(acyclicBooks, (facts) => {
        const period = costPeriod(facts, BOOK_DAYS);
        const { count } = period.segments;
        const wanted = new Float64Array(period.things.length * count);
        let byDish = 0;
        for (const row of facts.sales) {
          const cell = (period.nodeOf.get(row.item) ?? -1) * count + segmentOf(period.segments, row.day);
          wanted[cell] = (wanted[cell] ?? 0) + row.sold + row.comps;
          byDish += (row.sold + row.comps) * plateOn(period, row.item, row.day).total;
        }
        const need = downward(period.lines, wanted, count);
        const worth = (of: Float64Array): number => need.reduce((sum, each, cell) => sum + each * (of[cell] ?? 0), 0);
        const { food, packaging, estimate } = period.prices;
        near(byDish, (1 + facts.venue.qFactor) * worth(food) + worth(packaging) + worth(estimate));
      }),
      RUNS,
    );
  });

  test('costPeriod(a batch scaled as a whole) costs the same', () => {
    const scale = (version: RecipeVersion, by: number): RecipeVersion => ({
      ...version,
      yieldQuantity: version.yieldQuantity && version.yieldQuantity * by,
      alsoQuantity: version.alsoQuantity && version.alsoQuantity * by,
      batchLossG: version.batchLossG && version.batchLossG * by,
      lines: version.lines.map((line) => ({ ...line, quantity: line.quantity * by })),
    });
    fc.assert(
      fc.property(acyclicBooks, fc.constantFrom(2, 0.3, 17), (facts, by) => {
        const components = new Set(facts.items.filter(({ kind }) => kind === 'component').map(({ id }) => id));
        const recipeVersions = facts.recipeVersions.map((each) => (components.has(each.item) ? scale(each, by) : each));
        const before = costPeriod(facts, BOOK_DAYS);
        const after = costPeriod({ ...facts, recipeVersions }, BOOK_DAYS);
        for (const item of dishes(facts)) {
          for (const on of allDays) {
            expect(plateOn(after, item, on).complete).toBe(plateOn(before, item, on).complete);
            near(plateOn(after, item, on).total, plateOn(before, item, on).total);
          }
        }
      }),
      RUNS,
    );
  });

  test('costPeriod(a period split at any day) spends the same in its parts as in the whole', () => {
    fc.assert(
      fc.property(acyclicBooks, fc.constantFrom(...allDays), (facts, at) => {
        const whole = spent(facts, BOOK_DAYS);
        const first = spent(facts, { from: BOOK_DAYS.from, to: at });
        const second = spent(facts, { from: at, to: BOOK_DAYS.to });
        whole.forEach((sum, index) => {
          const [a, b] = [first[index] ?? null, second[index] ?? null];
          expect(sum === null).toBe(a === null || b === null);
          if (sum !== null && a !== null && b !== null) near(sum, a + b);
        });
      }),
      RUNS,
    );
  });

  test('costPeriod(segments) costs each day as a period of that day alone does', () => {
    fc.assert(
      fc.property(acyclicBooks, (facts) => {
        const period = costPeriod(facts, BOOK_DAYS);
        for (const on of allDays) {
          const alone = costPeriod(facts, { from: on, to: (on + 1) as Day });
          expect(alone.segments.count).toBe(1);
          for (const item of dishes(facts)) expect(plateOn(alone, item, on)).toEqual(plateOn(period, item, on));
        }
      }),
      RUNS,
    );
  });

  test('costPeriod(facts in another order) gives the same figures and issues to the last bit', () => {
    fc.assert(
      fc.property(acyclicBooks, fc.infiniteStream(fc.nat()), (facts, noise) => {
        const shuffled = <T>(rows: readonly T[]): T[] =>
          rows
            .map((row) => ({ row, key: noise.next().value as number }))
            .sort((a, b) => a.key - b.key)
            .map(({ row }) => row);
        const other: Facts = {
          ...facts,
          items: shuffled(facts.items),
          ingredientVersions: shuffled(facts.ingredientVersions),
          namedMeasures: shuffled(facts.namedMeasures),
          offers: shuffled(facts.offers),
          recipeVersions: shuffled(facts.recipeVersions).map((each) => ({ ...each, lines: shuffled(each.lines) })),
          menuPrices: shuffled(facts.menuPrices),
          sales: shuffled(facts.sales),
        };
        const [a, b] = [costPeriod(facts, BOOK_DAYS), costPeriod(other, BOOK_DAYS)];
        expect(menuMix(b, { section: null, resamples: 20 })).toEqual(menuMix(a, { section: null, resamples: 20 }));
        expect(dishCosts(b)).toEqual(dishCosts(a));
      }),
      RUNS,
    );
  });
});
