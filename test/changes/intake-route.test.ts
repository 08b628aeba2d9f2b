import { readdirSync, readFileSync } from 'node:fs';
import { zipSync } from 'fflate';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { GET as document } from '@/app/api/v1/openapi.json/route';
import { POST } from '@/app/api/v1/venues/[venue]/intake/route';
import { problemShape } from '@/lib/answers/problem';
import { loadFolder } from '@/lib/changes/load-folder';
import { loadReportShape } from '@/lib/changes/load-report-shape';
import { closeDatabase } from '@/lib/db/database';
import { freshDatabase } from '../fresh-database';
import { everythingStored } from './everything-stored';
import { folder } from './folders';
import { loads, revision } from './stored';

const { db, url } = await freshDatabase();
const VENUE = 'Quay';

beforeAll(async () => {
  process.env.DATABASE_URL = url;
  const files = {
    'venue.csv': ['setting,value', `name,${VENUE}`],
    'menu.csv': ['item,valid_from,price,tax_pct,tax_included', 'Tart,,11,10,yes'],
  };
  await loadFolder(db, folder(files));
});
afterAll(closeDatabase);

async function post(query: string, body: string | Uint8Array | null, type = 'text/csv', venue = VENUE) {
  const address = `http://127.0.0.1/api/v1/venues/${encodeURIComponent(venue)}/intake${query}`;
  const bytes = body === null ? null : new Uint8Array(Buffer.from(body));
  const request = new Request(address, { method: 'POST', body: bytes, headers: { 'content-type': type } });
  const response = await POST(request, { params: Promise.resolve({ venue: encodeURIComponent(venue) }) });
  return { status: response.status, said: await response.json() };
}

const SALES = 'date,item,sold,net_revenue\n2026-10-01,Tart,5,50\n2026-10-01,Eclair,1,8\n';

test('POST intake?file=sales&dryRun=1 says what would become of it and keeps nothing', async () => {
  const [facts, at, brought] = [await everythingStored(db, VENUE), await revision(db, VENUE), await loads(db, VENUE)];
  const { status, said } = await post('?file=sales&dryRun=1', SALES);
  expect(status).toBe(200);
  const report = loadReportShape.parse(said);
  expect(report.files).toMatchObject([
    { file: 'sales.csv', read: 2, taken: 1, refusedRows: 1, refused: [{ line: 3, column: 'item' }] },
  ]);
  const recipes = await post('?file=recipes&dryRun=1', 'recipe,kind,valid_from\nTart,dish,\nCustard,component,\n');
  expect(recipes.said.files).toMatchObject([{ taken: 2, refusedRows: 0 }]);
  expect([await everythingStored(db, VENUE), await revision(db, VENUE), await loads(db, VENUE)]).toEqual([
    facts,
    at,
    brought,
  ]);
});

test('POST intake?file=sales is the load of that file, with its source and days', async () => {
  const { status, said } = await post('?file=sales&source=kiosk&days=2026-10-01..2026-10-02', SALES);
  expect([status, said.venue]).toEqual([200, VENUE]);
  expect(said.files).toMatchObject([{ source: 'kiosk', taken: 1, refusedRows: 1 }]);
  const { sales } = await everythingStored(db, VENUE);
  expect(sales?.map(({ source, day, item, sold }) => [source, day, item, sold])).toEqual([
    ['kiosk', '2026-10-01', 'tart', 5],
    ['kiosk', '2026-10-02', null, null],
  ]);
});

test('POST intake of a ZIP takes the whole folder, by number of the venue as well', async () => {
  const files = readdirSync('seed/small').filter((file) => file !== 'venue.csv');
  const zipped = zipSync(
    Object.fromEntries(files.map((file) => [file, new Uint8Array(readFileSync(`seed/small/${file}`))])),
  );
  const { status, said } = await post('', zipped, 'application/zip', '1');
  expect([status, said.venue, said.wrongUse]).toEqual([200, VENUE, null]);
  expect(said.files.flatMap(({ refused }: { refused: unknown[] }) => refused)).toEqual([]);
  const tried = await post('?dryRun=1', zipped, 'application/zip');
  expect([tried.status, tried.said.fields[0].name]).toEqual([400, 'body']);
});

test.each([
  ['?file=sales', SALES, 'text/csv', 'Nowhere', 404, 'There is no venue “Nowhere”. There is Quay.'],
  ['', SALES, 'text/csv', VENUE, 400, /^Which file of the data folder is it\?/],
  ['?file=payroll', SALES, 'text/csv', VENUE, 400, /^Which file of the data folder is it\?/],
  ['?file=sales&days=October', SALES, 'text/csv', VENUE, 400, /^“October” are no days/],
  ['', 'not an archive', 'application/zip', VENUE, 400, /^upload\.zip cannot be opened/],
  [
    '',
    'not a workbook',
    'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
    VENUE,
    400,
    /^upload\.xlsx cannot be opened/,
  ],
])(
  'POST intake%s of %j as %s into %s is a problem with a sentence',
  async (query, body, type, venue, code, sentence) => {
    const { status, said } = await post(query, body, type, venue);
    expect(status).toBe(code);
    expect(problemShape.parse(said).detail).toMatch(sentence);
  },
);

test('POST intake of a file that is refused whole, or of nothing, is a report with the way to mend it', async () => {
  const wrong = await post('?file=sales', 'item,sold\nTart,1\n');
  expect([wrong.status, wrong.said.files[0].refusedWhole]).toEqual([200, true]);
  const nothing = await post('?file=sales', null);
  expect(nothing.said.files[0].refused[0].why).toMatch(/^The file is empty/);
});

test('GET openapi.json describes intake', async () => {
  const { paths } = await document().json();
  expect(paths['/venues/{venue}/intake'].post.responses[200].content['application/json'].schema.type).toBe('object');
});
