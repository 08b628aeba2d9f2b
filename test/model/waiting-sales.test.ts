import { describe, expect, test } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import { portionsSold, waitingIn, waitingIssues } from '@/lib/model/waiting-sales';
import { Book, day, days } from '../books';

const on = (text: string, name: string, portions: number | null, rows = 1) => ({
  day: day(text),
  name,
  rows,
  portions,
});

describe('waitingIn', () => {
  test('waitingIn(waiting, range) sums the days of the range by name, most portions first', () => {
    const waiting = [
      on('2026-09-30', 'Tea', 900),
      on('2026-10-01', 'Tea', 2, 2),
      on('2026-10-01', 'Creme brul#', 400),
      on('2026-10-02', 'CREME BRUL#', 220),
      on('2026-10-31', 'Sorbet', null),
      on('2026-11-01', 'Tea', 900),
    ];
    expect(waitingIn(waiting, days('2026-10'))).toEqual({
      rows: 5,
      portions: 622,
      names: [
        { name: 'Creme brul#', rows: 2, portions: 620 },
        { name: 'Tea', rows: 2, portions: 2 },
        { name: 'Sorbet', rows: 1, portions: 0 },
      ],
    });
  });
});

describe('waitingIssues', () => {
  test('waitingIssues(about, waiting, sold) is one issue with the three largest names and their share of all; none where none waits', () => {
    const each = (name: string, portions: number) => ({ name, portions, rows: 1 });
    const names = [each('A', 40), each('B', 30), each('C', 20), each('D', 10)];
    expect(waitingIssues('Marram House', { rows: 4, portions: 100, names }, 300)).toEqual([
      {
        code: 'sales-waiting',
        about: 'Marram House',
        facts: { names: 4, rows: 4, portions: 100, largest: ['A', 'B', 'C'], share: 0.25 },
      },
    ]);
    expect(waitingIssues('Marram House', { rows: 0, portions: 0, names: [] }, 300)).toEqual([]);
  });

  test('waitingIssues(rows whose number cannot be read, where nothing was sold) has no share', () => {
    const names = [{ name: 'Tea', rows: 1, portions: 0 }];
    expect(waitingIssues('Marram House', { rows: 1, portions: 0, names }, 0)[0]?.facts.share).toBeNull();
  });

  test('portionsSold(things) adds the paid portions of everything sold in the period', () => {
    const book = new Book();
    const tart = book.dish('Tart', { estimatedCost: 1 });
    book.sell(tart, '2026-10-01', 3, 9, { comps: 5 });
    book.sell(book.ingredient('Wine', 'ml', 1), '2026-10-02', 2, 9);
    book.sell(tart, '2026-11-01', 3, 9);
    expect(portionsSold(costPeriod(book.facts(), days('2026-10')).things)).toBe(5);
  });
});
