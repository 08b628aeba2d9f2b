import { describe, expect, test } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import { itemDepartment } from '@/lib/model/departments';
import type { ItemId } from '@/lib/model/facts';
import { sectionNodes } from '@/lib/model/mix/section';
import { Book, days } from '../books';

function cellar() {
  const book = new Book();
  const wine = book.ingredient('Wine', 'ml', 0.02, { department: 'drink' });
  const sugar = book.ingredient('Sugar', 'g', 0.01);
  const cup = book.ingredient('Cup', 'each', 0.1, { department: 'packaging' });
  return { book, wine, sugar, cup };
}
function departmentOf(book: Book, item: ItemId): string {
  book.menu(item, 9);
  const period = costPeriod(book.facts(), days('2026-10'));
  return itemDepartment(period, period.nodeOf.get(item) ?? -1);
}

describe('itemDepartment', () => {
  test('itemDepartment(period, node) is drink where all ingredients reached are drink, packaging apart', () => {
    const { book, wine, cup } = cellar();
    const syrup = book.component('Mulled', { yields: [1, 'l'] }, [1, 'l', wine]);
    expect(departmentOf(book, book.dish('Glass', {}, [125, 'ml', wine]))).toBe('drink');
    expect(departmentOf(book, book.dish('Mug', {}, [200, 'ml', syrup], [1, 'each', cup]))).toBe('drink');
  });

  test('itemDepartment(period, node) is food with any food in it, and where nothing is known', () => {
    const { book, wine, sugar, cup } = cellar();
    expect(departmentOf(book, book.dish('Sabayon', {}, [50, 'ml', wine], [20, 'g', sugar]))).toBe('food');
    expect(departmentOf(book, book.item('dish', 'Pavlova'))).toBe('food');
    expect(departmentOf(book, book.dish('Empty cup', {}, [1, 'each', cup]))).toBe('food');
  });

  test('itemDepartment(period, node) is what the latest recipe states, whatever is in it', () => {
    const { book, wine } = cellar();
    const dish = book.dish('Jelly', { department: 'drink', from: '2026-09-01' }, [50, 'ml', wine]);
    book.recipe(dish, { department: 'food', from: '2026-10-15' }, [50, 'ml', wine]);
    expect(departmentOf(book, dish)).toBe('food');
  });

  test('itemDepartment(period, node) of an ingredient sold as it is is its own', () => {
    const { book, cup, wine } = cellar();
    expect(departmentOf(book, cup)).toBe('packaging');
    expect(departmentOf(book, wine)).toBe('drink');
    book.ingredientVersion(wine, 'ml', { department: 'food', from: '2026-10-15' });
    expect(departmentOf(book, wine)).toBe('food');
  });
});

describe('sectionNodes', () => {
  test('sectionNodes(period, null) is the food on the menu or sold that is no set menu; a section named is all that is in it', () => {
    const { book, wine, sugar } = cellar();
    const glass = book.dish('Glass', { section: 'After' }, [125, 'ml', wine]);
    const tart = book.dish('Tart', { section: 'after ' }, [10, 'g', sugar]);
    const cake = book.dish('Cake', { section: 'Cakes' }, [10, 'g', sugar]);
    const bread = book.dish('Bread', { section: 'Cakes' }, [10, 'g', sugar]);
    const gone = book.dish('Gone', { section: 'Cakes' }, [10, 'g', sugar]);
    const both = book.recipe(book.item('set_menu', 'Both'), { section: 'Cakes' }, [1, 'each', tart], [1, 'each', cake]);
    for (const item of [glass, tart, cake, both]) book.menu(item, 9);
    book.menu(gone, null);
    book.sell(bread, '2026-10-04', 0, 0, { comps: 1 });
    book.sell(gone, '2026-10-04', 0, 0);
    const period = costPeriod(book.facts(), days('2026-10'));
    const named = (section: string | null) => sectionNodes(period, section).map((node) => period.things[node]?.name);
    expect(named(null)).toEqual(['Bread', 'Cake', 'Tart']);
    expect(named('AFTER')).toEqual(['Glass', 'Tart']);
    expect(named('Cakes')).toEqual(['Both', 'Bread', 'Cake']);
    expect(named('Ices')).toEqual([]);
    expect(period.sections).toEqual(['After', 'Cakes']);
  });
});
