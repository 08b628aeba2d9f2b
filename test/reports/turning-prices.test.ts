import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import type { Facts } from '@/lib/model/facts';
import { MIX_MODELS } from '@/lib/model/mix/mix-models';
import { PRICED_MODELS, type PricedModelName } from '@/lib/model/price-model/class-axes';
import { costSlopes } from '@/lib/model/price-model/flat-price';
import { priceModelOf } from '@/lib/model/price-model/price-model-of';
import { pricedMix } from '@/lib/model/price-model/priced-mix';
import { type MenuMix, type MixItem, menuMix } from '@/lib/reports/menu-mix';
import { turningPrices } from '@/lib/reports/turning-prices';
import { Book, days } from '../books';
import { editedFacts, pricedBooks } from '../edited-facts';
import { BOOK_DAYS, RUNS } from '../generated-books';
import { costedMenus } from '../generated-menus';
import { expectNear } from '../near';

vi.setConfig({ testTimeout: 300_000 });

/** Two plates of a kilogram of chocolate at 5 and of cream at 3, sold 10 times each at 12 and at 9. */
function twoPlates(settings: ConstructorParameters<typeof Book>[0] = {}) {
  const book = new Book(settings);
  const chocolate = book.ingredient('Chocolate', 'g', 0.005);
  const cream = book.ingredient('Cream', 'ml', 0.003);
  for (const [name, item, unit, price] of [
    ['Torte', chocolate, 'g', 12],
    ['Fool', cream, 'ml', 9],
  ] as const) {
    const dish = book.dish(name, {}, [1000, unit, item]);
    book.menu(dish, price);
    for (let date = 1; date <= 12; date++) book.sell(dish, `2026-10-${String(date).padStart(2, '0')}`, 10, price * 10);
  }
  return { book, model: () => priceModelOf(costPeriod(book.facts(), days('2026-10')), null) };
}

describe('turningPrices', () => {
  // torte 12 - x, fool 9 - 3 = 6, average (18 - x) / 2: the torte falls below it where 12 - x = 9 - x / 2, at x = 6; there the fool rises
  test('turningPrices(chocolate of two plates) turn both plates at 6, one of which has no chocolate', () => {
    const turning = turningPrices(twoPlates().model(), 'chocolate');
    expect(turning?.priceNow).toBeCloseTo(5, 12);
    const rows = turning?.items.map(({ item, turningPrice, classNow, classBeyond }) => {
      return [item.name, turningPrice, classNow, classBeyond];
    });
    expect(rows).toEqual([
      ['Fool', expect.closeTo(6, 12), 'plowhorse', 'star'],
      ['Torte', expect.closeTo(6, 12), 'star', 'plowhorse'],
    ]);
  });

  // with q = 0.2: torte 12 - 1.2 x, fool 9 - 3.6 = 5.4: 12 - 1.2 x = (17.4 - 1.2 x) / 2 at x = 5.5
  test('turningPrices(q of 20 %) count the share for what is not measured', () => {
    const turning = turningPrices(twoPlates({ qFactor: 0.2 }).model(), 'Chocolate');
    for (const { turningPrice } of turning?.items ?? []) expect(turningPrice).toBeCloseTo(5.5, 12);
  });

  test('turningPrices(an ingredient of dishes that were never sold) are null, and move no average', () => {
    const { book, model } = twoPlates();
    const salt = book.ingredient('Salt', 'g', 0.001);
    for (const name of ['Crumble', 'Sorbet']) {
      const dish = book.dish(name, {}, [10, 'g', salt]);
      book.menu(dish, 5);
    }
    const turning = turningPrices(model(), 'Cream');
    // fool 9 - x is below the average (16 - x) / 2 from x = 2 on, where the torte rises above it; what leaves 4.99 and was never sold
    // stands above it where (16 - x) / 2 is less
    expect(turning?.items.map(({ item, turningPrice }) => [item.name, turningPrice])).toEqual([
      ['Crumble', expect.closeTo(6.02, 12)],
      ['Fool', expect.closeTo(2, 12)],
      ['Sorbet', expect.closeTo(6.02, 12)],
      ['Torte', expect.closeTo(2, 12)],
    ]);
    expect(turningPrices(model(), 'Salt')?.items.every(({ turningPrice }) => turningPrice === null)).toBe(true);
    expect(turningPrices(model(), 'Saffron')).toBeNull();
  });

  test('turningPrices(an ingredient without price) are null, and so is its price now', () => {
    const { book, model } = twoPlates();
    const vanilla = book.ingredient('Vanilla', 'g', null);
    const dish = book.dish('Flan', {}, [1, 'g', vanilla]);
    book.menu(dish, 7);
    const turning = turningPrices(model(), 'Vanilla');
    expect(turning?.priceNow).toBeNull();
    expect(turning?.items.every(({ turningPrice, classBeyond }) => turningPrice === null && classBeyond === null)).toBe(
      true,
    );
  });

  test('turningPrices(generated menus) are where bisection over the mix of edited facts finds them', () => {
    let found = 0;
    fc.assert(
      fc.property(costedMenus, fc.nat(), (facts, pick) => {
        const period = costPeriod(facts, BOOK_DAYS);
        const model = priceModelOf(period, null);
        const all = model.goods.flatMap(({ name }) => {
          const { goods, items = [] } = turningPrices(model, name) ?? {};
          return items.flatMap((row) => (goods && row.turningPrice ? [{ ...row, goods, at: row.turningPrice }] : []));
        });
        const row = all[pick % Math.max(1, all.length)];
        if (!row) return;
        const { goods, at } = row;
        found += 1;
        const marginOver = (price: number): number => {
          const target = { of: 'ingredient', name: goods.name } as const;
          const edited = editedFacts(facts, [{ target, step: { how: 'flat', to: price } }], period.things);
          return overAverage(edited, row.item.name);
        };
        const [below, above] = [marginOver(at / 2), marginOver(at * 2)];
        expect(Math.sign(below), `${row.item.name} by ${goods.name}`).toBe(-Math.sign(above));
        const scale = Math.max(Math.abs(below), Math.abs(above), row.item.netPrice ?? 0);
        if (Math.abs(above - below) <= 1e-6 * scale) return; // its slope is lost in the rounding of the figures
        expectNear(row.turningPrice, bisected(marginOver, at / 2, at * 2), row.item.name);
      }),
      RUNS,
    );
    expect(found).toBeGreaterThan(50);
  });
});

