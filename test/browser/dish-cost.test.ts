import { execFile } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import type { BrowserContextOptions, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type DishCostAnswer, dishCostShape } from '@/lib/answers/dish-cost-shape';
import { type Running, startProgram, surroundings } from './start-program';
import { visitor } from './visit';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const visit = visitor();
const MONTH = '2026-10';
/** The demo restaurant: parts, by-products, channels, and a dish of which a price is missing. */
let program: Running;
const menu = (options?: BrowserContextOptions) => visit(`${program.address}/menu?month=${MONTH}`, options);

beforeAll(async () => {
  program = await startProgram();
});

afterAll(() => program.stop());

async function reported(...asked: string[]): Promise<DishCostAnswer> {
  const words = ['--import', 'tsx', 'lib/commands/report.ts', 'dish-cost', ...asked, '--json'];
  const options = { cwd: ROOT, env: surroundings(program.dataDir), maxBuffer: 64_000_000 };
  const { stdout } = await promisify(execFile)(process.execPath, words, options);
  return dishCostShape.parse(JSON.parse(stdout));
}

async function fetched(item: string, query: string): Promise<DishCostAnswer> {
  const path = `/api/v1/venues/${encodeURIComponent('Marram House')}/dishes/${encodeURIComponent(item)}/cost?${query}`;
  const response = await fetch(`${program.address}${path}`);
  expect(response.status).toBe(200);
  return dishCostShape.parse(await response.json());
}

/** The figures of the table that open, by the name of the dish. */
function opener(page: Page, item?: string): Locator {
  const row = item === undefined ? page.locator('tbody tr') : page.locator('tbody tr', { hasText: item });
  return row.locator('button[aria-expanded]:visible').first();
}
const working = (page: Page): Locator => page.getByRole('region', { name: /^How the plate cost of / });
const itemOf = (button: Locator) =>
  button.evaluate((element) => {
    const cell = element.closest('tr')?.querySelector('[data-column=item]');
    return cell?.querySelector('a')?.textContent ?? '';
  });
/** 0.812 as 812. */
const thousandths = (text: string | null) => Number((text ?? '').replace('\u2212', '-').replace(/[,.]/g, ''));

/** Costs of the lines of a list as printed, not of those below them. */
async function printedCosts(list: Locator): Promise<readonly number[]> {
  await list.waitFor();
  return (await list.locator(':scope > li > div > [data-column=cost]').allTextContents()).map(thousandths);
}

test('a plate cost opens to the working that command and HTTP give, and what is printed adds up', async () => {
  const page = await menu();
  const buttons = page.locator('tbody td[data-column=plateCost] button[aria-expanded]');
  expect(await buttons.count()).toBeGreaterThan(8);
  for (const at of [0, 1, 5]) {
    const button = buttons.nth(at);
    const item = await itemOf(button);
    await button.click();
    const region = page.getByRole('region', { name: `How the plate cost of ${item} is made up` });
    await region.getByRole('listitem').first().waitFor();

    const answer = await fetched(item, `month=${MONTH}`);
    expect(answer.period?.plateCost).not.toBeNull();
    expect(Math.abs(Number(await button.textContent()) - Number(answer.period?.plateCost))).toBeLessThan(0.005 + 1e-9);
    if (at === 0) {
      expect(await reported('--item', item, '--month', MONTH)).toEqual(answer);
      expect({ ...(await reported('--item', item, '--date', answer.date)), period: answer.period }).toEqual(answer);
    }

    const lines = region.locator(':scope > ul').last();
    const names = await lines.locator(':scope > li').evaluateAll((rows) => rows.map((row) => row.textContent ?? ''));
    expect(names).toHaveLength(answer.lines.length);
    for (const [index, line] of answer.lines.entries()) {
      if (line.kind !== 'not_measured') expect(names[index]).toContain(line.item);
    }
    const total = thousandths(
      await region.locator('p', { hasText: 'Plate cost' }).locator('span').last().textContent(),
    );
    expect(total).toBe(Math.round(Number(answer.plateCost) * 1000));
    const costs = await printedCosts(lines);
    expect(costs).toHaveLength(answer.lines.length);
    expect(costs.reduce((sum, cost) => sum + cost, 0)).toBe(total);
    for (const [index, line] of answer.lines.entries()) {
      expect(Math.abs((costs[index] ?? Number.NaN) - Number(line.cost) * 1000)).toBeLessThanOrEqual(1);
    }

    const made = answer.lines.findIndex((line) => line.lines.length > 0);
    const row = lines.locator(':scope > li').nth(made);
    await row.getByRole('button').click();
    const below = row.locator(':scope > ul');
    const inside = await printedCosts(below);
    expect(inside).toHaveLength(answer.lines[made]?.lines.length ?? -1);
    expect(inside.reduce((sum, cost) => sum + cost, 0)).toBe(costs[made]);
    const bought = answer.lines[made]?.lines.find(({ offer }) => offer !== null);
    expect(await below.textContent()).toContain(`${bought?.offer?.supplier}, code ${bought?.offer?.code}`);
    await region.getByRole('button', { name: 'Close the working' }).click();
    expect(await region.count()).toBe(0);
  }
});

