import { describe, expect, test } from 'vitest';
import { settledOnTheLine } from './on-the-line';

describe('certainty: calibration', () => {
  // An honest 90 % is wrong once in five on the line. A plain resampling within weekday would call about 40 % settled at 14 days.
  const cases = process.env.SOAK ? 4000 : 200;
  const tolerance = process.env.SOAK ? 0.03 : 0.09;

  test.each([14, 20, 30])(
    'certainty(an item exactly on the line, KASAVANA_SMITH, %d days) is called settled in about one case of five',
    (count) => {
      const settled = settledOnTheLine(count, cases, 2000, count);
      expect(Math.abs(settled - 0.2)).toBeLessThan(tolerance);
    },
    120_000,
  );
});
