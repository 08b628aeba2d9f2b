import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { csvText } from '@/lib/format/csv-text';

test('csvText(columns, rows) writes snake_case heads, per cent where the name ends in Pct, and nothing for unknown', () => {
  const rows = [
    { item: 'Lemon choux', plateCost: '3.1834', foodCostPct: 0.274, margin: null, estimated: true },
    { item: 'Tart, "warm"', plateCost: '-0.50', foodCostPct: 0.07, margin: '-1.20', estimated: false },
  ];
  expect(csvText(['item', 'plateCost', 'foodCostPct', 'margin', 'estimated'], rows)).toBe(
    'item,plate_cost,food_cost_pct,margin,estimated\r\n' +
      'Lemon choux,3.1834,27.4,,yes\r\n' +
      '"Tart, ""warm""",-0.50,7,-1.20,no\r\n',
  );
});

test('csvText(columns, rows) disarms what a spreadsheet would run, and leaves figures alone', () => {
  const dangerous = ['=1+2', '+A1', '-cmd', '@SUM(A1)', '\t=1'];
  const rows = dangerous.map((item) => ({ item, margin: '-1.20' }));
  const cells = parse(csvText(['item', 'margin'], rows), { columns: true }) as { item: string; margin: string }[];
  expect(cells.map(({ item }) => item)).toEqual(dangerous.map((item) => `'${item}`));
  expect(cells.every(({ margin }) => margin === '-1.20')).toBe(true);
});

test('csvText(columns, rows) read back by a CSV reader gives the same texts', () => {
  const text = fc.string({ unit: 'grapheme' }).filter((value) => !/^[=+\-@\t\r]/.test(value));
  fc.assert(
    fc.property(fc.array(fc.record({ item: text, note: text }), { minLength: 1 }), (rows) => {
      const back = parse(csvText(['item', 'note'], rows), { columns: true, skip_empty_lines: false }) as typeof rows;
      expect(back).toEqual(rows);
    }),
    { seed: 7 },
  );
});
