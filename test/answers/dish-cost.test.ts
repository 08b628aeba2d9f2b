import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { dishCostAnswer } from '@/lib/answers/dish-cost';
import { dishCostFile } from '@/lib/answers/dish-cost-file';
import { type CostLineAnswer, type DishCostAnswer, dishCostShape } from '@/lib/answers/dish-cost-shape';
import { dishCostsAnswer } from '@/lib/answers/dish-costs';
import { menuMixAnswer } from '@/lib/answers/menu-mix';
import { openApi } from '@/lib/answers/openapi';
import { periodsAnswer } from '@/lib/answers/periods';
import type { Answered } from '@/lib/answers/problem';
import { loadFolder } from '@/lib/changes/load-folder';
import { isNear } from '@/lib/core/near';
import { closeDatabase } from '@/lib/db/database';
import { inVenue } from '@/lib/db/in-venue';
import { venuesSeenBy } from '@/lib/db/venues';
import { reportCsv } from '@/lib/format/report-csv';
import { currentAsker } from '@/lib/session/asker';
import { freshDatabase } from '../fresh-database';

const { db, url } = await freshDatabase();
const OWNER = currentAsker();
const ANY = { venue: null, date: null, month: null, channel: null, section: null };
const MONTH = '2026-10';

function answerOf<T>(result: Answered<T>): T {
  return result.ok ? result.answer : expect.unreachable(result.problem.detail);
}
const problemOf = <T>(result: Answered<T>) => (result.ok ? expect.unreachable('it was answered') : result.problem);
const cost = async (asked: Partial<Parameters<typeof dishCostAnswer>[1]> & { item: string }) =>
  dishCostAnswer(OWNER, { ...ANY, ...asked });

async function names(venue: string): Promise<readonly string[]> {
  const { id } = (await venuesSeenBy(db, OWNER.person)).find(({ name }) => name === venue) ?? expect.unreachable(venue);
  const rows = await inVenue(db, { venue: id, person: OWNER.person }, 'read', (tx) =>
    tx.prisma.item.findMany({ where: { venueId: tx.venue }, select: { name: true } }),
  );
  return rows.map(({ name }) => name);
}

const known = ({ cost: whole, floor }: { cost: string | null; floor: string | null }) => Number(whole ?? floor ?? 0);
const everyLine = (lines: readonly CostLineAnswer[]): readonly CostLineAnswer[] =>
  lines.flatMap((line) => [line, ...everyLine(line.lines)]);

/** Within the ten decimals that money is written with. */
function expectSum(parts: readonly CostLineAnswer[], whole: number): void {
  const sum = parts.reduce((total, line) => total + known(line), 0);
  expect(isNear(sum, whole) || Math.abs(sum - whole) < 1e-9 * (parts.length + 1), `${sum} is not ${whole}`).toBe(true);
}

function expectParts(answer: DishCostAnswer): void {
  expect(dishCostShape.parse(answer)).toEqual(answer);
  expectSum(answer.lines, known({ cost: answer.plateCost, floor: answer.floor }));
  for (const line of everyLine(answer.lines)) {
    if (line.lines.length > 0) expectSum(line.lines, known(line));
    if (line.cost === null || line.bought === null) continue;
    // the price is written with ten decimals, so what is multiplied by a thousand grams keeps seven
    expect(line.bought * Number(line.unitPrice)).toBeCloseTo(Number(line.cost), 6);
  }
}

beforeAll(async () => {
  process.env.DATABASE_URL = url;
  await loadFolder(db, 'seed/small');
});

afterAll(closeDatabase);

