import { readdirSync, readFileSync } from 'node:fs';
import { createServer, request } from 'node:http';
import readWorkbook from 'read-excel-file/node';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { withOptions } from '@/app/api/v1/known-options';
import * as document from '@/app/api/v1/openapi.json/route';
import * as dishCost from '@/app/api/v1/venues/[venue]/dishes/[item]/cost/route';
import * as intake from '@/app/api/v1/venues/[venue]/intake/route';
import * as dishCosts from '@/app/api/v1/venues/[venue]/months/[month]/dish-costs/route';
import * as menuMix from '@/app/api/v1/venues/[venue]/months/[month]/menu-mix/route';
import * as venues from '@/app/api/v1/venues/route';
import { menuMixShape } from '@/lib/answers/menu-mix-shape';
import { problemShape } from '@/lib/answers/problem';
import { loadFolder } from '@/lib/changes/load-folder';
import { refusesPath } from '@/lib/commands/undecodable-path';
import { closeDatabase } from '@/lib/db/database';
import { freshDatabase } from '../fresh-database';

const { db, url } = await freshDatabase();

beforeAll(async () => {
  process.env.DATABASE_URL = url;
  await loadFolder(db, 'seed/small');
});
afterAll(closeDatabase);

const REPORTS = { 'menu-mix': menuMix, 'dish-costs': dishCosts } as const;
const ask = (report: keyof typeof REPORTS, query: string, month = '2026-10') =>
  REPORTS[report].GET(new Request(`http://127.0.0.1/api/v1/venues/1/months/${month}/${report}${query}`), {
    params: Promise.resolve({ venue: '1', month }),
  });

async function problemOf(response: Response) {
  expect(response.headers.get('content-type')).toBe('application/problem+json');
  return problemShape.parse(await response.json());
}

test.each(['menu-mix', 'dish-costs'] as const)(
  'GET %s takes the formats and options that it knows, and refuses others',
  async (report) => {
    for (const known of ['', '?format=json', '?format=csv', '?format=xlsx'])
      expect((await ask(report, known)).status).toBe(200);
    const xml = await problemOf(await ask(report, '?format=xml'));
    expect([xml.status, xml.detail]).toEqual([
      400,
      'There is no answer in the format “xml”. There is json, csv and xlsx.',
    ]);
    expect(xml.fields).toMatchObject([{ name: 'format', value: 'xml' }]);
    const unknown = await problemOf(await ask(report, '?colour=red&shape=round&colour=blue'));
    expect([unknown.status, unknown.fields.map(({ name, value }) => [name, value])]).toEqual([
      400,
      [
        ['colour', 'red'],
        ['shape', 'round'],
      ],
    ]);
  },
);

test.each(['9999-12', '0001-01-01..0002-01-01'])(
  'GET menu-mix of %s, at the edge of the calendar, is refused with a sentence',
  async (month) => {
    const { status, detail } = await problemOf(await ask('menu-mix', '', month));
    expect([status, detail]).toEqual([400, expect.stringContaining('lies outside the years 1900 to 2199')]);
  },
);

test('withOptions(request, [], question) refuses any option', async () => {
  const asked = new Request('http://127.0.0.1/api/v1/venues?page=2');
  expect(await withOptions(asked, [], () => expect.unreachable())).toMatchObject({
    ok: false,
    problem: { fields: [{ name: 'page', value: '2', text: '“page” is no option of this address.' }] },
  });
});

test.each([
  ['openapi.json', document],
  ['venues', venues],
  ['menu-mix', menuMix],
  ['dish-costs', dishCosts],
  ['dish-cost', dishCost],
])('POST, PUT, PATCH and DELETE of %s are refused with a problem that names what is served', async (address, route) => {
  for (const method of ['POST', 'PUT', 'PATCH', 'DELETE'] as const) {
    const response = route[method](new Request(`http://127.0.0.1/${address}`, { method }));
    expect([response.status, response.headers.get('allow')]).toEqual([405, 'GET, HEAD, OPTIONS']);
    expect((await problemOf(response)).detail).toBe(`${method} does nothing at this address. Use GET, HEAD, OPTIONS.`);
  }
  expect(route.OPTIONS().headers.get('allow')).toBe('GET, HEAD, OPTIONS');
});

