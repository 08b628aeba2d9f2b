import { expect, test } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import type { Issue } from '@/lib/model/issue';
import { mostTouchedFirst } from '@/lib/model/touched';
import { Book, days } from '../books';

// honey keeps 3 portions without cost, leaf 5; the 100 of honey cake have a cost, so that honey keeps none of them without
test('mostTouchedFirst(items) weighs what is missing by the portions that have no cost for it, and by no others', () => {
  const book = new Book();
  const honey = book.ingredient('Honey', 'g', null);
  const leaf = book.ingredient('Leaf', 'each', null);
  const dishes = [
    { id: book.dish('Honey cake', {}, [10, 'g', honey]), sold: 100, plateCost: 1.5 },
    { id: book.dish('Comb', {}, [10, 'g', honey]), sold: 3, plateCost: null },
    { id: book.dish('Salad', {}, [1, 'each', leaf]), sold: 5, plateCost: null },
  ];
  const period = costPeriod(book.facts(), days('2026-10'), 'everything');
  const items = dishes.map(({ id, ...each }) => ({ ...each, node: period.nodeOf.get(id) ?? expect.unreachable() }));
  const missing = (about: string): Issue => ({ code: 'no-offer', about, facts: {} });
  const order = mostTouchedFirst(period, items, [missing('Honey'), missing('Leaf')], []);
  expect(order.map(({ about }) => about)).toEqual(['Leaf', 'Honey']);
});
