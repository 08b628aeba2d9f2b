import { expect, test } from 'vitest';
import { loadFolder } from '@/lib/changes/load-folder';
import { freshDatabase } from '../fresh-database';
import { everythingStored } from './everything-stored';
import { type Files, file, folder } from './folders';
import { close, revision } from './stored';

const { db } = await freshDatabase();

const HOUSE: Files = {
  'ingredients.csv': ['ingredient,measure', 'Cream,ml', 'Plums,g', 'Eggs,each'],
  'offers.csv': [
    'supplier,code,ingredient,pack_count,pack_size,pack_unit',
    'Bay Dairy,CR,Cream,1,2,l',
    'Bay Dairy,EG,Eggs,1,30,each',
    'Dunlin Fruit,PL,Plums,1,5,kg',
  ],
  'recipes.csv': ['recipe,kind,valid_from', 'Custard,component,', 'Tart,dish,'],
};
const INVOICE = 'date,supplier,invoice,kind,code,packs,amount';
const MOVE = 'date,item,quantity,unit,reason';
const COUNT = 'date,item,part,quantity,unit,place';

let made = 0;

/** A venue in which the files of the house were loaded, and how to load one more into it. */
async function house(files: Files = HOUSE) {
  const venue = `House ${made++}`;
  if (Object.keys(files).length > 0) await loadFolder(db, folder(files), { venue });
  const load = async (name: string, lines: readonly string[], options = {}) => {
    const { files: reports } = await loadFolder(db, file(name, lines), { venue, ...options });
    const [report] = reports;
    if (!report) throw new Error(`nothing was loaded of ${name}`);
    const { read, taken, changed, unchanged, refusedRows, withdrawn, unlocked } = report;
    expect(read).toBe(taken + changed + unchanged + refusedRows);
    return { taken, changed, unchanged, refused: refusedRows, withdrawn, unlocked, why: report.refused[0]?.why };
  };
  return { venue, load };
}

const counts = (taken: number, changed: number, unchanged: number, refused = 0, withdrawn = 0) => ({
  taken,
  changed,
  unchanged,
  refused,
  withdrawn,
});

async function purchases(venue: string) {
  const { purchases: lines } = await everythingStored(db, venue);
  return lines?.map(({ invoice, kind, code, packs, amount, line }) =>
    [invoice, kind, code, packs, amount, Number(line) < 0 ? 'carried' : ''].join(' ').trim(),
  );
}

async function moves(venue: string) {
  const { moves: lines } = await everythingStored(db, venue);
  return lines?.map(({ source, day, item, quantity, reason }) => [source, day, item, quantity, reason].join(' '));
}

test('loadFolder of purchases: an invoice is told whole, whoever tells it; other invoices stay', async () => {
  const { venue, load } = await house();
  const first = [
    INVOICE,
    '2026-10-02,Bay Dairy,B1,goods,CR,4,31.20',
    '2026-10-02,Bay Dairy,B1,goods,EG,1,9',
    '2026-10-02,Bay Dairy,B1,deposit,,,3.50',
    '2026-10-03,Dunlin Fruit,B1,goods,PL,2,22',
    '2026-10-05,Bay Dairy,,goods,CR,3,',
    '2026-10-06,Bay Dairy,,goods,CR,2,',
  ];
  expect(await load('purchases.csv', first)).toMatchObject(counts(6, 0, 0));
  const at = await revision(db, venue);
  expect(await load('purchases.csv', first, { source: 'accounts' })).toMatchObject(counts(0, 0, 6));
  expect(await revision(db, venue)).toBe(at);
  const second = [
    INVOICE,
    '2026-10-02,BAY dairy,b1,goods,cr,4,31.20',
    '2026-10-02,Bay Dairy,B1,goods,EG,2,18',
    '2026-10-02,Bay Dairy,B1,freight,,,6',
    '2026-10-05,Bay Dairy,,goods,CR,3,',
  ];
  expect(await load('purchases.csv', second, { source: 'accounts' })).toMatchObject(counts(1, 2, 1, 0, 1));
  expect(await purchases(venue)).toEqual([
    'b1 goods CR 4 31.2',
    'B1 goods EG 2 18',
    'B1 freight   6',
    'goods CR 3',
    'goods CR 2',
    'B1 goods PL 2 22',
  ]);
});

