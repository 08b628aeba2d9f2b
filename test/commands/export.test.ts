import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { loadFolder } from '@/lib/changes/load-folder';
import { everythingStored } from '../changes/everything-stored';
import { type Files, folder } from '../changes/folders';
import { type FreshDatabase, freshDatabase } from '../fresh-database';
import { command } from './command';

const small = [await freshDatabase(), await freshDatabase()] as const;
const demo = [await freshDatabase(), await freshDatabase()] as const;
const mixed = [await freshDatabase(), await freshDatabase()] as const;
const root = mkdtempSync(join(tmpdir(), 'plateworth-export-'));
afterAll(() => rmSync(root, { recursive: true, force: true }));
let made = 0;
const place = () => join(root, `export-${made++}`);

/** Every file of a folder, byte for byte. */
function bytesOf(path: string): Readonly<Record<string, string>> {
  return Object.fromEntries(readdirSync(path).map((name) => [name, readFileSync(join(path, name), 'utf8')]));
}

const NOT_IN_FILES = new Set(['rows', 'line', 'position', 'carried', 'source', 'told', 'row_key', 'raw', 'facts']);

/** What is stored, without what files cannot hold: how many rows a sum had, and at which line of its file a row stood. */
async function factsOf({ db }: FreshDatabase, venue: string): Promise<Readonly<Record<string, readonly string[]>>> {
  const facts = await everythingStored(db, venue);
  const written = (row: Readonly<Record<string, unknown>>) =>
    JSON.stringify(Object.entries(row).filter(([name]) => !NOT_IN_FILES.has(name)));
  return Object.fromEntries(Object.entries(facts).map(([thing, rows]) => [thing, rows.map(written).sort()]));
}

async function exported(url: string): Promise<string> {
  const path = place();
  const { code, stderr } = await command(url, 'export', path);
  expect([stderr, code]).toEqual(['', 0]);
  return path;
}

test.each([
  ['seed/small', small, ['2026-10']],
  ['seed/demo-house', demo, ['2026-10', '2025-12']],
] as const)(
  'npm run export of %s, loaded into an empty venue and exported again, is the same byte for byte, and so are the figures',
  async (book, [first, second], months) => {
    await loadFolder(first.db, book);
    const once = await exported(first.url);
    const report = await loadFolder(second.db, once);
    expect([report.venue, report.notRead]).toEqual(['Marram House', []]);
    const wrong = report.files.flatMap(({ file, refused, ignored }) =>
      [...refused, ...ignored].map((row) => [file, row]),
    );
    expect(wrong).toEqual([]);
    const twice = await exported(second.url);
    expect(bytesOf(twice)).toEqual(bytesOf(once));
    expect(await factsOf(second, 'Marram House')).toEqual(await factsOf(first, 'Marram House'));
    for (const month of months) {
      for (const what of ['menu-mix', 'dish-costs']) {
        const here = await command(first.url, 'report', what, '--month', month, '--json');
        expect(here.code).toBe(0);
        const there = await command(second.url, 'report', what, '--month', month, '--json');
        expect(JSON.parse(there.stdout)).toEqual(JSON.parse(here.stdout));
      }
    }
  },
);

