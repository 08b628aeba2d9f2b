import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { loadFolder } from '@/lib/changes/load-folder';
import { type LoadReport, loadExitCode, loadReportShape } from '@/lib/changes/load-report-shape';
import { inVenue } from '@/lib/db/in-venue';
import { recipeLineKey } from '@/lib/db/load-recipes';
import { freshDatabase } from '../fresh-database';
import { file, folder } from './folders';
import { loads, revision, stored, venueId } from './stored';

const { db } = await freshDatabase();

const small = 'seed/small';
const counts = (report: LoadReport) =>
  report.files.map(({ file, read, taken, changed, unchanged, withdrawn, refusedRows }) => [
    file,
    read,
    taken,
    changed,
    unchanged,
    withdrawn,
    refusedRows,
  ]);
const sums = (report: LoadReport) =>
  report.files.every(
    ({ read, taken, changed, unchanged, refusedRows }) => read === taken + changed + unchanged + refusedRows,
  );

test('loadFolder(db, folder) takes every row of the small house once, and nothing the second time', async () => {
  const first = await loadFolder(db, small);
  expect(loadReportShape.parse(first)).toEqual(first);
  expect(first.venue).toBe('Marram House');
  expect(first.files.map(({ file }) => file).sort()).toEqual(
    [
      'covers',
      'ingredients',
      'measures',
      'menu',
      'offer_prices',
      'offers',
      'recipe_lines',
      'recipes',
      'sales',
      'suppliers',
      'venue',
    ].map((kind) => `${kind}.csv`),
  );
  expect(first.files.every(({ read, taken }) => read > 0 && read === taken)).toBe(true);
  expect(loadExitCode(first)).toBe(0);
  const before = await stored(db, 'Marram House');
  const at = await revision(db, 'Marram House');

  const second = await loadFolder(db, small);
  expect(second.files.every(({ read, unchanged }) => read > 0 && read === unchanged)).toBe(true);
  expect(second.files.every(({ withdrawn }) => withdrawn === 0)).toBe(true);
  expect(loadExitCode(second)).toBe(0);
  expect(await stored(db, 'Marram House')).toEqual(before);
  expect(await revision(db, 'Marram House')).toBe(at);
  // a load that alters nothing leaves its record and no bytes
  const records = await loads(db, 'Marram House');
  expect(records).toHaveLength(22);
  expect(records.slice(0, 11).every(({ chunks }) => chunks === 1)).toBe(true);
  expect(records.slice(11).every(({ chunks }) => chunks === 0)).toBe(true);
  const digest = createHash('sha256')
    .update(readFileSync(`${small}/sales.csv`))
    .digest('hex');
  expect(records.filter(({ kind }) => kind === 'sales').map((load) => load.digest)).toEqual([digest, digest]);
});

test('loadFolder(db, folder) gives the revenue net of tax, exactly', async () => {
  // 362.50 gross at 10 %: 329.545454... ; 13.10 at 9 %: 12.018348623853...
  await loadFolder(
    db,
    folder(
      {
        'menu.csv': ['item,valid_from,price,tax_pct,tax_included', 'Tart,,12.50,10,yes'],
        'sales.csv': [
          'date,item,sold,gross_revenue,tax_pct',
          '2026-10-01,Tart,29,362.50,10',
          '2026-10-02,Tart,1,13.10,9',
        ],
      },
      'Net',
    ),
    { venue: 'Net' },
  );
  const { sales } = await stored(db, 'Net');
  expect(sales?.map(({ net }) => net)).toEqual([329.5454545455, 12.0183486239]);
});

test('loadFolder(db, file) takes one file alone; what it refers to may come later', async () => {
  const lines = ['recipe,valid_from,item,quantity,unit', 'Tart,,Plums,250,g', 'Tart,,Pastry,60,g'];
  const venue = 'One by one';
  const first = await loadFolder(db, file('recipe_lines.csv', lines), { venue });
  expect(counts(first)).toEqual([['recipe_lines.csv', 2, 0, 0, 0, 0, 2]]);
  expect(loadExitCode(first)).toBe(1);
  expect(first.files[0]?.refused[0]).toMatchObject({ line: 2, column: 'recipe', value: 'Tart' });
  const recipes = await loadFolder(
    db,
    file('recipes.csv', ['recipe,kind,valid_from', 'Tart,dish,', 'Pastry,component,']),
    { venue },
  );
  expect(counts(recipes)).toEqual([['recipes.csv', 2, 2, 0, 0, 0, 0]]);
  expect(recipes.files[0]?.unlocked).toBe(1); // pastry is known now, plums are not
  const waiting = (await stored(db, venue)).waiting ?? [];
  expect(waiting).toMatchObject([{ rule: 'unknown-item', about_value: 'Plums', row_key: recipeLineKey('Tart', '') }]);
  const plums = await loadFolder(db, file('ingredients.csv', ['ingredient,measure', 'plums,g']), { venue });
  expect(plums.files[0]?.unlocked).toBe(1);
  const after = await stored(db, venue);
  expect(after.waiting).toEqual([]);
  expect(after.lines).toMatchObject([
    { position: 1, item: 'plums' },
    { position: 2, item: 'pastry' },
  ]);
  expect((await loads(db, venue))[0]).toMatchObject({ taken: 2, refused: 0 });
});

test('loadFolder(db, path) says what it does not read, and that is no error', async () => {
  const path = folder(
    {
      'budget.csv': 'x',
      'book.xlsx': 'x',
      'notes.txt': 'x',
      'suppliers.csv': ['supplier,fax', 'Bay Dairy,12'],
    },
    'Partly',
  );
  const report = await loadFolder(db, path, { venue: 'Partly' });
  expect(report.notRead.map(({ file }) => file)).toEqual(['book.xlsx', 'budget.csv']);
  expect(report.files).toMatchObject([{ file: 'suppliers.csv', taken: 1, ignored: ['fax'] }]);
  expect(loadExitCode(report)).toBe(0);
});

