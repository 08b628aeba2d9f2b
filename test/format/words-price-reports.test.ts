import { expect, test } from 'vitest';
import { belowZero, noEdit, noSuchBy, noSuchGoods, touchesNothing } from '@/lib/format/words/price-edits';
import {
  concentrationSentence,
  periodChangeSentence,
  priceChangeBasis,
  turningBasis,
  unmovedSentence,
} from '@/lib/format/words/price-reports';

test('concentrationSentence(a group that carries the menu) says so, and of one that does not, that none does', () => {
  const cocoa = { group: 'Cocoa', dishes: 13, of: 17, carries: true };
  expect(concentrationSentence(cocoa, '30.7 %')).toBe(
    'Cocoa carries the menu: 30.7 % of the food cost by recipe, and 13 of 17 dishes lean on it.',
  );
  expect(concentrationSentence({ ...cocoa, carries: false }, '20.0 %')).toBe(
    'No product group carries the menu; the largest is Cocoa with 20.0 % of the food cost by recipe, and 13 of 17 dishes lean on it.',
  );
});

test('unmovedSentence(how many) warns of prices that stood still', () => {
  expect(unmovedSentence(1)).toBe(
    '1 more price did not move in the time looked at, which is no sign that it will not.',
  );
  expect(unmovedSentence(4)).toContain('4 more prices did not move');
});

test('periodChangeSentence(figures) has before, after and change', () => {
  const said = periodChangeSentence({ contribution: ['€20', '€19', '−€1'], foodCost: ['23.1 %', '24.2 %'] });
  expect(said).toBe(
    'Contribution €20, with these prices €19 (−€1); food cost by recipe 23.1 %, with these prices 24.2 %.',
  );
});

test('priceChangeBasis and turningBasis name section, model and source', () => {
  expect(priceChangeBasis([], null)).toEqual([
    'whole menu, without set menus and drinks',
    'no price changed',
    'every other price and all portions as they were',
    'Kasavana & Smith, 1982',
  ]);
  expect(priceChangeBasis(['menu:+4%', 'Cream:6'], 'Plated').slice(0, 2)).toEqual([
    'section Plated',
    'changed: menu:+4%; Cream:6',
  ]);
  expect(turningBasis('Cream', 'l', 'Plated', 'miller')).toEqual([
    'section Plated',
    'Cream at one price all period, a l; every other price and all portions as they were',
    'Miller, 1980',
  ]);
});

test('sentences about wrong changes say what, where and how to mend it', () => {
  expect(noEdit('Cream')).toMatch(
    /^“Cream” is no change of a price\. Write what, a colon and the change: “Double cream:\+10%”/,
  );
  expect(touchesNothing({ of: 'group', name: 'Nuts' }, ['Nuts and seeds'])).toBe(
    'There is no product group with a price called “Nuts” in this period. There is Nuts and seeds.',
  );
  expect(touchesNothing({ of: 'whole-menu', name: null }, [])).toBe(
    'There is no dish with a menu price in this period.',
  );
  expect(belowZero({ of: 'everything-bought', name: null })).toBe(
    'A price would fall below zero. Make the cut smaller.',
  );
  expect(noSuchGoods('Creem', []).detail).toContain('at-stake lists what is.');
  expect(noSuchBy('colour', ['ingredient', 'group', 'supplier']).detail).toBe(
    'Nothing is added up by “colour”. There is ingredient, group and supplier.',
  );
});
