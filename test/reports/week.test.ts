import { describe, expect, test } from 'vitest';
import { dayText } from '@/lib/core/days';
import { periodNamed, periodsUpTo } from '@/lib/core/periods';
import { costPeriod } from '@/lib/model/costed-period';
import type { Facts, ItemId } from '@/lib/model/facts';
import { menuMix } from '@/lib/reports/menu-mix';
import { type WeekOf, week } from '@/lib/reports/week';
import { Book } from '../books';

const period = (name: string) => periodNamed(name).period ?? expect.unreachable(name);

function mixOf(facts: Facts, name: string) {
  const one = period(name);
  const costed = costPeriod(facts, one.range);
  return { period: one, costed, mix: menuMix(costed, { section: null, resamples: 0 }) };
}

/** Week 43 of 2026, 19 to 25 October, beside the two before it and week 43 of 2025. */
function told(book: Book, yearBefore: string | null = '2025-W43') {
  const facts = book.facts();
  const weeks = periodsUpTo(period('2026-W43'), 3).map(({ name }) => mixOf(facts, name));
  const question: WeekOf = {
    now: weeks[2] ?? expect.unreachable(),
    before: weeks.slice(0, 2),
    yearBefore: yearBefore === null ? null : mixOf(facts, yearBefore),
  };
  return week(question);
}

/** A dish that costs 3.00 and is on the menu at 10.00. */
function dish(book: Book, name: string): ItemId {
  const item = book.dish(name, {}, [1, 'each', book.ingredient(`all of ${name}`, 'each', 3)]);
  book.menu(item, 10);
  return item;
}

describe('week', () => {
  test('week(weeks) tells covers, spend at the tables, portions and what they left, week and day alike', () => {
    const book = new Book();
    const tart = dish(book, 'Tart');
    const tea = book.dish('Tea', { department: 'drink', estimatedCost: 0.5 });
    book.cover('2026-10-21', 10);
    book.cover('2026-10-22', 30);
    book.sell(tart, '2026-10-21', 8, 80);
    book.sell(tart, '2026-10-21', 5, 45, { channel: 'takeaway' });
    book.sell(tea, '2026-10-21', 4, 20);
    book.sell(tart, '2026-10-22', 20, 190);
    const { now, days, before, yearBefore, issues } = told(book);
    // spend: (80 + 20 + 190) / 40; left: 315 - 33 x 3
    expect(now).toMatchObject({ tradingDays: 2, covers: 40, spendPerCover: 7.25, contribution: 216, coverage: 1 });
    expect(now.totals.sold).toBe(33);
    expect(
      days.map(({ day, covers, spendPerCover, sold, contribution }) => [
        ...[dayText(day), covers, spendPerCover, sold, contribution],
      ]),
    ).toEqual([
      ['2026-10-19', null, null, 0, null],
      ['2026-10-20', null, null, 0, null],
      ['2026-10-21', 10, 10, 13, 86],
      ['2026-10-22', 30, 190 / 30, 20, 130],
      ['2026-10-23', null, null, 0, null],
      ['2026-10-24', null, null, 0, null],
      ['2026-10-25', null, null, 0, null],
    ]);
    expect([before, yearBefore, issues]).toEqual([null, null, []]);
  });

  test('week(weeks) holds each figure against the mean of the weeks before that traded, and a weekday against its own kind', () => {
    const book = new Book();
    const tart = dish(book, 'Tart');
    book.sell(tart, '2026-10-21', 9, 90);
    book.cover('2026-10-07', 8);
    book.sell(tart, '2026-10-07', 4, 40);
    book.cover('2026-10-14', 12);
    book.sell(tart, '2026-10-14', 8, 72);
    book.sell(tart, '2026-10-15', 6, 60);
    book.sell(tart, '2025-10-22', 5, 50);
    const { before, yearBefore, days, issues } = told(book);
    // weeks of 4 and 14 portions that left 28 and 132 - 42; covers 8 and 12; spend (40 + 72) / 20
    expect(before).toMatchObject({ weeks: 2, tradingDays: 1.5, covers: 10, contribution: (28 + 90) / 2 });
    expect(before?.totals.sold).toBe(9);
    expect(before?.spendPerCover).toBeCloseTo(5.6, 12);
    expect(before?.totals.foodCost).toBeCloseTo(54 / 172, 12);
    expect(yearBefore).toMatchObject({ covers: null, spendPerCover: null, contribution: 35 });
    const wednesday = days[2];
    expect(wednesday?.usual).toMatchObject({ covers: 10, sold: 6, contribution: (28 + 48) / 2 });
    expect(wednesday?.yearBefore).toMatchObject({ covers: null, sold: 5, contribution: 35 });
    expect(days[3]?.usual).toMatchObject({ covers: null, sold: 6, contribution: 42 });
    expect(days[4]?.usual).toBeNull();
    expect(issues.map(({ code, about, facts }) => [code, about, facts.days])).toEqual([
      ['covers-missing', '2026-W43', 1],
    ]);
  });

  test('week(weeks) names what was on sale on trading days without a portion sold, most such days first', () => {
    const book = new Book();
    const [tart, cake, posset] = [dish(book, 'Tart'), dish(book, 'Cake'), dish(book, 'Posset')];
    const late = book.dish('Late', {}, [1, 'each', book.ingredient('all of late', 'each', 1)]);
    book.menu(late, 9, { from: '2026-10-23' });
    for (const on of ['2026-10-21', '2026-10-22', '2026-10-23']) book.sell(tart, on, 1, 10);
    book.sell(cake, '2026-10-22', 2, 20);
    book.sell(posset, '2026-10-22', 0, 0, { comps: 1 });
    const { unsold } = told(book);
    expect(
      unsold.map(({ item, sold, daysOnSale, daysWithoutSale }) => [item, sold, daysOnSale, daysWithoutSale]),
    ).toEqual([
      ['Posset', 0, 3, 3],
      ['Cake', 2, 3, 2],
      ['Late', 0, 1, 1],
    ]);
  });

  test('week(weeks) leaves out what is not known: a portion without price, a week without a sale', () => {
    const book = new Book();
    const tart = book.dish('Tart', {}, [1, 'each', book.ingredient('all', 'each', 3)]);
    book.cover('2026-10-21', 10);
    book.sell(tart, '2026-10-21', 2, 0, { soldWithoutRevenue: 2 });
    const { now, days } = told(book, null);
    expect([now.covers, now.spendPerCover, now.contribution]).toEqual([10, null, null]);
    expect(days[2]).toMatchObject({ seatedRevenue: null, sold: 2, contribution: null });
    const nothing = told(new Book());
    expect(nothing.issues.map(({ code, about }) => [code, about])).toEqual([['no-sales', '2026-W43']]);
    expect(nothing.now).toMatchObject({ covers: null, contribution: null, provisional: false });
  });
});
