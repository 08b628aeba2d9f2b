import { afterAll, beforeAll, expect, test } from 'vitest';
import * as ingredientRoute from '@/app/api/v1/venues/[venue]/ingredients/[item]/route';
import * as ingredientsRoute from '@/app/api/v1/venues/[venue]/ingredients/route';
import * as recipeRoute from '@/app/api/v1/venues/[venue]/recipes/[item]/route';
import * as recipesRoute from '@/app/api/v1/venues/[venue]/recipes/route';
import { dishCostAnswer } from '@/lib/answers/dish-cost';
import { ingredientAnswer } from '@/lib/answers/ingredient';
import { ingredientsAnswer } from '@/lib/answers/ingredients';
import { ingredientShape, ingredientsShape, recipeShape, recipesShape } from '@/lib/answers/kitchen-shape';
import { openApi } from '@/lib/answers/openapi';
import type { Answered } from '@/lib/answers/problem';
import { recipeAnswer } from '@/lib/answers/recipe';
import { recipesAnswer } from '@/lib/answers/recipes';
import { saveIngredient } from '@/lib/changes/kitchen/save-ingredient';
import { saveRecipe } from '@/lib/changes/kitchen/save-recipe';
import { loadFolder } from '@/lib/changes/load-folder';
import { closeDatabase } from '@/lib/db/database';
import { currentAsker } from '@/lib/session/asker';
import { file } from '../changes/folders';
import { ADA, keptOf, quay, refusalOf } from '../changes/kitchen/quay';
import { freshDatabase } from '../fresh-database';

const { db, url } = await freshDatabase();
const OWNER = currentAsker();
const IN_QUAY = { venue: 'Quay', date: '2026-10-31' };

beforeAll(async () => {
  process.env.DATABASE_URL = url;
  await quay(db, 'Quay');
  await loadFolder(
    db,
    file('offers.csv', [
      'supplier,code,ingredient,pack_count,pack_size,pack_unit,chosen',
      'Far Stores,C9,Cream,2,500,g,no',
    ]),
    { venue: 'Quay' },
  );
  await loadFolder(
    db,
    file('ingredients.csv', ['ingredient,measure,usable_yield_pct,contains', 'Cream,g,80,milk', 'Salt,g,,']),
    { venue: 'Quay' },
  );
  await loadFolder(db, 'seed/small');
});
afterAll(closeDatabase);

function answerOf<T>(result: Answered<T>): T {
  return result.ok ? result.answer : expect.unreachable(result.problem.detail);
}

// Cream is 8.00 a kilogram as bought; of 80 % usable, a usable kilogram is 10.00.
test('ingredientsAnswer(asker, asked) has price, usable price, uses and what is missing of each', async () => {
  const answer = answerOf(await ingredientsAnswer(OWNER, IN_QUAY));
  expect(ingredientsShape.parse(answer)).toEqual(answer);
  expect(answer.items.map(({ item }) => item)).toEqual(['Cream', 'Hazelnuts', 'Salt', 'Sugar']);
  const [cream, hazelnuts, salt] = answer.items;
  // two offers, none chosen: nobody can tell which is bought
  expect(cream).toMatchObject({ price: null, supplier: null, usableYieldPct: 0.8, recipes: 1 });
  expect(cream?.issues.map(({ code }) => code)).toEqual(['offer-not-chosen']);
  expect(hazelnuts).toMatchObject({
    ...{ unitPrice: '0.02', price: '20.00', usablePrice: '20.00', per: { quantity: 1000, unit: 'g' } },
    ...{ supplier: 'Bay Stores', contains: ['hazelnut'], mayContain: [], recipes: 0, issues: [] },
  });
  expect(salt).toMatchObject({ price: null, contains: null, mayContain: null });
  expect(salt?.issues.map(({ code }) => code)).toEqual(['no-offer']);
});

test('ingredientAnswer(asker, asked) has all offers at the price of the day, and what it can be edited by', async () => {
  await loadFolder(db, file('offer_prices.csv', ['supplier,code,valid_from,price', 'Far Stores,C9,2026-11-01,7.50']), {
    venue: 'Quay',
  });
  const october = answerOf(await ingredientAnswer(OWNER, { ...IN_QUAY, item: 'cream' }));
  expect(ingredientShape.parse(october)).toEqual(october);
  expect(october.offers).toMatchObject([
    { supplier: 'Bay Stores', code: 'C1', chosen: false, price: '8.00', unitPrice: '0.008', issues: [] },
    { supplier: 'Far Stores', code: 'C9', chosen: false, price: null, unitPrice: null, issues: [{ code: 'no-price' }] },
  ]);
  const november = answerOf(await ingredientAnswer(OWNER, { ...IN_QUAY, date: '2026-11-02', item: 'Cream' }));
  expect(november.offers[1]).toMatchObject({ price: '7.50', unitPrice: '0.0075', priceFrom: '2026-11-01' });
  expect(november.whereUsed).toMatchObject([{ item: 'Tart', kind: 'dish', versions: ['2026-01-01'] }]);
  const [version] = november.versions;
  expect(version).toMatchObject({ validFrom: null, inForce: true, closed: false, cells: { usable_yield_pct: '80' } });
  const cells = Object.fromEntries(Object.entries(version?.cells ?? {}).map(([name, cell]) => [name, cell ?? '']));
  const { id, revision } = november;
  const body = { venue: 'Quay', item: String(id), revision, version: cells, measures: [], parts: [], yields: [] };
  // what was read, saved again, changes nothing
  expect(keptOf(await saveIngredient(ADA, body)).write).toBeNull();
});

