import { describe, expect, test } from 'vitest';
import type { Day } from '@/lib/core/days';
import { costPeriod } from '@/lib/model/costed-period';
import { itemFigures } from '@/lib/model/item-figures';
import { portionWeights } from '@/lib/model/portion-weights';
import { Book, day, days } from '../books';

/** October with one dish, which takes a leaf: one costs 1 until the 10th, then nobody says. */
function october(write: (book: Book, tart: ReturnType<Book['dish']>) => void, estimatedCost: number | null = null) {
  const book = new Book();
  const leaf = book.item('ingredient', 'Leaf');
  book.ingredientVersion(leaf, 'each');
  book.price(book.offer(leaf, 1, 1, 'each'), 1, { kind: 'agreed', from: '2026-10-01', to: '2026-10-10' });
  const tart = book.dish('Tart', { estimatedCost }, [1, 'each', leaf]);
  write(book, tart);
  const period = costPeriod(book.facts(), days('2026-10'));
  const node = period.things.findIndex(({ name }) => name === 'Tart');
  const sales = period.things[node]?.sales ?? [];
  const weights = (onSale: readonly Day[], channels: readonly string[]) =>
    portionWeights(period, node, sales, onSale, channels);
  return { period, node, sales, weights };
}

describe('portionWeights', () => {
  test('portionWeights(none sold) weighs each day on sale in the channels on whose menu the item is that day', () => {
    const { weights } = october((book, tart) => {
      book.menu(tart, 10);
      book.menu(tart, 11, { channel: 'takeaway', from: '2026-10-03' });
    });
    const onSale = [day('2026-10-02'), day('2026-10-03')];
    expect(weights(onSale, ['dine_in', 'takeaway'])).toEqual([
      { segment: 0, channel: 'dine_in', weight: 2 },
      { segment: 0, channel: 'takeaway', weight: 1 },
    ]);
  });

  test('portionWeights(none sold, on no menu) weighs each day on sale in whichever channel', () => {
    const { weights } = october((book, tart) => book.sell(tart, '2026-10-02', 0, 0, { comps: 1 }));
    expect(weights([day('2026-10-02')], ['dine_in'])).toEqual([{ segment: 0, channel: null, weight: 1 }]);
  });

  test('portionWeights(days of comps alone) are no part of a mean over what was paid for', () => {
    const { weights, period, node, sales } = october((book, tart) => {
      book.sell(tart, '2026-10-05', 3, 30);
      book.sell(tart, '2026-10-11', 0, 0, { comps: 2 });
    });
    expect(weights([], ['dine_in'])).toEqual([{ segment: 0, channel: 'dine_in', weight: 3 }]);
    // on the 11th nobody knows what a leaf costs, and nothing was paid for
    expect(itemFigures(period, node, sales, [], ['dine_in'])).toMatchObject({
      plateCost: 1,
      comps: 2,
      halfKnown: null,
    });
  });
});

test('itemFigures(an estimate stands in on some days) is estimated, with the mean of both', () => {
  const { period, node, sales } = october((book, tart) => {
    book.sell(tart, '2026-10-05', 1, 10);
    book.sell(tart, '2026-10-11', 3, 30);
  }, 3);
  // 1 once by the recipe and 3 three times by the estimate
  expect(itemFigures(period, node, sales, [], ['dine_in'])).toMatchObject({
    plateCost: 2.5,
    margin: 7.5,
    estimated: true,
  });
});
