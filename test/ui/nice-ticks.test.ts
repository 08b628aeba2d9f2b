import { expect, test } from 'vitest';
import { niceStep, niceTicks, tickDecimals } from '@/app/_ui/mix-plane/nice-ticks';

test('niceStep(span, count) is 1, 2 or 5 times a power of ten, never smaller than asked', () => {
  expect(niceStep(10, 8)).toBe(2);
  expect(niceStep(0.136, 8)).toBeCloseTo(0.02, 12);
  expect(niceStep(8.9, 6)).toBe(2);
  expect(niceStep(27000, 6)).toBe(5000);
  expect(niceStep(10, 10)).toBe(1);
});

test('niceTicks(low, high, count) are the multiples within', () => {
  expect(niceTicks(0, 0.136, 8)).toEqual([0, 0.02, 0.04, 0.06, 0.08, 0.1, 0.12]);
  expect(niceTicks(3.35, 12.75, 6)).toEqual([4, 6, 8, 10, 12]);
  expect(niceTicks(-3.1, 3.1, 6)).toEqual([-2, 0, 2]);
  expect(niceTicks(5, 5, 6)).toEqual([5]);
});

test('niceTicks(low, high, count) has no negative zero', () => {
  expect(Object.is(niceTicks(-1, 1, 4)[2], 0)).toBe(true);
});

test('tickDecimals(ticks) tells neighbours apart', () => {
  expect(tickDecimals([4, 6, 8])).toBe(0);
  expect(tickDecimals([0.5, 1, 1.5])).toBe(1);
  expect(tickDecimals([0.02, 0.04])).toBe(2);
});
