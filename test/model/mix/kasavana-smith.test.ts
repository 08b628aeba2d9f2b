import { describe, expect, test } from 'vitest';
import { kasavanaSmith } from '@/lib/model/mix/kasavana-smith';
import { meanMargin } from '@/lib/model/mix/mean-margin';
import type { MenuAverages } from '@/lib/model/mix/mix-model';

const MENU: MenuAverages = {
  popularityFactor: 0.7,
  meanMargin: 5,
  foodCost: 0.3,
  meanContribution: 100,
  goalValue: null,
  variableCost: null,
  meanLabour: null,
};

/** By 70 % of the expected portions, and a mean margin. */
const classed = (item: { sold: number; expected: number; margin: number }, meanMargin: number) =>
  kasavanaSmith({ ...item, netPrice: 10, food: 3, labour: null }, { ...MENU, meanMargin });

describe('kasavanaSmith', () => {
  // 70 % of 100 expected portions; mean margin 5
  test('kasavanaSmith(item, factor, mean margin) is popular from the factor on, and leaves much from the mean on', () => {
    const classOf = (sold: number, margin: number) => classed({ sold, expected: 100, margin }, 5);
    expect(classOf(71, 6)).toBe('star');
    expect(classOf(71, 4)).toBe('plowhorse');
    expect(classOf(69, 6)).toBe('puzzle');
    expect(classOf(69, 4)).toBe('dog');
  });

  test('kasavanaSmith(item on a threshold) is on the favourable side, rounding passed over', () => {
    expect(classed({ sold: 70, expected: 100, margin: 5 }, 5)).toBe('star');
    expect(classed({ sold: 2.1, expected: 3, margin: 0.3 }, 0.1 + 0.2)).toBe('star');
    expect(classed({ sold: 70 - 1e-6, expected: 100, margin: 5 }, 5)).toBe('puzzle');
    expect(classed({ sold: 70, expected: 100, margin: 5 - 1e-6 }, 5)).toBe('plowhorse');
  });

  test('kasavanaSmith(nothing sold, nothing expected) is not popular', () => {
    expect(classed({ sold: 0, expected: 0, margin: 6 }, 5)).toBe('puzzle');
    expect(classed({ sold: 1, expected: 0, margin: 6 }, 5)).toBe('star');
  });
});

describe('meanMargin', () => {
  // (10 * 2 + 30 * 6) / 40
  test('meanMargin(items) is weighted by portions, and leaves out what has no margin', () => {
    expect(
      meanMargin([
        { sold: 10, margin: 2 },
        { sold: 30, margin: 6 },
        { sold: 500, margin: null },
        { sold: 0, margin: 99 },
      ]),
    ).toBe(5);
  });

  test('meanMargin(a single portion) is known', () => {
    expect(meanMargin([{ sold: 1, margin: 4 }])).toBe(4);
  });

  test('meanMargin(nothing sold with a margin) is not known', () => {
    expect(
      meanMargin([
        { sold: 0, margin: 4 },
        { sold: 3, margin: null },
      ]),
    ).toBeNull();
    expect(meanMargin([])).toBeNull();
  });
});
