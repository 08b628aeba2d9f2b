import { expect, test } from 'vitest';
import { chosenState, monthFigure, monthLinkName } from '@/lib/format/words/ribbon';

const month = {
  month: '2026-10',
  sold: 120,
  foodCostPct: 0.2534,
  coverage: 1,
  waiting: 0,
  closed: true,
  running: false,
};
const unknown = { ...month, foodCostPct: null, coverage: 0 };

test('monthFigure(month) is a figure, a dash where nothing was sold, a question mark where it is not known', () => {
  expect(monthFigure(month, 'en-GB')).toBe('25.3');
  expect(monthFigure(month, 'de-DE')).toBe('25,3');
  expect(monthFigure({ ...unknown, sold: 0 }, 'en-GB')).toBe('–');
  expect(monthFigure(unknown, 'en-GB')).toBe('?');
});

test('monthLinkName(month) and chosenState(month) say in words what a question mark means', () => {
  expect(monthLinkName(unknown, 'de-DE')).toBe('October 2026, food cost unknown, closed');
  expect(chosenState(unknown, 'en-GB')).toBe('closed · food cost unknown');
  expect(chosenState({ ...month, coverage: 0.97 }, 'en-GB').replaceAll('\u2009', ' ')).toBe(
    'closed · margins known for 97 %',
  );
});

test('a month whose sales all wait for a name says so, and is not one in which nothing was sold', () => {
  const waiting = { ...unknown, sold: 0, coverage: null, waiting: 3 };
  expect(monthFigure(waiting, 'en-GB')).toBe('?');
  expect(monthLinkName(waiting, 'en-GB')).toBe('October 2026, all sales wait for a name, closed');
  expect(chosenState(waiting, 'en-GB')).toBe('closed · all sales wait for a name');
});