test('GET, PUT, PATCH and DELETE of intake are refused with a problem that names POST', async () => {
  const { GET, PUT, PATCH, DELETE } = intake;
  for (const [method, answer] of Object.entries({ GET, PUT, PATCH, DELETE })) {
    const response = answer(new Request('http://127.0.0.1/intake', { method }));
    expect([response.status, response.headers.get('allow')]).toEqual([405, 'POST, OPTIONS']);
    expect((await problemOf(response)).detail).toBe(`${method} does nothing at this address. Use POST, OPTIONS.`);
  }
  expect(intake.OPTIONS().headers.get('allow')).toBe('POST, OPTIONS');
});

test('GET dishes/{item}/cost and POST intake refuse an option that nobody reads', async () => {
  const params = { params: Promise.resolve({ venue: '1', item: 'Lemon choux' }) };
  const cost = await dishCost.GET(new Request('http://127.0.0.1/cost?day=2026-10-14'), params);
  expect((await problemOf(cost)).detail).toBe(
    'This address takes no “day”. There is date, month, channel, section, format.',
  );
  const posted = new Request('http://127.0.0.1/intake?file=sales&dry=1', { method: 'POST', body: 'date,item,sold' });
  const taken = await intake.POST(posted, { params: Promise.resolve({ venue: '1' }) });
  expect((await problemOf(taken)).detail).toBe('This address takes no “dry”. There is file, source, days, dryRun.');
});

test('every address below /api/v1 answers every method', () => {
  const methods = ['DELETE', 'GET', 'OPTIONS', 'PATCH', 'POST', 'PUT'];
  const below = readdirSync('app/api/v1', { recursive: true, encoding: 'utf8' });
  const routes = below.filter((file) => file.endsWith('route.ts') && !file.startsWith('['));
  expect(routes.length).toBeGreaterThan(5);
  const bare = routes.flatMap((file) => {
    const source = readFileSync(`app/api/v1/${file}`, 'utf8');
    const isExported = (method: string) =>
      new RegExp(`export (async )?function ${method}\\b| as ${method}\\b`).test(source);
    return methods.filter((method) => !isExported(method)).map((method) => `${method} ${file}`);
  });
  expect(bare).toEqual([]);
});

test('GET menu-mix is a workbook by ?format=xlsx and by its type in Accept', async () => {
  const params = { params: Promise.resolve({ venue: '1', month: '2026-10' }) };
  const type = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';
  const accepting = new Request('http://127.0.0.1/menu-mix', { headers: { accept: type } });
  for (const response of [await ask('menu-mix', '?format=xlsx'), await menuMix.GET(accepting, params)]) {
    expect([response.headers.get('content-type'), response.headers.get('content-disposition')]).toEqual([
      type,
      'attachment; filename="menu-mix.xlsx"',
    ]);
    const [sheet] = await readWorkbook(Buffer.from(await response.arrayBuffer()));
    const json = menuMixShape.parse(await (await ask('menu-mix', '')).json());
    expect(sheet?.data.slice(1).map(([item]) => item)).toEqual(json.items.map(({ item }) => item));
  }
});

test('refusesPath(request) answers 400 to a path that is no UTF-8, and lets any other pass', async () => {
  const server = createServer((asked, response) => {
    if (!refusesPath(asked, response)) response.end('passed');
  });
  const port = await new Promise<number>((resolve) => {
    server.listen(0, '127.0.0.1', () => {
      const address = server.address();
      resolve(address !== null && typeof address === 'object' ? address.port : 0);
    });
  });
  const get = (path: string) =>
    new Promise<[number | undefined, string | undefined, string]>((resolve, reject) => {
      const asking = request({ port, host: '127.0.0.1', path }, (response) => {
        let said = '';
        response.on('data', (text: Buffer) => {
          said += text;
        });
        response.on('end', () => resolve([response.statusCode, response.headers['content-type'], said]));
      });
      asking.on('error', reject).end();
    });
  const [status, type, said] = await get('/api/v1/venues/%ff/months/2026-10/menu-mix');
  expect([status, type, problemShape.parse(JSON.parse(said)).status]).toEqual([400, 'application/problem+json', 400]);
  expect((await get('/menu/%zz')).slice(0, 2)).toEqual([400, 'text/plain; charset=utf-8']);
  expect(await get('/api/v1/venues/Caf%C3%A9?section=%ff')).toEqual([200, undefined, 'passed']);
  server.close();
});
