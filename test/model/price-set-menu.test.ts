import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type SetMenuCourse, setMenuRevenue } from '@/lib/model/set-menu-revenue';
import { RUNS } from '../generated-books';

const course = (netPrice: number | null, stated: Partial<SetMenuCourse> = {}): SetMenuCourse => ({
  portions: 1,
  netPrice,
  tax: 0,
  plateCost: null,
  ...stated,
});
const amounts = (...asked: Parameters<typeof setMenuRevenue>) =>
  setMenuRevenue(...asked)?.map(({ amount }) => amount) ?? null;

describe('setMenuRevenue', () => {
  // IFRS 15, illustrative example 33 (from memory): products of 50, 25 and 75 sold together for 100 carry 33, 17 and 50.
  test('setMenuRevenue(100 for 50, 25 and 75) is 33, 17 and 50', () => {
    const courses = [course(50), course(25), course(75)];
    expect(amounts(100, false, courses, null)).toEqual([33, 17, 50]);
    expect(amounts(10_000, false, courses, null)).toEqual([3333, 1667, 5000]);
  });

  // 24.00 with 10 % inside, for courses of 11.00 and 22.00 alone (10.00 and 20.00 net): 8.00 and 16.00, net 7.2727 and 14.5455
  test('setMenuRevenue(with tax inside) gives each part up to its own tax', () => {
    const [first, second] =
      setMenuRevenue(2400, true, [course(1000, { tax: 0.1 }), course(2000, { tax: 0.1 })], null) ?? [];
    expect(first).toMatchObject({ amount: 800, estimated: false });
    expect(first?.net).toBeCloseTo(727.2727, 4);
    expect(second?.net).toBeCloseTo(1454.5455, 4);
  });

  /*
   * A dessert of 20.00 net at 10 % (22.00) and a glass of 10.00 net at 23 % (12.30), together 30.00 with tax: 30 * 22 / 34.30 = 19.24 and
   * 30 * 12.30 / 34.30 = 10.76. Net 17.49 and 8.75: two to one, as their net prices are.
   */
  test('setMenuRevenue(goods of different tax rates) is split before tax, so that net shares are those of net prices', () => {
    const mixed = setMenuRevenue(3000, true, [course(2000, { tax: 0.1 }), course(1000, { tax: 0.23 })], null) ?? [];
    expect(mixed.map(({ amount }) => amount)).toEqual([1924, 1076]);
    expect(mixed[0]?.net).toBeCloseTo(1749.09, 2);
    expect(mixed[1]?.net).toBeCloseTo(874.8, 2);
    expect(Math.abs((mixed[0]?.net ?? 0) - 2 * (mixed[1]?.net ?? 0))).toBeLessThan(3);
    expect(amounts(3000, false, [course(2000, { tax: 0.1 }), course(1000, { tax: 0.23 })], null)).toEqual([2000, 1000]);
  });

  // 2.50 of plate cost at a target of 25 % is 10.00 alone
  test('setMenuRevenue(a course that is not sold alone) takes plate cost / target food-cost %, and marks it', () => {
    const courses = [course(3000), course(null, { plateCost: 250 })];
    expect(setMenuRevenue(2000, false, courses, 0.25)).toEqual([
      { amount: 1500, net: 1500, estimated: false },
      { amount: 500, net: 500, estimated: true },
    ]);
  });

  test('setMenuRevenue(neither price nor cost, no target, nothing of any price) is not known', () => {
    expect(setMenuRevenue(2000, false, [course(3000), course(null)], 0.25)).toBeNull();
    expect(setMenuRevenue(2000, false, [course(3000), course(null, { plateCost: 250 })], null)).toBeNull();
    expect(setMenuRevenue(2000, false, [course(3000), course(null, { plateCost: 250 })], 0)).toBeNull();
    expect(setMenuRevenue(2000, false, [course(0)], 0.25)).toBeNull();
    expect(setMenuRevenue(2000, false, [], 0.25)).toBeNull();
  });

  // 45 % take the scoops at 8.00, 55 % the cream at 9.00; all take the tart at 12.00: 3.60, 4.95 and 12.00 of 20.55
  test('setMenuRevenue(a choice) weighs each dish by the guests who choose it', () => {
    const choice = [course(800, { portions: 0.45 }), course(900, { portions: 0.55 }), course(1200)];
    expect(amounts(2055, false, choice, null)).toEqual([360, 495, 1200]);
  });

  test('setMenuRevenue(part of a cent) is a bug', () => {
    expect(() => setMenuRevenue(20.5, false, [course(1)], null)).toThrow('20.5');
  });

  test('setMenuRevenue(any revenue, any courses) sums to the revenue to the cent, and no part is a cent off its share', () => {
    const courses = fc.array(
      fc.record({
        portions: fc.constantFrom(1, 0.45, 0.3, 2),
        netPrice: fc.option(fc.integer({ min: 1, max: 6000 }), { nil: null }),
        tax: fc.constantFrom(0, 0.1, 0.135, 0.23),
        plateCost: fc.integer({ min: 1, max: 2000 }),
      }),
      { minLength: 1, maxLength: 6 },
    );
    fc.assert(
      fc.property(fc.integer({ min: -500_000, max: 5_000_000 }), fc.boolean(), courses, (revenue, taxIncluded, all) => {
        const parts = setMenuRevenue(revenue, taxIncluded, all, 0.25) ?? [];
        expect(parts.reduce((sum, { amount }) => sum + amount, 0)).toBe(revenue);
        const weights = all.map(
          ({ portions, netPrice, plateCost, tax }) =>
            portions * (netPrice ?? plateCost * 4) * (taxIncluded ? 1 + tax : 1),
        );
        const whole = weights.reduce((sum, weight) => sum + weight, 0);
        for (const [at, weight] of weights.entries()) {
          expect(Math.abs((parts[at]?.amount ?? Number.NaN) - (revenue * weight) / whole)).toBeLessThan(1 + 1e-6);
        }
      }),
      RUNS,
    );
  });
});
