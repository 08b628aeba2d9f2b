import fc from 'fast-check';
import { expect, test } from 'vitest';
import { allocated } from '@/lib/core/allocation';

// 0.333 three times is 1.000: the first that lost most gains the thousandth
test('allocated(1000, three equal thirds) gives one more to the first', () => {
  expect(allocated(1000, [1000 / 3, 1000 / 3, 1000 / 3])).toEqual([334, 333, 333]);
});

test('allocated(whole, parts) rounds as usual where that adds up', () => {
  expect(allocated(10, [2.7, 3.1, 4.2])).toEqual([3, 3, 4]);
  expect(allocated(7, [])).toEqual([]);
});

test('allocated(whole, parts with a credit) keeps the sign of each', () => {
  expect(allocated(9, [12.4, -3.4])).toEqual([12, -3]);
});

test('allocated(whole, parts) sums to the whole, each less than one from its part', () => {
  const parts = fc.array(fc.double({ min: -5000, max: 5000, noNaN: true }), { minLength: 1, maxLength: 12 });
  fc.assert(
    fc.property(parts, (drawn) => {
      const whole = Math.round(drawn.reduce((sum, part) => sum + part, 0)) + 0; // never a negative zero
      const printed = allocated(whole, drawn);
      expect(printed.reduce((sum, part) => sum + part, 0)).toBe(whole);
      for (const [index, part] of printed.entries())
        expect(Math.abs(part - (drawn[index] ?? 0))).toBeLessThanOrEqual(1);
    }),
    { seed: 1, numRuns: 500 },
  );
});