test('loadFolder(db, path) answers wrong use with a sentence', async () => {
  const wrong = async (path: string, options = {}) => {
    const report = await loadFolder(db, path, options);
    expect(loadExitCode(report)).toBe(2);
    expect(report.files).toEqual([]);
    return report.wrongUse;
  };
  expect(await wrong('/no/such/place')).toContain('nothing at /no/such/place');
  expect(await wrong(folder({}))).toContain('no CSV file');
  expect(await wrong(file('till.csv', 'x'))).toContain('cannot be told from its name');
  expect(await wrong(file('book.xlsx', 'x'))).toContain('cannot be opened');
  expect(await wrong(file('notes.txt', 'x'))).toContain('neither a folder nor a CSV, ZIP or XLSX file');
  expect(await wrong(small, { venue: '  ' })).toContain('--venue');
  expect(await wrong(small, { source: '' })).toContain('--source');
  expect(await wrong(folder({ 'suppliers.csv': ['supplier', 'Bay Dairy'] }))).toContain('There are several venues');
});

test('loadFolder(db, folder) refuses a venue.csv that names another venue than was asked for, and takes the rest of it', async () => {
  const venue = ['setting,value', 'name,Elsewhere', 'currency,GBP'];
  const report = await loadFolder(db, folder({ 'venue.csv': venue }), { venue: 'Net' });
  expect(report.files).toMatchObject([
    { taken: 1, refusedRows: 1, refused: [{ line: 2, column: 'value', value: 'Elsewhere' }] },
  ]);
  expect(loadExitCode(report)).toBe(3);
  // named by the file alone it is made
  const alone = await loadFolder(db, folder({ 'venue.csv': venue }));
  expect(alone).toMatchObject({ venue: 'Elsewhere', files: [{ taken: 2, refusedRows: 0 }] });
  expect((await stored(db, 'Elsewhere')).venue).toMatchObject([{ currency: 'GBP', stated: ['currency', 'name'] }]);
});

test('loadFolder(db, path) makes no venue for files that are refused whole', async () => {
  const bad = { 'sales.csv': Buffer.from('date,item,sold\n2026-10-01,Cr\u00e8me,1\n', 'latin1'), 'menu.csv': '' };
  const report = await loadFolder(db, folder(bad), { venue: 'Never' });
  expect(report).toMatchObject({
    venue: null,
    files: [
      { refusedWhole: true, read: 1 },
      { refusedWhole: true, read: 1 },
    ],
  });
  expect(loadExitCode(report)).toBe(1);
  await expect(venueId(db, 'Never')).rejects.toThrow();
});

test('loadFolder(db, folder) counts: rows read are taken, changed, unchanged or refused', async () => {
  const header = 'supplier,minimum_order';
  const venue = 'Counts';
  await loadFolder(db, file('suppliers.csv', [header, 'A,10', 'B,20', 'C,30']), { venue });
  const report = await loadFolder(
    db,
    file('suppliers.csv', [header, ' a ,10.00', 'B,25', 'D,5', 'E,lots', 'D,6', 'd,5']),
    { venue },
  );
  // A is spelled " a " now; D is stated twice, once otherwise
  expect(counts(report)).toEqual([['suppliers.csv', 6, 1, 2, 1, 0, 2]]);
  expect(report.files[0]?.refused.map(({ line, why }) => [line, why])).toEqual([
    [5, expect.stringContaining('“lots” in minimum_order is no number')],
    [6, 'Line 4 already says something else about the same thing. Keep one of the two lines.'],
  ]);
  expect(sums(report)).toBe(true);
});

test('loadFolder(db, folder) keeps a refused row until a later file mends it, and lists it once', async () => {
  const venue = 'Mended';
  const header = 'supplier,minimum_order';
  const bad = file('suppliers.csv', [header, 'A,lots', ',4']);
  const first = await loadFolder(db, bad, { venue });
  expect(counts(first)).toEqual([['suppliers.csv', 2, 0, 0, 0, 0, 2]]);
  const at = await revision(db, venue);
  const again = await loadFolder(db, bad, { venue });
  expect(counts(again)).toEqual(counts(first));
  expect(await revision(db, venue)).toBe(at);
  expect((await stored(db, venue)).waiting).toHaveLength(2);
  await loadFolder(db, file('suppliers.csv', [header, 'B,3']), { venue });
  expect((await stored(db, venue)).waiting).toHaveLength(2); // it says nothing about A
  await loadFolder(db, file('suppliers.csv', [header, 'A,40', 'Z,4']), { venue });
  const { waiting, suppliers } = await stored(db, venue);
  expect(waiting).toEqual([]); // A by its name; the one without a name by its line and all its other cells
  expect(suppliers).toHaveLength(3);
});

test('loadFolder(db, folder) records each change with the person', async () => {
  await loadFolder(db, file('suppliers.csv', ['supplier', 'Bay Dairy']), { venue: 'Recorded', person: 'ada' });
  const venue = await venueId(db, 'Recorded');
  const changes = await inVenue(db, { venue, person: 'ada' }, 'read', (tx) =>
    tx.prisma.change.findMany({ where: { venueId: venue, thing: 'supplier' }, select: { person: true, after: true } }),
  );
  expect(changes).toMatchObject([{ person: 'ada', after: { name: 'Bay Dairy' } }]);
});
