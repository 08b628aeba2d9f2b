import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays, type Day, type DayRange } from '@/lib/core/days';
import { pricesOver } from '@/lib/model/bridge/basket';
import { type CostChange, costChange } from '@/lib/model/bridge/cost-change';
import { basketOver, type ItemOverPeriod, itemOverPeriod } from '@/lib/model/bridge/item-over-period';
import { type CostedPeriod, costPeriod } from '@/lib/model/costed-period';
import type { Facts, ItemId } from '@/lib/model/facts';
import { plateCost } from '@/lib/model/plate-cost';
import { Book, days } from '../../books';
import { acyclicBooks, BOOK_DAYS, RUNS } from '../../generated-books';
import { plainCost } from '../../plain-recursion';

const MIDDLE = addDays(BOOK_DAYS.from, 10);
const HALVES: readonly [DayRange, DayRange] = [
  { from: BOOK_DAYS.from, to: MIDDLE },
  { from: MIDDLE, to: BOOK_DAYS.to },
];

interface Side {
  readonly period: CostedPeriod;
  readonly over: ItemOverPeriod;
}

function sideOf(facts: Facts, range: DayRange, item: ItemId): Side | null {
  const period = costPeriod(facts, range, 'everything');
  const over = itemOverPeriod(period, period.nodeOf.get(item) ?? -1, null);
  return over && { period, over };
}

function changeOf(facts: Facts, item: ItemId, ranges: readonly [DayRange, DayRange]): CostChange {
  const [was, is] = ranges.map((range) => sideOf(facts, range, item));
  if (!was || !is) return expect.unreachable('it is on sale in both');
  const { period, over } = is;
  return costChange(basketOver(was.period, was.over), basketOver(period, over), pricesOver(period, over.weights));
}

const MONTHS = [days('2026-09'), days('2026-10')] as const;
const linesOf = ({ lines }: CostChange) =>
  Object.fromEntries(lines.map(({ item, price, recipe }) => [item, [price, recipe].map((each) => +each.toFixed(12))]));

/** A dish of 100 g of cream and 10 g of sugar, sold once in each month. */
function creamDish(book: Book): { dish: ItemId; cream: ItemId; sugar: ItemId } {
  const cream = book.ingredient('Cream', 'g', null);
  const sugar = book.ingredient('Sugar', 'g', 0.002);
  const dish = book.dish('Posset', {}, [100, 'g', cream], [10, 'g', sugar]);
  book.menu(dish, 8);
  book.sell(dish, '2026-09-10', 10, 80);
  book.sell(dish, '2026-10-10', 10, 80);
  return { dish, cream, sugar };
}

