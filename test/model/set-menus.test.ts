import { describe, expect, test } from 'vitest';
import type { ItemId } from '@/lib/model/facts';
import { Book, day, type Line } from '../books';
import { costOn, issuesIn, plateOn } from './plate';

/** Courses of 2.00, 3.00 and 4.00, and a set menu of these lines. */
function menuOf(
  lines: (courses: readonly [ItemId, ItemId, ItemId]) => readonly Line[],
  q = 0,
): { book: Book; menu: ItemId } {
  const book = new Book({ qFactor: q });
  const sugar = book.ingredient('Sugar', 'g', 0.01);
  const course = (name: string, grams: number): ItemId => book.dish(name, {}, [grams, 'g', sugar]);
  const courses = [course('Tart', 200), course('Cake', 300), course('Ice', 400)] as const;
  const menu = book.recipe(book.item('set_menu', 'Low tide'), {}, ...lines(courses));
  book.menu(menu, 20);
  return { book, menu };
}

describe('costPeriod: set menus', () => {
  // 2.00 + 0.7 * 3.00 + 0.3 * 4.00 = 5.30; q of 10 % once, on the whole
  test('costPeriod(a choice) takes each course by its share, and q once', () => {
    const choice = { choice: 'Second' };
    const { book, menu } = menuOf(
      ([tart, cake, ice]) => [
        [1, 'each', tart],
        [1, 'each', cake, { ...choice, choiceShare: 0.7 }],
        [1, 'each', ice, { choice: 'second ', choiceShare: 0.3 }],
      ],
      0.1,
    );
    expect(costOn(book.facts(), menu)).toBeCloseTo(5.3 * 1.1, 12);
    expect(issuesIn(book.facts())).toEqual([]);
  });

  test('costPeriod(shares of one choice that do not sum to 1) is an issue that says what they come to', () => {
    const { book, menu } = menuOf(([tart, cake, ice]) => [
      [1, 'each', tart, { choice: 'First', choiceShare: 0.5 }],
      [1, 'each', cake, { choice: 'Second', choiceShare: 0.5 }],
      [1, 'each', ice, { choice: 'Second', choiceShare: 0.5 }],
    ]);
    expect(costOn(book.facts(), menu)).toBeNull();
    expect(plateOn(book.facts(), menu).total).toBeCloseTo(1.5 + 2, 12);
    expect(issuesIn(book.facts())).toEqual([
      { code: 'choice-shares', about: 'Low tide', facts: { choice: 'First', sum: 0.5 }, day: day('2026-10-01') },
    ]);
  });

  test('costPeriod(a choice with a share that nobody has stated) is an issue', () => {
    const { book, menu } = menuOf(([tart, cake]) => [
      [1, 'each', tart, { choice: 'First', choiceShare: 1 }],
      [1, 'each', cake, { choice: 'First' }],
    ]);
    expect(costOn(book.facts(), menu)).toBeNull();
    expect(issuesIn(book.facts()).map(({ facts }) => facts)).toEqual([{ choice: 'First', sum: null }]);
  });

  // three thirds, as a file would round them
  test('costPeriod(shares that sum to 1 but for rounding) are taken as they are', () => {
    const third = 1 / 3;
    const { book, menu } = menuOf((courses) =>
      courses.map((course): Line => [1, 'each', course, { choice: 'One', choiceShare: third }]),
    );
    expect(costOn(book.facts(), menu)).toBeCloseTo(3, 12);
  });
});
