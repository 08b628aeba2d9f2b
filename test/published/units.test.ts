import { describe, expect, test } from 'vitest';
import { type KitchenMeasures, unitNamed } from '@/lib/core/units';

// Weights and Measures Act 1985, schedule 1 (pound 0.453 592 37 kg, ounce 1/16 pound); Hong Kong Weights and Measures Ordinance
// (imperial gallon 4.546 09 dm3, pint 1/8, fluid ounce 1/20 pint); NIST SP 430 (1 tbsp = 3 tsp, 1 fl oz = 2 tbsp, 1 cup = 16 tbsp).
// The US gallon is 231 cubic inches of 2.54 cm. The metric cup of 250 ml is from memory (Canadian and Australian convention).
const PUBLISHED: readonly (readonly [name: string, base: string, size: number])[] = [
  ['lb', 'g', 453.59237],
  ['oz', 'g', 28.349523125],
  ['stone', 'g', 6350.29318],
  ['kg', 'g', 1000],
  ['us gallon', 'ml', 3785.411784],
  ['us quart', 'ml', 946.352946],
  ['us pint', 'ml', 473.176473],
  ['us cup', 'ml', 236.5882365],
  ['us fl oz', 'ml', 29.5735295625],
  ['us tbsp', 'ml', 14.78676478125],
  ['us tsp', 'ml', 4.92892159375],
  ['imperial gallon', 'ml', 4546.09],
  ['imperial quart', 'ml', 1136.5225],
  ['imperial pint', 'ml', 568.26125],
  ['imperial fl oz', 'ml', 28.4130625],
  ['metric cup', 'ml', 250],
  ['metric tbsp', 'ml', 15],
  ['metric tsp', 'ml', 5],
  // NIST Handbook 44, Appendix C
  ['us dry pint', 'ml', 550.6104713575],
];

function sizeOf(name: string, measures: KitchenMeasures = 'metric'): number | null {
  return unitNamed(name, measures)?.size ?? null;
}

describe('unitNamed', () => {
  test.each(PUBLISHED)('unitNamed(%s) is %s %d', (name, base, size) => {
    expect(unitNamed(name, 'metric')?.base).toBe(base);
    expect(sizeOf(name)).toBeCloseTo(size, 9);
  });

  test('unitNamed(fl oz) is a volume and unitNamed(oz) a mass', () => {
    expect(unitNamed('fl oz', 'us')?.base).toBe('ml');
    expect(unitNamed('oz', 'us')?.base).toBe('g');
  });

  test('unitNamed(cup, tbsp or tsp) follows the setting of the kitchen', () => {
    expect(['cup', 'tbsp', 'tsp'].map((name) => sizeOf(name))).toEqual([250, 15, 5]);
    expect(sizeOf('cup', 'us')).toBeCloseTo(236.5882365, 9);
    expect(sizeOf('Tablespoons', 'us')).toBeCloseTo(14.78676478125, 9);
    expect(sizeOf('teaspoon', 'us')).toBeCloseTo(4.92892159375, 9);
  });

  test('unitNamed(spelling) passes over case, points and spaces; a unit unknown is null', () => {
    expect(sizeOf(' Fl.  Oz. ')).toBeCloseTo(29.5735295625, 9);
    expect(sizeOf('KG')).toBe(1000);
    expect(sizeOf('dozen')).toBe(12);
    expect(sizeOf('portion')).toBe(1);
    expect(['mg', 'cl', 'dl', 'litre'].map((name) => sizeOf(name))).toEqual([0.001, 10, 100, 1000]);
    expect(sizeOf('pod')).toBeNull();
    expect(sizeOf('')).toBeNull();
  });
});