describe('costChange', () => {
  // 100 g at 0.006 then 0.0065; 10 g of sugar throughout: 0.62 then 0.67
  test('costChange(before, after, prices) of a dearer ingredient is all price, and all of that ingredient', () => {
    const book = new Book();
    const { dish, cream } = creamDish(book);
    const offer = book.offer(cream, 1, 1, 'g');
    book.price(offer, 0.006);
    book.price(offer, 0.0065, { from: '2026-10-01' });
    const change = changeOf(book.facts(), dish, MONTHS);
    expect([change.before, change.atNewPrices, change.after].map((each) => +each.toFixed(12))).toEqual([
      0.62, 0.67, 0.67,
    ]);
    expect(linesOf(change)).toEqual({ Cream: [0.05, 0], Sugar: [0, 0] });
    expect(change.lines[0]?.item).toBe('Cream');
  });

  // f00 = 100 * 0.006 + 10 * 0.002; f01 = 100 * 0.0065 + 10 * 0.002; f11 = 80 * 0.0065 + 20 * 0.01 (honey for sugar); q 10 %
  test('costChange(before, after, prices) takes the old recipe at the new prices between the two; q is on both parts', () => {
    const book = new Book({ qFactor: 0.1 });
    const { dish, cream } = creamDish(book);
    const honey = book.ingredient('Honey', 'g', 0.01);
    const offer = book.offer(cream, 1, 1, 'g');
    book.price(offer, 0.006);
    book.price(offer, 0.0065, { from: '2026-10-01' });
    book.recipe(dish, { from: '2026-10-01' }, [80, 'g', cream], [20, 'g', honey]);
    const change = changeOf(book.facts(), dish, MONTHS);
    expect(change.before).toBeCloseTo(0.682, 12);
    expect(change.atNewPrices).toBeCloseTo(0.737, 12);
    expect(change.after).toBeCloseTo(0.792, 12);
    expect(linesOf(change)).toEqual({ Honey: [0, 0.22], Cream: [0.055, -0.143], Sugar: [0, -0.022] });
  });

  // 2 portions at 1 and 8 at 2 grams' price: the mean of October is 1.8; September was 1
  test('costChange(before, after, prices) weighs the prices of a period by its portions', () => {
    const book = new Book();
    const cream = book.ingredient('Cream', 'g', null);
    const offer = book.offer(cream, 1, 1, 'g');
    book.price(offer, 1);
    book.price(offer, 2, { from: '2026-10-16' });
    const dish = book.dish('Posset', {}, [1, 'g', cream]);
    book.menu(dish, 8);
    book.sell(dish, '2026-09-10', 5, 40);
    book.sell(dish, '2026-10-02', 2, 16);
    book.sell(dish, '2026-10-20', 8, 64);
    expect(linesOf(changeOf(book.facts(), dish, MONTHS))).toEqual({ Cream: [0.8, 0] });
  });

  test('costChange(before, after, prices) of an estimate that gives way to a recipe is a change of recipe', () => {
    const book = new Book();
    const cream = book.ingredient('Cream', 'g', 0.01);
    const dish = book.dish('Posset', { estimatedCost: 1.5 });
    book.recipe(dish, { from: '2026-10-01' }, [120, 'g', cream]);
    book.menu(dish, 8);
    const change = changeOf(book.facts(), dish, MONTHS);
    expect([change.price, change.recipe].map((each) => +each.toFixed(12))).toEqual([0, -0.3]);
    expect(change.lines.map(({ isEstimate, recipe }) => [isEstimate, +recipe.toFixed(12)])).toEqual([
      [true, -1.5],
      [false, 1.2],
    ]);
  });

  test('costChange(before, after, prices) of an estimate that was raised is a change of price', () => {
    const book = new Book();
    const dish = book.dish('Posset', { estimatedCost: 1.5 });
    book.recipe(dish, { from: '2026-10-01', estimatedCost: 1.75 });
    book.menu(dish, 8);
    expect(linesOf(changeOf(book.facts(), dish, MONTHS))).toEqual({ Posset: [0.25, 0] });
  });

  test('costChange(before, after, prices) adds up over generated books, by what is bought, from one plate cost to the other', () => {
    let changed = 0;
    fc.assert(
      fc.property(acyclicBooks, (facts) => {
        for (const { id } of facts.items) {
          const [was, is] = HALVES.map((range) => sideOf(facts, range, id));
          if (!was || !is || was.over.figures.plateCost === null || is.over.figures.plateCost === null) continue;
          const change = changeOf(facts, id, HALVES);
          const scale = Math.max(1, ...change.lines.flatMap(({ before, after }) => [before, after].map(Math.abs)));
          const same = (a: number, b: number) => expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-9 * scale);
          same(change.before, was.over.figures.plateCost);
          same(change.after, is.over.figures.plateCost);
          same(change.before + change.price, change.atNewPrices);
          same(change.atNewPrices + change.recipe, change.after);
          same(
            change.lines.reduce((sum, { price }) => sum + price, 0),
            change.price,
          );
          same(
            change.lines.reduce((sum, { recipe }) => sum + recipe, 0),
            change.recipe,
          );
          if (Math.abs(change.price) > 0.01 && Math.abs(change.recipe) > 0.01) changed++;
        }
      }),
      RUNS,
    );
    expect(changed).toBeGreaterThan(3);
  });
});

