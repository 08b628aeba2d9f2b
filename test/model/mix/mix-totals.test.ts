import { describe, expect, test } from 'vitest';
import type { ItemFigures } from '@/lib/model/item-figures';
import { type MixTotals, mixTotals, sumOfTotals } from '@/lib/model/mix/mix-totals';

function figures(stated: Partial<ItemFigures>): ItemFigures {
  return {
    ...{ sold: 0, comps: 0, revenue: null, standIn: 0, unpriced: 0, netPrice: null, plateCost: null, halfKnown: null },
    ...{ estimated: false, food: null, foodCost: null, margin: null },
    ...stated,
  };
}
const priced = figures({ sold: 2, revenue: 20, netPrice: 10, plateCost: 4, food: 3, margin: 6 });

describe('mixTotals', () => {
  test('mixTotals(portions without a price) has no revenue, whatever else was on the menu and did not sell', () => {
    const unpriced = figures({ sold: 3, unpriced: 3 });
    const idle = figures({ revenue: 0 });
    expect(mixTotals([unpriced]).revenue).toBeNull();
    expect(mixTotals([unpriced, idle]).revenue).toBeNull();
    expect(mixTotals([unpriced, idle, priced]).revenue).toBe(20);
    expect(mixTotals([idle]).revenue).toBe(0);
  });
});

describe('sumOfTotals', () => {
  const known = mixTotals([priced]);
  const unknown = mixTotals([figures({ sold: 3, unpriced: 3 })]);

  test('sumOfTotals(a period that is known and one that is not) is what is known', () => {
    expect(sumOfTotals([known, unknown])).toEqual({
      ...{ sold: 5, comps: 0, revenue: 20, costedSold: 2, costedRevenue: 20, estimatedSold: 0 },
      ...{ plateCost: 8, foodCost: 0.3, margin: 12 },
    });
    expect(sumOfTotals([unknown, unknown])).toMatchObject({
      revenue: null,
      plateCost: null,
      foodCost: null,
      margin: null,
    });
  });

  // 6 of food in 20 taken, and 20 given back in the month after: no revenue is left to hold it against
  test('sumOfTotals(revenue that comes to nothing) has no food-cost %', () => {
    const returned: MixTotals = { ...known, sold: 0, revenue: -20, costedRevenue: -20, foodCost: null };
    expect(sumOfTotals([known, returned])).toMatchObject({ revenue: 0, costedRevenue: 0, foodCost: null });
    expect(sumOfTotals([known, known]).foodCost).toBeCloseTo(0.3, 12);
  });
});
