import { describe, expect, test } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import type { ItemId } from '@/lib/model/facts';
import { type LineCount, lineCount } from '@/lib/model/half-known';
import { Book, days } from '../books';
import { plateOn } from './plate';

function counted(book: Book, dish: ItemId): LineCount {
  const period = costPeriod(book.facts(), days('2026-10'));
  return lineCount(period, period.nodeOf.get(dish) ?? -1, 0);
}

describe('lineCount', () => {
  // base: butter and an unpriced spice; plate: base twice (once through a glaze), sugar, unpriced leaf
  test('lineCount(period, node, segment) counts each line reached once, down to what is bought', () => {
    const book = new Book({ qFactor: 0.1 });
    const butter = book.ingredient('Butter', 'g', 0.02);
    const spice = book.ingredient('Spice', 'g', null);
    const sugar = book.ingredient('Sugar', 'g', 0.01);
    const leaf = book.ingredient('Leaf', 'each', null);
    const base = book.component('Base', { yields: [100, 'g'] }, [100, 'g', butter], [1, 'g', spice]);
    const glaze = book.component('Glaze', { yields: [100, 'g'] }, [100, 'g', base], [100, 'g', sugar]);
    const dish = book.dish('Plate', {}, [50, 'g', base], [50, 'g', glaze], [10, 'g', sugar], [1, 'each', leaf]);
    book.menu(dish, 9);
    expect(counted(book, dish)).toEqual({ lines: 5, missing: 2 });
    // 50 g base 1.00, 50 g glaze 1.00 + 0.50, sugar 0.10, with q 10 %
    expect(plateOn(book.facts(), dish)).toMatchObject({ complete: false });
    expect(plateOn(book.facts(), dish).total).toBeCloseTo(2.6 * 1.1, 12);
  });

  test('lineCount(lines that lead nowhere, and refused ones) are missing lines', () => {
    const book = new Book();
    const sugar = book.ingredient('Sugar', 'g', 0.01);
    const nothing = book.component('Nothing', { yields: [1, 'kg'] });
    const unknown = book.item('component', 'Unknown');
    const heavy = book.component('Heavy', {}, [1, 'l', sugar], [5, 'g', sugar]);
    const lines = [
      [1, 'g', nothing],
      [1, 'g', unknown],
      [1, 'g', heavy],
      [1, 'ml', sugar],
      [5, 'g', sugar],
    ] as const;
    const dish = book.dish('Plate', { refusedLines: 2 }, ...lines);
    book.menu(dish, 9);
    expect(counted(book, dish)).toEqual({ lines: 7, missing: 6 });
    expect(plateOn(book.facts(), dish)).toMatchObject({ complete: false, total: 0.05 });
  });

  test('lineCount(a component with refused lines) leads on to the lines that were taken', () => {
    const book = new Book();
    const sugar = book.ingredient('Sugar', 'g', 0.01);
    const base = book.component('Base', { yields: [1, 'kg'], refusedLines: 1 }, [1, 'kg', sugar]);
    const dish = book.dish('Plate', {}, [100, 'g', base]);
    book.menu(dish, 9);
    expect(counted(book, dish)).toEqual({ lines: 2, missing: 1 });
    expect(plateOn(book.facts(), dish)).toMatchObject({ complete: false, total: 1 });
  });

  test('lineCount(a plate on estimate inside another) is one line that is known', () => {
    const book = new Book();
    const spice = book.ingredient('Spice', 'g', null);
    const estimated = book.dish('Soufflé', { estimatedCost: 3 }, [1, 'g', spice], [2, 'g', spice]);
    const both = book.recipe(book.item('set_menu', 'Both'), {}, [1, 'each', estimated], [1, 'g', spice]);
    book.menu(both, 20);
    expect(counted(book, both)).toEqual({ lines: 2, missing: 1 });
    expect(plateOn(book.facts(), both)).toMatchObject({ complete: false, total: 3 });
  });

  test('lineCount(a recipe of one line) leads on through it', () => {
    const book = new Book();
    const [a, b, c] = ['A', 'B', 'C'].map((name) => book.ingredient(name, 'g', name === 'C' ? null : 1)) as [
      ItemId,
      ItemId,
      ItemId,
    ];
    const inner = book.component('Inner', { yields: [3, 'g'] }, [1, 'g', a], [1, 'g', b], [1, 'g', c]);
    const outer = book.component('Outer', { yields: [3, 'g'] }, [3, 'g', inner]);
    const dish = book.dish('Plate', {}, [3, 'g', outer]);
    book.menu(dish, 9);
    expect(counted(book, dish)).toEqual({ lines: 3, missing: 1 });
  });

  test('lineCount(a plate without recipe) has no lines', () => {
    const book = new Book();
    const dish = book.item('dish', 'Pavlova');
    book.menu(dish, 9);
    expect(counted(book, dish)).toEqual({ lines: 0, missing: 0 });
  });

  // packed from the 16th on: before it, taking a course away asks for nothing more
  test('lineCount(a channel in which a course is not packed yet) counts what it takes anywhere', () => {
    const book = new Book();
    const leaf = book.ingredient('Leaf', 'each', null);
    const box = book.ingredient('Box', 'each', null, { department: 'packaging' });
    const plate = book.dish('Plate', {}, [1, 'each', leaf]);
    book.recipe(plate, { from: '2026-10-16' }, [1, 'each', leaf], [1, 'each', box, { channel: 'takeaway' }]);
    const set = book.item('set_menu', 'Set');
    book.recipe(set, {}, [1, 'each', plate]);
    book.menu(set, 20);
    const period = costPeriod(book.facts(), days('2026-10'));
    const node = period.nodeOf.get(set) ?? -1;
    expect([0, 1].map((segment) => lineCount(period, node, segment, 'takeaway'))).toEqual([
      { lines: 1, missing: 1 },
      { lines: 2, missing: 2 },
    ]);
  });
});
