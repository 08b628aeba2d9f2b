import fc from 'fast-check';
import readWorkbook from 'read-excel-file/node';
import { expect, test } from 'vitest';
import { menuMixFile } from '@/lib/answers/menu-mix-file';
import { menuMixShape } from '@/lib/answers/menu-mix-shape';
import { reportCsv } from '@/lib/format/report-csv';
import { type ReportFile, reportSheet } from '@/lib/format/report-file';
import { reportXlsx } from '@/lib/format/report-xlsx';
import { october } from './october';

const read = async (file: ReportFile) => readWorkbook(Buffer.from(await reportXlsx(file)));

interface Row {
  readonly item: string;
  readonly plateCost: string | null;
  readonly foodCostPct: number | null;
  readonly sold: number;
  readonly day: string;
  readonly settled: boolean | null;
}

function fileOf(rows: readonly Row[], currency = 'EUR'): ReportFile {
  const kinds = {
    item: 'text',
    plateCost: 'money',
    foodCostPct: 'share',
    sold: 'portions',
    day: 'date',
    settled: 'yesNo',
  } as const;
  return {
    name: 'rows',
    currency,
    basis: [
      ['Venue', 'Marram House'],
      ['Period', 'October 2026'],
    ],
    issues: ['Fig leaf has no price.', 'Nobody offers heather ash.'],
    sheets: [reportSheet<Row>('rows', kinds, rows)],
  };
}

test('reportXlsx(file) writes numbers as numbers, dates as dates, units in the head and what it stands on', async () => {
  const rows: Row[] = [
    { item: '=1+2', plateCost: '3.1834', foodCostPct: 0.274, sold: 12.5, day: '2026-10-01', settled: true },
    { item: '007', plateCost: null, foodCostPct: null, sold: 0, day: '2026-10-31', settled: null },
  ];
  const [sheet, basis] = await read(fileOf(rows));
  expect(sheet?.sheet).toBe('rows');
  expect(sheet?.data).toEqual([
    ['Item', 'Plate cost, EUR', 'Food cost, %', 'Sold, portions', 'Day', 'Settled'],
    ['=1+2', 3.1834, 0.274, 12.5, new Date('2026-10-01T00:00:00Z'), 'yes'],
    ['007', null, null, 0, new Date('2026-10-31T00:00:00Z'), null],
  ]);
  expect(basis?.data).toEqual([
    ['Venue', 'Marram House'],
    ['Period', 'October 2026'],
    ['What is missing', 'Fig leaf has no price.'],
    [null, 'Nobody offers heather ash.'],
  ]);
});

test('reportXlsx(file) keeps every text and every double of an answer', async () => {
  const text = fc
    .string({ unit: 'grapheme', minLength: 1 })
    .filter((value) => value.trim() === value && !/\p{C}/u.test(value));
  const row = fc.record<Row>({
    item: text,
    plateCost: fc.integer({ min: -1e9, max: 1e9 }).map((tenThousandths) => (tenThousandths / 1e4).toFixed(4)),
    foodCostPct: fc.double({ min: 0, max: 3, noNaN: true }).map((share) => Math.abs(share)),
    sold: fc.integer({ min: 0, max: 1e6 }),
    day: fc
      .date({ min: new Date('1990-01-01'), max: new Date('2100-01-01'), noInvalidDate: true })
      .map((at) => at.toISOString().slice(0, 10)),
    settled: fc.boolean(),
  });
  await fc.assert(
    fc.asyncProperty(fc.array(row, { minLength: 1, maxLength: 5 }), async (rows) => {
      const [sheet] = await read(fileOf(rows));
      const back = sheet?.data
        .slice(1)
        .map(([item, cost, share, sold, day]) => [
          item,
          cost,
          share,
          sold,
          day instanceof Date && day.toISOString().slice(0, 10),
        ]);
      expect(back).toEqual(
        rows.map((each) => [each.item, Number(each.plateCost), each.foodCostPct, each.sold, each.day]),
      );
    }),
    { seed: 11, numRuns: 40 },
  );
});

test('menuMixFile(answer) has a column for each single value of the answer, in its order, alike in CSV and workbook', async () => {
  const file = menuMixFile(october);
  const manyValued = ['classShares', 'between', 'spread', 'advice'];
  const names = Object.keys(menuMixShape.shape.items.element.shape).filter((name) => !manyValued.includes(name));
  expect(file.sheets[0].columns.map(({ name }) => name)).toEqual(names);
  const csv = reportCsv(file).trimEnd().split('\r\n');
  const [sheet, basis] = await read(file);
  expect(sheet?.data).toHaveLength(csv.length);
  expect(sheet?.data.map((cells) => cells.length)).toEqual(csv.map(() => names.length));
  const [item] = october.items;
  expect(sheet?.data[1]?.slice(0, 4)).toEqual([item?.item, item?.section, item?.sold, item?.comps]);
  expect(basis?.data.slice(0, 3)).toEqual([
    ['Venue', 'Marram House'],
    ['Period', 'October 2026'],
    ['Days', '2026-10-01 to 2026-10-31'],
  ]);
  expect(basis?.data.at(-1)?.[1]).toBe(october.issues.at(-1)?.text);
});

test.each([
  ['JPY', '#,##0'],
  ['EUR', '#,##0.00'],
  ['KWD', '#,##0.000'],
])('reportXlsx(file) in %s shows money as %s', async (currency, format) => {
  const row: Row = { item: 'Tart', plateCost: '3', foodCostPct: 0.5, sold: 1, day: '2026-10-01', settled: true };
  const { unzipSync, strFromU8 } = await import('fflate');
  const styles = strFromU8(unzipSync(await reportXlsx(fileOf([row], currency)))['xl/styles.xml'] ?? new Uint8Array());
  expect(styles).toContain(`formatCode="${format}"`);
});
