import fc from 'fast-check';
import { expect, test } from 'vitest';
import { placeOn, rulerScale } from '@/app/_ui/price-ruler/ruler-scale';

test('rulerScale(values) of 8.40 to 23.10 runs from 8 to 24 in steps of 0.02', () => {
  // 14.70 / 8 is 1.84, so that a tick is 2; 16 / 400 is 0.04, and the step below it is 0.02
  expect(rulerScale([14.8, 8.4, 23.1], 0)).toEqual({
    low: 8,
    high: 24,
    step: 0.02,
    ticks: [8, 10, 12, 14, 16, 18, 20, 22, 24],
  });
});

test('rulerScale(values) has a tick at both of its ends and at even steps between', () => {
  // 15.40 / 8 is 1.93, so that a tick is 2
  expect(rulerScale([7, 22.4], 0).ticks).toEqual([6, 8, 10, 12, 14, 16, 18, 20, 22, 24]);
});

test('rulerScale(values) never goes below the least, and has a length for one value', () => {
  expect(rulerScale([-3, 4], 0).low).toBe(0);
  const one = rulerScale([0], 0);
  expect(one.high).toBeGreaterThan(one.low);
});

test('rulerScale(values) holds every value, and its ends are multiples of its step', () => {
  const value = fc.double({ min: 0.001, max: 1e5, noNaN: true });
  fc.assert(
    fc.property(fc.array(value, { minLength: 1 }), (values) => {
      const { low, high, step } = rulerScale(values, 0);
      expect(Math.min(...values)).toBeGreaterThanOrEqual(low - 1e-9 * high);
      expect(Math.max(...values)).toBeLessThanOrEqual(high * (1 + 1e-9));
      expect(Math.abs((high - low) / step - Math.round((high - low) / step))).toBeLessThan(1e-6);
      expect((high - low) / step).toBeGreaterThanOrEqual(400 - 1e-6);
    }),
  );
});

test('placeOn(scale, value) is 0.25 at 12 on an axis from 8 to 24, and never outside', () => {
  const scale = rulerScale([8, 24], 0);
  expect(placeOn(scale, 12)).toBe(0.25);
  expect([placeOn(scale, 1), placeOn(scale, 99)]).toEqual([0, 1]);
});
