import { expect, test } from 'vitest';
import { rootsOf } from '@/lib/core/roots';

test.each([
  ['2 - x', { at0: 2, slope: -1, square: 0 }, [2]],
  ['x^2 - 5 x + 6', { at0: 6, slope: -5, square: 1 }, [2, 3]],
  ['-2 x^2 - 2 x + 4', { at0: 4, slope: -2, square: -2 }, [-2, 1]],
  ['x^2 - 4', { at0: -4, slope: 0, square: 1 }, [-2, 2]],
  ['x^2 - 2 x + 1, which touches zero once', { at0: 1, slope: -2, square: 1 }, [1]],
  ['x^2', { at0: 0, slope: 0, square: 1 }, [0]],
  ['x^2 + 1, which is never zero', { at0: 1, slope: 0, square: 1 }, []],
  ['3, which is constant', { at0: 3, slope: 0, square: 0 }, []],
])('rootsOf(%s)', (_, quadratic, roots) => {
  expect(rootsOf(quadratic)).toEqual(roots);
});

// (x - 1e-6) (x - 1e6): the plain formula would lose the small one to rounding
test('rootsOf(roots twelve digits apart) keeps the digits of both', () => {
  const [small = Number.NaN, large = Number.NaN] = rootsOf({ at0: 1, slope: -(1e6 + 1e-6), square: 1 });
  expect(small / 1e-6).toBeCloseTo(1, 12);
  expect(large / 1e6).toBeCloseTo(1, 12);
});

test('rootsOf(a square term that is only rounding) is the linear root', () => {
  expect(rootsOf({ at0: -6, slope: 2, square: 1e-17 })).toEqual([3]);
});
