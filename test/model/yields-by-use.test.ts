import { describe, expect, test } from 'vitest';
import type { ItemId } from '@/lib/model/facts';
import { Book, type Line } from '../books';
import { costOn, issuesIn } from './plate';

// lemons of 120 g at 2.40 a kilogram: 43 % juice, 4 % zest (common practice)
function lemons(): { book: Book; lemon: ItemId } {
  const book = new Book();
  const lemon = book.ingredient('Lemons', 'g', 0.0024, { usableYield: 0.9, gramsEach: 120 });
  book.yieldFor(lemon, 'juice', 0.43);
  book.yieldFor(lemon, 'Zest', 0.04);
  return { book, lemon };
}
function plate(detail: Line[3], unit = 'g'): number | null {
  const { book, lemon } = lemons();
  const dish = book.dish('Plate', {}, [10, unit, lemon, detail]);
  book.menu(dish, 9);
  return costOn(book.facts(), dish);
}

describe('costPeriod: yields by use', () => {
  test('costPeriod(a line that names a use) divides by the yield of that use, others by the usual one', () => {
    expect(plate({ use: 'juice' })).toBeCloseTo((10 / 0.43) * 0.0024, 12);
    expect(plate({ use: 'zest ' })).toBeCloseTo((10 / 0.04) * 0.0024, 12);
    expect(plate({})).toBeCloseTo((10 / 0.9) * 0.0024, 12);
  });

  test('costPeriod(a line as bought) has no yield applied, whatever use it names', () => {
    expect(plate({ use: 'juice', as: 'bought' }, 'each')).toBeCloseTo(1200 * 0.0024, 12);
    expect(plate({ use: 'pickling', as: 'bought' })).toBeCloseTo(10 * 0.0024, 12);
  });

  test('costPeriod(a use that nobody has stated) is an issue, and the line is not costed', () => {
    const { book, lemon } = lemons();
    const base = book.component('Curd', { yields: [100, 'g'] }, [10, 'g', lemon, { use: 'segments' }]);
    const dish = book.dish('Plate', {}, [10, 'g', base, { use: 'juice' }]);
    book.menu(dish, 9);
    expect(costOn(book.facts(), dish)).toBeNull();
    expect(issuesIn(book.facts()).map(({ code, about, facts }) => [code, about, facts])).toEqual([
      ['unknown-use', 'Curd', { recipe: 'Plate', use: 'juice' }],
      ['unknown-use', 'Lemons', { recipe: 'Curd', use: 'segments' }],
    ]);
  });

  // what was pressed out never went in: the bowl holds 10 g of juice and 90 g of sugar
  test('costPeriod(a component without yield) weighs juice as juice', () => {
    const { book, lemon } = lemons();
    const sugar = book.ingredient('Sugar', 'g', 0.01);
    const syrup = book.component('Syrup', {}, [10, 'g', lemon, { use: 'juice' }], [90, 'g', sugar]);
    const dish = book.dish('Plate', {}, [50, 'g', syrup]);
    book.menu(dish, 9);
    expect(costOn(book.facts(), dish)).toBeCloseTo(((10 / 0.43) * 0.0024 + 0.9) / 2, 12);
  });
});
