import { describe, expect, test } from 'vitest';
import { plainText } from '@/lib/format/phrase';
import { type YearFigures, type YearRow, yearSentences } from '@/lib/format/words/year';
import { eventCount, menuChangeWords } from '@/lib/format/words/year-table';
import { yearRows, yearSum } from '@/lib/format/year-rows';

const row = (period: string, contribution: string | null, more: Partial<YearRow> = {}): YearRow => ({
  ...{ period, sold: 100, contribution, foodCostPct: 0.25, provisional: false, running: false, yearBefore: null },
  ...more,
});
const last = { periods: 3, sold: 300, contribution: '2100.00', foodCostPct: 0.251, coverage: 1 };
const said = (figures: Partial<YearFigures>) =>
  plainText(
    yearSentences({
      ...{ month: '2026-10', section: null, currency: 'EUR', locale: 'en-IE', last, lastYearBefore: null },
      periods: [row('2026-08', '900.00'), row('2026-09', '500.00'), row('2026-10', '700.00')],
      ...figures,
    }),
  ).replaceAll('\u2009', ' ');

describe('yearSentences', () => {
  test('yearSentences(year) sums the months and names the best and the least', () => {
    expect(said({})).toBe(
      'The three months to October 2026: 300 portions left €2,100 before labour, at a food cost by recipe of 25.1 %. August 2026 left most, September 2026 least.',
    );
  });

  // shown too, but no part of what the sentence sums
  test('yearSentences(months before those that are summed) names none of them best or least', () => {
    const periods = [
      row('2026-07', '9900.00'),
      row('2026-08', '900.00'),
      row('2026-09', '500.00'),
      row('2026-10', '700.00'),
    ];
    expect(said({ periods })).toContain('August 2026 left most, September 2026 least.');
  });

  test('yearSentences(year) holds the last whole month, and the year, against those before', () => {
    const yearBefore = { period: '2025-10', contribution: '1000.00', provisional: false };
    const periods = [row('2026-10', '800.00', { yearBefore }), row('2026-11', '90.00', { running: true })];
    const text = said({ month: '2026-11', periods, lastYearBefore: { ...last, contribution: '2000.00' } });
    expect(text).toContain(
      'That is 5.0 % more than the year before. October left €800, 20.0 % less than October 2025.',
    );
    expect(text).toContain('November 2026 is still running.');
    const same = { ...yearBefore, contribution: '800.00' };
    expect(said({ periods: [row('2026-10', '800.00', { yearBefore: same })] })).toContain(
      'October left €800, as much as October 2025.',
    );
  });

  test('yearSentences(year) says how much of it is known, and compares nothing that is provisional', () => {
    const yearBefore = { period: '2025-10', contribution: '1000.00', provisional: true };
    const doubtful = row('2026-09', '500.00', { provisional: true });
    const text = said({
      last: { ...last, coverage: 0.88 },
      periods: [doubtful, row('2026-10', '800.00', { yearBefore })],
    });
    expect(text).toBe(
      'The three months to October 2026: 300 portions, with margins known for 88 % of them. Those left €2,100 before labour, at a food cost by recipe of 25.1 %. September 2026 is provisional: margins are known for less than 90 % of portions.',
    );
    expect(said({ last: { ...last, contribution: null }, periods: [] })).toBe(
      'The three months to October 2026: 300 portions were sold. What they left is not known yet.',
    );
  });
});

describe('menuChangeWords', () => {
  const change = (item: string, kind: 'came' | 'went' | 'price', channels = ['dine_in']) => ({
    ...{ item, kind, channels },
    price: kind === 'went' ? null : '11.00',
    priceBefore: kind === 'came' ? null : '10.50',
  });
  const purse = { currency: 'EUR', locale: 'en-IE' };

  test('menuChangeWords(changes) names three of a kind, by their short names, with the prices and the channel', () => {
    const changes = [
      change('Figs, fig leaf cream', 'came'),
      change('Tart', 'price'),
      change('Cake', 'price', ['takeaway']),
      change('Posset', 'went'),
    ];
    expect(menuChangeWords(changes, purse)).toBe(
      'came Figs; went Posset; repriced Tart 10.50 to 11.00, Cake (takeaway) 10.50 to 11.00',
    );
    expect(
      menuChangeWords(
        ['A', 'B', 'C', 'D', 'E'].map((name) => change(name, 'went')),
        purse,
      ),
    ).toBe('went A, B, C and two more');
    expect(menuChangeWords([], purse)).toBe('–');
  });

  test('eventCount(kind, changes) counts dishes once, whatever their channels', () => {
    const changes = [change('Tart', 'price'), change('Tart', 'price', ['takeaway']), change('Cake', 'came')];
    expect([eventCount('price', changes), eventCount('came', changes), eventCount('went', changes)]).toEqual([
      '1',
      '+1',
      '',
    ]);
  });
});

test('yearRows(periods) and yearSum(year) print what is known, and the sum of the rows as printed', () => {
  const purse = { currency: 'EUR', locale: 'en-IE' };
  const figures = { tradingDays: 20, margin: '7.006', coverage: 0.5, menuChanges: [] };
  const before = { period: '2025-10', contribution: '-5.00', provisional: false };
  const periods = [
    {
      ...row('2026-08', null, { sold: 0, foodCostPct: null }),
      ...figures,
      tradingDays: 0,
      margin: null,
      coverage: null,
    },
    { ...row('2026-09', '10.006', { provisional: true }), ...figures },
    { ...row('2026-10', '20.006', { yearBefore: before, running: true }), ...figures },
  ];
  const [october, september, august] = yearRows(periods, purse);
  expect(october).toMatchObject({
    note: 'still running',
    cells: { contribution: '20.01', before: '\u22125.00', change: '–' },
  });
  expect(september).toMatchObject({ note: 'provisional', cells: { known: '50.0', before: '–', menu: '–' } });
  expect(august?.cells).toMatchObject({ days: '–', sold: '–', contribution: '–', foodCost: '–', margin: '–' });
  const year = {
    month: '2026-10',
    periods,
    last: { ...last, margin: '7', contribution: '30.012' },
    lastYearBefore: null,
  };
  expect(yearSum(year, purse)).toMatchObject({ period: 'The last three months', days: '40', contribution: '30.02' });
});
