import { describe, expect, test } from 'vitest';
import { atLeast, isNear } from '@/lib/core/near';

describe('isNear', () => {
  test('isNear(a, b) is a relative 1e-9 of the larger, at every size and on both sides', () => {
    expect(isNear(1, 1 + 0.99e-9)).toBe(true);
    expect(isNear(1, 1 + 1.01e-9)).toBe(false);
    expect(isNear(1e6, 1e6 + 0.00099)).toBe(true);
    expect(isNear(1e6 + 0.00099, 1e6)).toBe(true);
    expect(isNear(1e6, 1e6 + 0.00101)).toBe(false);
    expect(isNear(-3, -3 - 2e-9)).toBe(true);
    expect(isNear(1e-12, 2e-12)).toBe(false);
  });
});

describe('atLeast', () => {
  test('atLeast(value, threshold) is true above, on and within rounding of the threshold', () => {
    expect(atLeast(2, 1)).toBe(true);
    expect(atLeast(1, 1)).toBe(true);
    expect(atLeast(0.1 + 0.2, 0.3)).toBe(true);
    expect(atLeast(0.3, 0.1 + 0.2)).toBe(true); // 0.30000000000000004 in doubles
    expect(atLeast(0, 0)).toBe(true);
  });

  test('atLeast(value, threshold) is false below it by more than a relative 1e-9', () => {
    expect(atLeast(1 - 2e-9, 1)).toBe(false);
    expect(atLeast(-1, 1)).toBe(false);
    expect(atLeast(8.744, 8.75)).toBe(false);
  });
});
