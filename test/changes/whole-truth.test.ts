import { expect, test } from 'vitest';
import { loadFolder } from '@/lib/changes/load-folder';
import { parseDay } from '@/lib/core/days';
import { freshDatabase } from '../fresh-database';
import { file, folder } from './folders';
import { close, revision, stored } from './stored';

const { db } = await freshDatabase();

const MENU = ['item,valid_from,price,tax_pct,tax_included', 'Tart,,11,10,yes', 'Brownie,,9,10,yes', 'Posset,,8,10,yes'];
const SALES = 'date,item,sold,net_revenue';

/** Loads one file of a kind into a venue. */
async function load(venue: string, kind: string, lines: readonly string[], options = {}) {
  const report = await loadFolder(db, file(`${kind}.csv`, lines), { venue, ...options });
  const [loaded] = report.files;
  if (!loaded) throw new Error(report.wrongUse ?? 'no file');
  expect(loaded.read).toBe(loaded.taken + loaded.changed + loaded.unchanged + loaded.refusedRows);
  return loaded;
}

const counts = ({ taken, changed, unchanged, refusedRows, withdrawn }: Awaited<ReturnType<typeof load>>) => [
  taken,
  changed,
  unchanged,
  refusedRows,
  withdrawn,
];
const sales = async (venue: string) =>
  (await stored(db, venue)).sales
    ?.filter(({ item }) => item)
    .map((sale) => `${sale.source} ${sale.day} ${sale.item} ${sale.sold} ${sale.net}${sale.carried ? ' carried' : ''}`);

test('loadFolder of sales: identical rows inside one file add up', async () => {
  await load('Sums', 'menu', MENU);
  expect(
    counts(
      await load('Sums', 'sales', [SALES, '2026-10-01,Tart,2,20', '2026-10-01,tart ,2,20', '2026-10-01,TART,1,9.5']),
    ),
  ).toEqual([3, 0, 0, 0, 0]);
  expect(await sales('Sums')).toEqual(['book 2026-10-01 tart 5 49.5']);
});

test('loadFolder of sales: a file is the whole truth for the days in it, and for no other', async () => {
  await load('Days', 'menu', MENU);
  await load('Days', 'sales', [
    SALES,
    '2026-10-01,Tart,5,50',
    '2026-10-01,Brownie,3,27',
    '2026-10-02,Tart,4,40',
    '2026-10-03,Tart,1,10',
  ]);
  const later = [SALES, '2026-10-01,Tart,6,60', '2026-10-02,Tart,4,40', '2026-10-02,Posset,2,14'];
  expect(counts(await load('Days', 'sales', later))).toEqual([1, 1, 1, 0, 1]);
  expect(await sales('Days')).toEqual([
    'book 2026-10-01 tart 6 60',
    'book 2026-10-02 posset 2 14',
    'book 2026-10-02 tart 4 40',
    'book 2026-10-03 tart 1 10',
  ]);
  const at = await revision(db, 'Days');
  expect(counts(await load('Days', 'sales', later))).toEqual([0, 0, 3, 0, 0]);
  expect(await revision(db, 'Days')).toBe(at);
});

test('loadFolder of sales: sources stand beside each other', async () => {
  await load('Sources', 'menu', MENU);
  await load('Sources', 'sales', [SALES, '2026-10-01,Tart,5,50'], { source: 'till' });
  await load('Sources', 'sales', [SALES, '2026-10-01,Tart,1,10'], { source: 'Quote\'s "door" \\ list' });
  await load('Sources', 'sales', [SALES, '2026-10-01,Brownie,2,18'], { source: 'till' });
  expect(await sales('Sources')).toEqual([
    'Quote\'s "door" \\ list 2026-10-01 tart 1 10',
    'till 2026-10-01 brownie 2 18',
  ]);
});

