import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { unitNamed } from '@/lib/core/units';
import { typedLine } from '@/lib/intake/typed-line';
import type { TypedLine } from '@/lib/model/line-question';
import { openData } from '../open-data';

// publicdomainrecipes.com (Unlicense): the ingredient lines on which two general parsers agree, with what they read. The lines stand with
// the open data and are not shipped; where they do not stand the test is skipped, and the lines below are checked all the same.
const file = openData('recipes/ingredient_lines_two_parsers_agree.csv');
const rowShape = z.array(
  z.object({ line: z.string(), quantity: z.string(), quantity_max: z.string(), unit: z.string() }),
);
type Row = z.infer<typeof rowShape>[number];

const US = { measures: 'us', decimalComma: false } as const;
const SIZES = ['', 'small', 'medium', 'large']; // count as each
const spelled = (unit: string): string => unitNamed(unit, 'us')?.name ?? unit;
const isNumber = (read: number | null, printed: string): boolean =>
  printed === '' ? read === null : read !== null && Math.abs(read - Number(printed)) <= 0.001; // printed to three decimals

const sameQuantity = (line: TypedLine, row: Row): boolean =>
  isNumber(line.quantity, row.quantity) && isNumber(line.upTo, row.quantity_max);
const sameUnit = (line: TypedLine, { unit }: Row): boolean =>
  line.unit !== null && spelled(line.unit) === (SIZES.includes(unit) ? 'each' : spelled(unit));
/** The parsers know no glass, leaf or spoon and count such lines without a unit; the count is the same where ours names what is counted. */
const countsWord = (line: TypedLine, { unit }: Row): boolean => SIZES.includes(unit) && line.measure;

/** Neither parser knows the spelling litre, and both count one of "litre whole milk": there is nothing to ask. */
const BOTH_MISREAD = /^\d litres? /;

const rows = file === null ? [] : rowShape.parse(parse(readFileSync(file, 'utf8'), { columns: true }));
const read = rows.map((row) => ({ row, line: typedLine(row.line, US) }));

describe('typedLine: lines on which two parsers agree', () => {
  test.skipIf(file === null)('typedLine(line) has the quantity and unit of 97 % of them at least', () => {
    expect(rows.length).toBe(1563);
    const same = read.filter(
      ({ row, line }) => sameQuantity(line, row) && (sameUnit(line, row) || countsWord(line, row)),
    );
    expect(same.length / rows.length).toBeGreaterThanOrEqual(0.98);
    const inSoManyWords = same.filter(({ row, line }) => sameUnit(line, row));
    expect(inSoManyWords.length / rows.length).toBeGreaterThanOrEqual(0.94);
  });

  test.skipIf(file === null)('typedLine(line) asks about every other one', () => {
    const others = read.filter(({ row, line }) => !(sameQuantity(line, row) && sameUnit(line, row)));
    expect(others.length).toBeGreaterThan(0);
    expect(others.filter(({ line }) => line.certain).map(({ row }) => row.line.replace(BOTH_MISREAD, '* '))).toEqual([
      '* whole milk',
      '* fish stock',
    ]);
  });

  test.skipIf(file === null)('typedLine(line) asks about no more than three lines of ten', () => {
    expect(read.filter(({ line }) => line.certain).length / rows.length).toBeGreaterThan(0.7);
  });

  // A few of the lines with what both parsers read.
  test.each([
    ['5-6 cloves of garlic', 5, 6, 'clove'],
    ['15 g (1 tbsp) lemon juice', 15, null, 'g'],
    ['1½ tsp. cooking powder', 1.5, null, 'tsp'],
    ['1 (46 fluid ounce) bottle tomato-vegetable juice cocktail', 1, null, 'bottle'],
    ['Butter Melted 2 tbsp', 2, null, 'tbsp'],
    ['Juice of 2-3 Limes', 2, 3, 'each'],
    ['1–2 tablespoons olive oil and/or butter', 1, 2, 'tbsp'],
    ['225 g 50-70% dark chocolate chips or semi-sweet milk chocolate chips', 225, null, 'g'],
    ['3 3/4 cups Unbleached All-Purpose Flour (plus more for rolling / dusting)', 3.75, null, 'cup'],
  ])('typedLine(%s) is %d to %s %s', (text, quantity, upTo, unit) => {
    expect(typedLine(text, US)).toMatchObject({ quantity, upTo, unit });
  });
});
