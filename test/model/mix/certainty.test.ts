import { describe, expect, test } from 'vitest';
import { addDays } from '@/lib/core/days';
import { seededRandom } from '@/lib/core/random';
import { certainty } from '@/lib/model/mix/certainty';
import { drawDays } from '@/lib/model/mix/day-sums';
import { KASAVANA_SMITH } from '@/lib/model/mix/kasavana-smith';
import { PAVESIC } from '@/lib/model/mix/pavesic';
import { day } from '../../books';
import { mixOf } from './mix-of';

const weeks = (count: number, row: (index: number) => readonly number[]) =>
  Array.from({ length: 7 * count }, (_, i) => row(i));

describe('drawDays', () => {
  test('drawDays(strata) draws k - 1 of k days, each weighted k / (k - 1), so that a stratum always weighs k', () => {
    const random = seededRandom(1);
    const weights = new Float64Array(6);
    const strata = [[0, 3], [1, 2, 4], [5]];
    const seen = new Set<number>();
    for (let resample = 0; resample < 200; resample++) {
      drawDays(strata, random, weights);
      for (const stratum of strata) {
        expect(stratum.reduce((sum, index) => sum + (weights[index] ?? 0), 0)).toBeCloseTo(stratum.length, 12);
      }
      for (const index of [0, 3]) expect([0, 2]).toContain(weights[index]);
      for (const index of [1, 2, 4]) seen.add(weights[index] ?? -1);
      expect(weights[5]).toBe(1);
    }
    expect([...seen].sort()).toEqual([0, 1.5, 3]);
  });

  test('drawDays(strata) draws every day of a stratum as often as another', () => {
    const random = seededRandom(2);
    const weights = new Float64Array(4);
    const total = new Float64Array(4);
    for (let resample = 0; resample < 10_000; resample++) {
      drawDays([[0, 1, 2, 3]], random, weights);
      weights.forEach((weight, index) => {
        total[index] = (total[index] ?? 0) + weight;
      });
    }
    for (const sum of total) expect(Math.abs(sum - 10_000)).toBeLessThan(300); // standard deviation 100
  });
});

