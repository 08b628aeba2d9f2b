import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { type Day, type DayRange, isWithin } from '@/lib/core/days';
import { byProductFlows } from '@/lib/model/by-product-flows';
import { type CostedPeriod, costPeriod } from '@/lib/model/costed-period';
import type { Facts, ItemId, RecipeVersion } from '@/lib/model/facts';
import type { OwnWork } from '@/lib/model/labour';
import { gradeWork } from '@/lib/model/labour-by-grade';
import { costPerMinute } from '@/lib/model/labour-rates';
import { type PlateCost, plateCost } from '@/lib/model/plate-cost';
import { segmentOf } from '@/lib/model/segments';
import { needOfServed, served } from '@/lib/model/served';
import { lossPerUnit, smallBatchLosses } from '@/lib/model/small-batch/small-batch-loss';
import { surplusParts } from '@/lib/model/surplus-parts';
import { dishCosts } from '@/lib/reports/dish-costs';
import { labour } from '@/lib/reports/labour';
import { menuMix } from '@/lib/reports/menu-mix';
import { smallBatch } from '@/lib/reports/small-batch';
import { acyclicBooks, BOOK_DAYS, RUNS } from '../generated-books';
import { plainCost } from '../plain-recursion';

vi.setConfig({ testTimeout: 300_000 });

/** Everything served by the portion: dishes, set menus, extras. */
const plates = (facts: Facts): readonly ItemId[] =>
  facts.items.filter(({ kind }) => kind !== 'ingredient' && kind !== 'component').map(({ id }) => id);
const CHANNELS = [null, 'dine_in', 'takeaway'] as const;
const allDays = Array.from({ length: BOOK_DAYS.to - BOOK_DAYS.from }, (_, index) => (BOOK_DAYS.from + index) as Day);

function plateOn(period: CostedPeriod, item: ItemId, on: Day, channel: string | null = null): PlateCost {
  return plateCost(period, period.nodeOf.get(item) ?? -1, segmentOf(period.segments, on), channel);
}
/** Within a relative 1e-9 of the largest term: what is made beside it takes away, so a sum may be smaller than its terms. */
function near(a: number, b: number, largestTerm = 0): void {
  expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-9 * Math.max(Math.abs(a), Math.abs(b), largestTerm));
}
/** The most that any credit takes away in a book, for one portion. */
const TERM = 1;

const isRated = ({ labour: { rates }, segments }: CostedPeriod, { grade, segment }: OwnWork): boolean =>
  costPerMinute(rates, grade, segments.cuts[segment] as Day) !== null;

