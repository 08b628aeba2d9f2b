import { expect, test } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import { labourPerPortion } from '@/lib/model/per-portion';
import { served } from '@/lib/model/served';
import { Book, days } from '../books';

// 3 sold and 1 given away of pieces of 40 g each
test('served(an ingredient that is weighed and sold by the piece) is in grams', () => {
  const book = new Book();
  const truffle = book.ingredient('Truffle', 'g', 0.01, { gramsEach: 40 });
  book.sell(truffle, '2026-10-02', 3, 12, { comps: 1 });
  const period = costPeriod(book.facts(), days('2026-10'));
  expect(served(period)[period.nodeOf.get(truffle) ?? -1]).toBeCloseTo(160, 12);
});

// half an hour at 20.00 makes 1,000 g, which are 10 pieces: 1.00 a piece
test('labourPerPortion(a component that is weighed and sold by the piece) is that of one piece', () => {
  const book = new Book();
  const sugar = book.ingredient('Sugar', 'g', 0.002);
  book.labour('Pastry', 20);
  const made = { yields: [1000, 'g'], also: [10, 'each'], handsOnMinutes: 30, grade: 'Pastry' } as const;
  const slice = book.component('Slice', made, [800, 'g', sugar]);
  book.menu(slice, 4);
  const period = costPeriod(book.facts(), days('2026-10'));
  const node = period.nodeOf.get(slice) ?? expect.unreachable();
  const { recipeLabour } = labourPerPortion(period, node, [{ segment: 0, channel: null, weight: 1 }]);
  expect(recipeLabour).toBeCloseTo(1, 12);
});
