import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import type { Facts, ItemId } from '@/lib/model/facts';
import { type PriceEdit, type PriceStep, spokenAmount } from '@/lib/model/price-model/edits';
import { priceModelOf } from '@/lib/model/price-model/price-model-of';
import { type PricedMix, pricedMix } from '@/lib/model/price-model/priced-mix';
import { type MenuMix, menuMix } from '@/lib/reports/menu-mix';
import { acyclicBooks, BOOK_DAYS, RUNS } from '../../generated-books';

vi.setConfig({ testTimeout: 300_000 });

const near = (a: number | null, b: number | null, what: string): void => {
  if (a === null || b === null) expect(a, what).toBe(b);
  else expect(Math.abs(a - b), what).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(a), Math.abs(b)));
};

function sameMix(priced: PricedMix, mix: MenuMix): void {
  near(priced.meanMargin, mix.thresholds.margin, 'mean margin');
  near(priced.contribution, mix.totals.margin, 'contribution');
  near(priced.foodCost, mix.totals.foodCost, 'food cost');
  expect(priced.items.length).toBe(mix.items.length);
  for (const { item, ...figures } of priced.items) {
    const same = mix.items.find((each) => each.item === item.name) ?? expect.unreachable(item.name);
    near(figures.netPrice, same.netPrice, 'net price');
    near(figures.plateCost, same.plateCost, 'plate cost');
    near(figures.foodCost, same.foodCost, 'food cost');
    near(figures.margin, same.margin, 'margin');
    near(item.expected, same.expected, 'expected');
    expect(figures.class).toBe(same.class);
  }
}

const mixOf = (facts: Facts): MenuMix => menuMix(costPeriod(facts, BOOK_DAYS), { section: null, resamples: 0 });

/** The facts with the prices of one ingredient so changed: in generated books a pack is one base unit. */
function withGoods(facts: Facts, ingredient: ItemId | null, change: (price: number) => number): Facts {
  const offers = new Set(
    facts.offers.filter(({ item }) => ingredient === null || item === ingredient).map(({ id }) => id),
  );
  return {
    ...facts,
    pricePoints: facts.pricePoints.map((point) =>
      offers.has(point.offer) ? { ...point, price: change(point.price) } : point,
    ),
  };
}

const steps: fc.Arbitrary<PriceStep> = fc.oneof(
  fc.integer({ min: -100, max: 300 }).map((percent) => ({ how: 'share', by: percent / 100 }) as const),
  fc.integer({ min: 0, max: 4000 }).map((by) => ({ how: 'amount', by }) as const),
  fc.integer({ min: 0, max: 4000 }).map((to) => ({ how: 'flat', to }) as const),
);

describe('pricedMix', () => {
  test('pricedMix(priceModelOf(book)) has the figures of the menu mix', () => {
    fc.assert(
      fc.property(acyclicBooks, (facts) => {
        sameMix(pricedMix(priceModelOf(costPeriod(facts, BOOK_DAYS), null)), mixOf(facts));
      }),
      RUNS,
    );
  });

  test('pricedMix(model, a change of a supplier price) is the menu mix of the facts with that price in them', () => {
    let moved = 0;
    fc.assert(
      fc.property(acyclicBooks, fc.nat(), steps, (facts, pick, step) => {
        const period = costPeriod(facts, BOOK_DAYS);
        const model = priceModelOf(period, null);
        const goods = model.goods[pick % Math.max(1, model.goods.length)];
        if (goods === undefined) return;
        const edit: PriceEdit = { target: { of: 'ingredient', name: goods.name }, step };
        const spoken = spokenAmount(goods);
        const { id } = period.things[goods.node] ?? expect.unreachable();
        const edited = withGoods(facts, id, (price) =>
          step.how === 'share'
            ? price * (1 + step.by)
            : step.how === 'amount'
              ? price + step.by / spoken
              : step.to / spoken,
        );
        const after = pricedMix(model, [edit]);
        if (after.contribution !== pricedMix(model).contribution) moved += 1;
        sameMix(after, mixOf(edited));
      }),
      RUNS,
    );
    expect(moved).toBeGreaterThan(5);
  });

  test('pricedMix(model, all supplier prices and all menu prices by shares) is the menu mix of the facts so changed', () => {
    const shares = fc.integer({ min: -50, max: 100 }).map((percent) => percent / 100);
    fc.assert(
      fc.property(acyclicBooks, shares, shares, (facts, bought, menu) => {
        const edits: readonly PriceEdit[] = [
          { target: { of: 'everything-bought', name: null }, step: { how: 'share', by: bought } },
          { target: { of: 'whole-menu', name: null }, step: { how: 'share', by: menu } },
        ];
        const dearer = withGoods(facts, null, (price) => price * (1 + bought));
        const listed = new Set(facts.menuPrices.map(({ item, channel }) => `${item} ${channel}`));
        const edited: Facts = {
          ...dearer,
          menuPrices: facts.menuPrices.map((each) => ({
            ...each,
            price: each.price === null ? null : each.price * (1 + menu),
          })),
          sales: facts.sales.map((each) => ({
            ...each,
            net: listed.has(`${each.item} ${each.channel}`) ? each.net * (1 + menu) : each.net,
          })),
        };
        sameMix(pricedMix(priceModelOf(costPeriod(facts, BOOK_DAYS), null), edits), mixOf(edited));
      }),
      RUNS,
    );
  });
});
