import { once } from 'node:events';
import { createReadStream, createWriteStream } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { loadFolder } from '@/lib/changes/load-folder';
import { loadExitCode } from '@/lib/changes/load-report-shape';
import { freshDatabase } from '../fresh-database';
import { file, folder } from './folders';
import { loads, revision, stored } from './stored';

const { db } = await freshDatabase();

const VENUE = 'House';
const MENU = ['item,valid_from,price,tax_pct,tax_included', 'Tart,,11,10,yes', 'Cr\u00e8me br\u00fbl\u00e9e,,9,10,yes'];
const SALES = 'date,item,sold,net_revenue\n2026-10-01,Tart,5,50\n2026-10-01,Cr\u00e8me br\u00fbl\u00e9e,2,18\n';

await loadFolder(db, folder({ 'menu.csv': MENU, 'sales.csv': SALES }), { venue: VENUE });
const sound = await stored(db, VENUE);
const at = await revision(db, VENUE);
const recorded = await loads(db, VENUE);

/** Loads a bad sales file over the sound one: it is refused whole, in a sentence, and nothing of it is kept. */
async function refusedWhole(content: string | Uint8Array) {
  const report = await loadFolder(db, file('sales.csv', content), { venue: VENUE });
  expect(loadExitCode(report)).toBe(1);
  expect(report.files).toMatchObject([
    { refusedWhole: true, read: 1, taken: 0, changed: 0, unchanged: 0, withdrawn: 0, refusedRows: 1 },
  ]);
  expect(await stored(db, VENUE)).toEqual(sound);
  expect(await revision(db, VENUE)).toBe(at);
  expect(await loads(db, VENUE)).toEqual(recorded);
  const [refused] = report.files[0]?.refused ?? [];
  return [refused?.line, refused?.why];
}

test('loadFolder of a file that is not UTF-8 refuses it whole, with line and byte', async () => {
  const [line, why] = await refusedWhole(Buffer.from(SALES.replace('Tart,5', 'Tart,6'), 'latin1'));
  expect(line).toBe(3);
  expect(why).toBe(
    'Byte 62 is not UTF-8, so letters with accents cannot be read. Save the file again as \u201cCSV UTF-8\u201d; nothing of it was taken.',
  );
  expect(await refusedWhole(Buffer.from(`\ufeff${SALES}`, 'utf16le'))).toEqual([1, expect.stringContaining('UTF-16')]);
});

test('loadFolder of a file cut off in the middle refuses it whole', async () => {
  expect(await refusedWhole(SALES.slice(0, -8).replace('5,50', '6,60'))).toEqual([
    3,
    expect.stringContaining('ends inside its last row, after 2 cells of 4'),
  ]);
  expect(await refusedWhole(`${SALES}2026-10-02,"Tart`)).toEqual([4, expect.stringContaining('quote')]);
});

test('loadFolder of an empty file, and of one without header, refuses it whole', async () => {
  expect(await refusedWhole('')).toEqual([
    null,
    'The file is empty. Export it again, with a first line that names the columns.',
  ]);
  expect(await refusedWhole('2026-10-01,Tart,6,60\n2026-10-02,Tart,6,60\n')).toEqual([
    1,
    expect.stringContaining('It has to name item, sold and date or sold_at'),
  ]);
  expect(await refusedWhole('date,item,net_revenue\n2026-10-01,Tart,60\n')).toEqual([
    1,
    expect.stringContaining('The file lacks sold.'),
  ]);
});

test('loadFolder of a file with an open quote refuses it whole, with the line', async () => {
  expect(await refusedWhole('date,item,sold\n2026-10-01,"Tart,6\n2026-10-02,Tart,1\n2026-10-03,"Tart",1\n')).toEqual([
    2,
    expect.stringContaining('A quote is opened here'),
  ]);
});

test('loadFolder of one line of 50 MB refuses it quickly and without holding it', async () => {
  const path = file('sales.csv', '');
  await written(path, function* () {
    yield 'date,item,sold\n';
    for (let megabyte = 0; megabyte < 50; megabyte++) yield '2026-10-01,Tart,6;'.repeat(58_255);
  });
  const before = process.memoryUsage().rss;
  const started = performance.now();
  const report = await loadFolder(db, path, { venue: VENUE });
  expect(performance.now() - started).toBeLessThan(5_000);
  expect(process.memoryUsage().rss - before).toBeLessThan(200 * 2 ** 20);
  expect(report.files[0]).toMatchObject({
    refusedWhole: true,
    refused: [{ line: 2, why: expect.stringContaining('longer than') }],
  });
  expect(await stored(db, VENUE)).toEqual(sound);
});