/** A house with what is awkward to write: names with quotes, line ends and formula signs, rows that wait, a clock, no revenue. */
const AWKWARD: Files = {
  'venue.csv': [
    'setting,value',
    'name,"The ""Tide"" Quay"',
    'q_factor_pct,2.5',
    'business_day_ends,05:30',
    'colour,red',
  ],
  'ingredients.csv': [
    'ingredient;measure;contains;may_contain;usable_yield_pct;valid_from;counted',
    'Cream;ml;milk;;99,5;;yes',
    'Cream;ml;milk;none;90;2026-06-01;no',
    '=1+1;g;none;;;;',
    '"Sugar; ""fine""";g;;;33,333;;',
  ],
  'offers.csv': [
    'supplier,code,ingredient,pack_count,pack_size,pack_unit,chosen,chosen_from',
    'Bay Dairy,A1,Cream,1,2,l,yes,',
    'Bay Dairy,A1,Cream,1,2,l,yes,2026-08-01',
    'Bay Dairy,A2,Cream,12,0.5,l,yes,2026-05-01',
    'Bay Dairy,007,Saffron,1,1,g,,',
  ],
  'offer_prices.csv': [
    'supplier,code,valid_from,price,kind,valid_to,minimum_packs,currency',
    'Bay Dairy,A1,2026-01-01,9.405,agreed,2026-12-31,2,GBP',
  ],
  'recipes.csv': [
    'recipe,kind,valid_from,cautions',
    '"Tart, hot",dish,,raw egg;alcohol',
    'Amuse,extra,,',
    'Two courses,set_menu,2026-01-01,none',
  ],
  'recipe_lines.csv': [
    'recipe,valid_from,item,quantity,unit,choice,choice_share_pct,note',
    '"Tart, hot",,Cream,12.50,ml,,,"first line',
    'second line"',
    '"Tart, hot",,Gold leaf,1,sheet,,,',
    '"Tart, hot",,Cream,one,ml,,,',
    'Two courses,2026-01-01,"Tart, hot",1,each,First,100,',
  ],
  'menu.csv': [
    'item,channel,valid_from,price,tax_pct,tax_included,commission_pct,off_menu',
    '"Tart, hot",,,12.5,13.5,yes,,',
    '"Tart, hot",Delivery,2026-01-01,14,0,no,27.5,',
    '"Tart, hot",Delivery,2026-11-01,,0,no,,yes',
  ],
  'sales.csv': [
    'sold_at,item,sold,comps,gross_revenue,tax_pct,discount',
    '2026-10-01T20:00,"Tart, hot",3,1,37.5,13.5,0.5',
    '2026-10-02T04:00,"Tart, hot",2,,,,',
    '2026-10-02T20:00,"Tart, hot",2,1,,,0.25',
    '2026-10-02T20:00,Eclair,2,,20,13.5,',
    'yesterday,Eclair,2,,20,13.5,',
    '2026-10-03T20:00,"Tart, hot",2,,20,13.5,,7',
    '2026-10-04T20:00,"Tart, hot",0,2,,,',
  ],
  'covers.csv': ['date,covers', '2026-10-01,20', '2026-10-02'],
  'purchases.csv': [
    'date,supplier,invoice,kind,code,packs,amount',
    '2026-10-01,Bay Dairy,,goods,A1,2,',
    '2026-10-01,Bay Dairy,Q,goods,ZZ,2,4.5',
    '2026-10-01,Bay Dairy,Q,deposit,,,-3.50',
  ],
  'moves.csv': [
    'date;item;quantity;unit;reason',
    '2026-10-01;Nougat;1,5;each;broken',
    '2026-10-01;Cream;0,2;l;spoiled',
  ],
};

