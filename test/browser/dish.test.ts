import type { BrowserContextOptions, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { dishCostsShape } from '@/lib/answers/dish-costs-shape';
import { type DishAnswer, dishShape } from '@/lib/answers/dish-shape';
import { accessTroubles } from './axe';
import { demoProgram } from './demo-program';
import { tableOf } from './table-of';

const MONTH = '2026-10';
/** The demo restaurant: an estimate, a half-known plate, set menus, an extra, dishes that went. */
const demo = demoProgram();
const open = demo.visit;

const dishPath = (item: string, more = '') => `/menu/dishes/${encodeURIComponent(item)}?month=${MONTH}${more}`;
const openDish = (item: string, options?: BrowserContextOptions) => open(dishPath(item), options);

async function reported(item: string): Promise<DishAnswer> {
  return dishShape.parse(await demo.reported('dish', '--item', item, '--month', MONTH));
}

async function fetched(item: string): Promise<DishAnswer> {
  return dishShape.parse(await demo.fetched(`${MONTH}/dishes/${encodeURIComponent(item)}`));
}

/** A printed number, to be within half of its last place of the figure it was made from. */
function expectPrinted(text: string | undefined, value: number): void {
  const plain = (text ?? '').replaceAll(',', '').replace('\u2212', '-').replace('+', '');
  expect(plain).toMatch(/^-?\d+(\.\d+)?$/);
  const places = plain.split('.')[1]?.length ?? 0;
  expect(Math.abs(Number(plain) - value)).toBeLessThanOrEqual(0.5 * 10 ** -places + 1e-9);
}

/** The terms of the sum at the head: figure by its first label. */
function sumOf(page: Page): Promise<Record<string, string>> {
  return page
    .locator('[data-term]')
    .evaluateAll((terms) =>
      Object.fromEntries(
        terms.map((term) => [
          term.getAttribute('data-term') ?? '',
          term.querySelector('[data-figure]')?.textContent ?? '',
        ]),
      ),
    );
}

/** Rows of the table with that caption, cell by cell. */
function rowsOf(page: Page, caption: string): Promise<readonly (readonly string[])[]> {
  return page
    .locator('table', { has: page.locator('caption', { hasText: caption }) })
    .locator('tbody tr')
    .evaluateAll((rows) =>
      rows.map((row) => [...row.querySelectorAll('th, td')].map((cell) => cell.textContent ?? '')),
    );
}

test('the page of a dish has the figures that command and HTTP give', async () => {
  const page = await openDish('Marram slate');
  const dish = await fetched('Marram slate');
  expect(await reported('Marram slate')).toEqual(dish);
  expect(await page.getByRole('heading', { level: 1 }).textContent()).toBe('Marram slate');
  expect(await page.title()).toBe('Marram slate, October 2026 · Plateworth');

  const { figures } = dish;
  const sum = await sumOf(page);
  expectPrinted(sum['net price'], Number(figures?.netPrice));
  expectPrinted(sum['plate cost'], Number(figures?.plateCost));
  expectPrinted(sum.leaves, Number(figures?.margin));
  expectPrinted(sum['sold in October'], figures?.sold ?? Number.NaN);
  expectPrinted(sum['in the period'], Number(figures?.contribution));

  const periods = await rowsOf(page, 'Period by period');
  expect(periods).toHaveLength(dish.periods.length);
  dish.periods.toReversed().forEach((period, at) => {
    const [, price, cost, foodCost, leaves, sold, share] = periods[at] ?? [];
    expectPrinted(price, Number(period.netPrice));
    expectPrinted(cost, Number(period.plateCost));
    expectPrinted(foodCost, (period.foodCostPct ?? Number.NaN) * 100);
    expectPrinted(leaves, Number(period.margin));
    expectPrinted(sold, period.sold);
    expectPrinted(share, (period.share ?? Number.NaN) * 100);
  });
});

test('what changed adds up as printed, down to the plate cost and across from month to month', async () => {
  const page = await openDish('Marram slate');
  const { change } = await fetched('Marram slate');
  const thousandths = (text: string | undefined) =>
    Math.round(Number((text ?? '').replaceAll(',', '').replace('\u2212', '-').replace('+', '')) * 1000);
  const rows = await rowsOf(page, 'What changed since September 2026');
  expect(rows.length).toBeGreaterThan(2);
  const cells = rows.map((row) => row.slice(1).map(thousandths));
  for (const [before = 0, price = 0, recipe = 0, after = 0] of cells) expect(before + price + recipe).toBe(after);
  for (const column of [0, 1, 2, 3]) {
    const sum = cells.slice(0, -1).reduce((total, row) => total + (row[column] ?? 0), 0);
    expect(sum).toBe(cells.at(-1)?.[column]);
  }
  expectPrinted(rows.at(-1)?.[1], Number(change?.plateCost?.before));
  expectPrinted(rows.at(-1)?.[4], Number(change?.plateCost?.after));

  const account = await rowsOf(page, 'What it left, and why that changed');
  const cents = account.map((row) => Math.round(thousandths(row[1]) / 10));
  expect(cents.slice(0, -1).reduce((sum, part) => sum + part, 0)).toBe(cents.at(-1));
  expectPrinted(account.at(-1)?.[1], Number(change?.contribution?.after));
});

test('the tree has one drawing for each of three widths', async () => {
  for (const [width, drawn] of [
    [1440, '972'],
    [800, '690'],
    [390, '358'],
  ] as const) {
    const page = await openDish('Marram slate', { viewport: { width, height: 900 } });
    const shown = page.locator('figure svg[role=img]:visible');
    expect(await shown.count()).toBe(1);
    expect(await shown.getAttribute('width')).toBe(drawn);
  }
});

test('one commodity is followed through the tree by the address, and the working opens to pack and price', async () => {
  const page = await openDish('Marram slate');
  const follow = page.getByRole('navigation', { name: 'Follow through the picture' });
  const second = follow.getByRole('link').nth(1);
  const name = (await second.textContent()) ?? '';
  await second.click();
  await page.waitForURL('**follow=**');
  await expect.poll(() => follow.locator('[aria-current]').textContent()).toBe(name);
  expect(await page.locator('figcaption').first().textContent()).toContain(`Followed in colour: ${name}`);

  const working = page.getByRole('region', { name: 'The working' });
  await working.getByRole('button', { name: 'every line' }).click();
  expect(await working.textContent()).toContain('Tern Street Stores, code');
});

test('a mark of the mix leads to its dish with Enter, a row with its name, and the list of dishes to all of them', async () => {
  const page = await open(`/menu?month=${MONTH}`);
  const list = page.getByRole('listbox');
  await expect.poll(() => list.getByRole('option').count()).toBeGreaterThan(8);
  await list.focus();
  await page.keyboard.press('Home');
  const chosen = (await list.locator('[aria-selected=true]').textContent()) ?? '';
  await page.keyboard.press('Enter');
  await page.waitForURL(`**${dishPath(chosen)}`);
  await expect.poll(() => page.getByRole('heading', { level: 1 }).textContent()).toBe(chosen);

  await page.getByRole('navigation', { name: 'Views of the menu' }).getByRole('link', { name: 'Dishes' }).click();
  await page.waitForURL(`**/menu/dishes?month=${MONTH}`);
  const costs = dishCostsShape.parse(await demo.fetched(`${MONTH}/dish-costs`));
  await expect.poll(() => page.locator('tbody tr').count()).toBe(costs.items.length + costs.extras.length);
  const rows = await tableOf(page);
  const slate = costs.items.find(({ item }) => item === 'Marram slate');
  const row = rows.find(({ item }) => item === 'Marram slate');
  expectPrinted(row?.plateCost, Number(slate?.plateCost));
  expectPrinted(row?.leaves, Number(slate?.margin));
  expectPrinted(row?.labour, Number(slate?.recipeLabour));
  expectPrinted(row?.minute, Number(slate?.marginPerPlatingMinute));

  await page.getByLabel('Name contains').fill('SLATE');
  await expect.poll(() => page.locator('tbody tr').count()).toBe(1);
  await page.getByLabel('Name contains').fill('nothing like it');
  expect(await page.getByText('No dish has that in its name').isVisible()).toBe(true);
  await page.getByLabel('Name contains').fill('');
  await page.getByLabel('Section').selectOption('Set menus');
  await expect.poll(() => page.locator('tbody tr').count()).toBe(2);
  const head = page.getByRole('columnheader', { name: 'Plate cost' });
  await head.getByRole('button').click();
  expect(await head.getAttribute('aria-sort')).toBe('descending');
  await page.getByRole('link', { name: 'Low tide, two courses' }).click();
  await expect.poll(() => page.getByRole('heading', { level: 1 }).textContent()).toBe('Low tide, two courses');
});

const SAYS: readonly (readonly [string, string])[] = [
  ['Cheese and oatcakes', 'What the plate costs is the owner’s estimate'],
  ['Figs, fig leaf cream', 'The plate costs at least'],
  ['High tide, three courses and a glass', 'Set menus'],
  ['Pre-dessert', 'given to every guest'],
  ['Vanilla set cream', 'was not on sale in October 2026'],
];

test.each(SAYS)('%s has an honest page: %s', async (item, words) => {
  const page = await openDish(item);
  expect(await page.locator('main').textContent()).toContain(words);
  expect(await page.locator('main').textContent()).not.toContain('NaN');
});

test('a name that nobody knows, and an ingredient, are answered with a sentence and the way to all dishes', async () => {
  for (const [item, words] of [
    ['Sea frett', 'There is Sea'],
    ['Dark couverture 70 %', 'is an ingredient'],
  ] as const) {
    const page = await openDish(item);
    expect(await page.locator('main').textContent()).toContain(words);
    expect(await page.getByRole('link', { name: 'All dishes' }).isVisible()).toBe(true);
  }
});

for (const width of [1440, 390]) {
  for (const colorScheme of ['light', 'dark'] as const) {
    test(`a dish and all dishes at ${width} px, ${colorScheme}: as wide as the sheet, no violation of axe`, async () => {
      for (const path of [dishPath('Figs, fig leaf cream'), dishPath('Marram slate'), `/menu/dishes?month=${MONTH}`]) {
        const page = await open(path, { viewport: { width, height: 900 }, colorScheme });
        const overflow = () =>
          page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
        expect(await overflow()).toBe(0);
        expect(await accessTroubles(page)).toEqual([]);
      }
    });
  }
}