test('loadFolder of sales with days: the days are spoken for though no row is in them, and rows outside are refused', async () => {
  await load('Range', 'menu', MENU);
  await load('Range', 'sales', [SALES, '2026-10-01,Tart,5,50', '2026-10-02,Tart,4,40', '2026-10-04,Tart,1,10']);
  const days = { from: parseDay('2026-10-01'), to: parseDay('2026-10-03') };
  const one = [SALES, '2026-10-01,Tart,5,50', '2026-10-04,Tart,9,90'];
  const report = await load('Range', 'sales', one, { days });
  expect(counts(report)).toEqual([0, 0, 1, 1, 1]);
  expect(report.refused[0]).toMatchObject({ line: 3, column: 'date', value: '2026-10-04' });
  expect(await sales('Range')).toEqual(['book 2026-10-01 tart 5 50', 'book 2026-10-04 tart 1 10']);
  const at = await revision(db, 'Range');
  expect(counts(await load('Range', 'sales', one, { days }))).toEqual([0, 0, 1, 1, 0]);
  expect(await revision(db, 'Range')).toBe(at);
  expect((await stored(db, 'Range')).waiting).toHaveLength(1);
  expect(counts(await load('Range', 'sales', [SALES], { days }))).toEqual([0, 0, 0, 0, 1]);
  expect(await sales('Range')).toEqual(['book 2026-10-04 tart 1 10']);
});

test('loadFolder of sales: a day with a refused row withdraws nothing, until it is mended', async () => {
  await load('Refused', 'menu', MENU);
  await load('Refused', 'sales', [SALES, '2026-10-01,Tart,5,50', '2026-10-01,Brownie,3,27', '2026-10-02,Tart,4,40']);
  const bad = [SALES, '2026-10-01,Tart,6,60', '2026-10-01,Posset,some,14', '2026-10-02,Brownie,1,9'];
  expect(counts(await load('Refused', 'sales', bad))).toEqual([1, 1, 0, 1, 1]);
  expect(await sales('Refused')).toEqual([
    'book 2026-10-01 brownie 3 27 carried',
    'book 2026-10-01 tart 6 60',
    'book 2026-10-02 brownie 1 9',
  ]);
  const at = await revision(db, 'Refused');
  expect(counts(await load('Refused', 'sales', bad))).toEqual([0, 0, 2, 1, 0]);
  expect(await revision(db, 'Refused')).toBe(at);
  expect((await stored(db, 'Refused')).waiting).toMatchObject([{ line: 3, day: '2026-10-01', rule: 'not-a-number' }]);
  const mended = [SALES, '2026-10-01,Tart,6,60', '2026-10-01,Posset,2,14'];
  expect(counts(await load('Refused', 'sales', mended))).toEqual([1, 0, 1, 0, 1]);
  expect(await sales('Refused')).toEqual([
    'book 2026-10-01 posset 2 14',
    'book 2026-10-01 tart 6 60',
    'book 2026-10-02 brownie 1 9',
  ]);
  expect((await stored(db, 'Refused')).waiting).toEqual([]);
});

test('loadFolder of sales: a row whose date cannot be read stops every withdrawal by that file', async () => {
  await load('Undated', 'menu', MENU);
  await load('Undated', 'sales', [SALES, '2026-10-01,Tart,5,50', '2026-10-01,Brownie,3,27', '2026-10-02,Brownie,4,40']);
  const bad = [SALES, '2026-10-01,Tart,6,60', '2/10/2026,Brownie,3,27', '2026-10-02,Tart,1,9'];
  expect(counts(await load('Undated', 'sales', bad))).toEqual([1, 1, 0, 1, 0]);
  expect(await sales('Undated')).toEqual([
    'book 2026-10-01 brownie 3 27 carried',
    'book 2026-10-01 tart 6 60',
    'book 2026-10-02 brownie 4 40 carried',
    'book 2026-10-02 tart 1 9',
  ]);
  const at = await revision(db, 'Undated');
  await load('Undated', 'sales', bad);
  expect(await revision(db, 'Undated')).toBe(at);
  expect((await stored(db, 'Undated')).waiting).toHaveLength(1);
  const mended = [SALES, '2026-10-01,Tart,6,60', '2026-10-02,Brownie,3,27', '2026-10-02,Tart,1,9'];
  expect(counts(await load('Undated', 'sales', mended))).toEqual([0, 1, 2, 0, 1]);
  expect(await sales('Undated')).toEqual([
    'book 2026-10-01 tart 6 60',
    'book 2026-10-02 brownie 3 27',
    'book 2026-10-02 tart 1 9',
  ]);
  expect((await stored(db, 'Undated')).waiting).toEqual([]); // the same line, all other cells the same
});

