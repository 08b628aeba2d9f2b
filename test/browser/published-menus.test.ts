import { execFile } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { EIGHT_ITEMS, PUBLISHED_MONTH, publishedFolder, SIX_ITEMS } from '../published-folders';
import { type Running, startProgram, surroundings } from './start-program';
import { tableOf } from './table-of';
import { visitor } from './visit';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const visit = visitor();
let program: Running;

beforeAll(async () => {
  program = await startProgram('--empty');
});

afterAll(() => program.stop());

/** Loads a folder while the program runs, as a restaurant would. */
async function loaded(folder: string): Promise<void> {
  const options = { cwd: ROOT, env: surroundings(program.dataDir) };
  await promisify(execFile)(process.execPath, ['--import', 'tsx', 'lib/commands/load.ts', folder], options);
}

test('GET / of an empty database names what is missing and the one thing to do', async () => {
  const page = await visit(`${program.address}/`);
  expect(new URL(page.url()).pathname).toBe('/menu');
  expect(await page.locator('main').textContent()).toContain('No sales yet');
  expect(await page.locator('code').textContent()).toBe('npm run load -- FOLDER');
  expect(await page.locator('h1').count()).toBe(1);
});

describe.each([EIGHT_ITEMS, SIX_ITEMS])('$venue, loaded as a folder and read from the page', (menu) => {
  test('/menu shows its classes, shares and thresholds', async () => {
    await loaded(publishedFolder(menu));
    const page = await visit(`${program.address}/menu?venue=${encodeURIComponent(menu.venue)}`);
    expect(new URL(page.url()).searchParams.get('month')).toBe(PUBLISHED_MONTH);
    const table = (await tableOf(page)).slice(0, -1);
    expect(Object.fromEntries(table.map((row) => [row.item, row.class]))).toEqual(
      Object.fromEntries(menu.items.map((item) => [item.name, item.class])),
    );
    for (const { name, sharePct, sold } of menu.items) {
      const row = table.find(({ item }) => item === name);
      expect(row?.sold).toBe(sold.toLocaleString('en-GB'));
      expect(Math.abs(Number(row?.share) - sharePct)).toBeLessThanOrEqual(0.05 + menu.shareWithin);
    }
    const picture = page.locator('figure svg').first();
    const popularity = String(Number(menu.popularityPct.toFixed(3)));
    await expect.poll(() => picture.textContent()).toContain(`popular from ${popularity}\u2009%`);
    const margin = /high marginfrom ([\d,.]+)/.exec((await picture.textContent()) ?? '')?.[1]?.replaceAll(',', '');
    expect(Math.abs(Number(margin) - menu.meanMargin)).toBeLessThanOrEqual(menu.within + 0.00005);
    expect(await page.locator('main p').first().textContent()).toContain('One trading day is too few');
  });
});

test('GET /menu with several venues asks which, and the head leads to each', async () => {
  const page = await visit(`${program.address}/menu`);
  expect(await page.locator('main').textContent()).toContain('Which venue?');
  await page.getByRole('navigation', { name: 'Venues' }).getByRole('link', { name: EIGHT_ITEMS.venue }).click();
  await page.waitForURL('**month=**');
  await expect.poll(() => page.locator('tbody tr').count()).toBe(EIGHT_ITEMS.items.length + 1);
});
