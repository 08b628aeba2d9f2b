import { beforeAll, describe, expect, test } from 'vitest';
import * as stakeRoute from '@/app/api/v1/venues/[venue]/months/[month]/at-stake/route';
import * as changeRoute from '@/app/api/v1/venues/[venue]/months/[month]/price-change/route';
import * as turningRoute from '@/app/api/v1/venues/[venue]/months/[month]/turning-prices/route';
import { atStakeShape } from '@/lib/answers/at-stake-shape';
import { menuMixAnswer } from '@/lib/answers/menu-mix';
import { priceChangeShape } from '@/lib/answers/price-change-shape';
import { problemShape } from '@/lib/answers/problem';
import { turningPricesShape } from '@/lib/answers/turning-prices-shape';
import { loadFolder } from '@/lib/changes/load-folder';
import { currentAsker } from '@/lib/session/asker';
import { command } from '../commands/command';
import { freshDatabase } from '../fresh-database';

const { db, url } = await freshDatabase();
const report = (...words: string[]) => command(url, 'report', ...words);
const IN_OCTOBER = ['--month', '2026-10'];
const COUVERTURE = 'Dark couverture 64 %';

beforeAll(async () => {
  process.env.DATABASE_URL = url;
  await loadFolder(db, 'seed/small');
});

const params = { params: Promise.resolve({ venue: '1', month: '2026-10' }) };
const address = (path: string) => `http://127.0.0.1/api/v1/venues/1/months/2026-10/${path}`;
const post = (body: unknown, query = '') =>
  changeRoute.POST(
    new Request(address(`price-change${query}`), {
      method: 'POST',
      body: typeof body === 'string' ? body : JSON.stringify(body),
    }),
    params,
  );
const changed = async (...edits: unknown[]) => priceChangeShape.parse(await (await post({ edits })).json());
const stake = (query = '') => stakeRoute.GET(new Request(address(`at-stake${query}`)), params);
const turning = (query: string) => turningRoute.GET(new Request(address(`turning-prices${query}`)), params);
const problemOf = async (response: Response) => {
  expect(response.headers.get('content-type')).toBe('application/problem+json');
  return problemShape.parse(await response.json());
};
const total = (amounts: readonly (string | null)[]): number =>
  amounts.reduce((sum, each) => sum + Number(each ?? 0), 0);