test('loadFolder of sales: portions without revenue are counted apart, comps and discounts add up', async () => {
  await load('Parts', 'menu', MENU);
  await load('Parts', 'sales', [
    'date;item;sold;comps;net_revenue;discount;channel',
    '2026-10-01;Tart;2;1;20,50;0,5;',
    '2026-10-01;Tart;3;;;;',
    '2026-10-01;Tart;0;2;;;',
    '2026-10-01;Tart;1;;9;;Takeaway',
  ]);
  expect((await stored(db, 'Parts')).sales).toMatchObject([
    { channel: 'dine_in', rows: 3, sold: 5, comps: 3, net: 20.5, without: 3, discount: 0.5 },
    { channel: 'takeaway', rows: 1, sold: 1, comps: 0, net: 9, without: 0, discount: null },
  ]);
});

test('loadFolder of sales: a name nobody knows waits, and one that is only an ingredient', async () => {
  const venue = 'Unknown';
  await load(venue, 'ingredients', ['ingredient,measure', 'Sweet wine,ml']);
  await load(venue, 'menu', MENU);
  const report = await load(venue, 'sales', [
    SALES,
    '2026-10-01,Tart,2,20',
    '2026-10-01,Sweet wine,1,6',
    '2026-10-01,Eclair,1,8',
  ]);
  expect(counts(report)).toEqual([1, 0, 0, 2, 0]);
  expect(report.refused.map(({ value }) => value)).toEqual(['Sweet wine', 'Eclair']);
  const menu = await load(venue, 'menu', [MENU[0] ?? '', 'sweet WINE,,7,10,yes']);
  expect(menu.unlocked).toBe(1);
  const recipes = await load(venue, 'recipes', ['recipe,kind,valid_from', 'Eclair,dish,']);
  expect(recipes.unlocked).toBe(1);
  expect(await sales(venue)).toEqual([
    'book 2026-10-01 eclair 1 8',
    'book 2026-10-01 sweet wine 1 6',
    'book 2026-10-01 tart 2 20',
  ]);
  expect((await stored(db, venue)).items).toMatchObject([
    { name: 'Brownie' },
    { name: 'Eclair' },
    { name: 'Posset' },
    { kind: 'ingredient', name: 'Sweet wine' },
    { name: 'Tart' },
  ]);
});

test('loadFolder of sales: what a day had carried goes when its last waiting row is taken', async () => {
  const venue = 'Carried';
  await load(venue, 'menu', MENU);
  await load(venue, 'sales', [SALES, '2026-10-01,Tart,5,50', '2026-10-01,Brownie,3,27']);
  await load(venue, 'sales', [SALES, '2026-10-01,Tart,5,50', '2026-10-01,Eclair,2,14']);
  expect(await sales(venue)).toEqual(['book 2026-10-01 brownie 3 27 carried', 'book 2026-10-01 tart 5 50']);
  await load(venue, 'recipes', ['recipe,kind,valid_from', 'Eclair,dish,']);
  expect(await sales(venue)).toEqual(['book 2026-10-01 eclair 2 14', 'book 2026-10-01 tart 5 50']);
});

