import { describe, expect, test } from 'vitest';
import { plainText } from '@/lib/format/phrase';
import { type PriceChangeFigures, priceBasis, priceSentence } from '@/lib/format/words/price-changes';

const PURSE = { currency: 'EUR', locale: 'en-GB' };
const DARK = {
  name: 'Dark couverture 70 %',
  kind: 'ingredient' as const,
  price: 19.2,
  unit: 'kg',
  change: 19.2 / 14.8 - 1,
  amount: null,
};
const OCTOBER: PriceChangeFigures = {
  moved: [DARK],
  period: 'October 2026',
  contribution: { before: 27_883.78, after: 27_445.72 },
  foodCost: { before: 0.25, after: 0.2618 },
  turned: [{ item: 'Slate, salted', from: 'star', to: 'plowhorse' }],
  names: ['Slate, salted', 'Dune'],
};
const said = (figures: Partial<PriceChangeFigures>) => plainText(priceSentence({ ...OCTOBER, ...figures }, PURSE));

describe('priceSentence(figures, purse)', () => {
  test('of one dearer ingredient says what it takes, what food cost becomes and who turns', () => {
    expect(said({})).toBe(
      'Dark couverture 70 % at €19.20 a kg, 29.7\u2009% more than now, would have taken €438 from October 2026' +
        ' and lifted food cost by recipe from 25.0 to 26.2\u2009%. Slate would turn from star to plowhorse.',
    );
  });

  test('of a cheaper one says what is left more', () => {
    expect(
      said({
        moved: [{ ...DARK, price: 12, change: 12 / 14.8 - 1 }],
        contribution: { before: 100, after: 350.4 },
        foodCost: { before: 0.25, after: 0.2432 },
        turned: [],
      }),
    ).toBe(
      'Dark couverture 70 % at €12.00 a kg, 18.9\u2009% less than now, would have left €250 more in October 2026' +
        ' and lowered food cost by recipe from 25.0 to 24.3\u2009%. No dish would change its class.',
    );
  });

  test('of several changes speaks of all together, and of many turned dishes names one', () => {
    const turned = ['a', 'b', 'c', 'd'].map((item) => ({ item, from: 'star' as const, to: 'plowhorse' as const }));
    expect(said({ moved: [DARK, DARK], turned })).toContain('These two changes together would have taken €438');
    expect(said({ moved: [DARK, DARK], turned })).toMatch(
      / Four dishes would change class, a from star to plowhorse among them\.$/,
    );
  });

  test('of a group, a supplier, a section and a dish says whose prices they are', () => {
    const moved = (kind: 'group' | 'supplier' | 'section' | 'everything-bought', change: number) =>
      said({ moved: [{ name: 'Corrow', kind, price: null, unit: null, change, amount: null }] });
    expect(moved('group', 0.1)).toMatch(/^All of Corrow 10\.0\u2009% dearer would/);
    expect(moved('supplier', -0.1)).toMatch(/^Everything from Corrow 10\.0\u2009% cheaper would/);
    expect(moved('section', 0.1)).toMatch(/^Every dish of Corrow 10\.0\u2009% dearer would/);
    expect(moved('everything-bought', 0.1)).toMatch(/^Everything that is bought 10\.0\u2009% dearer would/);
    const dish = { name: 'Dune', kind: 'item' as const, price: 14.5, unit: null, change: 0, amount: null };
    expect(said({ moved: [dish] })).toMatch(/^Dune at €14\.50 on the menu, as now, would/);
  });

  test('of next to nothing says so, and of no change what can be done', () => {
    expect(said({ contribution: { before: 1, after: 1.2 } })).toContain(
      'would have changed what October 2026 left by less than €1',
    );
    expect(said({ foodCost: { before: 0.25, after: 0.25001 } })).toContain(
      ' and left food cost by recipe at 25.0\u2009%.',
    );
    expect(said({ foodCost: { before: null, after: null } })).toContain('from October 2026. Slate');
    expect(said({ moved: [] })).toBe('Move a price to see what it would have done to October 2026.');
  });
});

test('priceBasis(period, touched, dishes, locale) says how many dishes are touched', () => {
  expect(priceBasis('October 2026', { known: 7, unknown: 0 }, 16, 'en-GB').slice(0, 2)).toEqual([
    'exact, every other price and all portions as in October 2026',
    'seven of 16 dishes are touched by it',
  ]);
  expect(priceBasis('October 2026', { known: 1, unknown: 0 }, 3, 'en-GB')[1]).toBe(
    'one of three dishes is touched by it',
  );
  expect(priceBasis('October 2026', { known: 0, unknown: 0 }, 3, 'en-GB')[1]).toBe(
    'none of three dishes is touched by it',
  );
  expect(priceBasis('October 2026', { known: 0, unknown: 1 }, 3, 'en-GB')[1]).toBe(
    'none of three dishes is touched by it, and one whose margin is not known: in none of these figures',
  );
  expect(priceBasis('October 2026', null, 3, 'en-GB')[1]).toMatch(/^Kasavana/);
});