describe('certainty', () => {
  test('certainty(days that are all alike) is sure of every class, without spread', () => {
    const [a, b, c] = certainty(
      mixOf(
        weeks(2, () => [10, 10, 1]),
        [5, 2, 9],
      ),
      KASAVANA_SMITH,
      200,
      1,
    );
    expect(a?.classShares).toEqual({ star: 1, plowhorse: 0, puzzle: 0, dog: 0 });
    expect(b?.classShares).toEqual({ star: 0, plowhorse: 1, puzzle: 0, dog: 0 });
    expect(c?.classShares).toEqual({ star: 0, plowhorse: 0, puzzle: 1, dog: 0 });
    for (const item of [a, b, c]) {
      expect(item?.spread.share).toBeCloseTo(0, 12);
      expect(item?.spread.margin).toBeCloseTo(0, 12);
    }
  });

  // Two Mondays with 10 + d and 10 - d of 40 portions: the resampled share of the item is its mean or d / 280 off for each weekday,
  // with equal odds; 7 weekdays give sqrt(7) * 2d / (14 * 40).
  test('certainty(two days of each weekday) has the spread of sqrt(sum of k s^2) over all portions', () => {
    const d = 6;
    const sold = weeks(2, (index) => (index < 7 ? [10 + d, 30 - d] : [10 - d, 30 + d]));
    const [item] = certainty(mixOf(sold, [5, 2]), KASAVANA_SMITH, 20_000, 3);
    expect(item?.spread.share).toBeCloseTo((Math.sqrt(7) * 2 * d) / (14 * 40), 3);
    // margin less mean margin = 5 - (5 share + 2 (1 - share)) = 3 (1 - share): three times the spread of the share
    expect((item?.spread.margin ?? 0) / (item?.spread.share ?? 1)).toBeCloseTo(3, 9);
  });

  // three of each weekday: s^2 of (d, 0, -d) is d^2; 7 weekdays of k = 3: sqrt(7 * 3) d / (21 * 40)
  test('certainty(three days of each weekday) has that spread too', () => {
    const d = 6;
    const sold = weeks(3, (index) => [10 + d * (1 - Math.floor(index / 7)), 30 - d * (1 - Math.floor(index / 7))]);
    const [item] = certainty(mixOf(sold, [5, 2]), KASAVANA_SMITH, 20_000, 3);
    expect(item?.spread.share).toBeCloseTo((Math.sqrt(21) * d) / (21 * 40), 3);
  });

  test('certainty(mix, resamples, seed) is the same for the same seed', () => {
    const mix = mixOf(
      weeks(2, (index) => [10 + (index % 5), 14, 3 + (index % 4) * 4]),
      [5, 5.2, 6],
    );
    expect(certainty(mix, KASAVANA_SMITH, 300, 9)).toEqual(certainty(mix, KASAVANA_SMITH, 300, 9));
    expect(certainty(mix, KASAVANA_SMITH, 300, 9)).not.toEqual(certainty(mix, KASAVANA_SMITH, 300, 10));
  });

  test('certainty(mix, resamples) holds as many as it is asked for', () => {
    const mix = mixOf(
      weeks(2, (index) => [10 + (index % 5), 14]),
      [5, 6],
    );
    expect(certainty(mix, KASAVANA_SMITH, 0, 1)).toEqual([null, null]);
    const one = certainty(mix, KASAVANA_SMITH, 1, 1)[0];
    expect([one?.spread, Math.max(...Object.values(one?.classShares ?? {}))]).toEqual([{ share: 0, margin: 0 }, 1]);
    const halves = Object.values(certainty(mix, KASAVANA_SMITH, 2, 1)[0]?.classShares ?? {});
    expect(halves.every((share) => share === 0 || share === 0.5 || share === 1)).toBe(true);
  });

  // the Wednesday sells as Tuesdays do: drawn among them it changes nothing, drawn among Mondays it would
  test('certainty(a single day of a weekday) draws it with the weekday that is nearest', () => {
    const sold = weeks(2, (index) => (index % 7 === 0 ? [20, 80] : [30, 10]));
    const mix = mixOf([...sold.slice(0, 3), ...sold.slice(7, 9)], [5, 6]);
    const days = [0, 1, 2, 7, 8].map((offset) => addDays(day('2026-10-05'), offset));
    expect(certainty({ ...mix, days }, KASAVANA_SMITH, 200, 1)[0]?.spread.share).toBeCloseTo(0, 12);
  });

  test('certainty(items of one margin) are all on the mean, which counts as the favourable side', () => {
    const [a, b] = certainty(
      mixOf(
        weeks(2, (index) => [10 + (index % 3), 12]),
        [5.1, 5.1],
      ),
      KASAVANA_SMITH,
      100,
      1,
    );
    expect([a?.classShares.star, b?.classShares.star]).toEqual([1, 1]);
  });

  test('certainty(the only item) leaves exactly the mean, however its margin goes up and down', () => {
    const mix = mixOf(
      weeks(2, () => [10]),
      [5],
    );
    const contribution = mix.contribution.map((value, index) => value + 7 * index);
    expect(certainty({ ...mix, contribution }, KASAVANA_SMITH, 100, 1)[0]?.spread.margin).toBeCloseTo(0, 12);
  });

  // of 100 portions a day the items sell 50, 10 and 40; they were expected to sell 80, 5 and 15
  test('certainty(items with expected portions of their own) compares each with its own', () => {
    const expected = Float64Array.from(weeks(2, () => [80, 5, 15]).flat());
    const sure = certainty(
      mixOf(
        weeks(2, () => [50, 10, 40]),
        [5, 5, 5],
        { expected },
      ),
      KASAVANA_SMITH,
      50,
      1,
    );
    expect(sure.map((item) => item?.classShares.star)).toEqual([0, 1, 1]);
    expect(sure[0]?.classShares.puzzle).toBe(1);
  });

  test('certainty(item without margin) is null: it stays in the portions and leaves the mean margin', () => {
    // with the third item's 20 portions the share of the others falls; their mean margin stays (5 * 10 + 2 * 2) / 12 = 4.5
    const mix = mixOf(
      weeks(2, () => [10, 2, 20]),
      [5, 2, null],
    );
    const [a, b, c] = certainty(mix, KASAVANA_SMITH, 100, 1);
    expect(c).toBeNull();
    expect(a?.classShares.star).toBe(1); // 10 of 32 is above 0.7 / 3
    expect(b?.classShares.dog).toBe(1);
    const junk = { ...mix, contribution: mix.contribution.map((value, cell) => (cell % 3 === 2 ? 1e9 : value)) };
    expect(certainty(junk, KASAVANA_SMITH, 100, 1)).toEqual([a, b, c]);
  });

  test('certainty(item on sale on few days) is counted in the resamples that hold one of them', () => {
    const onSale = Uint8Array.from(weeks(2, (index) => (index === 0 ? [1, 1] : [1, 0])).flat());
    const sold = weeks(2, (index) => (index === 0 ? [10, 8] : [10, 0]));
    const mix = mixOf(sold, [5, 9], { onSale });
    const [, seldom] = certainty(mix, KASAVANA_SMITH, 400, 1);
    const total = Object.values(seldom?.classShares ?? {}).reduce((sum, share) => sum + share, 0);
    expect(total).toBeCloseTo(1, 12);
    // where it is held, its Monday counts twice: always the same share, so no spread
    expect(seldom?.spread.share).toBeCloseTo(0, 12);
    expect(
      certainty(
        mixOf(sold, [5, 9], { onSale: Uint8Array.from(weeks(2, () => [1, 0]).flat()) }),
        KASAVANA_SMITH,
        50,
        1,
      )[1],
    ).toBeNull();
  });

  test('certainty(item on sale and not sold) keeps the margin of the period and is not popular', () => {
    const [, unsold] = certainty(
      mixOf(
        weeks(2, () => [10, 0]),
        [5, 9],
      ),
      KASAVANA_SMITH,
      50,
      1,
    );
    expect(unsold?.classShares.puzzle).toBe(1);
    const [, low] = certainty(
      mixOf(
        weeks(2, () => [10, 0]),
        [5, 1],
      ),
      KASAVANA_SMITH,
      50,
      1,
    );
    expect(low?.classShares.dog).toBe(1);
  });

  test('certainty(nothing sold) is null', () => {
    expect(
      certainty(
        mixOf(
          weeks(2, () => [0, 0]),
          [5, 9],
        ),
        KASAVANA_SMITH,
        50,
        1,
      ),
    ).toEqual([null, null]);
    expect(
      certainty(
        mixOf(
          weeks(2, () => [0, 4]),
          [5, null],
        ),
        KASAVANA_SMITH,
        50,
        1,
      ),
    ).toEqual([null, null]);
  });

  // two of fourteen days are sold at a loss, the same weekday in two weeks: one draw of the two, each counted twice
  test('certainty(an item whose margin falls below the mean on some days) counts how often it leaves less', () => {
    const mix = mixOf(
      weeks(2, () => [10, 10]),
      [5, 5],
    );
    const contribution = mix.contribution.map((value, cell) => (cell === 0 ? 0 : cell === 14 ? 200 : value));
    const [first, second] = certainty({ ...mix, contribution }, KASAVANA_SMITH, 4000, 1);
    expect(Math.abs((first?.leavesLess ?? 0) - 0.5)).toBeLessThan(0.03);
    expect((first?.leavesLess ?? 0) + (second?.leavesLess ?? 0)).toBe(1);
  });

  // On sale on the first Monday only: in half of the resamples it is absent, and the mean of an item is then over two, not three.
  test('certainty(an item absent from a resample) leaves it out of the mean of an item', () => {
    const onSale = Uint8Array.from(weeks(2, (index) => [1, 1, index === 0 ? 1 : 0]).flat());
    const mix = mixOf(
      weeks(2, (index) => [10, 6, index === 0 ? 1 : 0]),
      [5, 5, 5],
      { onSale },
    );
    // without the third the mean is (140 + 84) / 2 = 112 portions: the second is below it; with it (140 + 84 + 2) / 3 = 75.3: above
    const [, second, third] = certainty({ ...mix, revenue: mix.contribution }, PAVESIC, 4000, 1);
    expect(Math.abs((second?.classShares.prime ?? 0) - 0.5)).toBeLessThan(0.03);
    expect(third?.classShares.sleeper).toBe(1);
  });
});