test('loadFolder of prices: one for each supplier, code, day, kind and minimum', async () => {
  const venue = 'Prices';
  await load(venue, 'ingredients', ['ingredient,measure', 'Cream,ml']);
  await load(venue, 'offers', ['supplier,code,ingredient,pack_count,pack_size,pack_unit', 'Bay,1,Cream,1,2,l']);
  const header = 'supplier,code,valid_from,price,kind,minimum_packs';
  await load(venue, 'offer_prices', [
    header,
    'Bay,1,2026-01-01,5,list,',
    'Bay,1,2026-01-01,4.8,list,10',
    'Bay,1,2026-01-01,5.5,quote,',
    'Bay,1,2026-02-01,5.2,list,',
  ]);
  expect(
    counts(
      await load(venue, 'offer_prices', [
        header,
        'bay,1,2026-01-01,5.10,,',
        'Bay,1,2026-01-01,5.5,QUOTE,',
        'Bay,1,2026-03-01,6,agreed,',
      ]),
    ),
  ).toEqual([1, 1, 1, 0, 0]);
  expect((await stored(db, venue)).prices).toMatchObject(
    [
      { valid_from: '2026-01-01', kind: 'list', minimum_packs: 10, price: 4.8 },
      { valid_from: '2026-01-01', kind: 'list', minimum_packs: null, price: 5.1 },
      { valid_from: '2026-01-01', kind: 'quote', price: 5.5 },
      { valid_from: '2026-02-01', price: 5.2 },
      { valid_from: '2026-03-01', kind: 'agreed', price: 6 },
    ].sort((a, b) =>
      a.valid_from === b.valid_from && a.minimum_packs !== b.minimum_packs ? (a.minimum_packs === null ? -1 : 1) : 0,
    ),
  );
});

test('loadFolder of recipe lines: a file is the whole truth for the versions in it, and for no other', async () => {
  const venue = 'Lines';
  await load(venue, 'ingredients', ['ingredient,measure', 'Plums,g', 'Butter,g', 'Flour,g']);
  await load(venue, 'recipes', ['recipe,kind,valid_from', 'Tart,dish,', 'Tart,dish,2026-05-01', 'Pastry,component,']);
  const header = 'recipe,valid_from,item,quantity,unit,as,note';
  await load(venue, 'recipe_lines', [
    header,
    'Tart,,Plums,250,g,,ripe',
    'Tart,,Butter,20,g,,',
    'Tart,,Flour,30,g,,',
    'Tart,2026-05-01,Plums,200,g,,',
    'Pastry,,Flour,1,kg,,',
  ]);
  const later = [header, 'Tart,,Plums,250.0,g,,ripe', 'tart,,Flour,20,g,,'];
  expect(counts(await load(venue, 'recipe_lines', later))).toEqual([0, 1, 1, 0, 1]);
  expect((await stored(db, venue)).lines).toMatchObject([
    { recipe: 'pastry', position: 1 },
    { recipe: 'tart', valid_from: null, position: 1, item: 'plums', quantity: 250, note: 'ripe' },
    { recipe: 'tart', valid_from: null, position: 2, item: 'flour', quantity: 20 },
    { recipe: 'tart', valid_from: '2026-05-01', position: 1 },
  ]);
  // a column that the file does not have says nothing
  expect(
    counts(
      await load(venue, 'recipe_lines', [
        'recipe,valid_from,item,quantity,unit',
        'Tart,,Plums,250,g',
        'Tart,,Flour,20,g',
      ]),
    ),
  ).toEqual([0, 0, 2, 0, 0]);
  // a line that cannot be taken keeps its place
  const bad = await load(venue, 'recipe_lines', [
    header,
    'Tart,,Plums,250,g,,ripe',
    'Tart,,Flour,none,g,,',
    'Tart,,Butter,5,g,,',
  ]);
  expect(counts(bad)).toEqual([1, 0, 1, 1, 1]);
  const { lines, waiting } = await stored(db, venue);
  expect(
    lines
      ?.filter(({ recipe, valid_from }) => recipe === 'tart' && valid_from === null)
      .map(({ position, item }) => [position, item]),
  ).toEqual([
    [1, 'plums'],
    [3, 'butter'],
  ]);
  expect(waiting).toMatchObject([{ line: 3, row_key: 'tart|', rule: 'not-a-number' }]);
});