describe('price-change', () => {
  test('POST price-change without edits is the menu mix of the period, before and after', async () => {
    const change = await changed();
    const asked = { venue: null, month: '2026-10', section: null, model: null };
    const mix = await menuMixAnswer(currentAsker(), asked);
    if (!mix.ok) throw new Error(mix.problem.detail);
    const { totals, thresholds, items, issues } = mix.answer;
    for (const side of [change.before, change.after]) {
      expect(side).toMatchObject({
        revenue: totals.costedRevenue,
        plateCost: totals.plateCost,
        foodCostPct: expect.closeTo(totals.foodCostPct ?? Number.NaN, 12),
        contribution: totals.margin,
        margin: thresholds.margin,
      });
    }
    for (const row of change.items) {
      const same = items.find(({ item }) => item === row.item);
      expect([row.plateCost, row.netPrice, row.margin, row.classAfter, row.classBefore]).toEqual([
        same?.plateCost,
        same?.netPrice,
        same?.margin,
        same?.class,
        same?.class,
      ]);
    }
    expect(change.items).toHaveLength(items.length);
    expect(change.issues).toEqual(issues);
  });

  test('POST price-change and report price-change are the same, however the changes are written', async () => {
    const texts = [`${COUVERTURE}:+20%`, 'supplier:Harbour Cocoa & Nut:-2%', 'menu:Lemon choux:9.5', 'menu:+0.25'];
    const change = await changed(...texts);
    expect(change.edits).toEqual(texts);
    expect(change.before.contribution).not.toBe(change.after.contribution);
    expect(total(change.items.map(({ contributionChange }) => contributionChange))).toBeCloseTo(
      Number(change.contributionChange),
      6,
    );
    const fields = [
      { of: 'ingredient', name: COUVERTURE.toUpperCase(), changePct: 0.2 },
      { of: 'supplier', name: ' harbour cocoa & nut ', changePct: '-0.02' },
      { of: 'item', name: 'Lemon choux', to: '9.50' },
      { of: 'whole-menu', by: 0.25 },
    ];
    expect({ ...(await changed(...fields)), edits: [] }).toEqual({ ...change, edits: [] });

    const flags = texts.flatMap((text) => ['--price', text]);
    const json = await report('price-change', ...IN_OCTOBER, ...flags, '--json');
    expect([json.code, json.stderr]).toEqual([0, '']);
    expect(JSON.parse(json.stdout)).toEqual(change);
    const again = await report('price-change', ...IN_OCTOBER, '--edits', JSON.stringify(fields), '--csv');
    const csv = await post({ edits: fields, demand: 'none' }, '?format=csv');
    expect(csv.headers.get('content-type')).toContain('text/csv');
    expect(again.stdout).toBe(await csv.text());
    expect(again.stdout.split('\r\n')[0]).toContain('hold_margin_price,hold_pct_price,break_even_sales_change');
    const plain = await report('price-change', ...IN_OCTOBER, ...flags);
    expect(plain.stdout).toMatch(/^Contribution €[\d,.]+, with these prices €[\d,.]+ \(/);
  });

  test.each([
    [{ edits: ['Double cream'] }, 'edits.0', '“Double cream” is no change of a price.'],
    [
      { edits: ['menu:+1%', 'Couverture:+1%'] },
      'edits.1',
      `called “Couverture” in this period. There is ${COUVERTURE}; Milk`,
    ],
    [{ edits: ['group:Chocolates:+1%'] }, 'edits.0', 'There is no product group with a price called “Chocolates”'],
    [{ edits: [`${COUVERTURE}:-500`] }, 'edits.0', `A price of ${COUVERTURE} would fall below zero.`],
    [{ edits: [{ of: 'ingredient', name: COUVERTURE }] }, 'edits.0', 'one of changePct (0.1 is 10 % more), by and to'],
    [{ edits: [{ of: 'whole-menu', by: 1, to: 2 }] }, 'edits.0', 'one of changePct (0.1 is 10 % more), by and to'],
    [{ edits: [{ of: 'supper', by: 1 }] }, 'edits.0', 'A change has of (ingredient, group, supplier'],
    [{ edits: [], demand: 'logit' }, 'demand', 'portions are taken as they were sold'],
    [{ changes: [] }, 'body', 'Send JSON with a list of changes'],
    ['{"edits": [', 'body', 'Send JSON with a list of changes'],
  ])('POST price-change of %j says what is wrong with %s', async (body, name, text) => {
    const { status, detail, fields } = await problemOf(await post(body));
    expect([status, fields.map((field) => field.name)]).toEqual([400, [name]]);
    expect(fields[0]?.text).toContain(text);
    expect(detail).toContain(text);
  });

  test('report price-change says in a sentence what is wrong', async () => {
    for (const [words, text] of [
      [['--price', 'Couverture:+1%'], 'called “Couverture”'],
      [['--edits', '[', ...IN_OCTOBER], '--edits asks for JSON'],
      [['--edits', '[]', '--price', 'menu:+1%'], 'Either --price, or --edits'],
    ] as const) {
      const { code, stderr } = await report('price-change', ...IN_OCTOBER, ...words);
      expect([code, stderr]).toEqual([2, expect.stringContaining(text)]);
    }
  });
});

describe('at-stake', () => {
  test.each(['ingredient', 'group', 'supplier'])('GET at-stake?by=%s and report at-stake are the same', async (by) => {
    const answer = atStakeShape.parse(await (await stake(`?by=${by}`)).json());
    const json = await report('at-stake', ...IN_OCTOBER, '--by', by, '--json');
    expect(JSON.parse(json.stdout)).toEqual(answer);
    const csv = await report('at-stake', ...IN_OCTOBER, '--by', by, '--csv');
    expect(csv.stdout).toBe(await (await stake(`?by=${by}&format=csv`)).text());
    expect(csv.stdout.split('\r\n')[0]).toBe('name,spend,share,one_percent_per_year,dishes');
    expect(answer.items.length).toBeGreaterThan(3);
    expect(answer.items.reduce((sum, { share }) => sum + (share ?? 0), 0)).toBeCloseTo(1, 9);
    expect(answer.year).toEqual({ from: '2025-11-01', to: '2026-11-01' });
    // sales begin in August
    expect(answer.issues[0]).toMatchObject({ code: 'year-short', about: '2026-08-01' });
  });

  test('GET at-stake says the same of an end of the tornado as POST price-change of that price', async () => {
    const answer = atStakeShape.parse(await (await stake()).json());
    const [first] = answer.tornado;
    if (!first) throw new Error('a price moved in October');
    for (const [price, change] of [
      [first.lowest, first.atLowest],
      [first.highest, first.atHighest],
    ]) {
      const { contributionChange } = await changed(`${first.ingredient}:${price}`);
      expect(Number(contributionChange)).toBeCloseTo(Number(change), 5);
    }
    expect(answer.concentration?.of).toBe(answer.dishes);
  });

  test('GET at-stake?by=colour, and report at-stake --by colour, are refused with what there is', async () => {
    const text = 'There is ingredient, group and supplier.';
    expect(await problemOf(await stake('?by=colour'))).toMatchObject({ status: 400, fields: [{ name: 'by' }] });
    const { code, stderr } = await report('at-stake', ...IN_OCTOBER, '--by', 'colour');
    expect([code, stderr]).toEqual([2, expect.stringContaining(text)]);
  });
});

describe('turning-prices', () => {
  test('GET turning-prices and report turning-prices are the same, and each turns where it says', async () => {
    const answer = turningPricesShape.parse(
      await (await turning(`?ingredient=${encodeURIComponent(COUVERTURE.toLowerCase())}`)).json(),
    );
    expect([answer.ingredient, answer.unit]).toEqual([COUVERTURE, 'kg']);
    const asked = ['turning-prices', ...IN_OCTOBER, '--ingredient', COUVERTURE];
    expect(JSON.parse((await report(...asked, '--json')).stdout)).toEqual(answer);
    expect((await report(...asked)).stdout).toContain('Turns at, € a kg');

    const turned = answer.items.filter(({ turningPrice }) => turningPrice !== null);
    expect(turned.length).toBeGreaterThan(1);
    for (const { item, turningPrice, classNow, classBeyond } of turned) {
      const beyond = Number(turningPrice) * (Number(turningPrice) > Number(answer.priceNow) ? 1.0001 : 0.9999);
      const { items } = await changed(`${COUVERTURE}:${beyond.toFixed(6)}`);
      const row = items.find((each) => each.item === item);
      expect([row?.classBefore, row?.classAfter]).toEqual([classNow, classBeyond]);
    }
  });

  test.each(['miller', 'pavesic'])('GET turning-prices?model=%s has its classes', async (model) => {
    const query = `?ingredient=${encodeURIComponent(COUVERTURE)}&model=${model}`;
    const answer = turningPricesShape.parse(await (await turning(query)).json());
    const asked = { venue: null, month: '2026-10', section: null, model };
    const mix = await menuMixAnswer(currentAsker(), asked);
    if (!mix.ok) throw new Error(mix.problem.detail);
    expect(answer.model).toBe(model);
    const classes = new Map(mix.answer.items.map((row) => [row.item, row.class]));
    expect(new Map(answer.items.map(({ item, classNow }) => [item, classNow]))).toEqual(
      new Map([...classes].sort(([a], [b]) => (a < b ? -1 : 1))),
    );
    const flags = [...IN_OCTOBER, '--ingredient', COUVERTURE, '--model', model, '--json'];
    expect(JSON.parse((await report('turning-prices', ...flags)).stdout)).toEqual(answer);
  });

  test('GET turning-prices?model=labour is refused, since work does not move with a price', async () => {
    const { status, fields } = await problemOf(await turning('?ingredient=x&model=labour'));
    expect([status, fields[0]?.name]).toEqual([400, 'model']);
  });

  test('GET turning-prices of nothing, or of what nobody buys, is refused with names that are like it', async () => {
    expect(await problemOf(await turning(''))).toMatchObject({ status: 400, fields: [{ name: 'ingredient' }] });
    const { status, detail } = await problemOf(await turning('?ingredient=couverture'));
    expect([status, detail]).toEqual([404, expect.stringContaining(`There is ${COUVERTURE}; Milk couverture 38 %`)]);
    const { code, stderr } = await report('turning-prices', ...IN_OCTOBER);
    expect([code, stderr]).toEqual([2, expect.stringContaining('--ingredient NAME')]);
  });
});
