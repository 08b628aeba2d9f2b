import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { zipSync } from 'fflate';
import { afterAll, expect, test } from 'vitest';
import writeWorkbook from 'write-excel-file/node';
import { loadFolder } from '@/lib/changes/load-folder';
import { loadExitCode } from '@/lib/changes/load-report-shape';
import { freshDatabase } from '../fresh-database';
import { everythingStored } from './everything-stored';
import { folder } from './folders';

const inFolder = await freshDatabase();
const inZip = await freshDatabase();
const inWorkbook = await freshDatabase();
const root = mkdtempSync(join(tmpdir(), 'plateworth-archives-'));
afterAll(() => rmSync(root, { recursive: true, force: true }));

const SMALL = 'seed/small';
const HOUSE = 'Marram House';

/** An archive of some files, packed. */
function zip(name: string, files: Readonly<Record<string, string | Uint8Array>>): string {
  const bytes = Object.fromEntries(Object.entries(files).map(([file, text]) => [file, Buffer.from(text)]));
  const path = join(root, name);
  writeFileSync(path, zipSync(bytes));
  return path;
}

const packed = (prefix = ''): Readonly<Record<string, Uint8Array>> =>
  Object.fromEntries(readdirSync(SMALL).map((file) => [`${prefix}${file}`, readFileSync(join(SMALL, file))]));

test('loadFolder(db, ZIP) is the same as the folder that was packed, with or without the folder itself', async () => {
  const report = await loadFolder(inFolder.db, SMALL);
  const path = zip('small.zip', {
    ...packed('small/'),
    '__MACOSX/small/._sales.csv': 'x',
    'small/notes.txt': 'x',
    'small/budget.csv': 'x',
  });
  const zipped = await loadFolder(inZip.db, path);
  const counts = (files: typeof report.files) =>
    files.map(({ kind, read, taken, refusedRows }) => [kind, read, taken, refusedRows]);
  expect(counts(zipped.files)).toEqual(counts(report.files));
  expect(zipped.files[0]?.file).toBe('small/venue.csv');
  expect(zipped.notRead.map(({ file }) => file)).toEqual(['small/budget.csv']);
  expect(await everythingStored(inZip.db, HOUSE)).toEqual(await everythingStored(inFolder.db, HOUSE));
  const again = await loadFolder(inZip.db, zip('flat.zip', packed()));
  expect(again.files.every(({ read, unchanged }) => read === unchanged)).toBe(true);
});

test('loadFolder(db, XLSX) takes each sheet for the file of its name: numbers, days, yes and no as the cells hold them', async () => {
  const cell = (text: string) => {
    if (text === '') return null;
    if (/^\d{4}-\d{2}-\d{2}$/.test(text))
      return { value: new Date(`${text}T00:00:00Z`), type: Date, format: 'yyyy-mm-dd' } as const;
    if (text === 'yes' || text === 'no') return { value: text === 'yes', type: Boolean } as const;
    if (/^-?\d+(\.\d+)?$/.test(text)) return { value: Number(text), type: Number } as const;
    return { value: text, type: String } as const;
  };
  const sheets = readdirSync(SMALL).map((file) => {
    const lines = readFileSync(join(SMALL, file), 'utf8').trimEnd().split('\n');
    return {
      sheet: file === 'offer_prices.csv' ? 'Offer prices' : file.replace('.csv', ''),
      data: lines.map((line) => cellsOf(line).map(cell)),
    };
  });
  const path = join(root, 'small.xlsx');
  await writeWorkbook([...sheets, { sheet: 'Thoughts', data: [[cell('nothing')]] }]).toFile(path);
  const report = await loadFolder(inWorkbook.db, path);
  expect(report.files.flatMap(({ refused }) => refused)).toEqual([]);
  expect(report.files.map(({ file }) => file)).toContain('small.xlsx: Offer prices');
  expect(report.notRead).toEqual([
    {
      file: 'small.xlsx: Thoughts',
      why: 'What the sheet “Thoughts” of small.xlsx holds cannot be told from its name. Name it as a file of the data folder: sales, recipes …',
    },
  ]);
  expect(await everythingStored(inWorkbook.db, HOUSE)).toEqual(await everythingStored(inFolder.db, HOUSE));
});