test('loadFolder of names: one namespace, menu names become what other files say they are', async () => {
  const venue = 'Names';
  await load(venue, 'menu', [MENU[0] ?? '', 'plum TART,,11,10,yes', 'Sweet wine,,7,10,yes', 'Mystery,,5,10,yes']);
  await load(venue, 'recipes', ['recipe,kind,valid_from', 'Plum tart,component,']);
  await load(venue, 'ingredients', ['ingredient,measure', 'Sweet wine,ml', 'Plums,g']);
  expect((await stored(db, venue)).items).toMatchObject([
    { kind: 'dish', name: 'Mystery' },
    { kind: 'component', name: 'Plum tart' },
    { kind: 'ingredient', name: 'Plums' },
    { kind: 'ingredient', name: 'Sweet wine' },
  ]);
  const clash = await load(venue, 'ingredients', ['ingredient,measure', 'PLUM tart,g']);
  expect(clash.refused.map(({ why }) => why)).toEqual([
    '“PLUM tart” is already the name of a component. A name can mean only one thing: rename one of the two.',
  ]);
  const other = await load(venue, 'recipes', [
    'recipe,kind,valid_from',
    'Plums,component,',
    'Plum tart,dish,2026-01-01',
    'Plum tart,component,2026-02-01',
  ]);
  expect(other.refused.map(({ line, column }) => [line, column])).toEqual([
    [2, 'recipe'],
    [4, 'kind'],
  ]);
});

test('loadFolder of ingredients: all dates share one measure', async () => {
  const venue = 'Measure';
  await load(venue, 'ingredients', ['ingredient,measure,valid_from', 'Cream,ml,', 'Cream,ml,2026-05-01']);
  expect(
    counts(
      await load(venue, 'ingredients', [
        'ingredient,measure,valid_from',
        'Cream,g,2026-06-01',
        'Milk,ml,',
        'Milk,g,2026-01-01',
      ]),
    ),
  ).toEqual([1, 0, 0, 2, 0]);
  // a file that states them all may change it
  expect(
    counts(await load(venue, 'ingredients', ['ingredient,measure,valid_from', 'Cream,g,', 'Cream,g,2026-05-01'])),
  ).toEqual([0, 2, 0, 0, 0]);
});

test('loadFolder of offers: who is chosen, and from when', async () => {
  const venue = 'Chosen';
  await load(venue, 'ingredients', ['ingredient,measure', 'Cream,ml']);
  const header = 'supplier,code,ingredient,pack_count,pack_size,pack_unit,chosen,chosen_from';
  const first = await load(venue, 'offers', [
    header,
    'Bay,1,Cream,1,2,l,yes,',
    'Dune,9,Cream,1,1,l,yes,2026-05-01',
    'Dune,8,Cream,1,1,l,yes,2026-05-01',
  ]);
  expect(counts(first)).toEqual([2, 0, 0, 1, 0]);
  const choices = async () => (await stored(db, venue)).choices?.map(({ code, valid_from }) => [code, valid_from]);
  expect(await choices()).toEqual([
    ['1', null],
    ['9', '2026-05-01'],
  ]);
  // a file that does not say who is chosen leaves it; one that does states all the days of its offers
  expect(
    counts(
      await load(venue, 'offers', ['supplier,code,ingredient,pack_count,pack_size,pack_unit', 'Bay,1,Cream,1,2,l']),
    ),
  ).toEqual([0, 0, 1, 0, 0]);
  expect(
    counts(await load(venue, 'offers', [header, 'Bay,1,Cream,1,2,l,yes,2026-05-01', 'Dune,9,Cream,1,1,l,no,'])),
  ).toEqual([0, 1, 1, 0, 0]);
  expect(await choices()).toEqual([['1', '2026-05-01']]);
});

