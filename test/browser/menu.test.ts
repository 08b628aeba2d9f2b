import { execFile } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import type { Page } from 'playwright-core';
import { expect, inject, test } from 'vitest';
import { type MenuMixAnswer, menuMixShape } from '@/lib/answers/menu-mix-shape';
import { surroundings } from './start-program';
import { tableOf } from './table-of';
import { visitor } from './visit';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const visit = visitor();

/** The month that the page shows, from its address. */
function monthOf(page: Page): string {
  return new URL(page.url()).searchParams.get('month') ?? '';
}

async function reported(month: string, ...more: readonly string[]): Promise<MenuMixAnswer> {
  const words = ['--import', 'tsx', 'lib/commands/report.ts', 'menu-mix', '--month', month, '--json', ...more];
  const options = { cwd: ROOT, env: surroundings(inject('program').dataDir), maxBuffer: 64_000_000 };
  const { stdout } = await promisify(execFile)(process.execPath, words, options);
  return menuMixShape.parse(JSON.parse(stdout));
}

async function fetched(venue: string, month: string, query = ''): Promise<MenuMixAnswer> {
  const path = `/api/v1/venues/${encodeURIComponent(venue)}/months/${month}/menu-mix${query}`;
  const response = await fetch(`${inject('program').address}${path}`);
  expect(response.status).toBe(200);
  return menuMixShape.parse(await response.json());
}

/** A printed number, to be within half of its last place of the figure it was made from. */
function expectPrinted(text: string | undefined, value: number): void {
  const plain = (text ?? '').replaceAll(',', '').replace('\u2212', '-');
  expect(plain).toMatch(/^-?\d+(\.\d+)?$/);
  const places = plain.split('.')[1]?.length ?? 0;
  expect(Math.abs(Number(plain) - value)).toBeLessThanOrEqual(0.5 * 10 ** -places + 1e-9);
}

const dashed = (text: string | undefined) => (text === '–' ? '0' : text);

test('GET / leads to the menu of the latest month with sales', async () => {
  const page = await visit('/');
  expect(new URL(page.url()).pathname).toBe('/menu');
  const months = await page
    .locator('nav[aria-label=Month] a[data-month]')
    .evaluateAll((links) => links.map((link) => link.getAttribute('data-month')));
  expect(months.length).toBeGreaterThan(1);
  expect(monthOf(page)).toBe(months.at(-1));
  expect(await page.title()).toMatch(/^Menu mix, .+ · Plateworth$/);
});

test('the table holds every figure of the answer, the same as the command and HTTP give', async () => {
  const page = await visit('/');
  const month = monthOf(page);
  const command = await reported(month);
  expect(await fetched(command.venue, month)).toEqual(command);

  const table = await tableOf(page);
  expect(table).toHaveLength(command.items.length + 1);
  command.items.forEach((item, index) => {
    const row = table[index] ?? {};
    expect(row.item).toBe(item.item);
    expectPrinted(dashed(row.sold), item.sold);
    expectPrinted(dashed(row.comps), item.comps);
    expectPrinted(row.share, item.share * 100);
    if (item.netPrice !== null) expectPrinted(row.price, Number(item.netPrice));
    if (item.plateCost === null) {
      expect(row.plateCost).toMatch(item.floor === null ? /^not costed$/ : /^at least /);
      expect([row.foodCost, row.leaves, row.contribution]).toEqual(['unknown', 'unknown', 'unknown']);
    } else {
      expectPrinted(row.plateCost, Number(item.plateCost));
      expectPrinted(row.foodCost, (item.foodCostPct ?? Number.NaN) * 100);
      expectPrinted(row.leaves, Number(item.margin));
      expectPrinted(row.contribution, Number(item.contribution));
    }
    expect(row.class).toBe(item.class ?? 'not classed');
    if (item.class && item.classShares)
      expect(row.sure).toContain(Math.round((item.classShares[item.class] ?? 0) * 100).toString());
    if (item.settled !== null) expect(row.sure?.startsWith('settled')).toBe(item.settled);
  });

  const total = table.at(-1) ?? {};
  const { totals } = command;
  expectPrinted(total.sold, totals.sold);
  expectPrinted(dashed(total.comps), totals.comps);
  expectPrinted(total.price, Number(totals.revenue) / totals.sold);
  expectPrinted(total.plateCost, Number(totals.plateCost) / totals.costedSold);
  expectPrinted(total.foodCost, (totals.foodCostPct ?? Number.NaN) * 100);
  expectPrinted(total.leaves, Number(totals.margin) / totals.costedSold);
  const cents = table
    .slice(0, -1)
    .map((row) => Math.round(Number(row.contribution?.replaceAll(',', '').replace('\u2212', '-')) * 100));
  const printed = cents.filter((amount) => !Number.isNaN(amount)).reduce((sum, amount) => sum + amount, 0);
  expect(Math.round(Number(total.contribution?.replaceAll(',', '')) * 100)).toBe(printed);
});