test('loadFolder of dates in another order, negative portions and text for numbers refuses those rows alone', async () => {
  const rows = [
    'date,item,sold,net_revenue',
    '31/12/2026,Tart,1,10',
    '2026-10-02,Tart,-1,10',
    '2026-10-02,Tart,one,10',
    '2026-10-02,Tart,1,\u20ac10',
    '2026-10-02,Tart,1,10',
    '2026-10-02,Tart',
    '2026-10-02,Tart,1,10,9',
  ];
  const report = await loadFolder(db, file('sales.csv', rows), { venue: 'Rows', source: 'till' });
  expect(report.files[0]?.refused.map(({ line, column, why }) => [line, column, why.split('. ')[0]])).toEqual([
    [2, 'date', '\u201c31/12/2026\u201d in date is no date as this file needs it'],
    [3, 'sold', '-1 in sold looks like a void, and sales.csv takes portions sold, zero or more'],
    [4, 'sold', '\u201cone\u201d in sold is no number'],
    [5, 'net_revenue', '\u201c\u20ac10\u201d in net_revenue has a currency sign'],
    [6, 'item', 'There is no \u201cTart\u201d yet'],
    [7, null, 'This row has 2 cells, the header has 4'],
    [8, null, 'This row has 5 cells, the header has 4'],
  ]);
  expect(loadExitCode(report)).toBe(1);
});

test('loadFolder of a folder takes the sound files beside a bad one', async () => {
  const report = await loadFolder(
    db,
    folder({ 'menu.csv': MENU, 'sales.csv': 'x', 'covers.csv': 'date,covers\n2026-10-01,38\n' }),
    { venue: 'Beside' },
  );
  expect(loadExitCode(report)).toBe(3);
  expect((await stored(db, 'Beside')).covers).toHaveLength(1);
  const plain = await loadFolder(db, join(folder({ 'menu.csv': MENU }), 'menu.csv'), { venue: 'Beside' });
  expect(loadExitCode(plain)).toBe(0);
});

/** 50 MB of sales, most of it text of the till that is not read. */
function* sales(rows: number): Generator<string> {
  yield 'date,item,sold,net_revenue,receipt\n';
  for (let row = 0; row < rows; row++) {
    const day = new Date(Date.UTC(2025, 0, 1 + (row % 365))).toISOString().slice(0, 10);
    yield `${day},${row % 3 === 0 ? 'Tart' : '"Cr\u00e8me br\u00fbl\u00e9e"'},${1 + (row % 4)},${(1 + (row % 4)) * 10},"${'table 4, window; '.repeat(15)}"\n`;
  }
}

test('loadFolder of a valid file of 50 MB takes it, with bounded memory, and its sums are exact', async () => {
  const rows = 180_000;
  const path = file('sales.csv', '');
  await written(path, () => sales(rows));
  let size = 0;
  for await (const chunk of createReadStream(path)) size += chunk.length;
  expect(size).toBeGreaterThan(50_000_000);
  await loadFolder(db, folder({ 'menu.csv': MENU }), { venue: 'Large' });
  const started = performance.now();
  const before = process.memoryUsage().rss;
  let most = before;
  const watch = setInterval(() => {
    most = Math.max(most, process.memoryUsage().rss);
  }, 50);
  const report = await loadFolder(db, path, { venue: 'Large' });
  clearInterval(watch);
  expect(performance.now() - started).toBeLessThan(60_000);
  expect(most - before).toBeLessThan(500 * 2 ** 20);
  expect(report.files).toMatchObject([{ read: rows, taken: rows, refusedRows: 0, ignored: ['receipt'] }]);
  const facts = (await stored(db, 'Large')).sales ?? [];
  expect(facts).toHaveLength(365 * 2);
  const total = (name: string) => facts.reduce((sum, sale) => sum + Number(sale[name]), 0);
  expect([total('rows'), total('sold'), total('net')]).toEqual([rows, 450_000, 4_500_000]);
  expect((await loadFolder(db, path, { venue: 'Large' })).files).toMatchObject([{ unchanged: rows, taken: 0 }]);
}, 300_000);

async function written(path: string, parts: () => Iterable<string>): Promise<void> {
  const out = createWriteStream(path);
  for (const part of parts()) if (!out.write(part)) await once(out, 'drain');
  out.end();
  await once(out, 'finish');
}