test('loadFolder refuses what would change a closed day, row by row, and takes the rest', async () => {
  const venue = 'Closed';
  await load(venue, 'menu', MENU);
  await load(venue, 'recipes', ['recipe,kind,valid_from', 'Tart,dish,2026-09-01', 'Tart,dish,2026-10-05']);
  await load(venue, 'ingredients', ['ingredient,measure', 'Plums,g']);
  const header = 'recipe,valid_from,item,quantity,unit';
  await load(venue, 'recipe_lines', [header, 'Tart,2026-09-01,Plums,1,g']);
  await load(venue, 'sales', [SALES, '2026-09-30,Tart,5,50', '2026-10-01,Tart,4,40']);
  await load(venue, 'covers', ['date,covers', '2026-09-30,30']);
  await close(db, venue, '2026-09-30');
  const before = await stored(db, venue);

  const late = [
    SALES,
    '2026-09-30,Tart,6,60',
    '2026-09-30,Brownie,1,9',
    '2026-10-01,Tart,5,50',
    '2026-09-29,Tart,1,10',
  ];
  const report = await load(venue, 'sales', late);
  expect(counts(report)).toEqual([0, 1, 0, 3, 0]);
  expect(report.refused[0]).toMatchObject({
    line: 2,
    column: 'date',
    value: '2026-09-30',
    why: expect.stringContaining('closed through 2026-09-30'),
  });
  expect(await sales(venue)).toEqual(['book 2026-09-30 tart 5 50', 'book 2026-10-01 tart 5 50']);
  const at = await revision(db, venue);
  expect(counts(await load(venue, 'sales', late))).toEqual([0, 0, 1, 3, 0]);
  expect(await revision(db, venue)).toBe(at);
  // unchanged rows of closed days are no harm
  expect(counts(await load(venue, 'sales', [SALES, '2026-09-30,Tart,5,50']))).toEqual([0, 0, 1, 0, 0]);

  expect(
    counts(
      await load(venue, 'menu', [MENU[0] ?? '', 'Tart,,11,10,yes', 'Brownie,,10,10,yes', 'Tart,2026-10-09,12,10,yes']),
    ),
  ).toEqual([1, 0, 1, 1, 0]);
  expect(
    counts(await load(venue, 'recipe_lines', [header, 'Tart,2026-09-01,Plums,2,g', 'Tart,2026-10-05,Plums,2,g'])),
  ).toEqual([1, 0, 0, 1, 0]);
  expect(counts(await load(venue, 'covers', ['date,covers', '2026-09-30,31', '2026-10-01,22']))).toEqual([
    1, 0, 0, 1, 0,
  ]);
  const days = { from: parseDay('2026-09-30'), to: parseDay('2026-10-02') };
  const whole = await load(venue, 'sales', [SALES], { days });
  expect(whole).toMatchObject({
    refusedWhole: true,
    refused: [{ why: expect.stringContaining('closed through 2026-09-30') }],
  });
  const after = await stored(db, venue);
  expect(after.lines?.filter(({ valid_from }) => valid_from === '2026-09-01')).toEqual(before.lines);
  // a version that was only kept from changing does not count as one with a refused line
  expect(after.waiting?.find(({ kind }) => kind === 'recipe_lines')).toMatchObject({
    row_key: 'closed|tart|2026-09-01',
    rule: 'closed',
  });
});

test('loadFolder of covers: by source and day', async () => {
  const venue = 'Covers';
  await load(venue, 'covers', ['date,covers,till_total', '2026-10-01,38,512.50', '2026-10-02,22,']);
  expect(
    counts(
      await load(venue, 'covers', [
        'date,covers,till_total',
        '2026-10-02,24,300',
        '2026-10-03,7,',
        '2026-10-03,8,',
        '2026-10-01,38,512.5',
      ]),
    ),
  ).toEqual([1, 1, 1, 1, 0]);
  await load(venue, 'covers', ['date,covers', '2026-10-01,4'], { source: 'door' });
  expect((await stored(db, venue)).covers).toMatchObject([
    { source: 'book', day: '2026-10-01', covers: 38, till_total: 512.5 },
    { source: 'book', day: '2026-10-02', covers: 24, till_total: 300 },
    { source: 'book', day: '2026-10-03', covers: 7, till_total: null },
    { source: 'door', day: '2026-10-01', covers: 4 },
  ]);
});