test('set menus spread over their courses are the same by page, command and HTTP', async () => {
  const month = monthOf(await visit('/'));
  const page = await visit(`/menu?month=${month}&setMenus=spread`);
  const command = await reported(month, '--set-menus', 'spread');
  expect(await fetched(command.venue, month, '?setMenus=spread')).toEqual(command);
  expect(command.setMenus).toBe('spread');
  const table = await tableOf(page);
  expect(table).toHaveLength(command.items.length + 1);
  expectPrinted(table.at(-1)?.sold, command.totals.sold);
  expect(await page.locator('main').textContent()).toContain('set menus spread over their courses');
});

test('the sentence and the picture speak of the same figures as the answer', async () => {
  const page = await visit('/');
  const mix = await fetched('Marram House', monthOf(page));
  const sentence = (await page.locator('main p').first().textContent()) ?? '';
  expect(sentence).toContain(`${mix.totals.sold.toLocaleString('en-GB')} portions`);
  expect(sentence).toContain(`€${Math.round(Number(mix.totals.margin)).toLocaleString('en-GB')}`);
  expect(sentence).toContain(`${((mix.totals.foodCostPct ?? 0) * 100).toFixed(1)}\u2009%`);
  expect(sentence).toContain('by recipe');

  const drawn = mix.items.filter(({ margin }) => margin !== null);
  const marks = page.getByRole('listbox').getByRole('option');
  await expect.poll(() => marks.count()).toBe(drawn.length);
  expect(await marks.allTextContents()).toEqual(drawn.map(({ item }) => item));
  // 0.70 / 6 dishes = 11.667 %
  expect(mix.thresholds.popularity).toBeCloseTo(0.7 / 6, 12);
  await expect.poll(() => page.locator('figure svg').first().textContent()).toContain('popular from 11.667\u2009%');
});

test('the plane is one tab stop: arrows go from mark to mark, the line under it reads each, Escape lets go', async () => {
  const page = await visit('/');
  const list = page.getByRole('listbox');
  await list.focus();
  const active = () => list.getAttribute('aria-activedescendant');
  const reading = () => page.locator('[aria-live=polite]').textContent();
  await page.keyboard.press('Home');
  const first = await active();
  const names = await list.getByRole('option').allTextContents();
  expect(await reading()).toContain(names[0]);
  const seen = new Set([first]);
  for (const key of ['ArrowLeft', 'ArrowDown', 'ArrowLeft', 'ArrowUp', 'ArrowRight']) {
    await page.keyboard.press(key);
    seen.add(await active());
  }
  expect(seen.size).toBeGreaterThan(2);
  const chosen = await list.locator('[aria-selected=true]').textContent();
  expect(await reading()).toMatch(/% of portions · leaves /);
  expect(await reading()).toContain(chosen);
  await page.keyboard.press('Escape');
  expect(await active()).toBeNull();
  expect(await list.locator('[aria-selected=true]').count()).toBe(0);
  await page.keyboard.press('Tab');
  expect(await list.evaluate((element) => element.contains(document.activeElement))).toBe(false);
});

test('pointing at a mark chooses the nearest one', async () => {
  const page = await visit('/');
  const option = page.getByRole('option').last();
  await option.scrollIntoViewIfNeeded();
  const box = await option.boundingBox();
  await page.mouse.move((box?.x ?? 0) + 14, (box?.y ?? 0) + 10);
  expect(await page.locator('[aria-selected=true]').textContent()).toBe(await option.textContent());
});

test('the ribbon is one tab stop: arrows move the focus and load nothing, Enter follows', async () => {
  const page = await visit('/');
  const links = page.locator('nav[aria-label=Month] a[data-month]');
  expect(await links.evaluateAll((all) => all.filter((link) => (link as HTMLElement).tabIndex === 0).length)).toBe(1);
  const before = page.url();
  await page.locator('nav[aria-label=Month] a[tabindex="0"]').focus();
  const focused = () => page.evaluate(() => (document.activeElement as HTMLElement).dataset.month ?? '');
  const latest = await focused();
  await page.keyboard.press('ArrowLeft');
  const earlier = await focused();
  expect(earlier < latest).toBe(true);
  await page.keyboard.press('Home');
  expect((await focused()) <= earlier).toBe(true);
  await page.keyboard.press('End');
  expect(await focused()).toBe(latest);
  await page.keyboard.press('PageUp');
  await page.keyboard.press('PageDown');
  expect(page.url()).toBe(before);
  await page.keyboard.press('ArrowLeft');
  await page.keyboard.press('Enter');
  await page.waitForURL(`**month=${earlier}**`);
  await expect
    .poll(() => page.locator('nav[aria-label=Month] a[aria-current]').getAttribute('data-month'))
    .toBe(earlier);
  const mix = await fetched('Marram House', earlier);
  await expect
    .poll(() => page.locator('main p').first().textContent())
    .toContain(`${mix.totals.sold.toLocaleString('en-GB')} portions`);
});

