import { expect, test } from 'vitest';
import { menuMixShape } from '@/lib/answers/menu-mix-shape';
import { weekShape } from '@/lib/answers/week-shape';
import { demoProgram } from './demo-program';
import { expectPrinted } from './printed';
import { tableOf } from './table-of';

const { visit, reported, fetched } = demoProgram();
const weekAt = async (month: string) => weekShape.parse(await fetched(`${month}/week`));

test('/menu/week has every figure of the answer, the same as command, HTTP and the mix of the week', async () => {
  const page = await visit('/menu/week?week=2026-W43');
  const answer = await weekAt('2026-W43');
  expect(weekShape.parse(await reported('week', '--month', '2026-W43'))).toEqual(answer);
  // without a name: the latest week whose sales are all in, since week 44 ends on a Sunday without sales
  expect(weekShape.parse(await reported('week'))).toEqual(answer);

  const table = await tableOf(page);
  expect(table).toHaveLength(8);
  for (const [at, day] of answer.days.entries()) {
    const cells = table[at] ?? {};
    if (day.covers === null) {
      expect([cells.covers, cells.spend, cells.sold, cells.left]).toEqual(['–', '–', '–', '–']);
      continue;
    }
    expectPrinted(cells.covers, day.covers);
    expectPrinted(cells.spend, Number(day.spendPerCover));
    expectPrinted(cells.sold, day.sold);
    expectPrinted(cells.left, Number(day.contribution));
    expectPrinted(cells.soldUsual, day.usual?.sold ?? Number.NaN);
    expectPrinted(cells.leftBefore, Number(day.yearBefore?.contribution));
  }
  const total = table.at(-1) ?? {};
  expectPrinted(total.covers, answer.week.covers ?? Number.NaN);
  expectPrinted(total.sold, answer.week.sold);
  expect(answer.days.reduce((sum, { sold }) => sum + sold, 0)).toBe(answer.week.sold);
  const left = answer.days.reduce((sum, { contribution }) => sum + Number(contribution ?? 0), 0);
  expect(left).toBeCloseTo(Number(answer.week.contribution), 6);

  const mix = menuMixShape.parse(await fetched(`2026-W43/menu-mix`));
  expect(answer.week).toMatchObject({
    sold: mix.totals.sold,
    contribution: mix.totals.margin,
    foodCostPct: mix.totals.foodCostPct,
    coverage: mix.coverage,
  });
});

test('/menu/week says in words what the table has', async () => {
  const page = await visit('/menu/week?week=2026-W43');
  const { week } = await weekAt('2026-W43');
  const sentence = (await page.locator('main p').first().textContent()) ?? '';
  expect(sentence).toContain('Week 43, 19 to 25 October 2026');
  expect(sentence).toContain(`${week.covers} covers spent €${Number(week.spendPerCover).toFixed(2)} each`);
  expect(sentence).toContain(`€${Math.round(Number(week.contribution)).toLocaleString('en-GB')}`);
  expect(await page.title()).toBe('Week 43 of 2026 · Plateworth');
});

test('/menu/week leads to the weeks beside it; the ribbon to the last week of a month', async () => {
  const page = await visit('/menu/week?month=2026-10');
  await page.getByRole('link', { name: 'earlier: Week 42 of 2026' }).click();
  await page.waitForURL('**/menu/week?week=2026-W42');
  await expect.poll(() => page.locator('main p').first().textContent()).toContain('Week 42, 12 to 18 October 2026');
  expect(await page.locator('nav[aria-label=Month] a[aria-current]').getAttribute('data-month')).toBe('2026-10');
  await page.locator('nav[aria-label=Month] a[data-month="2026-03"]').click();
  await page.waitForURL('**/menu/week?month=2026-03');
  await expect.poll(() => page.locator('main p').first().textContent()).toContain('Week 14, 30 March to 5 April 2026');
});

test('/menu/week of what there is not says so', async () => {
  const none = await visit('/menu/week?week=2019-W10');
  expect(await none.locator('main').textContent()).toContain('Nothing sold in Week 10 of 2019');
  const wrong = await visit('/menu/week?week=2026-W60');
  expect(await wrong.locator('main').textContent()).toContain('No such period');
});
