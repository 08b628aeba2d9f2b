import fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import type { Day } from '@/lib/core/days';
import { costPeriod } from '@/lib/model/costed-period';
import { plateCost } from '@/lib/model/plate-cost';
import { dishCosts } from '@/lib/reports/dish-costs';
import { menuMix } from '@/lib/reports/menu-mix';
import { Book, days } from '../books';
import { acyclicBooks, BOOK_DAYS, RUNS } from '../generated-books';

vi.setConfig({ testTimeout: 300_000 });

const OCTOBER = days('2026-10');

// 40 g of sugar at 0.002 a gram
test('costPeriod(facts, range, everything) costs a dish that is neither on the menu nor sold', () => {
  const book = new Book();
  const sugar = book.ingredient('Sugar', 'g', 0.002);
  const dish = book.dish('Not yet on the menu', {}, [40, 'g', sugar]);
  expect(costPeriod(book.facts(), OCTOBER).nodeOf.has(dish)).toBe(false);
  const period = costPeriod(book.facts(), OCTOBER, 'everything');
  expect(plateCost(period, period.nodeOf.get(dish) ?? -1, 0)).toMatchObject({ complete: true, total: 0.08 });
});

test('costPeriod(facts, range, everything) says what is missing of a recipe that nothing on the menu needs', () => {
  const book = new Book();
  const honey = book.ingredient('Honey', 'g', null);
  book.component('Honey crisp', { yields: [100, 'g'] }, [80, 'g', honey]);
  expect(costPeriod(book.facts(), OCTOBER).issues).toEqual([]);
  const { issues } = costPeriod(book.facts(), OCTOBER, 'everything');
  expect(issues.map(({ code, about }) => [code, about])).toEqual([['no-offer', 'Honey']]);
});

test('costPeriod(book, one day, everything) changes no figure of what is on the menu', () => {
  fc.assert(
    fc.property(acyclicBooks, fc.integer({ min: 0, max: 19 }), (facts, later) => {
      const from = (BOOK_DAYS.from + later) as Day;
      const range = { from, to: (from + 1) as Day };
      const [offered, everything] = [costPeriod(facts, range), costPeriod(facts, range, 'everything')];
      expect(dishCosts(everything).items).toEqual(dishCosts(offered).items);
      expect(menuMix(everything, { section: null, resamples: 0 }).items).toEqual(
        menuMix(offered, { section: null, resamples: 0 }).items,
      );
    }),
    RUNS,
  );
});
