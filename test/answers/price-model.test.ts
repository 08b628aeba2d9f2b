import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { afterAll, beforeAll, expect, test } from 'vitest';
import * as route from '@/app/api/v1/venues/[venue]/months/[month]/price-model/route';
import { pricedPeriod } from '@/lib/answers/priced-period';
import { loadFolder } from '@/lib/changes/load-folder';
import { closeDatabase } from '@/lib/db/database';
import { unpackedModel } from '@/lib/model/price-model/packed-model';
import { currentAsker } from '@/lib/session/asker';
import { freshDatabase } from '../fresh-database';

const { db, url } = await freshDatabase();

beforeAll(async () => {
  process.env.DATABASE_URL = url;
  await loadFolder(db, 'seed/small');
});
afterAll(closeDatabase);

const ask = (query = '', headers: Record<string, string> = {}, month = '2026-10') =>
  route.GET(new Request(`http://127.0.0.1/api/v1/venues/1/months/${month}/price-model${query}`, { headers }), {
    params: Promise.resolve({ venue: '1', month }),
  });
const bytesOf = async (response: Response) => new Uint8Array(await response.arrayBuffer());
const unzipped = async (response: Response) => new Uint8Array(gunzipSync(await bytesOf(response)));

test('GET price-model is the model that the server prices with, to the last bit', async () => {
  const response = await ask();
  expect([response.status, response.headers.get('content-type')]).toEqual([200, 'application/octet-stream']);
  const asked = { venue: '1', month: '2026-10', section: null };
  const priced = await pricedPeriod(currentAsker(), asked);
  if (!priced.ok) expect.unreachable();
  expect(unpackedModel(await unzipped(response))).toEqual(priced.answer.model);
});

test('GET price-model is 304 for who has it already, until the venue changes', async () => {
  const tag = (await ask()).headers.get('etag') ?? '';
  expect(tag).toMatch(/^"\d+-\d+"$/);
  const again = await ask('', { 'if-none-match': tag });
  expect([again.status, (await bytesOf(again)).length, again.headers.get('etag')]).toEqual([304, 0, tag]);
  expect((await ask('', { 'if-none-match': `"0-0", W/${tag}` })).status).toBe(304);
  expect((await ask('', { 'if-none-match': '"0-0"' })).status).toBe(200);
  const folder = mkdtempSync(join(tmpdir(), 'plateworth-prices-'));
  writeFileSync(join(folder, 'suppliers.csv'), 'supplier,email\nBay Dairy,orders@bay.example\n');
  await loadFolder(db, folder);
  rmSync(folder, { recursive: true });
  const changed = await ask('', { 'if-none-match': tag });
  expect([changed.status, changed.headers.get('etag') === tag]).toEqual([200, false]);
});

test('GET price-model refuses options that it does not know, sections and months that there are not', async () => {
  expect((await ask('?colour=red')).status).toBe(400);
  expect((await ask('?section=Nowhere')).status).toBe(404);
  expect((await ask('', {}, '2026-13')).status).toBe(400);
});