test('npm run export writes what waits as it came, day sums over all sources, and awkward names as written', async () => {
  const [first, second] = mixed;
  const venue = 'The "Tide" Quay';
  await loadFolder(first.db, folder(AWKWARD));
  const kiosk = folder({ 'sales.csv': ['date,item,sold,net_revenue', '2026-10-01,"Tart, hot",1,10.1234567891'] });
  await loadFolder(first.db, kiosk, { source: 'kiosk' });
  const once = await exported(first.url);
  const report = await loadFolder(second.db, once);
  const files = bytesOf(once);
  expect(bytesOf(await exported(second.url))).toEqual(files);
  const { waiting: kept, sales: _, ...facts } = await factsOf(first, venue);
  const { waiting: keptAgain, sales: __, ...factsAgain } = await factsOf(second, venue);
  expect(factsAgain).toEqual(facts);
  expect(kept?.length).toBe(10);
  expect(keptAgain?.length).toBe(kept?.length);
  expect(report.files.reduce((sum, { refusedRows }) => sum + refusedRows, 0)).toBe(kept?.length);
  // 37.50 with 13.5 % tax inside is 33.0396475771 net; the kiosk's portion is added to it
  expect(files['sales.csv']?.split('\n')).toEqual([
    'date,item,channel,sold,comps,net_revenue,gross_revenue,tax_pct,discount',
    '2026-10-01,"Tart, hot",dine_in,4,1,43.1631043662,,,0.5',
    '2026-10-01,"Tart, hot",dine_in,2,0,,,,',
    '2026-10-02,"Tart, hot",dine_in,2,1,,,,0.25',
    '2026-10-04,"Tart, hot",dine_in,0,2,0,,,',
    '2026-10-02,Eclair,,2,,,20,13.5,',
    '2026-10-03,"Tart, hot",,2,,,20,13.5,,7',
    'yesterday,Eclair,,2,,,20,13.5,',
    '',
  ]);
  expect(files['ingredients.csv']).toContain('"Sugar; ""fine""",g,,,food,,,33.333,,,,\n');
  expect(files['ingredients.csv']).toContain('Cream,ml,2026-06-01,,food,,,90,milk,none,no,\n');
  expect(files['moves.csv']).toContain('2026-10-01,Nougat,1.5,each,broken,,\n');
  expect(files['offers.csv']?.match(/^Bay Dairy,A1,.*$/gm)).toEqual([
    'Bay Dairy,A1,Cream,1,2,l,,,yes,',
    'Bay Dairy,A1,Cream,1,2,l,,,yes,2026-08-01',
  ]);
});

test('datapackage.json names each file with its columns and types, and every path is there', async () => {
  const path = await exported(small[0].url);
  const { name, title, resources } = JSON.parse(readFileSync(join(path, 'datapackage.json'), 'utf8'));
  expect([name, title]).toEqual(['plateworth-data-folder', 'Marram House']);
  const paths = resources.map((resource: { path: string }) => resource.path);
  expect([...paths, 'datapackage.json'].sort()).toEqual(readdirSync(path).sort());
  for (const resource of resources) {
    const header = readFileSync(join(path, resource.path), 'utf8').split('\n')[0];
    expect(resource.schema.fields.map((field: { name: string }) => field.name).join()).toBe(header);
  }
});

test('npm run export over an earlier export takes its place, and files that hold nothing any more go', async () => {
  const [{ url }] = small;
  const path = await exported(mixed[0].url);
  expect(readdirSync(path)).toContain('moves.csv');
  const { code, stdout } = await command(url, 'export', path);
  expect([code, stdout.split('\n')[0]]).toEqual([0, `Wrote Marram House to ${path}.`]);
  expect(bytesOf(path)).toEqual(bytesOf(await exported(url)));
  expect(readdirSync(root).filter((name) => name.includes('writing'))).toEqual([]);
});

test('npm run export into what is not its own, or of no venue, is refused with a sentence and writes nothing', async () => {
  const [{ url }] = small;
  const path = place();
  mkdirSync(path);
  writeFileSync(join(path, 'sales.csv'), 'mine');
  const notOurs = await command(url, 'export', path);
  expect([notOurs.code, notOurs.stderr]).toEqual([
    2,
    `${path} holds files that are no export of this program. Name a new or an empty folder, so that nothing of yours is overwritten.\nTry --help.\n`,
  ]);
  expect(bytesOf(path)).toEqual({ 'sales.csv': 'mine' });
  const file = join(path, 'sales.csv');
  const aFile = await command(url, 'export', file);
  expect(aFile.stderr).toBe(`${file} is a file. Name a folder to write into.\nTry --help.\n`);
  expect((await command(url, 'export')).code).toBe(2);
  const fresh = place();
  expect((await command(url, 'export', fresh, '--venue', 'Nowhere')).code).toBe(1);
  expect(readdirSync(root)).not.toContain(fresh.slice(root.length + 1));
});
