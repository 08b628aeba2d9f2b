import { describe, expect, test } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import { coversIssues, extrasGiven, givenWeights } from '@/lib/model/extras';
import type { ItemId } from '@/lib/model/facts';
import { needByDay, needOfServed } from '@/lib/model/served';
import { Book, day, days } from '../books';

const OCTOBER = days('2026-10');

/** A pre-dessert of 0.50 from the 10th on, 0.80 from the 20th; a tart of 2.00. */
function house(): { book: Book; sugar: ItemId; extra: ItemId; tart: ItemId } {
  const book = new Book({ qFactor: 0.1 });
  const sugar = book.ingredient('Sugar', 'g', 0.01);
  const extra = book.item('extra', 'Pre-dessert');
  book.recipe(extra, { from: '2026-10-10' }, [50, 'g', sugar]);
  book.recipe(extra, { from: '2026-10-20' }, [80, 'g', sugar]);
  const tart = book.dish('Tart', {}, [200, 'g', sugar]);
  book.menu(tart, 9);
  return { book, sugar, extra, tart };
}

describe('extrasGiven', () => {
  // 40 * 0.50 + 60 * 0.80 = 68.00, with q 74.80, over 100 guests; the 9th has none yet
  test('extrasGiven(period) is covers times the cost of one on each day on which it is given', () => {
    const { book, extra, sugar } = house();
    book.cover('2026-10-09', 30);
    book.cover('2026-10-12', 40);
    book.cover('2026-10-20', 60);
    const period = costPeriod(book.facts(), OCTOBER);
    const [given, ...others] = extrasGiven(period);
    expect(others).toEqual([]);
    expect(given).toMatchObject({ node: period.nodeOf.get(extra), covers: 100, daysWithoutCovers: 0 });
    expect(given?.cost).toBeCloseTo(74.8, 12);
    expect(given?.perCover).toBeCloseTo(0.748, 12);
    // 40 * 50 g + 60 * 80 g
    const { count } = period.segments;
    const node = period.nodeOf.get(sugar) ?? -1;
    const need = needOfServed(period).slice(node * count, (node + 1) * count);
    expect(need.reduce((sum, each) => sum + each, 0)).toBeCloseTo(6800, 9);
    const byDay = needByDay(period).slice(node * 31, (node + 1) * 31);
    expect([...byDay].flatMap((each, index) => (each === 0 ? [] : [[index + 1, each]]))).toEqual([
      [12, 2000],
      [20, 4800],
    ]);
  });

  test('extrasGiven(days with sales and without covers) counts them, and says so', () => {
    const { book, tart } = house();
    book.sell(tart, '2026-10-09', 4, 36);
    book.sell(tart, '2026-10-12', 4, 36);
    book.sell(tart, '2026-10-13', 4, 36);
    book.sell(tart, '2026-10-15', 4, 36);
    book.sell(tart, '2026-10-16', 0, 0, { comps: 1 }); // no day of trade
    book.cover('2026-10-13', 20);
    const extras = extrasGiven(costPeriod(book.facts(), OCTOBER));
    expect(extras[0]).toMatchObject({ covers: 20, daysWithoutCovers: 2 });
    expect(coversIssues(extras)).toEqual([{ code: 'no-covers', about: 'Pre-dessert', facts: { days: 2 } }]);
  });

  test('extrasGiven(an extra without price) has no cost, and its issue stands from the first day on which it is given', () => {
    const { book } = house();
    const leaf = book.ingredient('Leaf', 'each', null);
    book.recipe(book.item('extra', 'Petit four'), { from: '2026-10-05' }, [1, 'each', leaf]);
    const period = costPeriod(book.facts(), OCTOBER);
    expect(extrasGiven(period).map(({ thing, cost, perCover }) => [thing.name, cost, perCover])).toEqual([
      ['Petit four', 0, null],
      ['Pre-dessert', 0, null],
    ]);
    book.cover('2026-10-12', 40);
    expect(extrasGiven(costPeriod(book.facts(), OCTOBER))[0]?.cost).toBeNull();
    expect(period.issues).toEqual([{ code: 'no-offer', about: 'Leaf', facts: {}, day: day('2026-10-05') }]);
  });

  test('extrasGiven(no extra in force) is none, whatever the covers', () => {
    const { book } = house();
    book.cover('2026-09-12', 40);
    expect(extrasGiven(costPeriod(book.facts(), days('2026-09')))).toEqual([]);
  });
});

describe('givenWeights', () => {
  // the month is cut on the 10th and on the 20th: 10 days of the one recipe, 12 of the other
  test('givenWeights(period, extra) is by the days on which it is given where no guests are known, by guests where some are', () => {
    const { book, extra } = house();
    const weights = () => {
      const period = costPeriod(book.facts(), OCTOBER);
      return givenWeights(period, period.nodeOf.get(extra) ?? expect.unreachable());
    };
    const each = (segment: number, weight: number) => ({ segment, channel: null, weight });
    expect(weights()).toEqual([each(1, 10), each(2, 12)]);
    book.cover('2026-10-09', 30);
    book.cover('2026-10-12', 40);
    book.cover('2026-10-13', 5);
    expect(weights()).toEqual([each(1, 45)]);
  });
});
