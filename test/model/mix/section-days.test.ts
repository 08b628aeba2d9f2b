import { describe, expect, test } from 'vitest';
import { dayText } from '@/lib/core/days';
import { costPeriod } from '@/lib/model/costed-period';
import { daysOnSale, expectedByDay, portionsByDay, sectionDays } from '@/lib/model/mix/section-days';
import { Book, days } from '../../books';

/** A is on the menu all month, B from the 3rd, C never, but sold on the 2nd; comps alone on the 4th; nothing on the 5th. */
function threeItems() {
  const book = new Book();
  const [a, b, c] = ['A', 'B', 'C'].map((name) => book.dish(name, { estimatedCost: 1 })) as [never, never, never];
  book.menu(a, 9);
  book.menu(b, 9, { from: '2026-10-03' });
  book.menu(b, 9, { from: '2026-10-03', channel: 'takeaway' });
  book.menu(a, null, { channel: 'takeaway' });
  book.sell(a, '2026-10-01', 6, 54);
  book.sell(a, '2026-10-02', 4, 36);
  book.sell(c, '2026-10-02', 2, 18);
  book.sell(a, '2026-10-03', 3, 27);
  book.sell(b, '2026-10-03', 4, 36);
  book.sell(b, '2026-10-03', 1, 9, { channel: 'takeaway' });
  book.sell(b, '2026-10-04', 0, 0, { comps: 1 });
  book.sell(a, '2026-10-05', 0, 0);
  book.sell(a, '2026-10-06', -1, -9); // a void of a day without sales makes it no trading day
  const period = costPeriod(book.facts(), days('2026-10'));
  return sectionDays(period, [0, 1, 2]);
}

describe('sectionDays', () => {
  test('sectionDays(period, nodes) has a trading day wherever anything was served', () => {
    expect(threeItems().days.map(dayText)).toEqual(['2026-10-01', '2026-10-02', '2026-10-03', '2026-10-04']);
  });

  test('sectionDays(period, nodes) has an item on sale where it is on the menu or sold, channels together', () => {
    const table = threeItems();
    const onSale = [0, 1, 2].map((item) => daysOnSale(table, item).map((day) => dayText(day).slice(-2)));
    expect(onSale).toEqual([['01', '02', '03', '04'], ['03', '04'], ['02']]);
    expect([...table.sold]).toEqual([6, 0, 0, 4, 0, 2, 3, 5, 0, 0, 0, 0]);
  });
});

describe('sectionDays of several items', () => {
  test('sectionDays(period, nodes) has its days in order, whichever item was sold on them', () => {
    const book = new Book();
    for (const [name, on] of [
      ['A', '2026-10-09'],
      ['B', '2026-10-02'],
      ['C', '2026-10-05'],
    ] as const) {
      book.sell(book.dish(name, { estimatedCost: 1 }), on, 1, 9);
    }
    const table = sectionDays(costPeriod(book.facts(), days('2026-10')), [0, 1, 2]);
    expect(table.days.map(dayText)).toEqual(['2026-10-02', '2026-10-05', '2026-10-09']);
    expect([...table.sold]).toEqual([0, 1, 0, 0, 0, 1, 1, 0, 0]);
  });
});

describe('portionsByDay', () => {
  test('portionsByDay(sold, items) adds up each day', () => {
    expect(portionsByDay(Float64Array.of(1, 2, 3, 10, 20, 30), 3)).toEqual([6, 60]);
    expect(portionsByDay(Float64Array.of(), 0)).toEqual([]);
  });
});

describe('expectedByDay', () => {
  // 6 to A alone; 6 shared by A and C; 8 shared by A and B; nothing on the 4th
  test('expectedByDay(section) shares the portions of a day among what is on sale that day', () => {
    expect([...expectedByDay(threeItems())]).toEqual([6, 0, 0, 3, 0, 3, 4, 4, 0, 0, 0, 0]);
  });
});
