import { execFile } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { dishShape } from '@/lib/answers/dish-shape';
import { menuMixShape } from '@/lib/answers/menu-mix-shape';
import { priceChangeShape } from '@/lib/answers/price-change-shape';
import { demoProgram } from './demo-program';
import { expectPrinted } from './printed';
import { type Running, startProgram, surroundings } from './start-program';
import { tableOf } from './table-of';
import { visitor } from './visit';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

describe('the owner on a Monday', () => {
  const demo = demoProgram();

  test('last week, the mix, the dish on the line, its price raised by 0.50, and the address sent to a partner', async () => {
    const page = await demo.visit('/menu/week');
    await page.getByText(/covers spent/).waitFor();

    await page.getByRole('link', { name: 'Mix', exact: true }).click();
    await page.getByText(/are on the line/).waitFor();
    const month = new URL(page.url()).searchParams.get('month') ?? '';
    const mix = menuMixShape.parse(await demo.fetched(`${month}/menu-mix`));
    const doubtful = mix.items.filter(({ settled }) => settled === false).map(({ item }) => item);
    const dish = doubtful.includes('Coffee and cardamom choux') ? 'Coffee and cardamom choux' : (doubtful[0] ?? '');

    await page.locator('tbody').getByRole('link', { name: dish }).click();
    await page.getByRole('heading', { name: dish, level: 1 }).waitFor();
    const depth = dishShape.parse(await demo.fetched(`${month}/dishes/${encodeURIComponent(dish)}`));
    expect(depth.item).toBe(dish);

    await page.getByRole('link', { name: 'Try another price' }).click();
    await page.getByRole('heading', { name: /Price changes/ }).waitFor({ state: 'attached' });
    const price = page.getByLabel('New price');
    const now = Number(await price.inputValue());
    await price.fill((now + 0.5).toFixed(2));
    await price.press('Enter');
    await page.waitForURL(({ searchParams }) => searchParams.get('price') === `menu:${dish}:${now + 0.5}`);

    const shared = new URL(page.url());
    const edits = shared.searchParams.getAll('price');
    expect(edits).toEqual([`menu:${dish}:${now + 0.5}`]);
    const query = new URLSearchParams(edits.map((edit) => ['price', edit]));
    const change = priceChangeShape.parse(await demo.fetched(`${month}/price-change?${query}`));
    const item = change.items.find((each) => each.item === dish);
    expect(item?.breakEvenSalesChange).toBeLessThan(0);

    const partner = await demo.visit(`${shared.pathname}${shared.search}`);
    const row = (await tableOf(partner.locator('table').first())).find((each) => each.item === dish);
    expectPrinted(row?.after, Number(item?.margin));
    // how many portions it may lose before the rise costs more than it brings
    expect(row?.breakEven).toMatch(/\u2212/);
  });
});

describe('day one, with little', () => {
  const visit = visitor();
  const folder = join(mkdtempSync(join(tmpdir(), 'plateworth-folders-')), 'corner-room');
  let program: Running;

  beforeAll(async () => {
    writeDayOne(folder);
    program = await startProgram('--empty');
    const words = ['--import', 'tsx', 'lib/commands/load.ts', folder, '--json'];
    const load = promisify(execFile)(process.execPath, words, { cwd: ROOT, env: surroundings(program.dataDir) });
    await expect(load).rejects.toMatchObject({ code: 3 }); // sales of a name that nobody knows wait
  });
  afterAll(async () => {
    await program.stop();
    rmSync(join(folder, '..'), { recursive: true, force: true });
  });

  // 4 tarts, 3 fools, 2 cheeses, 1 ices a day: of 10 portions the tart (4) and the cheese (2) have a margin
  test('shares, achieved prices, floors, estimates, coverage, what to cost next and what waits are on the page', async () => {
    const page = await visit(`${program.address}/menu`);
    await page
      .locator('main')
      .getByText(/margins known for 60/)
      .waitFor();
    const rows = await tableOf(page.locator('table').first());
    const of = (name: string) => rows.find((row) => row.item === name);
    // 9.90 with 10 % tax inside
    expect(of('CHOC TART *')).toMatchObject({ sold: '80', share: '40.0', price: '9.00' });
    expect(of('Fool (rhubarb)')?.plateCost).toMatch(/^at least /);
    expect(of('Ices 3')?.plateCost).toBe('not costed');
    const text = ((await page.locator('main').textContent()) ?? '').replaceAll(/\s+/g, ' ');
    expect(text).toContain('the owner’s estimate');
    expect(text).toMatch(/Cost these next\s?Fool \(rhubarb\)/);
    expect(text).toContain('OPEN FOOD');
  });

  test.each(['models', 'prices', 'dishes', 'year', 'week'])('/menu/%s opens on so little', async (view) => {
    const page = await visit(`${program.address}/menu/${view}`);
    await page.locator('table').first().waitFor();
    expect(await page.locator('main').textContent()).not.toMatch(/NaN|undefined|null|Infinity/);
  });
});

/** A till's export with its own names and gross prices, some prices, half the recipes, no counts. */
function writeDayOne(folder: string): void {
  mkdirSync(folder, { recursive: true });
  const file = (name: string, ...lines: readonly string[]) =>
    writeFileSync(join(folder, name), `${lines.join('\n')}\n`);
  const days = Array.from({ length: 20 }, (_, at) => `2026-09-${String(at + 1).padStart(2, '0')}`);
  const sold = [
    ['CHOC TART *', 4, 9.9],
    ['Fool (rhubarb)', 3, 8.8],
    ['Cheese', 2, 11],
    ['Ices 3', 1, 7.7],
    ['OPEN FOOD', 1, 5],
  ] as const;
  file('venue.csv', 'setting,value', 'name,Corner Room', 'currency,EUR');
  file(
    'sales.csv',
    'date,item,sold,gross_revenue,tax_pct',
    ...days.flatMap((day) =>
      sold.map(([name, count, gross]) => `${day},${name},${count},${(count * gross).toFixed(2)},10`),
    ),
  );
  file(
    'menu.csv',
    'item,valid_from,price,tax_pct,tax_included',
    ...sold.slice(0, 4).map(([name, , gross]) => `${name},2026-01-01,${gross},10,yes`),
  );
  file('ingredients.csv', 'ingredient,measure', 'Chocolate,g', 'Cream,ml', 'Rhubarb,g');
  file(
    'offers.csv',
    'supplier,code,ingredient,pack_count,pack_size,pack_unit',
    'Quay Stores,C1,Chocolate,1,1,kg',
    'Quay Stores,C2,Cream,1,1,l',
  );
  file(
    'offer_prices.csv',
    'supplier,code,valid_from,price,kind',
    'Quay Stores,C1,2026-01-01,20.00,list',
    'Quay Stores,C2,2026-01-01,6.00,list',
  );
  file(
    'recipes.csv',
    'recipe,kind,valid_from,estimated_cost',
    'CHOC TART *,dish,2026-01-01,',
    'Fool (rhubarb),dish,2026-01-01,',
    'Cheese,dish,2026-01-01,3.00',
  );
  file(
    'recipe_lines.csv',
    'recipe,valid_from,item,quantity,unit',
    'CHOC TART *,2026-01-01,Chocolate,60,g',
    'CHOC TART *,2026-01-01,Cream,80,ml',
    'Fool (rhubarb),2026-01-01,Cream,120,ml',
    'Fool (rhubarb),2026-01-01,Rhubarb,90,g',
  );
}
