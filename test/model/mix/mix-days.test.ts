import { describe, expect, test } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import { moneyByDay } from '@/lib/model/mix/mix-days';
import { sectionDays } from '@/lib/model/mix/section-days';
import { Book, days } from '../../books';

describe('moneyByDay', () => {
  // Plum costs 1, and 3 from the 3rd on. A: 2 sold for 20, and 1 to take away at its menu price of 8; then 1 for 11. B: 4 for 40, then 2 for 30.
  test('moneyByDay(period, nodes, days) is revenue less the cost of the day, all channels, menu price where revenue is missing', () => {
    const book = new Book();
    const plum = book.item('ingredient', 'Plum');
    book.ingredientVersion(plum, 'each');
    const offer = book.offer(plum, 1, 1, 'each');
    book.price(offer, 1);
    book.price(offer, 3, { from: '2026-10-03' });
    const a = book.dish('A', {}, [1, 'each', plum]);
    const b = book.dish('B', {}, [2, 'each', plum]);
    book.menu(a, 8, { channel: 'takeaway' });
    book.sell(a, '2026-10-01', 2, 20, { comps: 5 });
    book.sell(a, '2026-10-01', 1, 0, { channel: 'takeaway', soldWithoutRevenue: 1 });
    book.sell(a, '2026-10-03', 1, 11);
    book.sell(b, '2026-10-01', 4, 40);
    book.sell(b, '2026-10-03', 2, 30);
    book.sell(b, '2026-10-20', -1, -10); // a void on a day without sales
    book.sell(b, '2026-10-03', 1, 0, { channel: 'takeaway', soldWithoutRevenue: 1 }); // no menu price: its cost alone
    const period = costPeriod(book.facts(), days('2026-10'));
    const nodes = [a, b].map((item) => period.nodeOf.get(item) ?? -1);
    const { contribution, revenue, food } = moneyByDay(period, nodes, sectionDays(period, nodes));
    expect([...contribution]).toEqual([20 - 2 + 8 - 1, 40 - 8, 11 - 3, 30 - 12 - 6]);
    expect([...revenue]).toEqual([28, 40, 11, 30]);
    expect([...food]).toEqual([3, 8, 3, 18]);
  });
});
