import { execFile } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import type { Page } from 'playwright-core';
import { describe, expect, inject, test } from 'vitest';
import { type PriceChangeAnswer, priceChangeShape } from '@/lib/answers/price-change-shape';
import { surroundings } from './start-program';
import { tableOf } from './table-of';
import { visitor } from './visit';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const visit = visitor();

const EDIT = 'Dark couverture 64 %:+25%';
const at = (...edits: readonly string[]) =>
  `/menu/prices?month=2026-10${edits.map((edit) => `&price=${encodeURIComponent(edit)}`).join('')}`;

async function reported(edits: readonly string[]): Promise<PriceChangeAnswer> {
  const prices = edits.flatMap((edit) => ['--price', edit]);
  const words = [
    '--import',
    'tsx',
    'lib/commands/report.ts',
    'price-change',
    '--month',
    '2026-10',
    ...prices,
    '--json',
  ];
  const options = { cwd: ROOT, env: surroundings(inject('program').dataDir), maxBuffer: 64_000_000 };
  const { stdout } = await promisify(execFile)(process.execPath, words, options);
  return priceChangeShape.parse(JSON.parse(stdout));
}

async function posted(edits: readonly string[]): Promise<PriceChangeAnswer> {
  const response = await fetch(
    `${inject('program').address}/api/v1/venues/Marram%20House/months/2026-10/price-change`,
    {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ edits, demand: 'none' }),
    },
  );
  expect(response.status).toBe(200);
  return priceChangeShape.parse(await response.json());
}

const numberIn = (text: string | undefined) => Number((text ?? '').replaceAll(',', '').replace('\u2212', '-'));

/** A printed number, to be within half of its last place of the figure it was made from. */
function expectPrinted(text: string | undefined, value: number): void {
  expect(text).toMatch(/^[+\u2212]?[\d,]+(\.\d+)?$/);
  const places = (text ?? '').split('.')[1]?.length ?? 0;
  expect(Math.abs(numberIn(text) - value)).toBeLessThanOrEqual(0.5 * 10 ** -places + 1e-9);
}

async function expectFigures(page: Page, answer: PriceChangeAnswer): Promise<void> {
  const table = await tableOf(changes(page));
  const rows = table.filter((row) => row.item !== undefined && row.item !== '');
  expect(rows.length).toBeGreaterThan(0);
  for (const row of rows) {
    const item = answer.items.find((each) => each.item === row.item) ?? expect.unreachable(row.item);
    if (item.margin === null) continue;
    expectPrinted(row.after, Number(item.margin));
    expectPrinted(row.foodCost, (item.foodCostPct ?? Number.NaN) * 100);
    if (item.holdMarginPrice !== null) expectPrinted(row.holdMargin, Number(item.holdMarginPrice));
    if (item.holdPctPrice !== null) expectPrinted(row.holdPct, Number(item.holdPctPrice));
    expect(row.class?.startsWith(item.classAfter ?? 'not classed')).toBe(true);
    expect(row.class?.includes('was ')).toBe(item.classBefore !== item.classAfter);
  }
  const total = table.at(-1) ?? {};
  expectPrinted(total.before, Number(answer.before.contribution));
  expectPrinted(total.foodCost, (answer.after.foodCostPct ?? Number.NaN) * 100);
  // the printed total is the sum of the rows as printed
  const coins = rows.reduce((sum, row) => sum + Math.round(numberIn(row.inPeriod) * 100), 0);
  expect(Math.round(numberIn(total.inPeriod) * 100)).toBe(coins);
  expect(Math.abs(coins / 100 - (Number(answer.after.contribution) - Number(answer.before.contribution)))).toBeLessThan(
    0.005 * rows.length + 1e-9,
  );
}

const changes = (page: Page) => page.getByRole('region', { name: /^The dishes before and after/ });
const slider = (page: Page) => page.getByRole('slider');
const sentence = (page: Page) => page.locator('main p').first();