test('Enter opens a figure where it stands, Escape closes it from inside and gives the focus back', async () => {
  const page = await menu();
  const button = opener(page);
  expect(await button.getAttribute('aria-expanded')).toBe('false');
  await button.focus();
  await page.keyboard.press('Enter');
  const region = working(page);
  await region.getByRole('listitem').first().waitFor();
  expect(await button.getAttribute('aria-expanded')).toBe('true');
  expect(await button.getAttribute('aria-controls')).toBe(await region.getAttribute('id'));
  const below = await button.evaluate(
    (element) => element.closest('tr')?.nextElementSibling?.querySelector('section')?.id,
  );
  expect(below).toBe(await region.getAttribute('id'));

  await page.keyboard.press('Tab');
  const line = region.locator('button[aria-expanded]').first();
  await line.focus();
  await page.keyboard.press('Enter');
  expect(await line.getAttribute('aria-expanded')).toBe('true');
  await page.keyboard.press('Escape');
  expect(await region.count()).toBe(0);
  expect(await button.evaluate((element) => element === document.activeElement)).toBe(true);
  expect(await button.getAttribute('aria-expanded')).toBe('false');

  await page.keyboard.press('Space');
  await working(page).getByRole('listitem').first().waitFor();
  await page.keyboard.press('Escape');
  expect(await working(page).count()).toBe(0);
  expect(await button.evaluate((element) => element === document.activeElement)).toBe(true);
});

test('every line opens at once, and folds again', async () => {
  const page = await menu();
  await opener(page).click();
  const region = working(page);
  await region.getByRole('listitem').first().waitFor();
  const folded = await region.getByRole('listitem').count();
  await region.getByRole('button', { name: 'every line' }).click();
  expect(await region.getByRole('listitem').count()).toBeGreaterThan(folded);
  expect(await region.locator('button[aria-expanded=false]').count()).toBe(0);
  await region.locator('button[aria-expanded=true]').first().click();
  expect(await region.locator('button[aria-expanded=false]').count()).toBe(1);
  await region.getByRole('button', { name: 'every line' }).click();
  await region.getByRole('button', { name: 'fewer lines' }).click();
  expect(await region.getByRole('listitem').count()).toBe(folded);
});

test('a figure of which a part is not known opens to what is missing', async () => {
  const page = await menu();
  const cell = page.locator('td[data-column=plateCost]', { hasText: 'at least' }).first();
  await cell.getByRole('button').click();
  const region = working(page);
  await region.getByRole('button', { name: 'every line' }).click();
  const missing = await fetched(await itemOf(cell.getByRole('button')), `month=${MONTH}`);
  expect(missing.plateCost).toBeNull();
  expect(await region.textContent()).toContain(missing.issues.find(({ code }) => code === 'no-offer')?.text);
  expect(await region.getByText('unknown', { exact: true }).count()).toBeGreaterThan(0);
});

test('while a working is read a line says so; where it cannot be read a sentence does, and it is read again when asked', async () => {
  const page = await menu();
  const answers: (() => void)[] = [];
  let garbled = true;
  await page.route('**/dishes/**/cost**', async (route) => {
    await new Promise<void>((resolve) => answers.push(resolve));
    if (garbled) await route.fulfill({ status: 200, contentType: 'application/json', body: 'no answer' });
    else await route.continue();
  });
  await opener(page).click();
  const region = working(page);
  expect(await region.getByRole('status').textContent()).toBe('Reading the recipe and the prices of the day.');
  await expect.poll(() => answers.length).toBe(1);
  answers[0]?.();
  expect(await region.getByRole('alert').textContent()).toContain('The working could not be read');
  garbled = false;
  await region.getByRole('button', { name: 'Read it again' }).click();
  await expect.poll(() => answers.length).toBe(2);
  answers[1]?.();
  await region.getByRole('listitem').first().waitFor();
});

for (const width of [1440, 800, 390]) {
  for (const colorScheme of ['light', 'dark'] as const) {
    test(`an opened working at ${width} px, ${colorScheme}: as wide as the sheet, targets large enough`, async () => {
      const page = await menu({ viewport: { width, height: 900 }, colorScheme });
      await opener(page).click();
      const region = working(page);
      await region.getByRole('button', { name: 'every line' }).click();
      const overflow = () =>
        page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
      expect(await overflow()).toBe(0);
      const widthOf = (locator: Locator) => locator.evaluate((element) => element.clientWidth);
      const place = page.getByRole('region', { name: 'The dishes of the mix, all columns' });
      expect(await place.evaluate((element) => element.scrollWidth - element.clientWidth)).toBe(0);
      expect(await region.evaluate((element) => element.scrollWidth - element.clientWidth)).toBe(0);
      const least = width === 390 ? 44 : 24;
      const small = await region
        .getByRole('button')
        .evaluateAll(
          (buttons, size) => buttons.filter((button) => button.getBoundingClientRect().height < size).length,
          least,
        );
      expect(small).toBe(0);
      expect((await opener(page).boundingBox())?.height).toBeGreaterThanOrEqual(least);

      if (width === 1440) return;
      // all columns: the table scrolls in its place, the working stays where it is seen
      await page.getByRole('button', { name: 'all columns' }).click();
      expect(await overflow()).toBe(0);
      expect(await widthOf(region)).toBeLessThanOrEqual(await widthOf(place));
      await place.evaluate((element) => element.scrollTo(400, 0));
      const [inner, outer] = [await region.boundingBox(), await place.boundingBox()];
      expect(Math.abs((inner?.x ?? 0) - (outer?.x ?? -1))).toBeLessThanOrEqual(1);
    });
  }
}

test('an opened working is printed, without its controls', async () => {
  const page = await menu();
  await opener(page).click();
  const region = working(page);
  await region.getByRole('listitem').first().waitFor();
  await page.emulateMedia({ media: 'print' });
  expect(await region.isVisible()).toBe(true);
  expect(await region.getByRole('button', { name: 'Close the working' }).isVisible()).toBe(false);
  expect(await region.getByText('every line').isVisible()).toBe(false);
  expect(await region.getByRole('listitem').first().isVisible()).toBe(true);
});