test('loadFolder of purchases: identical lines of one invoice are two deliveries of the same, and a supplier named only there is made', async () => {
  const { venue, load } = await house();
  const lines = [INVOICE, '2026-10-02,Bay Dairy,B1,goods,CR,1,8', '2026-10-02,Bay Dairy,B1,goods,CR,1,8'];
  expect(await load('purchases.csv', lines)).toMatchObject(counts(2, 0, 0));
  expect(await load('purchases.csv', lines)).toMatchObject(counts(0, 0, 2));
  expect(await load('purchases.csv', lines.slice(0, 2))).toMatchObject(counts(0, 0, 1, 0, 1));
  await load('purchases.csv', [INVOICE, '2026-10-02,Ice Works,I1,non_food,,,12']);
  const { suppliers } = await everythingStored(db, venue);
  expect(suppliers?.map(({ name }) => name)).toEqual(['Bay Dairy', 'Dunlin Fruit', 'Ice Works']);
});

test('loadFolder of purchases: an invoice with a refused row withdraws nothing until that row is taken', async () => {
  const { venue, load } = await house();
  const b1 = (...rows: string[]) => [INVOICE, ...rows.map((row) => `2026-10-02,Bay Dairy,B1,${row}`)];
  await load('purchases.csv', b1('goods,CR,4,31.20', 'goods,EG,1,9', 'deposit,,,3.50'));
  const bad = b1('goods,CR,5,39', 'goods,SU,1,7');
  expect(await load('purchases.csv', bad)).toMatchObject({
    ...counts(0, 1, 0, 1),
    why: 'Bay Dairy has no offer with the code “SU” yet. Add it to offers.csv, or correct the code; this row waits until then.',
  });
  const carried = ['B1 deposit   3.5 carried', 'B1 goods EG 1 9 carried', 'B1 goods CR 5 39'];
  expect(await purchases(venue)).toEqual(carried);
  const at = await revision(db, venue);
  expect(await load('purchases.csv', bad)).toMatchObject(counts(0, 0, 1, 1));
  expect(await revision(db, venue)).toBe(at);
  expect(await purchases(venue)).toEqual(carried);
  await load('ingredients.csv', ['ingredient,measure', 'Sugar,g']);
  const offer = ['supplier,code,ingredient,pack_count,pack_size,pack_unit', 'Bay Dairy,SU,Sugar,1,5,kg'];
  expect(await load('offers.csv', offer)).toMatchObject({ unlocked: 1 });
  expect(await purchases(venue)).toEqual(['B1 goods CR 5 39', 'B1 goods SU 1 7']);
  expect((await everythingStored(db, venue)).waiting).toEqual([]);
});

test('loadFolder of purchases: a row without an invoice or a day that can be read stops every withdrawal of its file', async () => {
  const { venue, load } = await house();
  await load('purchases.csv', [
    INVOICE,
    '2026-10-02,Bay Dairy,B1,goods,CR,4,31.20',
    '2026-10-02,Bay Dairy,B1,goods,EG,1,9',
  ]);
  const unplaced = [INVOICE, '2026-10-02,Bay Dairy,B1,goods,CR,4,31.20', '2.10.2026,Bay Dairy,,goods,EG,1,'];
  expect(await load('purchases.csv', unplaced)).toMatchObject(counts(0, 0, 1, 1));
  expect(await purchases(venue)).toEqual(['B1 goods EG 1 9 carried', 'B1 goods CR 4 31.2']);
  const mended = [...unplaced.slice(0, 2), '2026-10-02,Bay Dairy,,goods,EG,1,'];
  expect(await load('purchases.csv', mended)).toMatchObject(counts(1, 0, 1, 0, 1));
  expect(await purchases(venue)).toEqual(['B1 goods CR 4 31.2', 'goods EG 1']);
});

