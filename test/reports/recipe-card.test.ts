import { expect, test } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import { type RecipeCard, recipeCard } from '@/lib/reports/recipe-card';
import { Book, day, days } from '../books';

const ON = day('2026-10-31');

function book() {
  const written = new Book();
  const sugar = written.ingredient('Sugar', 'g', 0.001, { contains: [], mayContain: [] });
  const peel = written.ingredient('Lemons', 'g', 0.002, { usableYield: 0.8, contains: [], mayContain: ['celery'] });
  const egg = written.ingredient('Egg', 'each', 0.3, { contains: ['eggs'], mayContain: [], gramsEach: 50 });
  written.part(egg, 'yolk', 18, 'g', 1);
  const curd = written.component(
    'Curd',
    {
      ...{ yields: [900, 'g'], batchLossG: 100, breakage: 0.1, handsOnMinutes: 30, grade: 'pastry' },
      ...{ shelfLifeDays: 4, smallestBatch: 450, cautions: ['raw egg'] },
    },
    [500, 'g', sugar],
    [200, 'g', peel],
    [100, 'g', peel, 'bought'],
    [90, 'g', egg, { part: 'yolk' }],
  );
  const box = written.ingredient('Box', 'each', 0.2, { department: 'packaging' });
  const dish = written.dish(
    'Lemon glass',
    { platingMinutes: 2, platingGrade: 'commis' },
    [60, 'g', curd],
    [1, 'each', box, { channel: 'takeaway' }],
  );
  return { written, curd, dish };
}

function card(written: Book, item: Parameters<typeof recipeCard>[1], times: number): RecipeCard {
  const period = costPeriod(written.facts(), days('2026-10'), 'everything');
  return recipeCard(period, item, ON, { times, list: 'eu' }) ?? expect.unreachable('there is a card');
}

// Two batches: 2 * (900 - 100) = 1,600 g, of which 10 % breaks: 1,440 g are served. 400 g of prepared lemons at 80 % are 500 g bought.
test('recipeCard(period, item, day, options) of two batches doubles every quantity and minute', () => {
  const { written, curd } = book();
  const made = card(written, curd, 2);
  expect(made).toMatchObject({
    gives: 1600,
    handsOnMinutes: 60,
    grade: 'pastry',
    platingMinutes: null,
    shelfLifeDays: 4,
  });
  expect(made.serves).toBeCloseTo(1440, 9);
  expect(made.smallestBatch).toEqual({ quantity: 450, unit: 'g' });
  const lines = made.lines.map(({ item, quantity, unit, usableYield, part }) => [
    item,
    quantity,
    unit,
    usableYield,
    part,
  ]);
  expect(lines).toEqual([
    ['Sugar', 1000, 'g', 1, null],
    ['Lemons', 400, 'g', 0.8, null],
    ['Lemons', 200, 'g', 1, null],
    ['Egg', 180, 'g', 1, 'yolk'],
  ]);
  for (const [place, taken] of [1000, 500, 200, 180].entries()) expect(made.lines[place]?.taken).toBeCloseTo(taken, 9);
});

test('recipeCard(period, item, day, options) says what is in it and warns of it', () => {
  const { written, curd, dish } = book();
  for (const item of [curd, dish]) {
    const { whatsInIt } = card(written, item, 1);
    const stated = whatsInIt.allergens.filter(({ state }) => state !== 'none-declared');
    expect(stated.map(({ allergen, state }) => [allergen, state])).toEqual([
      ['eggs', 'contains'],
      ['celery', 'may-contain'],
    ]);
    expect(whatsInIt.cautions).toEqual([{ caution: 'raw egg', from: ['Curd'] }]);
  }
});

test('recipeCard(period, item, day, options) of portions has what each channel adds, marked', () => {
  const { written, dish } = book();
  const made = card(written, dish, 12);
  expect(made).toMatchObject({
    gives: 12,
    serves: 12,
    platingMinutes: 24,
    platingGrade: 'commis',
    handsOnMinutes: null,
  });
  expect(made.lines).toMatchObject([
    { item: 'Curd', kind: 'component', quantity: 720, unit: 'g', taken: 720, channel: null },
    { item: 'Box', quantity: 12, channel: 'takeaway', taken: null },
  ]);
});

test('recipeCard(period, item, day, options) is null where no recipe is in force; a day outside is a bug', () => {
  const { written } = book();
  const later = written.dish('Later', { from: '2026-12-01' });
  const period = costPeriod(written.facts(), days('2026-10'), 'everything');
  expect(recipeCard(period, later, ON, { times: 1, list: 'eu' })).toBeNull();
  expect(() => recipeCard(period, later, day('2026-11-01'), { times: 1, list: 'eu' })).toThrow(RangeError);
});

// What its lines weigh is not known: a spoon of sugar has no density. The quantities are scaled all the same.
test('recipeCard(period, item, day, options) of a batch that is not measured scales its lines and gives nobody knows what', () => {
  const { written } = book();
  const salt = written.ingredient('Salt', 'g', 0.001);
  const brine = written.component('Brine', {}, [2, 'tsp', salt]);
  const made = card(written, brine, 3);
  expect(made).toMatchObject({ gives: null, serves: null, lines: [{ quantity: 6, unit: 'tsp', taken: null }] });
  expect(made.issues.map(({ code }) => code)).toEqual(['no-density', 'no-yield']);
});
