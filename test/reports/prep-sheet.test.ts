import { expect, test } from 'vitest';
import { dayText } from '@/lib/core/days';
import { costPeriod } from '@/lib/model/costed-period';
import type { ItemId } from '@/lib/model/facts';
import { type PrepOptions, type PrepSheet, prepSheet } from '@/lib/reports/prep-sheet';
import { Book, day } from '../books';

const SATURDAY = day('2026-10-31');
/** The four Saturdays before it, and two more. */
const SATURDAYS = ['2026-10-24', '2026-10-17', '2026-10-10', '2026-10-03', '2026-09-26', '2026-09-19'] as const;

/**
 * A tart takes 100 g of praline and 50 g of cream; a batch of praline is 1,000 g of sugar made into 1,000 g, of which 20 % breaks; a batch of
 * cream is 800 ml, 400 at least, kept for three days. A cup takes 2 yolks of 18 g.
 */
function book() {
  const written = new Book();
  const sugar = written.ingredient('Sugar', 'g', 0.001, { productGroup: 'Dry', usableYield: 0.5 });
  const milk = written.ingredient('Milk', 'ml', 0.001);
  const egg = written.ingredient('Egg', 'each', 0.3);
  written.part(egg, 'yolk', 18, 'g', 0.6);
  written.part(egg, 'white', 34, 'g', 0.4);
  const praline = written.component(
    'Praline',
    { yields: [1000, 'g'], breakage: 0.2, handsOnMinutes: 40, grade: 'Pastry', cautions: ['alcohol'] },
    [1000, 'g', sugar],
  );
  const cream = written.component(
    'Set cream',
    { yields: [800, 'ml'], smallestBatch: 400, shelfLifeDays: 3, handsOnMinutes: 20, grade: 'commis' },
    [1, 'l', milk],
  );
  const tart = written.dish(
    'Tart',
    { platingMinutes: 2, platingGrade: 'pastry' },
    [100, 'g', praline],
    [50, 'ml', cream],
  );
  const cup = written.dish('Cup', { handsOnMinutes: 1, grade: 'commis' }, [36, 'g', egg, { part: 'yolk' }]);
  written.menu(tart, 9);
  written.menu(cup, 4);
  return { written, tart, cup, cream, praline, milk };
}

function sheet(written: Book, options: Partial<PrepOptions> = {}): PrepSheet {
  const facts = written.facts();
  const range = { from: day('2026-09-05'), to: day('2026-11-01') };
  return prepSheet(costPeriod(facts, range, 'everything'), SATURDAY, { counts: facts.counts, ...options });
}

const component = ({ components }: PrepSheet, name: string) => components.find(({ item }) => item === name);

// Tarts of the last four Saturdays: 12, 8, 10 and, with two comps, 10: the mean is 10. Of 26 September nothing is asked.
test('prepSheet(period, day, options) expects the mean of the last four such weekdays, comps with them', () => {
  const { written, tart } = book();
  for (const [week, sold] of [12, 8, 10, 8, 500].entries()) written.sell(tart, SATURDAYS[week] ?? '', sold, 0);
  written.sell(tart, SATURDAYS[3], 0, 0, { comps: 2 });
  written.sell(tart, '2026-10-30', 70, 0); // a Friday
  for (const [week, covers] of [40, 50, 60].entries()) written.cover(SATURDAYS[week] ?? '', covers);
  const { items, like, expectedCovers } = sheet(written);
  expect(like.map(dayText)).toEqual(SATURDAYS.slice(0, 4));
  expect(items.map(({ item, expected, portions, days }) => [item, expected, portions, days])).toEqual([
    ['Cup', 0, 0, 4],
    ['Tart', 10, 10, 4],
  ]);
  expect(expectedCovers).toBe(50);
});

