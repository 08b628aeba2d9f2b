import { expect, test } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import type { PriceEdit } from '@/lib/model/price-model/edits';
import { priceModelOf } from '@/lib/model/price-model/price-model-of';
import { uncostedTouched } from '@/lib/model/price-model/reached-goods';
import { Book, days } from '../../books';

/** Dearer by a tenth. */
const dearer = (name: string): PriceEdit => ({
  target: { of: 'ingredient', name },
  step: { how: 'share', by: 0.1 },
});

// the pot takes chocolate, by way of a cream, and rum that has no price; the tart is costed; the cheese takes rum alone
test('uncostedTouched(model, edits) are the dishes without a known cost that what is moved goes into', () => {
  const book = new Book();
  const chocolate = book.ingredient('Chocolate', 'g', 0.01);
  const rum = book.ingredient('Rum', 'ml', null);
  const cream = book.component('Chocolate cream', { yields: [1, 'kg'] }, [500, 'g', chocolate]);
  for (const [name, ...lines] of [
    ['Pot', [80, 'g', cream], [10, 'ml', rum]],
    ['Tart', [60, 'g', chocolate]],
    ['Cheese', [10, 'ml', rum]],
  ] as const) {
    const dish = book.dish(name, {}, ...lines.map((line) => [...line] as const));
    book.menu(dish, 9);
    book.sell(dish, '2026-10-01', 5, 45);
  }
  const model = priceModelOf(costPeriod(book.facts(), days('2026-10')), null);
  expect(uncostedTouched(model, [dearer('Chocolate')])).toEqual(['Pot']);
  expect(uncostedTouched(model, [dearer('Salt')])).toEqual([]);
  expect(uncostedTouched(model, [])).toEqual([]);
  expect(
    uncostedTouched({ ...model, items: model.items.filter(({ isCosted }) => isCosted) }, [dearer('Chocolate')]),
  ).toEqual([]);
});
