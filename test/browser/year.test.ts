import { readFileSync } from 'node:fs';
import readWorkbook from 'read-excel-file/node';
import { expect, test } from 'vitest';
import { menuMixShape } from '@/lib/answers/menu-mix-shape';
import { yearShape } from '@/lib/answers/year-shape';
import { demoProgram } from './demo-program';
import { expectPrinted } from './printed';
import { tableOf } from './table-of';

const { visit, reported, fetched } = demoProgram();
const yearAt = async (month: string) => yearShape.parse(await fetched(`${month}/year`));

test('/menu/year has every figure of the answer, the same as command, HTTP and the mix of each month', async () => {
  const page = await visit('/menu/year?month=2026-10');
  const answer = await yearAt('2026-10');
  expect(yearShape.parse(await reported('year', '--month', '2026-10'))).toEqual(answer);
  expect(answer.periods).toHaveLength(18);

  const table = await tableOf(page);
  expect(table).toHaveLength(19);
  for (const [at, row] of answer.periods.toReversed().entries()) {
    const cells = table[at] ?? {};
    expectPrinted(cells.days, row.tradingDays);
    expectPrinted(cells.sold, row.sold);
    expectPrinted(cells.contribution, Number(row.contribution));
    expectPrinted(cells.foodCost, (row.foodCostPct ?? Number.NaN) * 100);
    expectPrinted(cells.margin, Number(row.margin));
    expectPrinted(cells.known, (row.coverage ?? Number.NaN) * 100);
    if (row.yearBefore === null) expect(cells.before).toBe('–');
    else expectPrinted(cells.before, Number(row.yearBefore.contribution));
  }
  const total = table.at(-1) ?? {};
  expectPrinted(total.sold, answer.last.sold);
  expectPrinted(total.foodCost, (answer.last.foodCostPct ?? Number.NaN) * 100);
  const cents = table
    .slice(0, 12)
    .map(({ contribution = '' }) => Math.round(Number(contribution.replaceAll(',', '')) * 100));
  expect(Math.round(Number(total.contribution?.replaceAll(',', '')) * 100)).toBe(
    cents.reduce((sum, each) => sum + each, 0),
  );

  for (const month of ['2026-10', '2026-02']) {
    const mix = menuMixShape.parse(await fetched(`${month}/menu-mix`));
    const row = answer.periods.find(({ period }) => period === month);
    expect(row).toMatchObject({
      sold: mix.totals.sold,
      revenue: mix.totals.revenue,
      contribution: mix.totals.margin,
      foodCostPct: mix.totals.foodCostPct,
      margin: mix.thresholds.margin,
      coverage: mix.coverage,
      tradingDays: mix.tradingDays,
    });
  }
});

test('/menu/year says in words what the table has, and holds a month against the same one a year before', async () => {
  const page = await visit('/menu/year?month=2026-10');
  const { last, periods } = await yearAt('2026-10');
  const sentence = (await page.locator('main p').first().textContent()) ?? '';
  expect(sentence).toContain(`${last.sold.toLocaleString('en-GB')} portions`);
  expect(sentence).toContain(`€${Math.round(Number(last.contribution)).toLocaleString('en-GB')}`);
  const october = periods.at(-1);
  const grown = Number(october?.contribution) / Number(october?.yearBefore?.contribution) - 1;
  expect(sentence).toContain(`${(grown * 100).toFixed(1)}\u2009% more than October 2025`);
  expect(await page.title()).toBe('The year to October 2026 · Plateworth');
});

test('/menu/year: the ribbon leads to the year up to another month, the files to the same rows', async () => {
  const page = await visit('/menu/year?month=2026-10');
  const link = page.locator('nav[aria-label=Month] a[data-month="2026-03"]');
  expect(await link.getAttribute('href')).toBe('/menu/year?month=2026-03');
  await link.click();
  await page.waitForURL('**/menu/year?month=2026-03');
  await expect.poll(() => page.locator('tbody tr').count()).toBe(12);
  const href = (name: string) => page.getByRole('link', { name, exact: true }).getAttribute('href');
  const csv = await fetch(new URL((await href('CSV')) ?? '', page.url()));
  expect((await csv.text()).trim().split('\r\n')).toHaveLength(12);
  const xlsx = await fetch(new URL((await href('XLSX')) ?? '', page.url()));
  const sheets = await readWorkbook(Buffer.from(await xlsx.arrayBuffer()));
  expect(sheets.map(({ sheet }) => sheet)).toEqual(['year', 'menu changes', 'what it stands on']);
  expect(sheets[0]?.data).toHaveLength(12);
});

test('/menu/year marks where the menu changed, and draws twelve months on a phone', async () => {
  const page = await visit('/menu/year?month=2026-10', { viewport: { width: 390, height: 844 } });
  const shown = page.locator('[role=img] svg').locator('visible=true');
  expect(await shown.count()).toBe(1);
  expect(await shown.locator('rect').count()).toBe(24);
  const words = await shown.locator('text').allTextContents();
  expect(words).toEqual(expect.arrayContaining(['came', 'went', 'repriced', '+4', '\u22124']));
});

test('/menu/year of what there is not says so', async () => {
  const none = await visit('/menu/year?month=2019-01');
  expect(await none.locator('main').textContent()).toContain('Nothing sold in January 2019');
  const wrong = await visit('/menu/year?month=2026-W41');
  expect(await wrong.locator('main').textContent()).toContain('The year of what?');
});

test('the picture of /menu/year is saved as SVG with its look inside, and as PNG', async () => {
  const page = await visit('/menu/year?month=2026-10', { colorScheme: 'dark' });
  const saved = async (name: 'SVG' | 'PNG') => {
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name, exact: true }).click(),
    ]);
    return { file: download.suggestedFilename(), bytes: readFileSync(await download.path()) };
  };
  const svg = await saved('SVG');
  expect(svg.file).toBe('year-2026-10.svg');
  const text = svg.bytes.toString();
  expect(text).toMatch(/^<svg [^>]*viewBox="0 0 972 \d+"/);
  // on the paper of the dark theme, in the typefaces' own names, without a class that only the page knows
  expect(text).toContain('fill="rgb(20, 25, 26)"');
  expect(text).toContain('Source Sans 3');
  expect(text).not.toContain('class=');
  const png = await saved('PNG');
  expect(png.file).toBe('year-2026-10.png');
  expect(png.bytes.subarray(1, 4).toString()).toBe('PNG');
  expect(png.bytes.readUInt32BE(16)).toBe(2 * 972);
});

test('/menu/year prints: the middle drawing, every column, a head that repeats, no row that splits, no controls', async () => {
  const page = await visit('/menu/year?month=2026-10', { viewport: { width: 390, height: 844 } });
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('[role=img] svg').locator('visible=true').getAttribute('width')).toBe('690');
  for (const column of ['sold', 'margin', 'known', 'before', 'menu']) {
    expect(await page.locator(`td[data-column=${column}]`).first().isVisible()).toBe(true);
  }
  const styleOf = (selector: string, name: string) =>
    page
      .locator(selector)
      .first()
      .evaluate((element, of) => getComputedStyle(element).getPropertyValue(of), name);
  expect(await styleOf('thead', 'display')).toBe('table-header-group');
  expect(await styleOf('tbody tr', 'break-inside')).toBe('avoid');
  expect(await styleOf('section:has(> table)', 'break-inside')).toBe('avoid');
  for (const name of ['Copy', 'SVG'])
    expect(await page.getByRole('button', { name, exact: true }).isVisible()).toBe(false);
  expect(await page.locator('footer').textContent()).toContain('Marram House · October 2026 · open');
});