/** What each model asks of an item less what it is held against, from the menu mix itself. */
const AXES: Readonly<Record<PricedModelName, readonly ((mix: MenuMix, item: MixItem) => number)[]>> = {
  'kasavana-smith': [(mix, item) => (item.margin ?? Number.NaN) - (mix.thresholds.margin ?? Number.NaN)],
  miller: [(mix, item) => (mix.totals.foodCost ?? Number.NaN) - (item.foodCost ?? Number.NaN)],
  pavesic: [
    (mix, item) => (mix.totals.foodCost ?? Number.NaN) - (item.foodCost ?? Number.NaN),
    (mix, item) => (item.contribution ?? Number.NaN) - (mix.totals.margin ?? Number.NaN) / mix.items.length,
  ],
  'goal-value': [
    ({ totals, items }, item) => {
      const goal = (foodCost: number, sold: number, price: number) =>
        (1 - foodCost) * sold * price * (1 - 0.3 - foodCost);
      const own = goal(item.foodCost ?? Number.NaN, item.sold, item.netPrice ?? Number.NaN);
      const menu = goal(totals.foodCost ?? Number.NaN, totals.sold / items.length, totals.costedRevenue / totals.sold);
      return own - menu;
    },
  ],
};

test.each(PRICED_MODELS)(
  'turningPrices(generated menus, %s) are where an axis of the mix of edited facts is zero',
  (by) => {
    let found = 0;
    fc.assert(
      fc.property(costedMenus, fc.nat(), (facts, pick) => {
        const period = costPeriod(facts, BOOK_DAYS);
        const model = priceModelOf(period, null);
        const all = model.goods.flatMap(({ name }) => {
          const { items = [] } = turningPrices(model, name, by) ?? {};
          return items.flatMap((row) => (row.turningPrice ? [{ ...row, goods: name, at: row.turningPrice }] : []));
        });
        const row = all[pick % Math.max(1, all.length)];
        if (!row) return;
        const target = { of: 'ingredient', name: row.goods } as const;
        const mixAt = (price: number): readonly [MenuMix, MixItem] => {
          const edited = editedFacts(facts, [{ target, step: { how: 'flat', to: price } }], period.things);
          const mix = menuMix(costPeriod(edited, BOOK_DAYS), { section: null, model: MIX_MODELS[by], resamples: 0 });
          return [mix, mix.items.find(({ item }) => item === row.item.name) ?? expect.unreachable()];
        };
        const [low, high] = [row.at * 0.999, row.at * 1.001];
        const classes = [mixAt(low)[1].class, mixAt(high)[1].class];
        const crossed = AXES[by].filter((axis) => axis(...mixAt(low)) * axis(...mixAt(high)) < 0);
        if (crossed.length === 0) return; // its slope is lost in the rounding of the figures
        found += 1;
        expect(classes, row.item.name).toContain(row.classBeyond);
        expect(classes[0]).not.toBe(classes[1]);
        const zeros = crossed.map((axis) => bisected((price) => axis(...mixAt(price)), low, high));
        const nearest = zeros.sort((a, b) => Math.abs(a - row.at) - Math.abs(b - row.at))[0] ?? Number.NaN;
        expectNear(row.at, nearest, `${row.item.name} by ${row.goods}`);
      }),
      { ...RUNS, numRuns: RUNS.numRuns / 4 },
    );
    expect(found).toBeGreaterThan(12);
  },
);

const overAverage = (facts: Facts, name: string): number => {
  const mix = menuMix(costPeriod(facts, BOOK_DAYS), { section: null, resamples: 0 });
  const item = mix.items.find((each) => each.item === name);
  return (item?.margin ?? Number.NaN) - (mix.thresholds.margin ?? Number.NaN);
};

function bisected(of: (x: number) => number, from: number, to: number): number {
  const sign = Math.sign(of(from));
  let [low, high] = [from, to];
  for (let turn = 0; turn < 50; turn++) {
    const middle = (low + high) / 2;
    if (Math.sign(of(middle)) === sign) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

test('costSlopes(model, target, how) times what an edit moves is what the edit does to each cost', () => {
  const targets = fc.constantFrom(
    { of: 'ingredient', name: 'Ingredient 0' } as const,
    { of: 'group', name: 'Dairy' } as const,
    { of: 'supplier', name: 'Quay Fruit' } as const,
    { of: 'everything-bought', name: null } as const,
  );
  fc.assert(
    fc.property(pricedBooks, targets, fc.constantFrom('share' as const, 'amount' as const), (facts, target, how) => {
      const model = priceModelOf(costPeriod(facts, BOOK_DAYS), null);
      const before = pricedMix(model).items;
      const after = pricedMix(model, [{ target, step: { how, by: 0.75 } }]).items;
      costSlopes(model, target, how).forEach((slope, index) => {
        const [was, now] = [before[index]?.plateCost ?? null, after[index]?.plateCost ?? null];
        expectNear(slope === null || was === null ? null : was + 0.75 * slope.total, now, 'plate cost');
      });
    }),
    RUNS,
  );
});
