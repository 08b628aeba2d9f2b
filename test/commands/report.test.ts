import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import readWorkbook from 'read-excel-file/node';
import { beforeAll, expect, test } from 'vitest';
import { loadFolder } from '@/lib/changes/load-folder';
import { folder } from '../changes/folders';
import { freshDatabase } from '../fresh-database';
import { command } from './command';

const { db, url } = await freshDatabase();

beforeAll(async () => {
  await loadFolder(
    db,
    folder({
      'recipes.csv': ['recipe,kind,valid_from,section', 'Tart,dish,,Dessert', 'Eclair,dish,,Dessert'],
      'menu.csv': ['item,valid_from,price,tax_pct,tax_included', 'Tart,,11,10,yes', 'Eclair,,6,10,yes'],
      'sales.csv': ['date,item,sold,net_revenue', '2026-10-01,Tart,30,300', '2026-10-01,Eclair,10,54'],
    }),
  );
});

// 30 and 10 of 40 portions, neither costed
test('report menu-mix says which dishes to cost next, as the page does', async () => {
  const { code, stdout } = await command(url, 'report', 'menu-mix', '--month', '2026-10');
  expect(code).toBe(0);
  expect(stdout).toMatch(/^Cost these next: Tart and Eclair are two dishes and 100\.0\s% of portions\.$/m);
});

test.each([
  [
    ['--month', '2026-10', '--from', '2026-10-01', '--to', '2026-11-01'],
    'Either --month, or --from and --to, not both.',
  ],
  [['--month', '2026-10', '--to', '2026-11-01'], 'Either --month, or --from and --to, not both.'],
  [
    ['--from', '2026-10-01'],
    'Days have a beginning and an end: write --from 2026-10-01 --to 2026-11-01, the end excluded.',
  ],
  [['--json', '--csv'], 'One of --json, --csv and --xlsx, not several.'],
  [['--csv', '--xlsx', 'mix.xlsx'], 'One of --json, --csv and --xlsx, not several.'],
  [['--hue', 'red'], 'There is no option “--hue”.'],
])('report menu-mix %j is wrong use: a sentence and exit code 2', async (words, sentence) => {
  const { code, stdout, stderr } = await command(url, 'report', 'menu-mix', ...words);
  expect([code, stdout, stderr]).toEqual([2, '', `${sentence}\nTry --help.\n`]);
});

test('report menu-mix --xlsx FILE writes a workbook, and leaves a file that is there as it is', async () => {
  const file = join(mkdtempSync(join(tmpdir(), 'report-')), 'mix.xlsx');
  const asked = ['menu-mix', '--month', '2026-10', '--xlsx'];
  expect(await command(url, 'report', ...asked, file)).toEqual({ code: 0, stdout: `Wrote ${file}.\n`, stderr: '' });
  const [sheet] = await readWorkbook(file);
  // 300 / 30 and 54 / 10, most sold first, since neither is costed
  expect(sheet?.data.slice(1).map((cells) => [cells[0], cells[2], cells[7]])).toEqual([
    ['Tart', 30, 10],
    ['Eclair', 10, 5.4],
  ]);
  const before = readFileSync(file);
  const again = await command(url, 'report', ...asked, file);
  expect([again.code, again.stderr]).toEqual([1, expect.stringContaining('is there already and was left as it is')]);
  expect(readFileSync(file).equals(before)).toBe(true);
  const nowhere = await command(url, 'report', ...asked, join(file, 'mix.xlsx'));
  expect([nowhere.code, nowhere.stderr]).toEqual([1, expect.stringContaining('cannot be written (ENOTDIR)')]);
});
