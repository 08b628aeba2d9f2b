import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lettersApart, likeness, nameSearch, wordsOf } from '@/lib/core/likeness';

describe('lettersApart', () => {
  test.each([
    ['plum', 'plum', 0],
    ['plum', 'plumb', 1],
    ['plum', 'lum', 1],
    ['plum', 'plim', 1],
    ['plum', 'pulm', 1],
    ['plum', 'ulpm', 2],
    ['kitten', 'sitting', 3], // the usual example of Levenshtein's distance
    ['', 'ab', 2],
    ['ab', '', 2],
    ['ca', 'abc', 3], // optimal string alignment, where the unrestricted distance is 2
  ])('lettersApart(%s, %s) is %d', (a, b, apart) => {
    expect(lettersApart(a, b, 5)).toBe(apart);
    expect(lettersApart(b, a, 5)).toBe(apart);
  });

  test('lettersApart(a, b, at most) says one more where they are farther apart', () => {
    expect(lettersApart('plum', 'strawberry', 2)).toBe(3);
    expect(lettersApart('plum', 'fig', 2)).toBe(3);
  });
});

describe('wordsOf', () => {
  test('wordsOf(name) has no case, accent, plural or small word', () => {
    expect(wordsOf('Crème of the Berries')).toEqual(['creme', 'berry']);
    expect(wordsOf('Peaches, tomatoes & boxes')).toEqual(['peach', 'tomato', 'box']);
    expect(wordsOf('GLASS 70 % figs')).toEqual(['glass', '70', 'fig']);
    expect(wordsOf('egg yolks')).toEqual(['egg', 'yolk']);
    expect(wordsOf('gas, pies, ties')).toEqual(['gas', 'pie', 'tie']);
    expect(wordsOf('toes')).toEqual(['toe']);
    expect(wordsOf(' — ')).toEqual([]);
  });
});

describe('likeness', () => {
  test('likeness(a, b) is the mean of each word with its nearest', () => {
    expect(likeness(['double', 'cream'], ['cream', 'double'])).toBe(1);
    expect(likeness(['double', 'cream'], ['cream'])).toBeCloseTo(2 / 3, 12); // (1 + 0 + 1) / 3
    expect(likeness(['cream'], ['crem'])).toBeCloseTo(0.8, 12); // one letter: 0.9 - 0.1
    expect(likeness(['raspbery'], ['rapsberry'])).toBeCloseTo(0.7, 12); // two letters: 0.9 - 0.2
    expect(likeness(['apricot'], ['arpicott'])).toBeCloseTo(0.7, 12); // seven letters bear two slips
    expect(likeness(['fig'], ['figgy'])).toBeCloseTo(0.8, 12);
    expect(likeness(['straw'], ['strawberry'])).toBeCloseTo(0.8, 12); // half typed
    expect(likeness(['fig'], ['pig'])).toBe(0); // three letters: too short for a slip
    expect(likeness([], ['fig'])).toBe(0);
  });

  test('likeness(a, b) lies between 0 and 1, is the same from either side, and 1 for itself', () => {
    const words = fc.array(fc.string({ minLength: 1, maxLength: 8 }), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(words, words, (a, b) => {
        expect(likeness(a, b)).toBeGreaterThanOrEqual(0);
        expect(likeness(a, b)).toBeLessThanOrEqual(1);
        expect(likeness(a, b)).toBeCloseTo(likeness(b, a), 12);
        expect(likeness(a, a)).toBe(1);
      }),
    );
  });
});

describe('nameSearch', () => {
  const names = ['Whole milk', 'Double cream', 'Coconut cream', 'Cream', 'Plums'];
  const nearest = nameSearch(names, (name) => [name]);

  test('nameSearch(things)(text) puts the likest first and equals by name', () => {
    expect(nearest('cream')).toEqual(['Cream', 'Coconut cream', 'Double cream']);
    expect(nearest('cream', 1)).toEqual(['Cream']);
    expect(nearest('duoble craem')).toEqual(['Double cream', 'Cream']);
    expect(nearest('plum')).toEqual(['Plums']);
  });

  test('nameSearch(things)(text) offers nothing that is not alike', () => {
    expect(nameSearch(['Cream wheat soup', 'Cream wheat soup bowl'], (name) => [name])('cream')).toEqual([
      'Cream wheat soup',
    ]); // 2 / 4, 2 / 5
    expect(nearest('saffron')).toEqual([]);
    expect(nearest('')).toEqual([]);
    expect(nameSearch([], () => [])('cream')).toEqual([]);
  });

  test('nameSearch(things)(text) goes by any of the names of a thing', () => {
    const things = [{ names: ['Granulated sugar', 'caster sugar'] }, { names: ['Sugar cane'] }, { names: [] }];
    expect(nameSearch(things, ({ names }) => names)('caster sugar')[0]).toBe(things[0]);
  });
});
