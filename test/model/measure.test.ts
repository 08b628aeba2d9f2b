import { describe, expect, test } from 'vitest';
import type { IngredientVersion, ItemId, NamedMeasure } from '@/lib/model/facts';
import {
  batchMeasure,
  inBase,
  ingredientMeasure,
  missingBetween,
  ownMeasures,
  sameMeasure,
  unitReader,
} from '@/lib/model/measure';

const units = unitReader('metric');
const stated: IngredientVersion = {
  item: 1 as ItemId,
  validFrom: null,
  measure: 'g',
  productGroup: null,
  department: 'food',
  densityGPerMl: null,
  gramsEach: null,
  usableYield: 1,
  contains: null,
  mayContain: null,
};
const measured = (version: Partial<IngredientVersion>, ...own: NamedMeasure[]) =>
  ingredientMeasure({ ...stated, ...version }, ownMeasures(own));
const own = (name: string, quantity: number, unit: string): NamedMeasure => ({
  item: 1 as ItemId,
  name,
  quantity,
  unit,
});

describe('ingredientMeasure', () => {
  // honey of 1.4 g/ml: 100 ml weigh 140 g; bought by the ml, 140 g are 100 ml
  test('ingredientMeasure(version) crosses mass and volume by density, both ways', () => {
    expect(inBase(measured({ densityGPerMl: 1.4 }), 100, 'ml', units)).toBeCloseTo(140, 12);
    expect(inBase(measured({ measure: 'ml', densityGPerMl: 1.4 }), 140, 'g', units)).toBeCloseTo(100, 12);
  });

  // an egg of 55 g: 3 eggs weigh 165 g; 165 g are 3 eggs
  test('ingredientMeasure(version) crosses mass and count by the weight of one piece, both ways', () => {
    expect(inBase(measured({ gramsEach: 55 }), 3, 'each', units)).toBeCloseTo(165, 12);
    expect(inBase(measured({ measure: 'each', gramsEach: 55 }), 165, 'g', units)).toBeCloseTo(3, 12);
  });

  // a lemon of 120 g with juice of density 1.2 g/ml: one is 100 ml, 250 ml are 2.5 lemons
  test('ingredientMeasure(version) crosses volume and count by both facts', () => {
    const facts = { densityGPerMl: 1.2, gramsEach: 120 };
    expect(inBase(measured({ measure: 'ml', ...facts }), 1, 'each', units)).toBeCloseTo(100, 12);
    expect(inBase(measured({ measure: 'each', ...facts }), 250, 'ml', units)).toBeCloseTo(2.5, 12);
  });

  test('ingredientMeasure(version) without the fact gives no amount, never one for one', () => {
    expect(inBase(measured({}), 100, 'ml', units)).toEqual({ from: 'ml' });
    expect(inBase(measured({}), 1, 'each', units)).toEqual({ from: 'each' });
    expect(inBase(measured({ measure: 'ml', gramsEach: 120 }), 1, 'each', units)).toEqual({ from: 'each' });
    expect(inBase(measured({ measure: 'each', densityGPerMl: 1.2 }), 1, 'ml', units)).toEqual({ from: 'ml' });
  });
});

describe('missingBetween', () => {
  const missing = (version: Partial<IngredientVersion>, from: 'g' | 'ml' | 'each') =>
    missingBetween(measured(version), from);

  test('missingBetween(measure, from) names only the facts that the way needs and that are not stated', () => {
    expect(missing({}, 'ml')).toEqual(['density_g_per_ml']);
    expect(missing({}, 'each')).toEqual(['grams_each']);
    expect(missing({ measure: 'ml' }, 'g')).toEqual(['density_g_per_ml']);
    expect(missing({ measure: 'each' }, 'g')).toEqual(['grams_each']);
    expect(missing({ measure: 'ml' }, 'each')).toEqual(['density_g_per_ml', 'grams_each']);
    expect(missing({ measure: 'ml', gramsEach: 5 }, 'each')).toEqual(['density_g_per_ml']);
    expect(missing({ measure: 'each', densityGPerMl: 1 }, 'ml')).toEqual(['grams_each']);
  });
});

