import { describe, expect, test } from 'vitest';
import { addTo, deviation, noMoments } from '@/lib/core/moments';

function deviationOf(...values: number[]): number {
  const moments = noMoments();
  for (const value of values) addTo(moments, value);
  return deviation(moments);
}

describe('deviation', () => {
  // squares 9 + 1 + 1 + 1 + 0 + 0 + 4 + 16 = 32 around the mean 5: sqrt(32 / 7)
  test('deviation(moments) divides by one less than the values', () => {
    expect(deviationOf(2, 4, 4, 4, 5, 5, 7, 9)).toBeCloseTo(Math.sqrt(32 / 7), 12);
    expect(deviationOf(1, 3)).toBeCloseTo(Math.SQRT2, 12);
  });

  test('deviation(a single value, none) is 0', () => {
    expect([deviationOf(7), deviationOf()]).toEqual([0, 0]);
  });

  test('deviation(values far from zero) keeps its digits', () => {
    expect(deviationOf(1e9 + 1, 1e9 + 2, 1e9 + 3)).toBeCloseTo(1, 9);
  });
});