/** What the page says where no script runs: its text as it comes, without what is hidden until a script shows it. */
async function textWithoutScript(path: string): Promise<string> {
  const html = await (await fetch(`${inject('program').address}${path}`)).text();
  const shown = html.replaceAll(/<script[\s\S]*?<\/script>/g, '').split('<div hidden id="S:')[0] ?? '';
  return shown.replaceAll(/<[^>]*>/g, '').replaceAll('&amp;', '&');
}

test('GET /menu/prices says what a price change does where no script runs, the same as command and HTTP', async () => {
  const answer = await posted([EDIT]);
  expect(await reported([EDIT])).toEqual(answer);
  const text = await textWithoutScript(at(EDIT));
  const change = Math.abs(Number(answer.contributionChange));
  expect(text).toContain(
    `25.0\u2009% more than now, would have taken €${Math.round(change).toLocaleString('en-GB')} from October 2026`,
  );
  for (const { item, contributionChange, margin } of answer.items) {
    if (contributionChange === null || Math.abs(Number(contributionChange)) < 0.01) continue;
    expect(text).toContain(`${item}`);
    expect(text).toContain(Number(margin).toFixed(2));
  }
});

test('the table before and after holds the figures of command and HTTP', async () => {
  const page = await visit(at(EDIT));
  await expectFigures(page, await posted([EDIT]));
});

test('GET /menu/prices without a change looks at the price that most is spent on, moved nowhere', async () => {
  const page = await visit('/menu/prices');
  expect(new URL(page.url()).searchParams.get('month')).toBe('2026-10');
  expect(await sentence(page).textContent()).toMatch(/^Move a price to see what it would have done to /);
  expect(await slider(page).getAttribute('aria-valuetext')).toContain('a k');
});

test('the slider moves by keys: sentence, table, fields and address follow, the same as HTTP says of that price', async () => {
  const page = await visit(at(EDIT));
  const price = page.getByLabel('New price');
  const before = numberIn(await price.inputValue());
  await slider(page).focus();
  await page.keyboard.press('PageUp');
  await page.keyboard.press('ArrowRight');
  await expect.poll(async () => numberIn(await price.inputValue())).toBeGreaterThan(before);
  const value = Number(await slider(page).inputValue());
  await expect.poll(() => new URL(page.url()).searchParams.getAll('price')).toEqual([`Dark couverture 64 %:${value}`]);
  await expectFigures(page, await posted([`Dark couverture 64 %:${value}`]));
  await page.keyboard.press('Home');
  await expect.poll(async () => numberIn(await price.inputValue())).toBeLessThan(before);
  expect(await sentence(page).textContent()).toContain('less than now');
  // what is said aloud waits until the slider rests
  await expect.poll(() => page.getByRole('status').first().textContent()).toBe(await sentence(page).textContent());
});

test('the slider moves under the pointer, and a copied address opens the same figures', async () => {
  const page = await visit(at(EDIT));
  const box = (await slider(page).boundingBox()) ?? expect.unreachable();
  const y = box.y + box.height / 2;
  await page.mouse.move(box.x + 12 + (box.width - 24) * 0.5, y);
  await page.mouse.down();
  await page.mouse.move(box.x + 12 + (box.width - 24) * 0.9, y, { steps: 12 });
  await page.mouse.up();
  const value = Number(await slider(page).inputValue());
  await expect.poll(() => new URL(page.url()).searchParams.get('price')).toBe(`Dark couverture 64 %:${value}`);
  const told = await sentence(page).textContent();
  const table = await tableOf(changes(page));
  const address = new URL(page.url());
  expect(address.search).toContain('price=Dark+couverture+64+%25:');
  const again = await visit(address.pathname + address.search);
  expect(await sentence(again).textContent()).toBe(told);
  expect(await tableOf(changes(again))).toEqual(table);
});