test('loadFolder of moves: whole truth for a source and day', async () => {
  const { venue, load } = await house();
  const first = [
    MOVE,
    '2026-10-01,Tart,2,each,staff_food',
    '2026-10-01,Cream,200,ml,spoiled',
    '2026-10-02,Tart,1,each,broken',
  ];
  expect(await load('moves.csv', first)).toMatchObject(counts(3, 0, 0));
  expect(await load('moves.csv', first)).toMatchObject(counts(0, 0, 3));
  expect(await load('moves.csv', [MOVE, '2026-10-01,tart,3,each,Staff food'])).toMatchObject(counts(0, 1, 0, 0, 1));
  await load('moves.csv', [MOVE, '2026-10-01,Tart,1,each,tasting'], { source: 'kitchen' });
  expect(await moves(venue)).toEqual([
    'book 2026-10-01 tart 3 staff_food',
    'book 2026-10-02 tart 1 broken',
    'kitchen 2026-10-01 tart 1 tasting',
  ]);
  const unknown = [MOVE, '2026-10-01,Tart,3,each,staff_food', '2026-10-01,Nougat,1,each,broken'];
  expect(await load('moves.csv', unknown, { source: 'kitchen' })).toMatchObject(counts(1, 0, 0, 1));
  expect((await moves(venue))?.filter((move) => move.startsWith('kitchen'))).toEqual([
    'kitchen 2026-10-01 tart 1 tasting',
    'kitchen 2026-10-01 tart 3 staff_food',
  ]);
  const menu = ['item,valid_from,price,tax_pct,tax_included', 'Nougat,2026-01-01,3,10,yes'];
  expect(await load('menu.csv', menu)).toMatchObject({ unlocked: 1 });
  expect((await moves(venue))?.filter((move) => move.startsWith('kitchen'))).toEqual([
    'kitchen 2026-10-01 tart 3 staff_food',
    'kitchen 2026-10-01 nougat 1 broken',
  ]);
});

test('loadFolder of counts: each day, item, part and place by itself; only what is bought or made in batches is counted', async () => {
  const { venue, load } = await house();
  const first = [
    COUNT,
    '2026-09-30,Cream,,4,tub,Walk-in',
    '2026-10-31,Cream,,3,tub,Walk-in',
    '2026-10-31,Cream,,1,tub,Fridge',
    '2026-10-31,Eggs,Yolk,400,g,Fridge',
    '2026-10-31,Custard,,900,g,',
    '2026-10-31,Tart,,2,each,',
    '2026-10-31,Nougat,,2,each,',
  ];
  expect(await load('counts.csv', first)).toMatchObject({
    ...counts(5, 0, 0, 2),
    why: '“Tart” is a dish, and only ingredients and components are counted. Name what it is made of, or add it to recipes.csv as a component; this row waits until then.',
  });
  const again = [COUNT, '2026-10-31,CREAM,,2.5,tub,walk-in', '2026-10-31,eggs,yolk,400,g,fridge'];
  expect(await load('counts.csv', again, { source: 'other' })).toMatchObject(counts(0, 2, 0, 0, 0));
  expect(
    await load('counts.csv', [COUNT, '2026-10-31,Cream,,2,tub,Fridge', '2026-10-31,Cream,,3,tub,Fridge']),
  ).toMatchObject({
    ...counts(0, 1, 0, 1),
    why: 'Line 2 already says something else about the same thing. Keep one of the two lines.',
  });
  expect(await load('recipes.csv', ['recipe,kind,valid_from', 'Nougat,component,'])).toMatchObject({ unlocked: 1 });
  const { counts: stored } = await everythingStored(db, venue);
  expect(stored?.map(({ day, item, part, quantity, place }) => [day, item, part, quantity, place].join('|'))).toEqual([
    '2026-09-30|cream||4|Walk-in',
    '2026-10-31|cream||2|Fridge',
    '2026-10-31|cream||2.5|walk-in',
    '2026-10-31|custard||900|',
    '2026-10-31|eggs|yolk|400|fridge',
    '2026-10-31|nougat||2|',
  ]);
});

