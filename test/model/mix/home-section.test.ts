import { expect, test } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import type { ItemId } from '@/lib/model/facts';
import { homeSection } from '@/lib/model/mix/home-section';
import { Book, days } from '../../books';

test('homeSection(period, node) is the whole menu for food, else the section that the item stands in', () => {
  const book = new Book();
  const plum = book.ingredient('Plum', 'each', 0.5);
  const wine = book.ingredient('Wine', 'ml', 0.02, { department: 'drink' });
  const tart = book.dish('Tart', { section: 'Tarts' }, [2, 'each', plum]);
  const glass = book.dish('Glass', { section: 'Wines' }, [100, 'ml', wine]);
  const set = book.item('set_menu', 'Set');
  book.recipe(set, { section: 'Menus' }, [1, 'each', tart], [1, 'each', glass]);
  for (const item of [tart, glass, set]) book.menu(item, 10);
  const period = costPeriod(book.facts(), days('2026-10'));
  const home = (item: ItemId) => homeSection(period, period.nodeOf.get(item) ?? -1);
  expect([tart, glass, set].map(home)).toEqual([null, 'Wines', 'Menus']);
  expect(homeSection(period, -1)).toBeNull();
});
