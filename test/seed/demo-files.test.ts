import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { FILE_KINDS } from '@/lib/intake/file-kinds';
import { isGtin } from '@/lib/intake/gtin';
import { ROW_KINDS } from '@/lib/intake/row-kinds';
import { DEMO_FILES } from '@/seed/demo/files/all-files';
import { csvText } from '@/seed/demo/files/csv-table';
import { gtin13 } from '@/seed/demo/files/gtin';
import { SUPPLIERS } from '@/seed/demo/suppliers/all-suppliers';
import { rowsIn } from './rows-in';

const folder = fileURLToPath(new URL('../../seed/demo-house/', import.meta.url));

describe('the demo restaurant as files', () => {
  test.each(DEMO_FILES.map((table) => [table.file, table] as const))(
    'csvText(%s) is what is checked in, byte for byte',
    (file, table) => {
      expect(csvText(table) === readFileSync(`${folder}${file}`, 'utf8')).toBe(true);
    },
  );

  test('DEMO_FILES is every file of the data folder, and nothing else lies in it', () => {
    const contract = FILE_KINDS.map((kind) => `${kind}.csv`).sort();
    expect(DEMO_FILES.map((table) => table.file).sort()).toEqual(contract);
    expect(readdirSync(folder).sort()).toEqual(contract);
  });

  test('csvText(table) of all files together stays below 6 MB', () => {
    const bytes = DEMO_FILES.reduce((sum, table) => sum + Buffer.byteLength(csvText(table)), 0);
    expect(bytes).toBeGreaterThan(500_000);
    expect(bytes).toBeLessThan(6_000_000);
  });

  test.each(Object.keys(ROW_KINDS) as (keyof typeof ROW_KINDS)[])(
    'readRows(%s) finds no fault in any row',
    async (kind) => {
      const rows = await rowsIn<unknown>(`${folder}${kind}.csv`, ROW_KINDS[kind]);
      const faults = rows.flatMap(({ line, fault }) => (fault === null ? [] : [{ line, ...fault }]));
      expect(faults).toEqual([]);
      expect(rows.length).toBe(DEMO_FILES.find((table) => table.file === `${kind}.csv`)?.rows.length);
    },
  );

  test('gtin13(stem) puts the check digit behind, as in the example of GS1, 6291041500213 (from memory)', () => {
    expect(gtin13('629104150021')).toBe('6291041500213');
    const stems = SUPPLIERS.flatMap(({ offers }) => offers.flatMap(({ gtinStem }) => gtinStem ?? []));
    expect(stems.length).toBeGreaterThan(8);
    expect(stems.map(gtin13).filter((gtin) => !isGtin(gtin))).toEqual([]);
  });

  test('csvText(table) quotes what needs quotes and refuses a short row', () => {
    expect(
      csvText({
        file: 'x.csv',
        columns: ['a', 'b'],
        rows: [
          ['Box, of "six"', undefined],
          [1.5, 'x;y'],
        ],
      }),
    ).toBe('a,b\n"Box, of ""six""",\n1.5,"x;y"\n');
    expect(() => csvText({ file: 'x.csv', columns: ['a', 'b'], rows: [['one']] })).toThrow('x.csv: 1 cells in one');
  });
});