test('loadFolder of trials: a dish and a day, their lines told whole; lines wait for their trial', async () => {
  const { venue, load } = await house();
  const lines = ['recipe,date,item,quantity,unit', 'Tart,2026-10-01,Cream,600,ml', 'Tart,2026-10-01,Plums,1,kg'];
  expect(await load('trial_lines.csv', lines)).toMatchObject({
    ...counts(0, 0, 0, 2),
    why: 'There is no trial of “Tart” on 2026-10-01 yet. Add it to trials.csv, or correct the name or the date; this line waits until then.',
  });
  const trials = ['recipe,date,hours,grade,outcome', 'tart,2026-10-01,2.5,Commis,Split', 'Cream,2026-10-01,1,Commis,'];
  expect(await load('trials.csv', trials)).toMatchObject({
    ...counts(1, 0, 0, 1),
    unlocked: 2,
    why: '“Cream” is an ingredient, and a trial is of a dish or a component. Name the dish, or move the line to trial_lines.csv.',
  });
  expect(await load('trial_lines.csv', [...lines.slice(0, 1), 'Tart,2026-10-01,Cream,500,ml'])).toMatchObject(
    counts(0, 1, 0, 0, 1),
  );
  expect(await load('trials.csv', ['recipe,date,hours,grade', 'Tart,2026-10-01,3,Commis'])).toMatchObject(
    counts(0, 1, 0),
  );
  const { trials: tried, trialLines } = await everythingStored(db, venue);
  expect(tried).toEqual([{ item: 'tart', day: '2026-10-01', hours: 3, grade: 'Commis', outcome: 'Split' }]);
  expect(trialLines?.map(({ item, quantity }) => [item, quantity])).toEqual([['cream', 500]]);
});

test('loadFolder of what is closed refuses row by row and alters nothing', async () => {
  const { venue, load } = await house();
  const files: Files = {
    'labour.csv': ['grade,valid_from,cost_per_hour', 'Commis,2026-01-01,17'],
    'exchange_rates.csv': ['currency,valid_from,rate', 'GBP,2026-01-01,1.19'],
    'purchases.csv': [INVOICE, '2026-09-30,Bay Dairy,B1,goods,CR,4,31.20', '2026-10-01,Bay Dairy,B1,goods,EG,1,9'],
    'counts.csv': [COUNT, '2026-09-30,Cream,,4,tub,'],
    'moves.csv': [MOVE, '2026-09-30,Tart,2,each,broken'],
    'trials.csv': ['recipe,date,hours,grade', 'Tart,2026-09-01,3,Commis'],
    'trial_lines.csv': ['recipe,date,item,quantity,unit', 'Tart,2026-09-01,Cream,600,ml'],
  };
  await loadFolder(db, folder(files), { venue });
  await close(db, venue, '2026-09-30');
  const { waiting: _, ...before } = await everythingStored(db, venue);
  for (const [name, lines] of Object.entries(files)) {
    const rows = [...lines].map(String).slice(1);
    const head = String(lines[0]);
    expect(await load(name, [head, ...rows])).toMatchObject(counts(0, 0, rows.length));
    const other = rows.map((row) => row.replace(/,(\d[\d.]*)(?=,(ml|tub|each|Commis)|$)/, ',7'));
    expect(other).not.toEqual(rows);
    const report = await load(name, [head, ...other]);
    expect([name, report]).toMatchObject([name, counts(0, 0, 0, rows.length)]);
    expect(report.why).toMatch(/^The books are closed through 2026-09-30/);
  }
  const { waiting, ...after } = await everythingStored(db, venue);
  expect(after).toEqual(before);
  expect(waiting?.map(({ kind, about_column }) => `${kind} ${about_column}`)).toEqual([
    'counts date',
    'exchange_rates valid_from',
    'labour valid_from',
    'moves date',
    'purchases date',
    'purchases date',
    'trial_lines date',
    'trials date',
  ]);
  expect(await load('moves.csv', [MOVE, '2026-10-01,Tart,2,each,broken'])).toMatchObject(counts(1, 0, 0));
});
