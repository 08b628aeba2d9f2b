import { describe, expect, test } from 'vitest';
import { type YieldTest, yieldTestSum } from '@/lib/model/yield-test';

const weighing = (some: Partial<YieldTest>): YieldTest => ({
  boughtGrams: 1000,
  trimGrams: null,
  drainedGrams: null,
  paid: null,
  ...some,
});

describe('yieldTestSum', () => {
  // Wall, Trade Calculations (2007): 5.2 kg of striploin at 11.95 a kg give 4.6 kg; a usable kg costs 13.5087 (derived).
  test('yieldTestSum(striploin, 600 g trimmed) costs 13.5087 a usable kg', () => {
    const sum = yieldTestSum({ boughtGrams: 5200, trimGrams: 600, drainedGrams: null, paid: 5.2 * 11.95 });
    expect(sum).toMatchObject({ usableGrams: 4600, usableYield: 4600 / 5200 });
    expect(typeof sum === 'object' && sum.costPerUsableKg).toBeCloseTo(13.5087, 4);
    expect(typeof sum === 'object' && sum.costPerBoughtKg).toBeCloseTo(11.95, 12);
  });

  test('yieldTestSum(a tin of 820 g, 460 g drained, 30 g stones) is 430 g, 52.44 %', () => {
    const sum = yieldTestSum({ boughtGrams: 820, trimGrams: 30, drainedGrams: 460, paid: 3.28 });
    expect(sum).toMatchObject({ usableGrams: 430 });
    expect(typeof sum === 'object' && sum.usableYield).toBeCloseTo(0.52439, 5);
    expect(typeof sum === 'object' && sum.costPerUsableKg).toBeCloseTo(7.627907, 6); // 3.28 / 0.43
    expect(typeof sum === 'object' && sum.costPerBoughtKg).toBeCloseTo(4, 12); // 3.28 / 0.82
  });

  test('yieldTestSum(nothing cut off) is all of it, and an unknown price stays unknown', () => {
    expect(yieldTestSum(weighing({ trimGrams: 0 }))).toEqual({
      usableGrams: 1000,
      usableYield: 1,
      costPerBoughtKg: null,
      costPerUsableKg: null,
    });
    expect(yieldTestSum(weighing({ drainedGrams: 1000, paid: 0 }))).toMatchObject({
      usableYield: 1,
      costPerUsableKg: 0,
    });
  });

  test.each([
    ['nothing-bought', { boughtGrams: 0, trimGrams: 0 }],
    ['nothing-bought', { boughtGrams: Number.NaN, trimGrams: 0 }],
    ['nothing-bought', { boughtGrams: Number.POSITIVE_INFINITY, trimGrams: 0 }],
    ['nothing-weighed', {}],
    ['below-zero', { trimGrams: -1 }],
    ['below-zero', { drainedGrams: -1 }],
    ['below-zero', { trimGrams: 10, paid: -0.01 }],
    ['below-zero', { trimGrams: Number.NaN }],
    ['more-than-bought', { drainedGrams: 1000.1 }],
    ['nothing-left', { trimGrams: 1000 }],
    ['nothing-left', { drainedGrams: 0 }],
    ['nothing-left', { drainedGrams: 500, trimGrams: 500 }],
  ] as const)('yieldTestSum(...) is %s for %j', (fault, some) => {
    expect(yieldTestSum(weighing(some))).toBe(fault);
  });
});