describe('dishCostAnswer of the small house', () => {
  test('the parts sum to the whole for everything that has a name, on days before and after every change', async () => {
    const all = await names('Marram House');
    expect(all.length).toBeGreaterThan(20);
    for (const date of ['2026-08-01', '2026-10-11', '2026-10-31', '2025-01-01']) {
      for (const item of all) expectParts(answerOf(await cost({ item, date })));
    }
  });

  test('on one day it is the figure of dish-costs and menu-mix for a period of that day', async () => {
    const month = '2026-10-14..2026-10-15';
    const dishes = answerOf(await dishCostsAnswer(OWNER, { venue: null, month })).items;
    const mix = answerOf(await menuMixAnswer(OWNER, { venue: null, month, section: null, model: null })).items;
    expect(dishes.length).toBeGreaterThan(5);
    for (const row of [...dishes, ...mix]) {
      const answer = answerOf(await cost({ item: row.item, date: '2026-10-14' }));
      expect(answer.plateCost === null).toBe(row.plateCost === null);
      expect(Number(answer.plateCost)).toBeCloseTo(Number(row.plateCost), 9);
      expect(Number(answer.floor)).toBeCloseTo(Number(row.floor), 9);
      expect([answer.linesMissing, answer.linesTotal]).toEqual([row.linesMissing, row.linesTotal]);
    }
  });

  test('with a month it is that of the last day on sale, beside the mean of the menu mix and what it is a mean of', async () => {
    const mix = answerOf(await menuMixAnswer(OWNER, { venue: null, month: MONTH, section: null, model: null }));
    let changed = 0;
    for (const row of mix.items) {
      const answer = answerOf(await cost({ item: row.item, month: MONTH }));
      const { period } = answer;
      expect(period?.month).toBe(MONTH);
      expect(period?.plateCost).toBe(row.plateCost);
      expect(period?.sold).toBe(row.sold);
      const spans = period?.spans ?? [];
      const mean = spans.reduce((sum, span) => sum + span.sold * Number(span.plateCost), 0) / row.sold;
      if (row.plateCost !== null) expect(mean).toBeCloseTo(Number(row.plateCost), 9);
      expect(spans.at(-1)?.plateCost).toBe(answer.plateCost);
      expect(answer).toEqual({ ...answerOf(await cost({ item: row.item, date: answer.date })), period });
      if (spans.length > 1) changed += 1;
    }
    // prices change on 12 October: a month in which every cost stays would test no mean
    expect(changed).toBeGreaterThan(0);
  });

  test('without a date it is that of the last day of the latest month with sales', async () => {
    const latest = answerOf(await periodsAnswer(OWNER, { venue: null })).months.at(-1);
    const [item = ''] = await names('Marram House');
    const { date } = answerOf(await cost({ item }));
    expect(date.slice(0, 7)).toBe(latest?.month);
    expect(new Date(Date.parse(date) + 86_400_000).toISOString().slice(0, 10)).toBe(latest?.to);
  });

  test('an item is named in any case, or by its number', async () => {
    const byName = answerOf(await cost({ item: '  LEMON choux ', date: '2026-10-14' }));
    expect(byName.item).toBe('Lemon choux');
    const [venue] = await venuesSeenBy(db, OWNER.person);
    const found = await inVenue(db, { venue: venue?.id ?? expect.unreachable(), person: OWNER.person }, 'read', (tx) =>
      tx.prisma.item.findFirst({ where: { venueId: tx.venue, name: 'Lemon choux' }, select: { id: true } }),
    );
    expect(answerOf(await cost({ item: String(found?.id), date: '2026-10-14' }))).toEqual(byName);
  });

  test('what cannot be answered is said in a sentence', async () => {
    const said = async (asked: Parameters<typeof cost>[0]) => {
      const { status, detail } = problemOf(await cost(asked));
      return `${status} ${detail}`;
    };
    expect(await said({ item: 'Lemon tart' })).toMatch(/^404 .*“Lemon tart”.*Lemon choux/);
    expect(await said({ item: 'Xyz' })).toMatch(/^404 .*“Xyz”/);
    expect(await said({ item: 'Lemon choux', date: '2026-02-30' })).toMatch(/^400 .*“2026-02-30”/);
    expect(await said({ item: 'Lemon choux', date: 'October' })).toMatch(/^400 .*“October”/);
    expect(await said({ item: 'Lemon choux', date: '9999-12-31' })).toMatch(/^400 .*“9999-12-31”/);
    expect(await said({ item: 'Lemon choux', month: '2026-13' })).toMatch(/^400 .*“2026-13”/);
    expect(await said({ item: 'Lemon choux', month: MONTH, date: '2026-10-01' })).toMatch(/^400 .*not both/);
    expect(await said({ item: 'Lemon choux', month: '2019-01' })).toMatch(/^404 Lemon choux was neither/);
    expect(await said({ item: 'Lemon choux', channel: 'drone' })).toMatch(/^404 .*“drone”.*dine_in/);
    expect(await said({ item: 'Xyz', month: MONTH })).toMatch(/^404 .*“Xyz”/);
    expect(await said({ item: 'Lemon choux', venue: 'Nowhere' })).toMatch(/^404 .*“Nowhere”/);
  });

  test('reportCsv(dishCostFile(answer)) has a line for every line of the tree, each with its level', async () => {
    const answer = answerOf(await cost({ item: 'Lemon choux', date: '2026-10-14' }));
    const [head = '', ...rows] = reportCsv(dishCostFile(answer)).trim().split('\r\n');
    expect(head).toContain('level,item,kind,position,quantity,unit');
    expect(head).toContain('supplier,code,pack_count');
    expect(rows).toHaveLength(everyLine(answer.lines).length);
    expect(new Set(rows.map((row) => row[0]))).toEqual(new Set(['1', '2']));
  });
});

test('openApi() speaks of the working by addresses that lead somewhere', () => {
  const document = JSON.parse(JSON.stringify(openApi()));
  const text = JSON.stringify(document);
  expect(text).not.toContain('$id');
  const addresses = [...text.matchAll(/"\$ref":"#\/([^"]+)"/g)].map(([, path = '']) => path.split('/'));
  expect(addresses.length).toBeGreaterThan(2);
  for (const path of addresses) {
    expect(
      path.reduce((at, step) => at?.[step], document),
      path.join('/'),
    ).toBeTypeOf('object');
  }
});
