import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import { type PriceToHold, priceHoldingMargin, priceHoldingShare } from '@/lib/model/holding-price';
import { priceModelOf } from '@/lib/model/price-model/price-model-of';
import { dishCosts } from '@/lib/reports/dish-costs';
import { priceChange } from '@/lib/reports/price-change';
import { editedFacts } from '../edited-facts';
import { BOOK_DAYS, RUNS } from '../generated-books';
import { costedMenus } from '../generated-menus';
import { expectNear } from '../near';

vi.setConfig({ testTimeout: 300_000 });

/** 12.30 on the menu with 20 % tax inside, 10.25 net, of which 8.20 are achieved. */
const TO: PriceToHold = {
  menuPrice: 12.3,
  grossed: 1.2,
  listedNet: 10.25,
  achieved: 8.2,
  commission: 0,
  priceStep: null,
};

describe('priceHoldingMargin', () => {
  // 0.80 more a plate: listed 0.80 * 10.25 / 8.20 = 1.00 net, 1.20 with tax
  test('priceHoldingMargin(0.80 more) is 1.20 more on the menu where a fifth is given away and a fifth is tax', () => {
    expect(priceHoldingMargin(0.8, TO)).toBeCloseTo(13.5, 12);
  });

  test('priceHoldingMargin(a channel that keeps 20 %) asks for a quarter more', () => {
    expect(priceHoldingMargin(0.8, { ...TO, commission: 0.2 })).toBeCloseTo(13.8, 12);
  });

  test('priceHoldingMargin(price step 0.50) is rounded up, and a price on a step stays there', () => {
    expect(priceHoldingMargin(0.79, { ...TO, priceStep: 0.5 })).toBe(13.5);
    expect(priceHoldingMargin(0.8, { ...TO, priceStep: 0.5 })).toBe(13.5);
    expect(priceHoldingMargin(0.81, { ...TO, priceStep: 0.5 })).toBe(14);
    expect(priceHoldingMargin(-0.8, { ...TO, priceStep: 0.5 })).toBe(11.5);
  });

  test('priceHoldingMargin(a price step of 0) is not rounded', () => {
    expect(priceHoldingMargin(0.81, { ...TO, priceStep: 0 })).toBeCloseTo(13.515, 12);
  });

  test('priceHoldingMargin(no change) is the price as it stands, on a step or not', () => {
    expect(priceHoldingMargin(0, { ...TO, priceStep: 0.5 })).toBe(12.3);
  });

  test('priceHoldingMargin(nothing achieved, or all kept by the channel) is null', () => {
    expect(priceHoldingMargin(0.8, { ...TO, achieved: 0 })).toBeNull();
    expect(priceHoldingMargin(0.8, { ...TO, commission: 1 })).toBeNull();
  });
});

describe('priceHoldingShare', () => {
  // 2.05 of food is a quarter of 8.20; 2.255 is a tenth more, and so is the price
  test('priceHoldingShare(a tenth more food) is a tenth more on the menu', () => {
    expect(priceHoldingShare(2.05, 2.255, TO)).toBeCloseTo(13.53, 12);
  });

  test('priceHoldingShare(no food before) is null', () => {
    expect(priceHoldingShare(0, 1, TO)).toBeNull();
  });
});

test('priceChange(generated menus): holding prices are where bisection over the dish costs of edited facts finds them', () => {
  let found = 0;
  fc.assert(
    fc.property(costedMenus, fc.nat(), (facts, pick) => {
      const period = costPeriod(facts, BOOK_DAYS);
      const dearer = { target: { of: 'everything-bought', name: null }, step: { how: 'share', by: 0.3 } } as const;
      const { items } = priceChange(priceModelOf(period, null), [dearer]);
      const row = items[pick % items.length];
      if (!row || row.holdMarginPrice === null || row.holdPctPrice === null || !row.item.menuPrice) return;
      found += 1;
      const { name, menuPrice } = row.item;
      /** What the dish leaves after commission, and its food cost, with all of its menu prices so many times as high. */
      const at = (times: number) => {
        const own = { target: { of: 'item', name }, step: { how: 'share', by: times - 1 } } as const;
        return leftOf(costPeriod(editedFacts(facts, [dearer, own], period.things), BOOK_DAYS), name);
      };
      const before = leftOf(period, name);
      const margin = bisected((times) => at(times).left - before.left);
      const share = bisected((times) => before.foodCost - at(times).foodCost);
      // where the menu price changed in the period, listed rises as a mean: the same share of each price
      const mean = meanListed(row.item.listings);
      expectNear(row.holdMarginPrice, menuPrice.price + (margin - 1) * mean, `margin of ${name}`);
      expectNear(row.holdPctPrice, menuPrice.price + (share - 1) * mean, `food cost of ${name}`);
    }),
    { ...RUNS, numRuns: RUNS.numRuns / 4 }, // each runs the whole costing a hundred times
  );
  expect(found).toBeGreaterThan(15);
});

/** Portion-weighted mean of what stands on the menu. */
function meanListed(listings: readonly { readonly price: number | null; readonly weight: number }[]): number {
  const portions = listings.reduce((sum, { weight }) => sum + weight, 0);
  return listings.reduce((sum, { price, weight }) => sum + (price ?? Number.NaN) * weight, 0) / portions;
}

function leftOf(period: ReturnType<typeof costPeriod>, name: string) {
  const row = dishCosts(period).items.find(({ item }) => item === name);
  return { left: row?.margin ?? Number.NaN, foodCost: row?.foodCost ?? Number.NaN };
}

/** Where a rising function of a factor between 0.5 and 4 is zero. */
function bisected(of: (times: number) => number): number {
  let [low, high] = [0.5, 4];
  for (let turn = 0; turn < 50; turn++) {
    const middle = (low + high) / 2;
    if (of(middle) < 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