/** The cells of a line of the small book, which quotes only cells without quotes in them. */
function cellsOf(line: string): readonly string[] {
  return [...line.matchAll(/(?:^|,)(?:"([^"]*)"|([^,]*))/g)].map(([, quoted, plain]) => quoted ?? plain ?? '');
}

test('loadFolder(db, XLSX) tells the row of the sheet', async () => {
  const path = join(root, 'menu.xlsx');
  const text = (...cells: string[]) => cells.map((value) => ({ value, type: String }) as const);
  const data = [text('supplier', 'minimum_order'), [], text('Bay Dairy', '40'), text('Dunlin Fruit', 'a lot')];
  await writeWorkbook(data, { sheet: 'suppliers' }).toFile(path);
  const { files } = await loadFolder(inWorkbook.db, path, { venue: 'Rows' });
  expect(files[0]).toMatchObject({ taken: 1, refused: [{ line: 4, column: 'minimum_order', value: 'a lot' }] });
});

test('loadFolder(db, archive) that cannot be opened is wrong use with a sentence', async () => {
  const wrong = async (path: string) => {
    const report = await loadFolder(inZip.db, path, { venue: 'None' });
    expect([loadExitCode(report), report.files]).toEqual([2, []]);
    return report.wrongUse;
  };
  const cut = readFileSync(zip('whole.zip', packed())).subarray(0, 2_000);
  const bad = folder({
    'cut.zip': cut,
    'text.zip': 'not an archive',
    'text.xlsx': 'not a workbook',
    'book.ods': 'x',
    'book.7z': 'x',
  });
  expect(await wrong(join(bad, 'cut.zip'))).toMatch(
    /^cut\.zip cannot be opened \(.+\)\. Pack or save it again, or bring a folder of CSV files\.$/,
  );
  expect(await wrong(join(bad, 'text.zip'))).toMatch(/^text\.zip cannot be opened/);
  expect(await wrong(join(bad, 'text.xlsx'))).toMatch(/^text\.xlsx cannot be opened/);
  expect(await wrong(zip('notes.xlsx', { 'notes.txt': 'x' }))).toMatch(/^notes\.xlsx cannot be opened/);
  expect(await wrong(join(bad, 'book.ods'))).toMatch(
    /^book\.ods is a workbook or an archive of a kind that is not read\./,
  );
  expect(await wrong(zip('empty.zip', { 'notes.txt': 'x' }))).toMatch(/^There is no CSV file in empty\.zip\./);
});

/** The directory of an archive says of every entry how large it is: 24 bytes into each record of it, as a little-endian number. */
function withSize(path: string, size: number): Buffer {
  const bytes = Buffer.from(readFileSync(path));
  for (let at = bytes.indexOf('PK\x01\x02'); at >= 0; at = bytes.indexOf('PK\x01\x02', at + 4))
    bytes.writeUInt32LE(size, at + 24);
  return bytes;
}

test('loadFolder(db, ZIP bomb) opens no more than an archive says, and not what says too much', async () => {
  const zeros = zip('bomb.zip', { 'sales.csv': Buffer.alloc(50_000_000, 'a') });
  expect(readFileSync(zeros).length).toBeLessThan(100_000);
  const lying = join(root, 'lying.zip');
  writeFileSync(lying, withSize(zeros, 1_000));
  const report = await loadFolder(inZip.db, lying, { venue: 'Bomb' });
  expect(report.venue).toBeNull();
  expect(report.files).toMatchObject([{ refusedWhole: true, refusedRows: 1 }]);
  expect(report.files[0]?.refused[0]?.why).toMatch(/^This part of the archive cannot be unpacked \(/);
  const huge = join(root, 'huge.zip');
  writeFileSync(huge, withSize(zeros, 4_000_000_000));
  expect((await loadFolder(inZip.db, huge)).wrongUse).toBe(
    'huge.zip unpacks to 3814 MB or more, and at most 2048 MB are opened. Bring it in parts, or as a folder of CSV files.',
  );
  const workbook = join(root, 'lying.xlsx');
  writeFileSync(workbook, withSize(zeros, 1_000));
  expect((await loadFolder(inZip.db, workbook)).wrongUse).toMatch(/^lying\.xlsx cannot be opened/);
});

test('loadFolder(db, ZIP) with a damaged or locked file refuses that file whole and takes the others', async () => {
  const path = zip('damaged.zip', {
    'suppliers.csv': 'supplier\nBay Dairy\n',
    'menu.csv': `item,valid_from,price,tax_pct,tax_included\n${'Tart,,11,10,yes\n'.repeat(500)}`,
  });
  const bytes = Buffer.from(readFileSync(path));
  const menu = bytes.indexOf('menu.csv') + 'menu.csv'.length;
  bytes.fill(0xff, menu + 4, menu + 30);
  writeFileSync(path, bytes);
  const report = await loadFolder(inZip.db, path, { venue: 'Damaged' });
  expect(report.files).toMatchObject([
    { file: 'suppliers.csv', taken: 1, refusedWhole: false },
    { file: 'menu.csv', refusedWhole: true },
  ]);
  const locked = Buffer.from(readFileSync(zip('locked.zip', { 'menu.csv': 'item\nTart\n' })));
  locked.writeUInt16LE(1, locked.indexOf('PK\x01\x02') + 8); // bit 0 of the flags: encrypted
  const lockedPath = join(root, 'locked.zip');
  writeFileSync(lockedPath, locked);
  const { files } = await loadFolder(inZip.db, lockedPath, { venue: 'Damaged' });
  expect(files[0]?.refused[0]?.why).toMatch(/^This part of the archive cannot be unpacked \(.*encrypt.*\)/);
});
