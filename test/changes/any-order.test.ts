import fc from 'fast-check';
import { expect, test } from 'vitest';
import { loadFolder } from '@/lib/changes/load-folder';
import { freshDatabase } from '../fresh-database';
import { type Files, file, folder } from './folders';
import { revision, stored } from './stored';

const { db } = await freshDatabase();

/** A house in which every kind of file waits for another, names are spelled in several ways, some rows can never be taken. */
const HOUSE: Files = {
  'venue.csv': [
    'setting,value',
    'currency,EUR',
    'time_zone,Europe/Dublin',
    'business_day_ends,05:00',
    'kitchen_measures,us',
    'colour,red',
  ],
  'ingredients.csv': [
    'ingredient;measure;usable_yield_pct;grams_each;valid_from',
    'Plums;g;91,5;60;',
    'Plums;g;90;60;2026-06-01',
    'double cream;ml;;;',
    'Vanilla;each;;;',
    'Sweet wine;ml;;;',
  ],
  'measures.csv': ['ingredient,name,quantity,unit', 'VANILLA,pod,3,g', 'Saffron,thread,0.01,g'],
  'suppliers.csv': ['supplier,minimum_order', 'Bay Dairy,40'],
  'offers.csv': [
    'supplier,code,ingredient,pack_count,pack_size,pack_unit,chosen',
    'BAY dairy,A1,Double Cream,1,2,l,yes',
    'Dunlin Fruit,P,plums,1,5,kg,',
    'Dunlin fruit,S,Saffron,1,1,g,',
  ],
  'offer_prices.csv': [
    'supplier,code,valid_from,price,kind',
    'Bay Dairy,a1,2026-01-01,9.40,list',
    'Dunlin Fruit,P,2026-01-01,11,agreed',
    'Dunlin Fruit,P,01.06.2026,12,agreed',
    'Dunlin Fruit,S,2026-01-01,6,list',
  ],
  'recipes.csv': [
    'recipe,kind,valid_from,yield_quantity,yield_unit',
    'Custard,component,,1,l',
    'Plum Tart,dish,,,',
    'Plum tart,dish,2026-06-01,,',
    'Tasting menu,set_menu,,,',
  ],
  'recipe_lines.csv': [
    'recipe,valid_from,item,quantity,unit',
    'custard,,Double cream,900,ml',
    'custard,,VANILLA,2,pod',
    'Plum tart,,Plums,250,g',
    'Plum tart,,Custard,60,ml',
    'Plum tart,2026-06-01,Plums,240,g',
    'Plum tart,2026-06-01,Gold leaf,1,sheet',
    'Plum tart,2026-06-01,Custard,-60,ml',
    'Plum tart,2026-07-01,Custard,60,ml',
    'Tasting menu,,Plum tart,1,each',
  ],
  'menu.csv': [
    'item,channel,valid_from,price,tax_pct,tax_included',
    'plum tart,,2026-01-01,12.50,10,yes',
    'Posset,,2026-01-01,8,10,yes',
    'SWEET WINE,,2026-01-01,6,23,yes',
  ],
  'sales.csv': [
    'sold_at,item,sold,gross_revenue,tax_pct',
    '2026-10-01T21:00,Plum tart,2,25,10',
    '2026-10-02T04:30,plum tart,1,12.50,10',
    '2026-10-02T04:30Z,Posset,1,8,10',
    '2026-10-02T20:00,Sweet wine,3,18,23',
    '2026-10-02T20:00,Eclair,1,8,10',
    '2026-10-03T20:00,Posset,some,8,10',
  ],
  'covers.csv': ['date,covers', '2026-10-01,20', '2026-10-02,21'],
};
const NAMES = Object.keys(HOUSE);
const soak = process.env.SOAK ? 200 : 8;

let made = 0;

/** What is stored after the files were loaded one by one in an order. */
async function loadedIn(order: readonly string[], files: Files = HOUSE) {
  const venue = `Order ${made++}`;
  for (const name of order) await loadFolder(db, file(name, files[name] ?? ''), { venue });
  return { venue, facts: await stored(db, venue) };
}

