import { describe, expect, test } from 'vitest';
import { menuMixShape } from '@/lib/answers/menu-mix-shape';
import { freshDatabase } from '../fresh-database';
import { EIGHT_ITEMS, PUBLISHED_MONTH, publishedFolder, SIX_ITEMS } from '../published-folders';
import { command } from './command';

const { url } = await freshDatabase();

describe.each([EIGHT_ITEMS, SIX_ITEMS])('$venue, loaded as a folder and asked for by command', (menu) => {
  test('load takes every row', async () => {
    const loaded = await command(url, 'load', publishedFolder(menu), '--json');
    expect(loaded.stderr).toBe('');
    expect(loaded.code).toBe(0);
  });

  test('report menu-mix comes back with the classes, shares and thresholds', async () => {
    const asked = ['menu-mix', '--month', PUBLISHED_MONTH, '--venue', menu.venue];
    const report = await command(url, 'report', ...asked, '--json');
    expect(report.code).toBe(0);
    const mix = menuMixShape.parse(JSON.parse(report.stdout));
    expect(Object.fromEntries(mix.items.map((item) => [item.item, item.class]))).toEqual(
      Object.fromEntries(menu.items.map((item) => [item.name, item.class])),
    );
    for (const { name, sharePct, sold } of menu.items) {
      const item = mix.items.find((row) => row.item === name);
      expect(item?.sold).toBe(sold);
      expect(Math.abs((item?.share ?? 0) * 100 - sharePct)).toBeLessThanOrEqual(menu.shareWithin);
    }
    expect((mix.thresholds.popularity ?? 0) * 100).toBeCloseTo(menu.popularityPct, 10);
    expect(Math.abs(Number(mix.thresholds.margin) - menu.meanMargin)).toBeLessThanOrEqual(menu.within);

    const csv = await command(url, 'report', ...asked, '--csv');
    expect(csv.stdout.split('\r\n')[0]).toContain('item,section,sold,comps,share,expected,days_on_sale,net_price');
    expect(csv.stdout.trim().split('\r\n')).toHaveLength(menu.items.length + 1);
  });
});

// Totals derived from the published inputs of the eight-item table: revenue 10,425.95, food cost 3,350.20 (32.1333 %), margin 7,075.75.
test('report menu-mix of the eight items adds up to the derived totals', async () => {
  const { stdout } = await command(
    url,
    'report',
    'menu-mix',
    '--month',
    PUBLISHED_MONTH,
    '--venue',
    EIGHT_ITEMS.venue,
    '--json',
  );
  const { totals } = menuMixShape.parse(JSON.parse(stdout));
  expect(totals.sold).toBe(629);
  expect(Number(totals.revenue)).toBeCloseTo(10425.95, 9);
  expect(Number(totals.plateCost)).toBeCloseTo(3350.2, 9);
  expect(Number(totals.margin)).toBeCloseTo(7075.75, 9);
  expect((totals.foodCostPct ?? 0) * 100).toBeCloseTo(32.1333, 4);
});

test('report says in a sentence what is wrong with a question', async () => {
  const wrong = async (...words: string[]) => {
    const { code, stderr } = await command(url, 'report', ...words);
    expect(stderr).not.toMatch(/\n\s+at /);
    return [code, stderr.split('\n')[0]];
  };
  expect(await wrong('menu-mix', '--month', '2026-13', '--venue', 'Six items')).toEqual([
    2,
    expect.stringContaining('“2026-13” is no month of a year'),
  ]);
  expect(await wrong('menu-mix', '--month', '2026-09')).toEqual([
    2,
    expect.stringContaining('There are several venues'),
  ]);
  expect(await wrong('menu-mix', '--month', '2026-09', '--venue', 'Nowhere')).toEqual([
    1,
    expect.stringContaining('no venue “Nowhere”'),
  ]);
  expect(await wrong('menus', '--month', '2026-09')).toEqual([
    2,
    expect.stringContaining('There is no report “menus”'),
  ]);
  expect(await wrong('menu-mix')).toEqual([2, expect.stringContaining('Which period?')]);
  expect(await wrong('menu-mix', '--month', '2026-09', '--jsn')).toEqual([2, expect.stringContaining('--jsn')]);
  expect(await wrong('menu-mix', '--month', '2026-09', '--venue', 'Six items', '--model', 'other')).toEqual([
    2,
    expect.stringContaining('kasavana-smith'),
  ]);
});