/** The facts with the recipes of one day and the prices of another, both in force on every day. */
function mixedFacts(facts: Facts, recipeDay: Day, priceDay: Day, on: Day): Facts {
  const latest = <Dated extends { readonly validFrom: Day | null }>(
    dated: readonly Dated[],
    day: Day,
    keyOf: (each: Dated) => unknown,
  ): Dated[] => {
    const best = new Map<unknown, Dated>();
    for (const each of dated) {
      if ((each.validFrom ?? Number.NEGATIVE_INFINITY) > day) continue;
      const before = best.get(keyOf(each));
      if (!before || (before.validFrom ?? Number.NEGATIVE_INFINITY) <= (each.validFrom ?? Number.NEGATIVE_INFINITY))
        best.set(keyOf(each), each);
    }
    return [...best.values()].map((each) => ({ ...each, validFrom: null }));
  };
  const points = facts.pricePoints
    .filter(({ validFrom, validTo }) => validFrom <= priceDay && (validTo === null || validTo >= priceDay))
    .map((point) => ({ ...point, validTo: point.validTo === null ? null : on }));
  return {
    ...facts,
    recipeVersions: latest(facts.recipeVersions, recipeDay, ({ item }) => item),
    ingredientVersions: latest(facts.ingredientVersions, recipeDay, ({ item }) => item),
    pricePoints: points.map((point) => ({ ...point, validFrom: Math.min(point.validFrom, on) as Day })),
  };
}

test('costChange: f01 is the mean over days g and h of the recipe of g at the prices of h, by plain recursion', () => {
  let compared = 0;
  fc.assert(
    fc.property(acyclicBooks, (drawn) => {
      // a by-product is worth what the recipes of the day say, and an estimate is no recipe: both are told apart by hand above
      const facts = {
        ...drawn,
        recipeVersions: drawn.recipeVersions.map((version) => ({
          ...version,
          estimatedCost: null,
          lines: version.lines.filter(({ byProductCredit }) => byProductCredit === null),
        })),
      };
      for (const { id, kind } of facts.items) {
        if (kind !== 'dish') continue;
        const [was, is] = HALVES.map((range) => sideOf(facts, range, id));
        if (!was || !is || was.over.figures.plateCost === null || is.over.figures.plateCost === null) continue;
        const mean = meanOfPairs(facts, id, was, is);
        if (mean === null) continue;
        const change = changeOf(facts, id, HALVES);
        const scale = Math.max(1, ...change.lines.flatMap(({ before, after }) => [before, after].map(Math.abs)));
        expect(Math.abs(change.atNewPrices - mean)).toBeLessThanOrEqual(1e-9 * scale);
        compared++;
      }
    }),
    RUNS,
  );
  expect(compared).toBeGreaterThan(20);
});

/** Null where a price of the other period is missing: then it keeps the one it had. */
function meanOfPairs(facts: Facts, item: ItemId, was: Side, is: Side): number | null {
  const dayOf = ({ period }: Side, segment: number): Day => period.segments.cuts[segment] as Day;
  const whole = ({ over }: Side): number => over.weights.reduce((sum, { weight }) => sum + weight, 0);
  let mean = 0;
  for (const g of was.over.weights) {
    for (const h of is.over.weights) {
      const [recipeDay, priceDay] = [dayOf(was, g.segment), dayOf(is, h.segment)];
      const cost = plainCost(mixedFacts(facts, recipeDay, priceDay, priceDay), item, priceDay, g.channel);
      if (cost === null) return null;
      mean += (g.weight / whole(was)) * (h.weight / whole(is)) * cost.toNumber();
    }
  }
  return mean;
}

test('plateCost of a period is the sum of its basket, known or not', () => {
  fc.assert(
    fc.property(acyclicBooks, (facts) => {
      const period = costPeriod(facts, BOOK_DAYS, 'everything');
      for (const { id } of facts.items) {
        const node = period.nodeOf.get(id) ?? -1;
        const over = itemOverPeriod(period, node, null);
        if (!over) continue;
        const basket = [...basketOver(period, over).values()];
        const whole = over.weights.reduce((sum, { weight }) => sum + weight, 0);
        const mean = over.weights.reduce(
          (sum, { segment, channel, weight }) =>
            sum + (weight / whole) * plateCost(period, node, segment, channel).total,
          0,
        );
        const scale = Math.max(1, ...basket.map(({ cost }) => Math.abs(cost)));
        expect(Math.abs(basket.reduce((sum, { cost }) => sum + cost, 0) - mean)).toBeLessThanOrEqual(1e-9 * scale);
      }
    }),
    RUNS,
  );
});