// Shut on the 17th: the Saturday before the four takes its place. The cup came onto the menu on the 20th: one Saturday of 6.
test('prepSheet(period, day, options) passes over days on which the house was shut, or an item not on sale', () => {
  const { written, tart } = book();
  const scoop = written.dish('Scoop', {});
  written.menu(scoop, 3, { from: '2026-10-20' });
  written.sell(scoop, SATURDAYS[0], 6, 0);
  for (const week of [0, 2, 3, 4]) written.sell(tart, SATURDAYS[week] ?? '', 4, 0);
  const gone = written.dish('Gone', {});
  written.menu(gone, 3);
  written.menu(gone, null, { from: '2026-10-25' });
  written.sell(gone, SATURDAYS[0], 6, 0);
  const { items, like } = sheet(written);
  expect(like.map(dayText)).toEqual([SATURDAYS[0], SATURDAYS[2], SATURDAYS[3], SATURDAYS[4]]);
  expect(items.map(({ item, expected, days }) => [item, expected, days])).toEqual([
    ['Cup', 0, 4],
    ['Scoop', 6, 1],
    ['Tart', 4, 4],
  ]);
});

// 10 tarts need 1,000 g of praline, with its breakage 1,000 / 0.8 = 1,250 g: 1.25 batches of 40 minutes, 1,250 g of sugar of which half is
// usable: 2,500 g. They need 500 ml of cream, above its smallest batch: 0.625 batches of 1 l of milk.
test('prepSheet(period, day, options) makes batches, breakage with them, and takes what they take', () => {
  const { written, tart } = book();
  const made = sheet(written, { portions: new Map([[tart, 10]]) });
  expect(component(made, 'Praline')).toMatchObject({
    needed: 1250,
    make: 1250,
    batches: 1.25,
    minutes: 50,
    cautions: ['alcohol'],
  });
  expect(component(made, 'Praline')).toMatchObject({ smallest: null, leadHours: null, earliest: null, unit: 'g' });
  expect(component(made, 'Set cream')).toMatchObject({
    needed: 500,
    make: 500,
    batches: 0.625,
    minutes: 12.5,
    leadHours: 48,
  });
  expect(component(made, 'Set cream')?.earliest).toBe(day('2026-10-29'));
  expect(made.ingredients).toMatchObject([
    { item: 'Milk', quantity: 625, unit: 'ml', wholes: null },
    { item: 'Sugar', quantity: 2500, unit: 'g', productGroup: 'Dry' },
  ]);
  expect(made.work).toEqual([
    { grade: 'commis', handsOnMinutes: 12.5, platingMinutes: 0 },
    { grade: 'Pastry', handsOnMinutes: 50, platingMinutes: 20 },
  ]);
  expect(made.withoutMinutes).toEqual([]);
});

// 4 tarts need 200 ml of cream, and at least 400 ml are made: 500 ml of milk, 10 minutes.
test('prepSheet(period, day, options) rounds up to the smallest batch', () => {
  const { written, tart } = book();
  const made = sheet(written, { portions: new Map([[tart, 4]]) });
  expect(component(made, 'Set cream')).toMatchObject({ needed: 200, make: 400, batches: 0.5, minutes: 10 });
  expect(made.ingredients[0]).toMatchObject({ item: 'Milk', quantity: 500 });
});

// 0.3 l and 50 ml of cream were counted the evening before: of 500 ml 150 are missing, and 400 are made; of 300 ml none.
test('prepSheet(period, day, options) makes less by what the last count holds', () => {
  const { written, tart, cream, praline } = book();
  written.count('2026-10-29', cream, 9, 'l');
  written.count('2026-10-30', cream, 0.3, 'l', 'Walk-in');
  written.count('2026-10-30', cream, 50, 'ml', 'Service fridge');
  written.count('2026-10-29', praline, 1, 'kg'); // two days old, and nobody said how long it keeps
  written.count('2026-10-31', praline, 1, 'kg'); // at the end of the day itself
  const ten = sheet(written, { portions: new Map([[tart, 10]]) });
  expect(component(ten, 'Set cream')).toMatchObject({ needed: 500, make: 400, held: { quantity: 350, tooOld: false } });
  expect(component(ten, 'Praline')).toMatchObject({
    make: 1250,
    held: { quantity: 0, countedOn: day('2026-10-29'), tooOld: true },
  });
  const six = sheet(written, { portions: new Map([[tart, 6]]) });
  expect(component(six, 'Set cream')).toMatchObject({ needed: 300, make: 0, batches: 0, minutes: 0 });
  expect(six.ingredients.map(({ item }) => item)).toEqual(['Sugar']);
});