test('loadFolder(db, folder) stores the same as its files one by one, in any order, and the second time nothing', async () => {
  const whole = 'Whole';
  const report = await loadFolder(db, folder(HOUSE), { venue: whole });
  const facts = await stored(db, whole);
  // nothing of it is lost on the way: what is refused is waiting
  expect(report.files.reduce((sum, { refusedRows }) => sum + refusedRows, 0)).toBe(facts.waiting?.length);
  expect(facts.waiting?.map(({ kind, rule }) => `${kind} ${rule}`)).toEqual([
    'measures unknown-ingredient',
    'offer_prices not-a-date',
    'offer_prices unknown-offer',
    'offers unknown-ingredient',
    'recipe_lines unknown-item',
    'recipe_lines not-positive',
    'recipe_lines unknown-recipe',
    'sales unknown-item',
    'sales not-a-number',
    'venue unknown-setting',
  ]);
  // 04:30 belongs to the day before; 04:30 UTC is half past five in Dublin
  expect(facts.sales?.map(({ day, item, sold }) => [day, item, sold])).toEqual([
    ['2026-10-01', 'plum tart', 3],
    ['2026-10-02', 'posset', 1],
    ['2026-10-02', 'sweet wine', 3],
    ['2026-10-03', null, null],
  ]);
  const orders = fc.shuffledSubarray(NAMES, { minLength: NAMES.length });
  await fc.assert(
    fc.asyncProperty(orders, async (order) => {
      const { venue, facts: inOrder } = await loadedIn(order);
      expect(inOrder).toEqual(facts);
      const at = await revision(db, venue);
      const again = await loadFolder(db, folder(HOUSE), { venue });
      expect(again.files.every(({ taken, changed, withdrawn }) => taken + changed + withdrawn === 0)).toBe(true);
      expect(await revision(db, venue)).toBe(at);
      expect(await stored(db, venue)).toEqual(facts);
    }),
    { numRuns: soak, examples: [[[...NAMES].reverse()]] },
  );
}, 1_200_000);

test('loadFolder of two exports of one source, in their order, stores the same whenever the other files come', async () => {
  const header = 'date,item,sold,net_revenue';
  const files: Files = {
    'menu.csv': HOUSE['menu.csv'] ?? '',
    'recipes.csv': ['recipe,kind,valid_from', 'Eclair,dish,', 'Trifle,dish,'],
    'sales-1.csv': [
      header,
      '2026-10-01,Posset,2,14',
      '2026-10-01,Eclair,1,8',
      '2026-10-01,Trifle,4,28',
      '2026-10-02,Eclair,1,8',
      '2026-10-02,Posset,5,35',
    ],
    'sales-2.csv': [
      header,
      '2026-10-01,Plum tart,2,22',
      '2026-10-01,Eclair,3,24',
      '2026-10-02,Posset,6,42',
      '2026-10-02,Trifle,1,7',
      '2026-10-03,Nobody knows,1,1',
    ],
    'sales-3.csv': [header, '2026-10-02,Trifle,2,14', '2026-10-02,Nobody knows,1,1', '2026-10-03,Posset,1,7'],
  };
  const names = Object.keys(files);
  const { facts } = await loadedIn(names, files);
  const orders = fc
    .shuffledSubarray(names, { minLength: names.length })
    .filter((order) => order.filter((name) => name.startsWith('sales')).join() === names.slice(2).join());
  await fc.assert(
    fc.asyncProperty(orders, async (order) => {
      expect((await loadedIn(order, files)).facts).toEqual(facts);
    }),
    { numRuns: Math.min(20, soak) },
  );
}, 1_200_000);

test('loadFolder of any exports of one source stores the same whether names are known before, between or after them', async () => {
  const row = fc
    .record({
      date: fc.constantFrom('2026-10-01', '2026-10-02', '2026-10-01', '2026-10-02', '1/10/2026'),
      item: fc.constantFrom('Posset', 'Eclair', 'Plum tart', 'Nobody knows'),
      sold: fc.constantFrom('1', '2', '3', '1', '2', '3', 'some'),
    })
    .map(({ date, item, sold }) => `${date},${item},${sold}`);
  const exports = fc.array(fc.uniqueArray(row, { minLength: 1, maxLength: 4 }), { minLength: 2, maxLength: 4 });
  await fc.assert(
    fc.asyncProperty(exports, fc.nat(4), fc.nat(4), async (each, menuAt, recipesAt) => {
      const files: Record<string, Files[string]> = {
        'menu.csv': HOUSE['menu.csv'] ?? '',
        'recipes.csv': ['recipe,kind,valid_from', 'Eclair,dish,', 'Plum tart,dish,'],
      };
      const names = each.map((rows, place) => {
        files[`sales-${place}.csv`] = ['date,item,sold', ...rows];
        return `sales-${place}.csv`;
      });
      const order = [...names];
      order.splice(Math.min(menuAt, order.length), 0, 'menu.csv');
      order.splice(Math.min(recipesAt, order.length), 0, 'recipes.csv');
      const { facts } = await loadedIn(['menu.csv', 'recipes.csv', ...names], files);
      const { venue, facts: other } = await loadedIn(order, files);
      expect(other).toEqual(facts);
      const at = await revision(db, venue);
      const last = names.at(-1) ?? '';
      await loadFolder(db, file(last, files[last] ?? ''), { venue });
      expect(await revision(db, venue)).toBe(at);
      expect(await stored(db, venue)).toEqual(facts);
    }),
    { numRuns: soak * 2 },
  );
}, 1_200_000);