test('loadFolder of venue.csv: settings are stated, changed, and said once', async () => {
  const venue = 'Settings';
  expect(
    counts(
      await load(venue, 'venue', [
        'setting,value',
        'currency,EUR',
        'q_factor_pct,2.5',
        'periods,4-4-5',
        'q_factor_pct,3',
      ]),
    ),
  ).toEqual([3, 0, 0, 1, 0]);
  expect(
    counts(
      await load(venue, 'venue', ['setting,value', 'currency,GBP', 'q_factor_pct,2.50', 'business_day_ends,5:00']),
    ),
  ).toEqual([1, 1, 1, 0, 0]);
  expect((await stored(db, venue)).venue).toMatchObject([
    {
      currency: 'GBP',
      q_factor: 0.025,
      periods: '4-4-5',
      business_day_ends: '05:00:00',
      stated: ['business_day_ends', 'currency', 'periods', 'q_factor_pct'],
    },
  ]);
});

test('loadFolder of venue.csv after sales with time stamps: their days follow the clock as if it had been set before', async () => {
  const venue = 'Clock';
  await load(venue, 'menu', MENU);
  const stamps = [
    'sold_at,item,sold,net_revenue',
    '2026-10-02T04:30,Tart,1,10',
    '2026-10-02T12:00,Tart,2,20',
    '2026-10-02T23:30Z,Brownie,1,9',
    '2026-10-03T04:10,Eclair,1,8',
  ];
  await load(venue, 'sales', stamps);
  expect(await sales(venue)).toEqual(['book 2026-10-02 brownie 1 9', 'book 2026-10-02 tart 3 30']);
  await load(venue, 'venue', ['setting,value', 'business_day_ends,05:00', 'time_zone,Asia/Tokyo']);
  // half past four is before five; 23:30 UTC is half past eight of the next morning in Tokyo
  expect(await sales(venue)).toEqual([
    'book 2026-10-01 tart 1 10',
    'book 2026-10-02 tart 2 20',
    'book 2026-10-03 brownie 1 9',
  ]);
  const after = await stored(db, venue);
  expect(after.waiting).toMatchObject([{ line: 5, day: '2026-10-02', rule: 'unknown-item' }]);
  const at = await revision(db, venue);
  expect(counts(await load(venue, 'sales', stamps))).toEqual([0, 0, 3, 1, 0]);
  expect(await revision(db, venue)).toBe(at);
  expect(await stored(db, venue)).toEqual(after);
});

test('loadFolder twice at once into one venue gives the same as one after the other', async () => {
  const a = folder({
    'menu.csv': MENU,
    'suppliers.csv': ['supplier,minimum_order', 'Bay,10'],
    'sales.csv': [SALES, '2026-10-01,Tart,5,50', '2026-10-02,Tart,1,10'],
  });
  const b = folder({
    'menu.csv': [MENU[0] ?? '', 'Tart,,12,10,yes'],
    'suppliers.csv': ['supplier,minimum_order', 'Bay,20'],
    'sales.csv': [SALES, '2026-10-01,Tart,6,60', '2026-10-03,Tart,1,10'],
  });
  await loadFolder(db, a, { venue: 'A then B' });
  await loadFolder(db, b, { venue: 'A then B' });
  await loadFolder(db, b, { venue: 'B then A' });
  await loadFolder(db, a, { venue: 'B then A' });
  const either = [await stored(db, 'A then B'), await stored(db, 'B then A')];
  for (const venue of ['At once 1', 'At once 2', 'At once 3']) {
    await Promise.all([loadFolder(db, a, { venue }), loadFolder(db, b, { venue }), loadFolder(db, a, { venue })]);
    const together = await stored(db, venue);
    expect(either).toContainEqual(together);
  }
});
