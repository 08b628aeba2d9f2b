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
  [['--hue', 'red'], 'There is no option “--hue”.'],
])('report menu-mix %j is wrong use: a sentence and exit code 2', async (words, sentence) => {
  const { code, stdout, stderr } = await command(url, 'report', 'menu-mix', ...words);
  expect([code, stdout, stderr]).toEqual([2, '', `${sentence}\nTry --help.\n`]);
});
