import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { dishAnswer } from '@/lib/answers/dish';
import { dishCostAnswer } from '@/lib/answers/dish-cost';
import { dishCostsAnswer } from '@/lib/answers/dish-costs';
import { type DishAnswer, dishShape } from '@/lib/answers/dish-shape';
import { menuMixAnswer } from '@/lib/answers/menu-mix';
import type { Answered } from '@/lib/answers/problem';
import { loadFolder } from '@/lib/changes/load-folder';
import { closeDatabase } from '@/lib/db/database';
import { MIX_MODELS } from '@/lib/model/mix/mix-models';
import { currentAsker } from '@/lib/session/asker';
import { command } from '../commands/command';
import { freshDatabase } from '../fresh-database';

const { db, url } = await freshDatabase();
const OWNER = currentAsker();
const MONTH = '2026-10';

const ask = (item: string, month = MONTH) => dishAnswer(OWNER, { venue: null, month, item });
async function answerOf<T>(asked: Promise<Answered<T>>): Promise<T> {
  const result = await asked;
  return result.ok ? result.answer : expect.unreachable(result.problem.detail);
}
const sumOf = (texts: readonly string[]) => texts.reduce((sum, text) => sum + Number(text), 0);

/** Within the twelve digits and ten decimals that money is written with. */
function expectSum(parts: readonly string[], whole: number): void {
  expect(Math.abs(sumOf(parts) - whole)).toBeLessThan(1e-9 * (parts.length + 1) * Math.max(1, Math.abs(whole) / 100));
}

beforeAll(async () => {
  process.env.DATABASE_URL = url;
  await loadFolder(db, 'seed/demo-house');
});

afterAll(closeDatabase);

