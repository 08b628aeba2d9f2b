import { describe, expect, test } from 'vitest';
import { dayText } from '@/lib/core/days';
import { periodNamed, periodsUpTo } from '@/lib/core/periods';
import { costPeriod } from '@/lib/model/costed-period';
import type { Facts, ItemId } from '@/lib/model/facts';
import { menuMix } from '@/lib/reports/menu-mix';
import { year } from '@/lib/reports/year';
import { Book } from '../books';

const period = (name: string) => periodNamed(name).period ?? expect.unreachable(name);

/** The year up to a month, of so many months, each with the same one of the year before. */
function yearOf(facts: Facts, to: string, count: number, section: string | null = null) {
  const mixOf = (name: string) => {
    const one = period(name);
    const costed = costPeriod(facts, one.range);
    return { period: one, costed, mix: menuMix(costed, { section, resamples: 0 }) };
  };
  const periods = periodsUpTo(period(to), count).map(({ name }) => ({
    ...mixOf(name),
    yearBefore: mixOf(`${Number(name.slice(0, 4)) - 1}${name.slice(4)}`),
  }));
  return year({ venue: facts.venue, section, periods, inYear: 12, menuPrices: facts.menuPrices });
}

/** A dish that costs 3.00 and is on the menu at 10.00. */
function dish(book: Book, name: string, from?: string): ItemId {
  const item = book.dish(name, { section: 'Plates' }, [1, 'each', book.ingredient(`all of ${name}`, 'each', 3)]);
  book.menu(item, 10, from === undefined ? {} : { from });
  return item;
}

describe('year', () => {
  test('year(periods) has the totals of each mix, sums the last year and holds it against the same months before', () => {
    const book = new Book();
    const tart = dish(book, 'Tart');
    book.sell(tart, '2025-09-02', 10, 100);
    book.sell(tart, '2025-10-02', 20, 180);
    book.sell(tart, '2026-09-02', 30, 300);
    book.sell(tart, '2026-10-02', 40, 420, { comps: 2 });
    const answer = yearOf(book.facts(), '2026-10', 2);
    // September 300 - 30 x 3 = 210, October 420 - 40 x 3 = 300; the year before 70 and 120
    expect(answer.periods.map(({ contribution }) => contribution)).toEqual([210, 300]);
    expect(answer.periods.map(({ margin }) => margin)).toEqual([7, 7.5]);
    expect(answer.periods.map(({ yearBefore }) => yearBefore?.contribution)).toEqual([70, 120]);
    expect(answer.periods.map(({ tradingDays }) => tradingDays)).toEqual([1, 1]);
    expect(answer.periods[1]?.totals).toMatchObject({ sold: 40, comps: 2 });
    expect(answer.last).toMatchObject({ periods: 2, contribution: 510, coverage: 1 });
    // 210 of 720 in revenue; 510 over 70 portions
    expect(answer.last.totals.foodCost).toBeCloseTo(210 / 720, 12);
    expect(answer.last.margin).toBeCloseTo(510 / 70, 12);
    // two months are no whole year
    expect(answer.lastYearBefore).toBeNull();
    expect(answer.issues).toEqual([]);
  });

  test('year(periods) holds a whole year against the one before, and only where every month of it sold something', () => {
    const book = new Book();
    const tart = dish(book, 'Tart');
    for (const { name } of periodsUpTo(period('2026-10'), 24)) book.sell(tart, `${name}-05`, 10, 100);
    const whole = yearOf(book.facts(), '2026-10', 13);
    expect(whole.periods).toHaveLength(13);
    expect(whole.last).toMatchObject({ periods: 12, contribution: 840 });
    expect(whole.lastYearBefore).toMatchObject({ periods: 12, contribution: 840 });
    const later = yearOf(book.facts(), '2026-11', 13);
    expect(later.lastYearBefore?.contribution).toBe(840);
    const earlier = yearOf(book.facts(), '2026-09', 13);
    expect(earlier.lastYearBefore).toBeNull();
  });

  test('year(periods) marks what came, went and was repriced in its month, not what the menu opened with', () => {
    const book = new Book();
    const tart = dish(book, 'Tart', '2026-08-01');
    const cake = dish(book, 'Cake', '2026-08-01');
    const posset = dish(book, 'Posset', '2026-09-03');
    book.menu(cake, null, { from: '2026-10-01' });
    book.menu(tart, 11, { from: '2026-10-01' });
    book.menu(tart, 11, { from: '2026-10-01', channel: 'takeaway' });
    book.menu(book.dish('Coffee', { department: 'drink' }), 3, { from: '2026-10-02' });
    for (const item of [tart, cake, posset]) book.sell(item, '2026-09-10', 1, 10);
    const { periods } = yearOf(book.facts(), '2026-10', 3);
    const said = periods.map(({ menuChanges }) =>
      menuChanges.map(({ day, item, kind, channels, before, price }) => [
        ...[dayText(day), item, kind, channels.join('+'), before, price],
      ]),
    );
    expect(said).toEqual([
      [],
      [['2026-09-03', 'Posset', 'came', 'dine_in', null, 10]],
      [
        ['2026-10-01', 'Cake', 'went', 'dine_in', 10, null],
        ['2026-10-01', 'Tart', 'price', 'dine_in', 10, 11],
        ['2026-10-01', 'Tart', 'came', 'takeaway', null, 11],
      ],
    ]);
  });

  test('year(periods) says which months are provisional, empty, or hold sales that wait', () => {
    const book = new Book();
    const tart = dish(book, 'Tart');
    const cake = book.dish('Cake', {}, [1, 'each', book.ingredient('Unpriced', 'each', null)]);
    for (const [month, known, unknown] of [
      ['2026-08', 90, 10],
      ['2026-10', 89, 11],
    ] as const) {
      book.sell(tart, `${month}-05`, known, 10 * known);
      book.sell(cake, `${month}-05`, unknown, 10 * unknown);
    }
    book.wait('Creme brul#', '2026-10-06', 25);
    book.wait('creme brul#', '2026-08-06', 75);
    const answer = yearOf(book.facts(), '2026-10', 3);
    expect(answer.periods.map(({ coverage, provisional }) => [coverage, provisional])).toEqual([
      [0.9, false],
      [null, false],
      [0.89, true],
    ]);
    expect(answer.issues.map(({ code, about, facts }) => [code, about, facts.share ?? null])).toEqual([
      ['sales-waiting', 'Marram House', 100 / 300],
      ['no-sales', '2026-09', null],
      ['coverage-low', '2026-10', 0.89],
    ]);
    expect(yearOf(book.facts(), '2026-10', 3, 'Plates').issues.map(({ code }) => code)).toEqual(['no-sales']);
  });
});
