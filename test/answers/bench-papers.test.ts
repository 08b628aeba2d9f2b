import { afterAll, beforeAll, expect, test } from 'vitest';
import { prepSheetAnswer } from '@/lib/answers/prep-sheet';
import { prepSheetFile } from '@/lib/answers/prep-sheet-file';
import { prepSheetShape } from '@/lib/answers/prep-sheet-shape';
import type { Answered } from '@/lib/answers/problem';
import { recipeCardAnswer } from '@/lib/answers/recipe-card';
import { recipeCardFile } from '@/lib/answers/recipe-card-file';
import { recipeCardShape } from '@/lib/answers/recipe-card-shape';
import { loadFolder } from '@/lib/changes/load-folder';
import { prepSheetTable } from '@/lib/commands/prep-sheet-table';
import { recipeCardSheet } from '@/lib/commands/recipe-card-sheet';
import { closeDatabase } from '@/lib/db/database';
import { reportCsv } from '@/lib/format/report-csv';
import { currentAsker } from '@/lib/session/asker';
import { folder } from '../changes/folders';
import { quay } from '../changes/kitchen/quay';
import { command } from '../commands/command';
import { freshDatabase } from '../fresh-database';

const { db, url } = await freshDatabase();
const OWNER = currentAsker();
const ON = { venue: 'Quay', date: '2026-10-31' };

beforeAll(async () => {
  process.env.DATABASE_URL = url;
  await quay(db, 'Quay');
  await loadFolder(
    db,
    folder({
      'sales.csv': [
        'date,item,sold,net_revenue',
        '2026-10-24,Tart,10,90',
        '2026-10-17,Tart,20,180',
        '2026-10-17,Cup,8,32',
      ],
      'covers.csv': ['date,covers', '2026-10-24,12', '2026-10-17,24'],
      'counts.csv': ['date,item,quantity,unit', '2026-10-30,Praline,0.2,kg'],
      'recipe_lines.csv': [
        'recipe,valid_from,item,quantity,unit,note',
        'Tart,2026-01-01,Praline,100,g,in a ring',
        'Tart,2026-01-01,Cream,50,g,',
      ],
    }),
    { venue: 'Quay' },
  );
});
afterAll(closeDatabase);

function answerOf<T>(result: Answered<T>): T {
  return result.ok ? result.answer : expect.unreachable(result.problem.detail);
}
const detailOf = <T>(result: Answered<T>) => (result.ok ? null : result.problem.detail);
const prep = (more: Partial<Parameters<typeof prepSheetAnswer>[1]> = {}) =>
  prepSheetAnswer(OWNER, { ...ON, portions: [], covers: null, ...more });

// Two Saturdays: 15 tarts (1,500 g of praline, 750 g of cream) and 4 cups (200 g): 1,700 g, of which 200 are counted.
test('prepSheetAnswer(asker, asked) makes for the mean of such days, less what was counted', async () => {
  const answer = answerOf(await prep());
  expect(prepSheetShape.parse(answer)).toEqual(answer);
  expect(answer).toMatchObject({ like: ['2026-10-24', '2026-10-17'], covers: 18 });
  expect(answer.components).toMatchObject([
    { item: 'Praline', needed: 1700, held: 200, countedOn: '2026-10-30', make: 1500 },
  ]);
  expect(answer.ingredients.map(({ item, quantity }) => [item, quantity])).toEqual([
    ['Cream', 750],
    ['Sugar', 1500],
  ]);
  const said = answerOf(await prep({ portions: [{ item: 'cup', portions: 30 }], covers: 40 }));
  expect(said.components[0]?.needed).toBe(3000);
  expect(said.covers).toBe(40);
});

test('prepSheetAnswer(asker, asked) refuses numbers and names that mean nothing', async () => {
  expect(detailOf(await prep({ covers: -1 }))).toContain('has to be zero or more');
  expect(detailOf(await prep({ portions: [{ item: 'Tarte', portions: 3 }] }))).toContain('“Tarte”');
  const twice = [1, 2].map((portions) => ({ item: 'Tart', portions }));
  expect(detailOf(await prep({ portions: twice }))).toBe('Portions of Tart are named twice. Name them once.');
});

test('recipeCardAnswer(asker, asked) has the notes of its lines; portions and batches are each for their own kind', async () => {
  const card = (item: string, many: { portions?: number; batches?: number }) =>
    recipeCardAnswer(OWNER, {
      ...ON,
      item,
      portions: many.portions ?? null,
      batches: many.batches ?? null,
      list: null,
    });
  const tart = answerOf(await card('Tart', { portions: 12 }));
  expect(recipeCardShape.parse(tart)).toEqual(tart);
  expect(tart.lines).toMatchObject([
    { item: 'Praline', quantity: 1200, note: 'in a ring' },
    { item: 'Cream', quantity: 600, note: null },
  ]);
  expect(tart.platingMinutes).toBe(24);
  expect(answerOf(await card('Praline', { batches: 2.5 })).lines[0]?.quantity).toBe(2500);
  expect(detailOf(await card('Praline', { portions: 2 }))).toContain('Name them with --batches');
  expect(detailOf(await card('Tart', { batches: 2 }))).toContain('Name them with --portions');
  expect(detailOf(await card('Tart', { portions: 0 }))).toContain('above zero');
  expect(
    detailOf(
      await recipeCardAnswer(OWNER, {
        ...ON,
        date: '2025-01-01',
        item: 'Tart',
        portions: 1,
        batches: null,
        list: null,
      }),
    ),
  ).toBe('No recipe of Tart is in force on 2025-01-01. Name another day, or write one down.');
});

test('prepSheetTable(answer) and recipeCardSheet(answer) print what the answers say', async () => {
  const sheet = answerOf(await prep());
  expect(prepSheetTable(sheet)).toMatch(/^Praline +1\.7.kg +200.g +1\.5.kg +1\.5 +unknown +0.min$/m);
  expect(reportCsv(prepSheetFile(sheet))).toContain('\nPraline,g,1700,200,2026-10-30,no,1500,');
  const asked = { ...ON, item: 'Tart', portions: 12, batches: null, list: null };
  const card = answerOf(await recipeCardAnswer(OWNER, asked));
  expect(recipeCardSheet(card)).toMatch(/^ +1\.2.kg +Praline +in a ring$/m);
  expect(reportCsv(recipeCardFile(card))).toContain('1,Praline,component,1200,g,prepared,');
});

test('report prep-sheet --json is the answer, for what somebody expects', async () => {
  const words = ['--day', '2026-10-31', '--expect', 'Cup=30', '--covers', '40', '--json'];
  const { stdout } = await command(url, 'report', 'prep-sheet', ...words);
  const said = { portions: [{ item: 'Cup', portions: 30 }], covers: 40 };
  expect(JSON.parse(stdout)).toEqual(answerOf(await prep(said)));
});

test('report prep-sheet --expect without a number is wrong use', async () => {
  const { code, stderr } = await command(url, 'report', 'prep-sheet', '--expect', 'Cup');
  const sentence = '“Cup” names no portions. Write the item, an equals sign and how many: --expect "Tart=20".';
  expect([code, stderr]).toEqual([2, `${sentence}\nTry --help.\n`]);
});
