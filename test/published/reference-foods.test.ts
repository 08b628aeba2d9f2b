import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { REFERENCE_FOODS, suggestedFoods } from '@/lib/model/reference/reference-foods';
import { foodTable } from '@/seed/reference/food-table';
import { openData } from '../open-data';

const at = (file: string): string => readFileSync(new URL(`../../${file}`, import.meta.url), 'utf8');
const FIGURES = at('seed/reference/sr28-figures.csv');

// USDA ARS, National Nutrient Database for Standard Reference, release 28 (2015), file FOOD_DES: per cent thrown away.
const REFUSE: readonly (readonly [food: string, refuse: number])[] = [
  ['Apples', 10],
  ['Apples, peeled', 23],
  ['Bananas', 36],
  ['Cherries, sour', 10],
  ['Egg, whole', 12],
  ['Lemons, flesh', 47],
  ['Mangoes', 29],
  ['Passion fruit', 48],
  ['Pineapple', 49],
  ['Quinces', 39],
  ['Rhubarb', 25],
  ['Strawberries', 6],
  ['Hazelnuts in shell', 59],
  ['Walnuts in shell', 55],
  ['Butter, unsalted', 0],
];

// The same, file WEIGHT: grams to a US cup (236.588 ml), fluid ounce, tablespoon or teaspoon; the density is derived.
const DENSITIES: readonly (readonly [food: string, grams: number, millilitres: number, said: string])[] = [
  ['Granulated sugar', 200, 236.5882365, 'cup'],
  ['Icing sugar', 120, 236.5882365, 'cup unsifted'],
  ['Plain flour', 125, 236.5882365, 'cup'],
  ['Honey', 339, 236.5882365, 'cup'],
  ['Whole milk', 244, 236.5882365, 'cup'],
  ['Double cream', 238, 236.5882365, 'cup, fluid (yields 2 cups whipped)'],
  ['Cocoa powder', 86, 236.5882365, 'cup'],
  ['Rum', 27.8, 29.5735295625, 'fl oz'],
  ['Yeast, dried', 12, 14.78676478125, 'tbsp'],
  ['Baking powder', 4.6, 4.92892159375, 'tsp'],
];

describe('REFERENCE_FOODS', () => {
  const called = (name: string) => REFERENCE_FOODS.find((food) => food.name === name);

  test.each(REFUSE)('REFERENCE_FOODS: %s, of which %d per cent are thrown away', (name, refuse) => {
    expect(called(name)?.usableYield).toBeCloseTo(1 - refuse / 100, 12);
  });

  test.each(DENSITIES)('REFERENCE_FOODS: %s weighs %d g to %d ml', (name, grams, millilitres, said) => {
    expect(called(name)?.densityGPerMl).toBeCloseTo(grams / millilitres, 12);
    expect(called(name)?.measuredAs).toBe(said);
  });

  test('REFERENCE_FOODS: what the source does not state is unknown, and each names its source', () => {
    expect(called('Figs')).toMatchObject({ densityGPerMl: null, measuredAs: null, waste: 'Stems' });
    expect(called('Cherries, sweet')).toMatchObject({ densityGPerMl: null, usableYield: 0.92 }); // a cup with stones
    expect(called('Figs')?.source).toEqual({
      title: 'USDA National Nutrient Database for Standard Reference, release 28',
      number: '09089',
      description: 'Figs, raw',
    });
    expect(REFERENCE_FOODS.length).toBeGreaterThanOrEqual(150);
    expect(new Set(REFERENCE_FOODS.map(({ name }) => name)).size).toBe(REFERENCE_FOODS.length);
    for (const { usableYield, densityGPerMl, waste } of REFERENCE_FOODS) {
      if (usableYield !== null) expect(usableYield > 0.2 && usableYield <= 1).toBe(true);
      if (densityGPerMl !== null) expect(densityGPerMl > 0.05 && densityGPerMl < 1.6).toBe(true);
      expect(waste === null).toBe(usableYield === 1);
      expect(densityGPerMl !== null || usableYield !== 1).toBe(true); // it has something to say
    }
  });
});

describe('foodTable', () => {
  test('foodTable(figures) is lib/model/reference/foods.ts, byte for byte', () => {
    expect(foodTable(FIGURES)).toBe(at('lib/model/reference/foods.ts'));
  });

  test('foodTable(figures) fails where a picked food has none', () => {
    expect(() => foodTable(FIGURES.replace('\n01145,', '\n99999,'))).toThrow('Butter, unsalted');
  });

  const file = openData('yields/sr28_compact_ingredients.csv');
  test.skipIf(file === null)('sr28-figures.csv holds the figures of the source as they are', () => {
    type Row = Readonly<Record<string, string>>;
    const source = new Map(
      (parse(readFileSync(file ?? '', 'utf8'), { columns: true }) as Row[]).map((row) => [row.ndb_no, row]),
    );
    for (const row of parse(FIGURES, { columns: true }) as Row[]) expect(source.get(row.ndb_no)).toMatchObject(row);
  });
});

describe('suggestedFoods', () => {
  test.each([
    ['Double cream', 'Double cream'],
    ['heavy cream', 'Double cream'],
    ['caster sugar', 'Granulated sugar'],
    ['Unsalted butter', 'Butter, unsalted'],
    ['Shell eggs', 'Egg, whole'],
    ['rasberries', 'Raspberries'],
    ['lemon', 'Lemons, flesh'],
    ['cornstarch', 'Cornflour'],
    ['baking soda', 'Bicarbonate of soda'],
    ['Black treacle', 'Molasses'],
  ])('suggestedFoods(%s) begins with %s', (ingredient, food) => {
    expect(suggestedFoods(ingredient)[0]?.name).toBe(food);
  });

  test('suggestedFoods(what the reference does not have) suggests nothing', () => {
    for (const ingredient of ['', 'Gold leaf', 'Isomalt', 'Paper cases'])
      expect(suggestedFoods(ingredient)).toEqual([]);
    expect(suggestedFoods('cream', 2)).toHaveLength(2);
  });
});
