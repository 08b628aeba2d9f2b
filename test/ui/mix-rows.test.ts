import { expect, test } from 'vitest';
import { shapesOfSections } from '@/app/_ui/mark-shape';
import { mixRows } from '@/app/_ui/mix-table/mix-rows';
import { mixTotal } from '@/app/_ui/mix-table/mix-total';
import { nextSorting, sortedRows } from '@/app/_ui/mix-table/sorted-rows';
import { tableText } from '@/app/_ui/mix-table/table-text';
import { columnHeads } from '@/lib/format/words/mix-table';
import { october } from '../format/october';

const shapes = shapesOfSections(october.items.map(({ section }) => section));
const rows = mixRows(october, 'en-GB', shapes);

function row(name: string) {
  const found = rows.find((one) => one.item === name);
  if (!found) throw new Error(`no row ${name}`);
  return found;
}

// Rye choux: 143 of 3,412 portions, 11.86 less 2.55, times 143.
test('mixRows(mix, locale) prints each figure with its unit’s decimals', () => {
  const { cells } = row('Rye choux, hay cream');
  expect(Object.values(cells).map(({ text }) => text)).toEqual([
    '143',
    '1',
    '4.2',
    '11.86',
    '2.55',
    '21.5',
    '9.31',
    '1,331.33',
    'puzzle',
    '65 : 35 star',
  ]);
  expect(row('Rye choux, hay cream').bar).toEqual([0.65, expect.closeTo(0.35, 9)]);
});

test('mixRows(mix, locale) shows a floor as words, what is unknown as a word, and an estimate as one', () => {
  const half = row('Sheep’s curd, fig leaf');
  expect(half.cells.plateCost).toEqual({ text: 'at least 1.12', tone: 'unknown' });
  expect(half.note).toBe('2 of 7 lines are not known');
  expect([half.cells.foodCost, half.cells.leaves, half.cells.contribution].map(({ text }) => text)).toEqual([
    'unknown',
    'unknown',
    'unknown',
  ]);
  expect(half.cells.class.text).toBe('not classed');
  expect(row('Iced pear lantern').note).toBe('cost is the owner’s estimate');
});

test('mixRows(mix, locale) of an item without any known line says not costed', () => {
  const items = october.items.map((item) => ({ ...item, plateCost: null, floor: null }));
  expect(mixRows({ ...october, items }, 'en-GB', shapes)[0]?.cells.plateCost.text).toBe('not costed');
});

test('mixRows(mix, locale) prints a dull nothing as a dash, never an unknown as one', () => {
  expect(row('Cocoa-nib parfait').cells.comps).toEqual({ text: '–', tone: 'faint' });
});

// The fifteen printed contributions add up to 26,954.50.
test('mixTotal(mix, locale) is the sum of the rows as printed, and means of the costed portions', () => {
  const total = mixTotal(october, 'en-GB');
  expect(total.cells).toEqual({
    sold: '3,412',
    comps: '63',
    share: '100.0',
    price: '10.90',
    plateCost: '2.76',
    foodCost: '25.3',
    leaves: '8.13',
    contribution: '26,954.50',
  });
  expect([total.label, total.note]).toEqual(['16 dishes', 'costs and margins: of the 15 costed']);
});

test('mixTotal(mix, locale) with nothing costed says unknown', () => {
  const totals = { ...october.totals, plateCost: null, foodCostPct: null, margin: null, costedSold: 0 };
  const items = october.items.map((item) => ({ ...item, margin: null, contribution: null }));
  expect(mixTotal({ ...october, items, totals }, 'en-GB').cells).toMatchObject({
    leaves: 'unknown',
    contribution: 'unknown',
    foodCost: 'unknown',
  });
});

// 100 portions at 9.00 and 300 of which the price is not known: the mean price is that of the hundred.
test('mixTotal(portions without a price) is the mean price of the portions that have one', () => {
  const items = october.items.slice(0, 2).map((item, at) => ({
    ...{ ...item, sold: at === 0 ? 100 : 300, netPrice: at === 0 ? '9.00' : null },
    revenue: at === 0 ? '900.00' : null,
  }));
  const totals = { ...october.totals, sold: 400, revenue: '900.00' };
  expect(mixTotal({ ...october, items, totals }, 'en-GB').cells.price).toBe('9.00');
});

const ADVICE = {
  ...{ againstAverage: '-1.80', leavesLess: 0.97, rise: '3.00', mayLose: 0.5, takenOffFrom: 0.5 },
  ...{ onlyWithout: [], mostPlatingMinutes: null },
};

test('mixRows(mix, locale) has advice for a dish below the average or on the line, none for one that is neither', () => {
  const advised = (settled: boolean | null, againstAverage: string) => {
    const items = october.items
      .slice(0, 1)
      .map((item) => ({ ...item, settled, advice: { ...ADVICE, againstAverage } }));
    return mixRows({ ...october, items }, 'en-GB', shapes)[0]?.advice;
  };
  expect(advised(true, '-1.80')).toHaveLength(3);
  expect(advised(false, '1.80')).toHaveLength(3);
  expect(advised(true, '1.80')).toBeNull();
  expect(row('Dune').advice).toBeNull();
});

test('sortedRows(rows, sorting, locale) keeps what is unknown last either way', () => {
  const last = (falling: boolean) => sortedRows(rows, { column: 'leaves', falling }, 'en-GB').at(-1)?.item;
  expect([last(true), last(false)]).toEqual(['Sheep’s curd, fig leaf', 'Sheep’s curd, fig leaf']);
  expect(sortedRows(rows, { column: 'leaves', falling: true }, 'en-GB')[0]?.item).toBe('Dune');
  expect(sortedRows(rows, { column: 'item', falling: false }, 'en-GB')[0]?.item).toBe('Baked chocolate, malt crumb');
});

test('nextSorting(now, column) turns round, or starts with what is asked for most', () => {
  const now = { column: 'contribution', falling: true } as const;
  expect(nextSorting(now, 'contribution')).toEqual({ column: 'contribution', falling: false });
  expect(nextSorting(now, 'sold')).toEqual({ column: 'sold', falling: true });
  expect(nextSorting(now, 'item')).toEqual({ column: 'item', falling: false });
});

test('tableText(heads, rows, total) is lines of tabs, head and total included', () => {
  const text = tableText(columnHeads('€', '2,000'), rows, mixTotal(october, 'en-GB')).split('\n');
  expect(text).toHaveLength(18);
  expect(text[0]).toBe(
    'Dish\tSold, portions\tComps, portions\tShare, %\tPrice, € net\tPlate cost, €\tFood cost, %\tLeaves, € each\tIn the period, €\tClass\tHow sure, % of 2,000 resamples',
  );
  expect(text[1]?.split('\t').slice(0, 3)).toEqual(['Buckwheat soufflé, oat cream', '361', '2']);
  expect(new Set(text.map((line) => line.split('\t').length))).toEqual(new Set([11]));
});

test('shapesOfSections(sections) gives shapes by name, so that a section keeps its own, and none comes last', () => {
  expect([...shapesOfSections(['Warm', 'Cold', null, 'Warm'])]).toEqual([
    ['Cold', 'circle'],
    ['Warm', 'square'],
    [null, 'triangle'],
  ]);
});