test('recipesAnswer(asker, asked) costs each as its own working does, and counts what uses it', async () => {
  const answer = answerOf(await recipesAnswer(OWNER, { venue: 'Marram House', date: null }));
  expect(recipesShape.parse(answer)).toEqual(answer);
  expect(answer.date).toBe('2026-10-31');
  expect(answer.items.length).toBeGreaterThan(10);
  for (const { item, plateCost, floor, recipeLabour, per } of answer.items) {
    const asked = { venue: 'Marram House', item, date: answer.date, month: null, channel: null, section: null };
    const cost = answerOf(await dishCostAnswer(OWNER, asked));
    expect([plateCost, floor, recipeLabour, per]).toEqual([cost.plateCost, cost.floor, cost.recipeLabour, cost.per]);
  }
  const quayRows = answerOf(await recipesAnswer(OWNER, IN_QUAY)).items;
  expect(quayRows.map(({ item, recipes, onMenu }) => [item, recipes, onMenu])).toEqual([
    ['Cup', 0, true],
    ['Praline', 2, false],
    ['Tart', 0, true],
  ]);
});

test('recipeAnswer(asker, asked) has every version, its cost line by line and what is in it; saved again it changes nothing', async () => {
  const answer = answerOf(await recipeAnswer(OWNER, { ...IN_QUAY, item: 'Praline', list: null }));
  expect(recipeShape.parse(answer)).toEqual(answer);
  expect(answer.cost).toMatchObject({ plateCost: '1.00', lines: [{ item: 'Sugar', quantity: 1000, cost: '1.00' }] });
  expect(answer.whereUsed.map(({ item }) => item)).toEqual(['Cup', 'Tart']);
  const milk = answer.whatsInIt.allergens.find(({ allergen }) => allergen === 'milk');
  expect(milk).toEqual({ allergen: 'milk', state: 'none-declared', from: [] });
  const tart = answerOf(await recipeAnswer(OWNER, { ...IN_QUAY, item: 'Tart', list: 'us' }));
  expect(tart.whatsInIt.allergens[0]).toEqual({ allergen: 'milk', state: 'contains', from: ['Cream'] });
  const filled = (row: Readonly<Record<string, string | null>>) =>
    Object.fromEntries(Object.entries(row).map(([name, cell]) => [name, cell ?? '']));
  const [version] = tart.versions;
  const body = {
    ...{ venue: 'Quay', item: 'Tart', revision: tart.revision, lines: version?.lines.map(filled) },
    version: { ...filled(version?.cells ?? {}), valid_from: version?.validFrom },
  };
  expect(keptOf(await saveRecipe(ADA, body)).write).toBeNull();
  expect(refusalOf(await saveRecipe(ADA, { ...body, revision: tart.revision - 1 })).why).toBe('conflict');
});

test('recipeAnswer and ingredientAnswer of what is not there name what is like it', async () => {
  const ask = (item: string) => recipeAnswer(OWNER, { ...IN_QUAY, item, list: null });
  const [nothing, bought] = [await ask('praline cream'), await ask('Cream')];
  expect(nothing.ok ? null : nothing.problem.detail).toContain('There is Praline.');
  expect(bought.ok ? null : bought.problem.status).toBe(404);
  const made = await ingredientAnswer(OWNER, { ...IN_QUAY, item: 'Praline' });
  expect(made.ok ? null : made.problem.status).toBe(404);
  const list = await recipeAnswer(OWNER, { ...IN_QUAY, item: 'Praline', list: 'mars' });
  expect(list.ok ? null : list.problem.detail).toBe('“mars” is no list of allergens here. There is eu and us.');
  const day = await recipesAnswer(OWNER, { ...IN_QUAY, date: '2026-02-30' });
  expect(day.ok ? null : day.problem.status).toBe(400);
});

test('recipesAnswer(asker, asked) of a venue that has sold nothing is of today', async () => {
  const { date } = answerOf(await recipesAnswer(OWNER, { venue: 'Quay', date: null }));
  expect(Math.abs(Date.parse(date) - Date.now())).toBeLessThan(2 * 86_400_000);
});

test('GET ingredients, recipes and one of each answer as the answers do, and refuse options that they do not know', async () => {
  const address = (path: string) => new Request(`http://127.0.0.1/api/v1/venues/Quay/${path}`);
  const params = <More extends object>(more: More) => ({ params: Promise.resolve({ venue: 'Quay', ...more }) });
  const lists = { ingredients: [ingredientsRoute, ingredientsAnswer], recipes: [recipesRoute, recipesAnswer] } as const;
  for (const [path, [route, answer]] of Object.entries(lists)) {
    const said = await (await route.GET(address(`${path}?date=2026-10-31`), params({}))).json();
    expect(said).toEqual(answerOf<unknown>(await answer(OWNER, IN_QUAY)));
    expect((await route.GET(address(`${path}?colour=red`), params({}))).status).toBe(400);
  }
  const one = await ingredientRoute.GET(address('ingredients/Cream?date=2026-10-31'), params({ item: 'Cream' }));
  expect(await one.json()).toEqual(answerOf(await ingredientAnswer(OWNER, { ...IN_QUAY, item: 'Cream' })));
  const tart = await recipeRoute.GET(address('recipes/Tart?date=2026-10-31&list=us'), params({ item: 'Tart' }));
  expect(await tart.json()).toEqual(answerOf(await recipeAnswer(OWNER, { ...IN_QUAY, item: 'Tart', list: 'us' })));
  expect((await recipeRoute.POST(new Request('http://127.0.0.1/', { method: 'POST' }))).status).toBe(405);
  const paths = Object.keys((openApi() as { paths: object }).paths);
  expect(paths).toEqual(
    expect.arrayContaining(
      ['', '/{item}'].flatMap((end) => [`/venues/{venue}/ingredients${end}`, `/venues/{venue}/recipes${end}`]),
    ),
  );
});
