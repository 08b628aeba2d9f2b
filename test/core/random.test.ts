import { describe, expect, test } from 'vitest';
import { seededRandom, xoshiro128 } from '@/lib/core/random';

describe('xoshiro128', () => {
  // Output of Blackman & Vigna's reference code for xoshiro128** 1.1 with the state 1, 2, 3, 4, as test suites of several languages hold it.
  test('xoshiro128([1, 2, 3, 4]) gives the numbers of the reference code', () => {
    const next = xoshiro128([1, 2, 3, 4]);
    expect(Array.from({ length: 10 }, next)).toEqual([
      11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804,
    ]);
  });
});

describe('seededRandom', () => {
  test('seededRandom(seed) is the same stream for the same seed and another one for another', () => {
    const [a, b, c] = [seededRandom(1982), seededRandom(1982), seededRandom(1983)];
    const first = Array.from({ length: 5 }, a);
    expect(Array.from({ length: 5 }, b)).toEqual(first);
    expect(Array.from({ length: 5 }, c)).not.toEqual(first);
  });

  test('seededRandom(seed) fills [0, 1) evenly', () => {
    const random = seededRandom(5);
    const tenths = new Array<number>(10).fill(0);
    for (let draw = 0; draw < 100_000; draw++) {
      const value = random();
      tenths[Math.floor(value * 10)] = (tenths[Math.floor(value * 10)] ?? 0) + 1;
    }
    expect(tenths.length).toBe(10); // none below 0, none from 1 on
    // 10,000 in each, with a standard deviation of 95
    for (const count of tenths) expect(Math.abs(count - 10_000)).toBeLessThan(400);
  });
});