describe('dishAnswer of the demo house', () => {
  test('has the figures of the menu mix, section by section, and its parts add up', async () => {
    let seen = 0;
    let moved = 0;
    for (const section of [null, 'Set menus', 'Drinks']) {
      const mix = await answerOf(menuMixAnswer(OWNER, { venue: null, month: MONTH, section, model: null }));
      for (const row of mix.items) {
        const dish = await answerOf(ask(row.item));
        expect(dishShape.parse(dish)).toEqual(dish);
        expect(dish.mixSection).toBe(section);
        const { figures } = dish;
        expect({ ...figures }).toMatchObject({
          ...{ sold: row.sold, comps: row.comps, netPrice: row.netPrice, plateCost: row.plateCost, floor: row.floor },
          ...{ share: row.share, margin: row.margin, contribution: row.contribution, foodCostPct: row.foodCostPct },
          ...{ estimated: row.estimated, linesMissing: row.linesMissing, linesTotal: row.linesTotal },
          daysOnSale: row.daysOnSale,
        });
        const { class: own, classShares, settled, between } = row;
        expect(dish.advice).toEqual(row.advice);
        expect(dish.standings[0]).toEqual({ model: mix.model, class: own, classShares, settled, between });
        expect(dish.standings.map(({ model }) => model)).toEqual(Object.keys(MIX_MODELS));
        if (row.plateCost !== null) {
          expectSum(
            dish.bought.map(({ cost }) => cost),
            Number(row.plateCost),
          );
        } else expect(dish.bought).toEqual([]);
        const now = dish.periods.at(-1);
        expect(now).toMatchObject({ month: MONTH, sold: row.sold, margin: row.margin, plateCost: row.plateCost });
        moved += expectChange(dish);
        seen++;
      }
    }
    expect(seen).toBeGreaterThan(20);
    expect(moved).toBeGreaterThan(5);
  });

  test('the change to this month starts where the month before ended, price and recipe', async () => {
    const [now, before] = [await answerOf(ask('Marram slate')), await answerOf(ask('Marram slate', '2026-09'))];
    expect(now.change).toMatchObject({ month: '2026-09', margin: { before: before.figures?.margin } });
    expect(Math.abs(Number(now.change?.plateCost?.before) - Number(before.figures?.plateCost))).toBeLessThan(1e-9);
    expect(now.periods).toHaveLength(18);
    expect(now.periods.at(-2)).toEqual(before.periods.at(-1));
  });

  test('an extra is given to every guest, at the cost that dish-costs has', async () => {
    const extra = await answerOf(ask('Pre-dessert'));
    const costs = await answerOf(dishCostsAnswer(OWNER, { venue: null, month: MONTH }));
    const { item: _, ...given } = costs.extras.find(({ item }) => item === 'Pre-dessert') ?? { item: '' };
    expect(extra).toMatchObject({ kind: 'extra', figures: null, given, standings: [], onSale: true });
    expectSum(
      extra.bought.map(({ cost }) => cost),
      Number(extra.given?.perCover),
    );
  });

  test('of a dish that is off the menu it says what it was, by period', async () => {
    const off = await answerOf(ask('Vanilla set cream'));
    expect(off).toMatchObject({ onSale: false, figures: null, change: null, onMenuSince: null, standings: [] });
    expect(off.menuEvents.at(-1)).toMatchObject({ date: '2026-09-02', kind: 'went', price: null, before: '8.50' });
    expect(off.periods.filter(({ onSale }) => onSale).length).toBeGreaterThan(10);
    expect(off.periods.at(-1)).toMatchObject({ onSale: false, plateCost: null, sold: 0 });
  });

  test('of a dish that came with the season it says since when, what it cost to develop, and what is in it', async () => {
    const dish = await answerOf(ask('smoke AND peat '));
    expect(dish).toMatchObject({
      item: 'Smoke and peat',
      onMenuSince: '2026-09-02',
      menuPrice: '10.50',
      components: 5,
    });
    expect(dish.development).toMatchObject({ trials: 7, hours: 17, lastTrial: '2026-08-30' });
    expect(dish.allergens?.contains.map(({ allergen }) => allergen)).toEqual(
      expect.arrayContaining(['milk', 'gluten']),
    );
    const { work, figures } = dish;
    expectSum([work?.recipeLabour ?? '', work?.platingCost ?? '', work?.afterLabour ?? ''], Number(figures?.margin));
    expectSum(work?.plating.map(({ cost }) => cost ?? '') ?? [], Number(work?.platingCost));
    expectSum(work?.handsOn.map(({ cost }) => cost ?? '') ?? [], Number(work?.recipeLabour));
  });

  test('its plate cost is the mean that the working speaks of', async () => {
    const dish = await answerOf(ask('Sea fret'));
    const asked = { venue: null, item: 'Sea fret', date: null, month: MONTH, channel: null, section: dish.mixSection };
    expect((await answerOf(dishCostAnswer(OWNER, asked))).period?.plateCost).toBe(dish.figures?.plateCost);
  });

  test('looks back on weeks as on months', async () => {
    const dish = await answerOf(ask('Sea fret', '2026-W41'));
    expect(dish.periods).toHaveLength(18);
    expect(dish.periods.at(-1)?.month).toBe('2026-W41');
    expect(dish.change?.month).toBe('2026-W40');
  });

  test('a name that nobody knows, and what nobody orders, are refused with a sentence', async () => {
    expect(await ask('Sea frett')).toMatchObject({
      problem: { status: 404, detail: expect.stringContaining('; Sea fret;') },
    });
    expect(await ask('Dark couverture 70 %')).toMatchObject({
      problem: { status: 404, detail: expect.stringContaining('is an ingredient') },
    });
    expect(await ask('Sea fret', '2026-13')).toMatchObject({ problem: { status: 400 } });
  });

  test('report dish gives the same answer as JSON, a line a period as CSV, and a sheet', async () => {
    const words = ['dish', '--item', 'Marram slate', '--month', MONTH];
    const json = await command(url, 'report', ...words, '--json');
    expect(JSON.parse(json.stdout)).toEqual(await answerOf(ask('Marram slate')));
    const csv = await command(url, 'report', ...words, '--csv');
    expect(csv.stdout.trimEnd().split('\r\n')).toHaveLength(19);
    const plain = await command(url, 'report', ...words);
    expect(plain.stdout).toContain('Marram slate\nChocolate · ten components · on the menu since 1 May 2025');
    expect((await command(url, 'report', 'dish', '--month', MONTH)).stderr).toContain('--item NAME');
  });
});

/** 1 where the plate cost moved: then the ingredients make up what it moved by, and the parts what it left. */
function expectChange({ change, figures }: DishAnswer): number {
  if (!change?.plateCost || !figures) return 0;
  const { before, atNewPrices, after, price, recipe, ingredients } = change.plateCost;
  expect(Math.abs(Number(after) - Number(figures.plateCost))).toBeLessThan(1e-9);
  expectSum([before, price], Number(atNewPrices));
  expectSum([atNewPrices, recipe], Number(after));
  expectSum(
    ingredients.map((each) => each.price),
    Number(price),
  );
  expectSum(
    ingredients.map((each) => each.recipe),
    Number(recipe),
  );
  const { before: from, after: to, ...parts } = change.contribution ?? { before: '0', after: '0' };
  expectSum([from, ...Object.values(parts)], Number(to));
  return price === '0.00' ? 0 : 1;
}