test('a head of the table sorts by its column, and says which way', async () => {
  const page = await visit('/');
  const head = page.getByRole('columnheader', { name: 'Sold' });
  await head.getByRole('button').click();
  expect(await head.getAttribute('aria-sort')).toBe('descending');
  const sold = (await tableOf(page)).slice(0, -1).map((row) => Number(row.sold?.replaceAll(',', '').replace('–', '0')));
  expect(sold).toEqual([...sold].sort((a, b) => b - a));
  await head.getByRole('button').click();
  expect(await head.getAttribute('aria-sort')).toBe('ascending');
  expect(await page.locator('th[aria-sort]').count()).toBe(1);
});

test('Copy takes the table as it is sorted, and CSV leads to the same rows', async () => {
  const page = await visit('/', { permissions: ['clipboard-read', 'clipboard-write'] });
  await page.getByRole('button', { name: 'Copy' }).click();
  await expect.poll(() => page.locator('table').getByRole('status').textContent()).toMatch(/^Copied \d+ rows\.$/);
  const lines = (await page.evaluate(() => navigator.clipboard.readText())).split('\n');
  const table = await tableOf(page);
  expect(lines).toHaveLength(table.length + 1);
  expect(lines[1]?.split('\t')[0]).toBe(table[0]?.item);
  const href = await page.getByRole('link', { name: 'CSV' }).getAttribute('href');
  const csv = await fetch(new URL(href ?? '', page.url()));
  expect(csv.headers.get('content-type')).toContain('text/csv');
  expect((await csv.text()).trim().split('\r\n')).toHaveLength(table.length);
});

test('an address that asks for nothing there is says so on the page', async () => {
  const none = await visit('/menu?month=2019-01');
  expect(await none.locator('main').textContent()).toContain('Nothing sold in January 2019');
  const wrong = await visit('/menu?month=2026-13');
  expect(await wrong.locator('main').textContent()).toContain('No such period');
  expect(await wrong.title()).toBe('No such period · Plateworth');
  expect(await wrong.locator('h1').textContent()).toBe('No such period');
  const section = await visit(`/menu?month=2026-10&section=${encodeURIComponent('No such')}`);
  expect(await section.locator('main').textContent()).toContain('No such section');
});

for (const width of [1440, 800, 390]) {
  for (const colorScheme of ['light', 'dark'] as const) {
    test(`/menu at ${width} px, ${colorScheme}: nothing runs over the sheet, everything has a name`, async () => {
      const page = await visit('/', { viewport: { width, height: 900 }, colorScheme });
      await page.getByRole('option').first().waitFor({ state: 'attached' });
      expect(
        await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth),
      ).toBe(0);
      expect(await page.locator('h1').count()).toBe(1);
      expect(await page.locator('main').count()).toBe(1);
      expect(await page.locator('table caption').count()).toBe(1);
      expect(await unnamed(page)).toEqual([]);
      expect(await repeatedIds(page)).toEqual([]);
    });
  }
}

/** Ids that stand on the page more than once. */
function repeatedIds(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const ids = [...document.querySelectorAll('[id]')].map(({ id }) => id);
    return ids.filter((id, index) => ids.indexOf(id) !== index);
  });
}

/** Controls and pictures that say nothing of themselves, and controls too small to hit. */
function unnamed(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const controls = [
      ...document.querySelectorAll<HTMLElement>('a[href], button, summary, [role=listbox], [role=option]'),
    ];
    return controls.flatMap((control) => {
      const box = control.getBoundingClientRect();
      const name = control.getAttribute('aria-label') ?? control.textContent?.trim() ?? '';
      const what = `${control.tagName} ${name}`;
      if (name === '') return [`${control.outerHTML.slice(0, 120)} has no name`];
      const isShown = box.width > 0 && control.closest('.unseen') === null;
      const isInText = control.closest('p, li, td, th') !== null && control.tagName === 'A';
      if (isShown && !isInText && (box.height < 24 || box.width < 24))
        return [`${what} is ${box.width} x ${box.height}`];
      return [];
    });
  });
}

test('a narrow table offers all columns, and then scrolls in itself and not with the page', async () => {
  const page = await visit('/', { viewport: { width: 390, height: 844 } });
  const share = page.locator('td[data-column=share]').first();
  expect(await share.isVisible()).toBe(false);
  await page.getByRole('button', { name: 'all columns' }).click();
  expect(await share.isVisible()).toBe(true);
  expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBe(
    0,
  );
  expect(await page.getByRole('region', { name: /all columns/ }).getAttribute('tabindex')).toBe('0');
});