// Kept three days, the day of making being the first: what was counted on the 29th is good on the 31st, on the 28th no longer.
test.each([
  ['2026-10-29', 350, false],
  ['2026-10-28', 0, true],
])('prepSheet(period, day, options) holds what was counted on %s as long as it keeps', (on, quantity, tooOld) => {
  const { written, tart, cream } = book();
  written.count(on, cream, 350, 'ml');
  const made = sheet(written, { portions: new Map([[tart, 10]]) });
  expect(component(made, 'Set cream')?.held).toEqual({ quantity, countedOn: day(on), tooOld });
});

// 5 cups take 5 * 36 = 180 g of yolk, from 10 eggs; the eggs themselves are not taken twice.
test('prepSheet(period, day, options) takes a part of a split ingredient, and says from how many', () => {
  const { written, cup } = book();
  const made = sheet(written, { portions: new Map([[cup, 5]]) });
  expect(made.ingredients).toMatchObject([{ item: 'Egg, yolk', quantity: 180, unit: 'g', wholes: 10 }]);
  expect(made.work).toEqual([{ grade: 'commis', handsOnMinutes: 5, platingMinutes: 0 }]);
});

// A caramel of 200 g goes into praline: what is held of praline needs no caramel. 30 guests get a bite of 5 g of caramel each: 150 g.
test('prepSheet(period, day, options) gives every guest the extras, and orders what goes into others before them', () => {
  const written = new Book();
  const sugar = written.ingredient('Sugar', 'g', 0.001);
  const caramel = written.component('Caramel', { yields: [200, 'g'] }, [200, 'g', sugar]);
  const praline = written.component('A praline', { yields: [100, 'g'] }, [50, 'g', caramel]);
  const tart = written.dish('Tart', {}, [100, 'g', praline]);
  const bite = written.recipe(written.item('extra', 'Bite'), {}, [5, 'g', caramel]);
  written.menu(tart, 9);
  written.count('2026-10-30', praline, 100, 'g');
  const said = new Map<ItemId, number>([[tart, 3]]);
  const made = sheet(written, { portions: said, covers: 30 });
  // 3 tarts need 300 g of praline, 100 g are held: 200 g take 100 g of caramel
  expect(made.components.map(({ item, needed, make }) => [item, needed, make])).toEqual([
    ['Caramel', 250, 250],
    ['A praline', 300, 200],
  ]);
  expect(made.covers).toBe(30);
  expect(made.withoutMinutes).toEqual(['A praline', 'Bite', 'Caramel', 'Tart']);
  expect(sheet(written, { portions: said }).components[0]?.needed).toBe(100);
  expect(bite).toBeGreaterThan(0);
});

test('prepSheet(period, day, options) shares portions that somebody said over the channels as they are expected', () => {
  const { written, tart } = book();
  written.menu(tart, 8, { channel: 'takeaway' });
  written.sell(tart, SATURDAYS[0], 3, 0);
  written.sell(tart, SATURDAYS[0], 1, 0, { channel: 'takeaway' });
  const shared = sheet(written, { portions: new Map([[tart, 20]]) });
  expect(
    shared.items
      .filter(({ item }) => item === 'Tart')
      .map(({ channel, expected, portions }) => [channel, expected, portions]),
  ).toEqual([
    ['dine_in', 3, 15],
    ['takeaway', 1, 5],
  ]);
});

test('prepSheet(period, day, options) says what is missing of the quantities, and nothing of prices', () => {
  const { written, tart } = book();
  const salt = written.ingredient('Salt', 'g', null);
  const brine = written.component('Brine', {}, [3, 'ml', salt]);
  const dish = written.dish('Salt tart', {}, [10, 'g', brine], [1, 'g', salt]);
  written.menu(dish, 5);
  expect(sheet(written, { portions: new Map([[tart, 1]]) }).issues).toEqual([]);
  const made = sheet(written, { portions: new Map([[dish, 2]]) });
  expect(made.issues.map(({ code }) => code)).toEqual(['no-density', 'no-yield']);
  expect(made.ingredients).toMatchObject([{ item: 'Salt', quantity: 2 }]);
});
