import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cutNames, shortNames } from '@/lib/format/words/short-names';

test('shortNames(names) stop at the comma where that tells all apart', () => {
  expect(shortNames(['Rye choux, hay cream', 'Tart, plum', 'Tart, pear'])).toEqual([
    'Rye choux',
    'Tart, plum',
    'Tart, pear',
  ]);
});

test('cutNames(names, longest) cuts at the end, and in the middle where the ends are what differs', () => {
  expect(
    cutNames(
      [
        'Warm oat pudding with heather honey',
        'Baked chocolate custard with malt crumb',
        'Baked chocolate custard with rye crumb',
        'Dune',
      ],
      26,
    ),
  ).toEqual(['Warm oat pudding with…', 'Baked chocolate…malt crumb', 'Baked chocolate…rye crumb', 'Dune']);
});

test('cutNames(names, longest) keeps apart a name that another only carries on, and names that differ twice', () => {
  const plain = 'Chocolate and hazelnut slice';
  expect(cutNames([plain, `${plain} large`], 20)).toEqual(['Chocolate and…slice', 'Chocolate and…large']);
  const words = [
    'Chocolate tart with red currant and cream',
    'Chocolate tart with red currant and rum',
    'Chocolate tart with red plum',
  ];
  expect(new Set(cutNames(words, 20)).size).toBe(3);
});

test('cutNames(names, longest) of any different names are different', () => {
  const name = fc.array(fc.constantFrom('tart', 'plum', 'rye', 'a', 'chocolate', 'cream'), {
    minLength: 1,
    maxLength: 7,
  });
  fc.assert(
    fc.property(
      fc.uniqueArray(
        name.map((words) => words.join(' ')),
        { maxLength: 12 },
      ),
      (names) => {
        expect(new Set(cutNames(names, 12)).size).toBe(names.length);
      },
    ),
  );
});
