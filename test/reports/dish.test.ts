import { describe, expect, test } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import type { ItemId } from '@/lib/model/facts';
import { type Dish, dish } from '@/lib/reports/dish';
import { dishPeriods } from '@/lib/reports/dish-periods';
import { Book, days } from '../books';

function dishIn(book: Book, item: ItemId, section: string | null = null): Dish {
  return (
    dish(costPeriod(book.facts(), days('2026-10'), 'everything'), item, section) ?? expect.unreachable('it is there')
  );
}

/** A posset of 60 g of a cream of one part sugar and nine of cream, and 20 g of shortbread, of which the makers say their minutes. */
function posset(): { book: Book; item: ItemId; cream: ItemId } {
  const book = new Book();
  book.labour('chef', 30);
  book.labour('finisher', 18);
  const cream = book.ingredient('Cream', 'g', 0.01);
  const sugar = book.ingredient('Sugar', 'g', 0.002);
  const set = book.component(
    'Set cream',
    { yields: [1000, 'g'], handsOnMinutes: 20, grade: 'chef' },
    [900, 'g', cream],
    [100, 'g', sugar],
  );
  const short = book.component(
    'Shortbread',
    { yields: [500, 'g'], handsOnMinutes: 25, grade: 'finisher', smallestBatch: 500, shelfLifeDays: 2 },
    [250, 'g', sugar],
    [250, 'g', cream],
  );
  const item = book.dish(
    'Posset',
    { section: 'Cold', handsOnMinutes: 1, grade: 'finisher', platingMinutes: 2, platingGrade: 'finisher' },
    [60, 'g', set],
    [20, 'g', short],
  );
  book.menu(item, 8);
  book.sell(item, '2026-10-05', 10, 80, { comps: 1 });
  return { book, item, cream };
}