/** The money that all portions served in some days cost, by item: null where a portion of it is not costed. */
function spent(facts: Facts, range: DayRange): readonly (number | null)[] {
  const period = costPeriod(facts, range);
  return plates(facts).map((item) => {
    const rows = facts.sales.filter((row) => row.item === item && isWithin(row.day, range));
    return rows.reduce((sum: number | null, row) => {
      const { complete, total } = plateOn(period, item, row.day, row.channel);
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
        for (const item of plates(facts)) {
          for (const [on, channel] of allDays.flatMap((each) => CHANNELS.map((in_) => [each, in_] as const))) {
            const plain = plainCost(facts, item, on, channel);
            const { complete, total } = plateOn(period, item, on, channel);
            expect(complete).toBe(plain !== null);
            if (plain === null) unknown += 1;
            else {
              known += 1;
              near(total, plain.toNumber(), TERM);
            }
          }
        }
      }),
      RUNS,
    );
    // a generator that makes only one of the two would test nothing
    expect(Math.min(known, unknown) / (known + unknown)).toBeGreaterThan(0.1);
  });

  // sum (paid + comps) f + covers * extras = (1 + q) [sum need_k p_k + sum net by-product * credit] + packaging + portions on
  // estimate * estimate, with the linear need of split ingredients: surplus parts stand apart
  test('costPeriod(book): cost by dish is cost by ingredient', () => {
    fc.assert(
      fc.property(acyclicBooks, (facts) => {
        const period = costPeriod(facts, BOOK_DAYS);
        const { prices, segments, things } = period;
        let byDish = 0;
        for (const row of facts.sales) {
          byDish += (row.sold + row.comps) * plateOn(period, row.item, row.day, row.channel).total;
        }
        for (const { id } of facts.items.filter(({ kind }) => kind === 'extra')) {
          for (const { day, covers } of facts.covers) byDish += covers * plateOn(period, id, day).total;
        }
        const need = needOfServed(period);
        const isByProduct = (cell: number): boolean => period.makings.has(Math.floor(cell / segments.count));
        const worth = (of: Float64Array): number =>
          need.reduce((sum, each, cell) => sum + (isByProduct(cell) ? 0 : each * (of[cell] ?? 0)), 0);
        // a by-product that nothing makes on some days is bought or made on them
        const bought = need.reduce((sum, each, cell) => {
          const isMade = isByProduct(cell) && (period.credits[cell] ?? 0) !== (prices.food[cell] ?? 0);
          return sum + (isMade ? each * (prices.food[cell] ?? 0) : 0);
        }, 0);
        const flows = byProductFlows({ ...period, complete: period.complete.map(() => 1) }, need);
        const credited = flows.reduce((sum, flow) => sum + (flow.costOfUsed ?? 0) - (flow.creditOfMade ?? 0), 0);
        const q = 1 + facts.venue.qFactor;
        const byIngredient =
          q * (worth(prices.food) + bought + credited) + worth(prices.packaging) + worth(prices.estimate);
        expect(things.length).toBe(need.length / segments.count);
        near(byDish, byIngredient, Math.abs(byIngredient) + flows.reduce((sum, { made }) => sum + made, 0));
      }),
      RUNS,
    );
  });

  test('costPeriod(book): units of split ingredients bought are those paid for and the surplus', () => {
    let surplus = 0;
    fc.assert(
      fc.property(acyclicBooks, (facts) => {
        const period = costPeriod(facts, BOOK_DAYS);
        const need = needOfServed(period);
        const { count } = period.segments;
        for (const { node, parts, asWhole, units, surplusUnits } of surplusParts(period, need)) {
          const linear = need.slice(node * count, (node + 1) * count).reduce((sum, each) => sum + each, 0);
          near(units, linear + surplusUnits);
          expect(surplusUnits).toBeGreaterThanOrEqual(-1e-9 * units);
          for (const part of parts) expect(asWhole + part.units).toBeLessThanOrEqual(units * (1 + 1e-9));
          if (surplusUnits > 1e-6) surplus += 1;
        }
      }),
      RUNS,
    );
    expect(surplus).toBeGreaterThan(0);
  });

  // sum portions * minutes of one * rate = sum over grades of their minutes * rate: work by dish is work by grade
  test('costPeriod(book): labour by dish is labour by grade', () => {
    fc.assert(
      fc.property(acyclicBooks, (facts) => {
        const period = costPeriod(facts, BOOK_DAYS);
        const { count } = period.segments;
        const portions = served(period);
        const byDish = portions.reduce((sum, each, cell) => sum + each * (period.labour.cost[cell] ?? 0), 0);
        const platingByDish = portions.reduce(
          (sum, each, cell) => sum + each * (period.labour.platingMinutes[cell] ?? 0),
          0,
        );
        const need = needOfServed(period);
        const handsOn = { ...period, labour: { ...period.labour, plating: [] } };
        const rated = { ...handsOn.labour, handsOn: handsOn.labour.handsOn.filter((own) => isRated(period, own)) };
        const grades = gradeWork({ ...handsOn, labour: rated }, need);
        near(
          byDish,
          grades.reduce((sum, { cost }) => sum + (cost ?? 0), 0),
        );
        near(
          platingByDish,
          gradeWork(period, need).reduce((sum, grade) => sum + grade.platingMinutes, 0),
        );
        expect(portions.length).toBe(period.things.length * count);
      }),
      RUNS,
    );
  });

  test('smallBatchLosses(book): what each portion carries adds up to what the components lose', () => {
    let lost = 0;
    fc.assert(
      fc.property(acyclicBooks, (facts) => {
        const period = costPeriod(facts, BOOK_DAYS);
        const losses = smallBatchLosses({ ...period, complete: period.complete.map(() => 1) });
        const { loss } = lossPerUnit(period, losses);
        const byDish = served(period).reduce((sum, each, cell) => sum + each * (loss[cell] ?? 0), 0);
        const byComponent = losses.reduce((sum, { money }) => sum + (money ?? 0), 0);
        for (const { lost: share } of losses) {
          expect(share === null || (share >= 0 && share < 1)).toBe(true);
          if (share) lost += 1;
        }
        near(
          byDish,
          byComponent,
          losses.reduce((sum, { money }) => sum + Math.abs(money ?? 0), 1),
        );
      }),
      RUNS,
    );
    expect(lost).toBeGreaterThan(0);
  });

  test('costPeriod(a batch scaled as a whole) costs the same', () => {
    const scale = (version: RecipeVersion, by: number): RecipeVersion => ({
      ...version,
      yieldQuantity: version.yieldQuantity && version.yieldQuantity * by,
      alsoQuantity: version.alsoQuantity && version.alsoQuantity * by,
      batchLossG: version.batchLossG && version.batchLossG * by,
      handsOnMinutes: version.handsOnMinutes && version.handsOnMinutes * by,
      lines: version.lines.map((line) => ({ ...line, quantity: line.quantity * by })),
    });
    fc.assert(
      fc.property(acyclicBooks, fc.constantFrom(2, 0.3, 17), (facts, by) => {
        const components = new Set(facts.items.filter(({ kind }) => kind === 'component').map(({ id }) => id));
        const recipeVersions = facts.recipeVersions.map((each) => (components.has(each.item) ? scale(each, by) : each));
        const before = costPeriod(facts, BOOK_DAYS);
        const after = costPeriod({ ...facts, recipeVersions }, BOOK_DAYS);
        for (const item of plates(facts)) {
          for (const on of allDays) {
            const [was, is] = [plateOn(before, item, on, 'takeaway'), plateOn(after, item, on, 'takeaway')];
            expect(is.complete).toBe(was.complete);
            near(is.total, was.total, TERM);
          }
        }
        expect(after.labour.known).toEqual(before.labour.known);
        for (const [cell, cost] of after.labour.cost.entries()) near(cost, before.labour.cost[cell] ?? 0);
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
          if (sum !== null && a !== null && b !== null) near(sum, a + b, 100 * TERM);
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
          for (const item of plates(facts)) {
            expect(plateOn(alone, item, on, 'takeaway')).toEqual(plateOn(period, item, on, 'takeaway'));
          }
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
          parts: shuffled(facts.parts),
          yieldUses: shuffled(facts.yieldUses),
          labourRates: shuffled(facts.labourRates),
          covers: shuffled(facts.covers),
          sales: shuffled(facts.sales),
        };
        const [a, b] = [costPeriod(facts, BOOK_DAYS), costPeriod(other, BOOK_DAYS)];
        expect(menuMix(b, { section: null, resamples: 20 })).toEqual(menuMix(a, { section: null, resamples: 20 }));
        expect(dishCosts(b)).toEqual(dishCosts(a));
        expect(labour(b)).toEqual(labour(a));
        expect(smallBatch(b)).toEqual(smallBatch(a));
      }),
      RUNS,
    );
  });
});