describe('inBase', () => {
  test('inBase(measure, quantity, unit) multiplies by the size of the unit', () => {
    expect(inBase(measured({}), 2, 'kg', units)).toBe(2000);
    expect(inBase(measured({ measure: 'ml' }), 3, 'tbsp', units)).toBe(45);
    expect(inBase(measured({ measure: 'ml' }), 1, 'cup', unitReader('us'))).toBeCloseTo(236.5882365, 9);
    expect(inBase(measured({ measure: 'each' }), 2, 'dozen', units)).toBe(24);
  });

  // a pod of 3 g; a leaf of 2 g; a sheet of 0.5 cup at 0.5 g/ml = 62.5 g
  test('inBase(measure, quantity, own measure) takes what the thing itself calls so, whatever its case', () => {
    const vanilla = measured({ densityGPerMl: 0.5 }, own('pod', 3, 'g'), own('Sheet', 0.5, 'cup'));
    expect(inBase(vanilla, 4, 'Pod', units)).toBe(12);
    expect(inBase(vanilla, 1, 'sheet', units)).toBeCloseTo(62.5, 12);
  });

  test('inBase(measure, quantity, own measure) goes before a unit of the same name', () => {
    expect(inBase(measured({}, own('tbsp', 9, 'g')), 2, 'tbsp', units)).toBe(18);
  });

  test('inBase(measure, quantity, unit) names a unit that nobody knows', () => {
    expect(inBase(measured({}), 2, 'pinch', units)).toEqual({ unknownUnit: 'pinch' });
    expect(inBase(measured({}, own('pod', 2, 'stick')), 2, 'pod', units)).toEqual({ unknownUnit: 'stick' });
    expect(inBase(measured({}, own('pod', 2, 'ml')), 2, 'pod', units)).toEqual({ from: 'ml' });
  });
});

describe('batchMeasure', () => {
  // 900 g that fill 1,500 ml: 30 ml weigh 18 g; the same batch makes 12 pieces: one is 75 g
  test('batchMeasure(base, outputs) takes two outputs of one batch as its density', () => {
    const cream = batchMeasure('g', { g: 900, ml: 1500, each: 12 }, ownMeasures([]));
    expect(inBase(cream, 30, 'ml', units)).toBeCloseTo(18, 12);
    expect(inBase(cream, 1, 'each', units)).toBeCloseTo(75, 12);
    expect(inBase(cream, 18, 'g', units)).toBe(18);
    const byVolume = batchMeasure('ml', { g: 900, ml: 1500, each: null }, ownMeasures([]));
    expect(inBase(byVolume, 18, 'g', units)).toBeCloseTo(30, 12);
    expect(inBase(byVolume, 1, 'each', units)).toEqual({ from: 'each' });
  });
});

describe('sameMeasure', () => {
  test('sameMeasure(a, b) is false where any amount would differ', () => {
    const none = ownMeasures([]);
    const base = ingredientMeasure({ ...stated, densityGPerMl: 1 }, none);
    expect(sameMeasure(base, ingredientMeasure({ ...stated, densityGPerMl: 1, productGroup: 'Dairy' }, none))).toBe(
      true,
    );
    expect(sameMeasure(base, ingredientMeasure({ ...stated, densityGPerMl: 1.1 }, none))).toBe(false);
    expect(sameMeasure(base, ingredientMeasure({ ...stated, densityGPerMl: 1, usableYield: 0.9 }, none))).toBe(false);
    expect(sameMeasure(base, ingredientMeasure({ ...stated, densityGPerMl: 1 }, ownMeasures([])))).toBe(false);
    expect(sameMeasure(base, batchMeasure('g', { g: 1, ml: 1, each: null }, none))).toBe(true);
    expect(sameMeasure(base, batchMeasure('ml', { g: 1, ml: 1, each: null }, none))).toBe(false);
    expect([sameMeasure(null, null), sameMeasure(base, null), sameMeasure(null, base)]).toEqual([true, false, false]);
  });
});