describe('dish', () => {
  // cream 54 + 10 g at 0.01, sugar 6 + 10 g at 0.002
  test('dish(period, item) has what a portion takes of what is bought, dearest first, and its figures', () => {
    const { book, item } = posset();
    const found = dishIn(book, item);
    expect(found).toMatchObject({ item: 'Posset', kind: 'dish', section: 'Cold', components: 2, given: null });
    expect(
      found.bought.map(({ item: name, quantity, unit, cost }) => [name, +quantity.toFixed(9), unit, +cost.toFixed(9)]),
    ).toEqual([
      ['Cream', 64, 'g', 0.64],
      ['Sugar', 16, 'g', 0.032],
    ]);
    expect(found.figures).toMatchObject({ sold: 10, comps: 1, share: 1, listPrice: 8, netPrice: 8, daysOnSale: 1 });
    expect(found.figures?.plateCost).toBeCloseTo(0.672, 12);
  });

  // chef 60 / 1000 * 20 min at 0.5; finisher 20 / 500 * 25 + 1 min, and 2 min of plating, at 0.3
  test('dish(period, item) has the work of one portion by grade, hands-on apart from plating, and what is left after it', () => {
    const { book, item } = posset();
    const { work, figures } = dishIn(book, item);
    const graded = (each: typeof work extends null ? never : NonNullable<typeof work>['handsOn']) =>
      each.map(({ grade, minutes, cost }) => [grade, +minutes.toFixed(9), +(cost ?? Number.NaN).toFixed(9)]);
    expect(graded(work?.handsOn ?? [])).toEqual([
      ['chef', 1.2, 0.6],
      ['finisher', 2, 0.6],
    ]);
    expect(graded(work?.plating ?? [])).toEqual([['finisher', 2, 0.6]]);
    expect(work?.recipeLabour).toBeCloseTo(1.2, 12);
    expect(work?.platingCost).toBeCloseTo(0.6, 12);
    expect(work?.afterLabour).toBeCloseTo(8 - 0.672 - 1.8, 12);
    expect(work?.marginPerPlatingMinute).toBeCloseTo((8 - 0.672) / 2, 12);
    expect(work?.withoutMinutes).toEqual([]);
    expect(figures?.margin).toBeCloseTo(8 - 0.672, 12);
  });

  test('dish(period, item) says which recipes state no minutes, and knows no labour then', () => {
    const { book, item, cream } = posset();
    const foam = book.component('Foam', { yields: [100, 'g'] }, [100, 'g', cream]);
    book.recipe(
      item,
      { from: '2026-10-01', handsOnMinutes: 1, grade: 'finisher', platingMinutes: 2, platingGrade: 'finisher' },
      [10, 'g', foam],
    );
    expect(dishIn(book, item).work).toMatchObject({
      ...{ recipeLabour: null, afterLabour: null, withoutMinutes: ['Foam'], platingMinutes: 2 },
    });
    const alone = new Book();
    const plain = alone.dish('Plain', {
      handsOnMinutes: 3,
      grade: 'nobody',
      platingMinutes: 2,
      platingGrade: 'nobody',
    });
    alone.menu(plain, 5);
    expect(dishIn(alone, plain).work).toMatchObject({ platingCost: null, recipeLabour: null });
  });

  // 11 portions take 220 g of shortbread on one day, of a batch of 500 that keeps two: 280 thrown of 500; cost of a gram 0.006
  test('dish(period, item) has its share of what small batches lose, and which components lose it', () => {
    const { book, item } = posset();
    const { loss, losses } = dishIn(book, item);
    expect(losses.map(({ item: name, lost }) => [name, lost === null ? null : +lost.toFixed(9)])).toEqual([
      ['Shortbread', 0.56],
      ['Set cream', null],
    ]);
    // the set cream states neither a smallest batch nor how long it keeps
    expect(loss).toBeNull();
  });

  test('dish(period, item) of an extra is weighed by the guests that were given it', () => {
    const book = new Book();
    const cream = book.ingredient('Cream', 'g', null);
    const offer = book.offer(cream, 1, 1, 'g');
    book.price(offer, 0.01);
    book.price(offer, 0.02, { from: '2026-10-11' });
    const extra = book.recipe(book.item('extra', 'Welcome'), {}, [10, 'g', cream]);
    book.cover('2026-10-05', 30);
    book.cover('2026-10-15', 10);
    const found = dishIn(book, extra);
    // (30 * 0.1 + 10 * 0.2) / 40
    expect(found).toMatchObject({ figures: null, given: { covers: 40, cost: 5, perCover: 0.125 } });
    expect(found.bought.map(({ quantity, cost }) => [quantity, +cost.toFixed(12)])).toEqual([[10, 0.125]]);
  });

  // ten days at 0.1 and twenty-one at 0.2, since nobody was counted
  test('dish(period, item) of an extra without covers is weighed by the days on which it is given', () => {
    const book = new Book();
    const cream = book.ingredient('Cream', 'g', null);
    const offer = book.offer(cream, 1, 1, 'g');
    book.price(offer, 0.01);
    book.price(offer, 0.02, { from: '2026-10-11' });
    const extra = book.recipe(book.item('extra', 'Welcome'), { handsOnMinutes: 0 }, [10, 'g', cream]);
    const found = dishIn(book, extra);
    expect(found).toMatchObject({ given: { covers: 0, perCover: null }, bought: [], figures: null });
    expect(found.work?.recipeLabour).toBe(0);
  });

  test('dish(period, item) of what is off the menu has no figures, of what is on estimate the estimate, of nothing nothing', () => {
    const book = new Book();
    const off = book.dish('Off', { estimatedCost: 2 });
    const guess = book.dish('Guess', { estimatedCost: 2.5 });
    book.menu(guess, 9);
    expect(dishIn(book, off)).toMatchObject({ figures: null, bought: [], work: null, components: null, loss: null });
    expect(dishIn(book, guess).bought).toEqual([
      { id: guess, item: 'Guess', isEstimate: true, quantity: 1, unit: 'each', cost: 2.5 },
    ]);
    expect(dish(costPeriod(book.facts(), days('2026-10')), off, null)).toBeNull();
  });
});

describe('dishPeriods', () => {
  test('dishPeriods(periods, item) has a row a period, on the menu or not', () => {
    const { book, item } = posset();
    const other = book.dish('Other', { estimatedCost: 1 });
    book.menu(other, 5);
    book.sell(other, '2026-10-05', 30, 150);
    book.menu(item, null, { from: '2026-11-01' });
    const facts = book.facts();
    const periods = ['2026-10', '2026-11'].map((name) => costPeriod(facts, days(name)));
    const rows = dishPeriods(periods, item, null);
    expect(rows[0]).toMatchObject({
      onSale: true,
      sold: 10,
      comps: 1,
      share: 0.25,
      netPrice: 8,
      listPrice: 8,
      estimated: false,
    });
    expect(rows[0]?.margin).toBeCloseTo(7.328, 12);
    expect(rows[1]).toMatchObject({
      onSale: false,
      sold: 0,
      share: null,
      netPrice: null,
      plateCost: null,
      margin: null,
    });
  });

  test('dishPeriods(periods, item) of an extra has the guests, and what one cost', () => {
    const book = new Book();
    const extra = book.recipe(book.item('extra', 'Welcome'), { from: '2026-10-01' }, [
      10,
      'g',
      book.ingredient('Cream', 'g', 0.01),
    ]);
    book.cover('2026-10-05', 30);
    const facts = book.facts();
    const rows = dishPeriods([costPeriod(facts, days('2026-09')), costPeriod(facts, days('2026-10'))], extra, null);
    expect(rows.map(({ onSale, sold, plateCost, netPrice }) => [onSale, sold, plateCost, netPrice])).toEqual([
      [false, 0, null, null],
      [true, 30, 0.1, null],
    ]);
  });
});