test('another price is looked for by name and moved too; take all back puts it right, and the browser’s back undoes that', async () => {
  const page = await visit(at(EDIT));
  const combo = page.getByRole('combobox', { name: 'Price to move' });
  await combo.fill('double cr');
  await page.getByRole('option', { name: /^Double cream/ }).click();
  await page.getByLabel('or change').fill('+10');
  await expect.poll(() => sentence(page).textContent()).toMatch(/^These two changes together would have taken /);
  const edits = [EDIT, 'Double cream:+10%'];
  await expect.poll(() => new URL(page.url()).searchParams.getAll('price')).toEqual(edits);
  await expectFigures(page, await posted(edits));
  await page.getByRole('button', { name: 'Take all back' }).click();
  await expect.poll(() => sentence(page).textContent()).toMatch(/^Move a price /);
  await page.goBack();
  await expect.poll(() => sentence(page).textContent()).toMatch(/^These two changes together /);
});

test('a dish’s menu price, a product group and a supplier move as well', async () => {
  const edits = ['menu:Brown butter pear tart:10.5', 'group:Cocoa:+10%', 'supplier:Bay Dairy:-5%'];
  const page = await visit(at(...edits));
  await expectFigures(page, await posted(edits));
  expect(await slider(page).getAttribute('aria-label')).toBe('Everything from Bay Dairy, %');
});

test('what cannot be read, found or paid is said in words, and the rest stands', async () => {
  const page = await visit(at(EDIT, 'Unicorn:+10%', 'Double cream:10%'));
  const said = await page.getByRole('alert').allTextContents();
  expect(said.join(' ')).toContain('“Double cream:10%”, which is no change of a price');
  expect(said.join(' ')).toContain('Nothing called “Unicorn” had a price in October 2026');
  await page.getByLabel('change').last().fill('much');
  expect(await page.getByText('Write the change as a number').isVisible()).toBe(true);
});

test('Copy holds every row, CSV and XLSX the same change', async () => {
  const page = await visit(at(EDIT));
  const href = await page.getByRole('link', { name: 'CSV' }).getAttribute('href');
  const response = await fetch(`${inject('program').address}${href}`);
  expect([response.status, response.headers.get('content-type')]).toEqual([200, 'text/csv; charset=utf-8']);
  const lines = (await response.text()).trim().split('\r\n');
  expect(lines.length).toBe((await posted([EDIT])).items.length + 1);
});

/** What moved by itself, but for words inside the sentence, which stand anew when their typeface is there. */
function shifts(page: Page): Promise<readonly string[]> {
  return page.evaluate(
    () =>
      new Promise<string[]>((resolve) => {
        type Shift = PerformanceEntry & { hadRecentInput: boolean; sources: readonly { node: Node | null }[] };
        const sentence = document.querySelector('main p');
        new PerformanceObserver((list) => {
          const own = (list.getEntries() as Shift[]).filter(({ hadRecentInput }) => !hadRecentInput);
          const nodes = own.flatMap(({ sources }) => sources.flatMap(({ node }) => node ?? []));
          resolve(nodes.filter((node) => !sentence?.contains(node)).map(({ textContent }) => textContent ?? ''));
        }).observe({ type: 'layout-shift', buffered: true });
        setTimeout(() => resolve([]), 500);
      }),
  );
}

describe.each([
  [1440, 'light'],
  [390, 'dark'],
] as const)('%i px, %s', (width, colorScheme) => {
  test('nothing shifts while the page is read, its prices arrive and the slider moves', async () => {
    const page = await visit(at(EDIT), { viewport: { width, height: 900 }, colorScheme });
    const below = () =>
      page
        .getByRole('heading', { level: 2 })
        .last()
        .evaluate((heading) => heading.getBoundingClientRect().top + window.scrollY);
    const stood = await below();
    await slider(page).focus();
    for (let press = 0; press < 8; press++) await page.keyboard.press('PageDown');
    expect(await below()).toBe(stood);
    expect(await shifts(page)).toEqual([]);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(wide).toBe(0);
    const height = (await slider(page).boundingBox())?.height ?? 0;
    expect(height).toBeGreaterThanOrEqual(44);
  });
});
