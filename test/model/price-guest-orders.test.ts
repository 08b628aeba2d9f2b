import { describe, expect, test } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import type { ItemId } from '@/lib/model/facts';
import { portionsAboveCovers } from '@/lib/model/guest-orders';
import { dishCosts } from '@/lib/reports/dish-costs';
import { menuMix } from '@/lib/reports/menu-mix';
import { Book, day, days } from '../books';

type Sold = readonly [item: 'tart' | 'ice' | 'glass', sold: number, stated?: Parameters<Book['sell']>[4]];

/** One day on which 10 guests sat down: a tart and an ice, each in a section of its own or of none, and a glass of wine. */
function tables(sections: readonly [string | null, string | null], ...sales: readonly Sold[]) {
  const book = new Book();
  const sugar = book.ingredient('Sugar', 'g', 0.01);
  const wine = book.ingredient('Wine', 'ml', 0.01, { department: 'drink' });
  const items: Record<Sold[0], ItemId> = {
    tart: book.dish('Tart', { section: sections[0] }, [10, 'g', sugar]),
    ice: book.dish('Ice', { section: sections[1] }, [10, 'g', sugar]),
    glass: book.dish('Glass', { section: 'After' }, [100, 'ml', wine]),
  };
  for (const item of Object.values(items)) book.menu(item, 9);
  book.cover('2026-10-05', 10);
  for (const [item, sold, stated] of sales) book.sell(items[item], '2026-10-05', sold, sold * 9, stated);
  return costPeriod(book.facts(), days('2026-10'));
}
const issue = (portions: number, each: number) => ({
  code: 'portions-above-covers',
  about: '2026-10-05',
  facts: { portions, covers: 10, each },
  day: day('2026-10-05'),
});

describe('portionsAboveCovers', () => {
  test('portionsAboveCovers(period) is a day on which more was served than one of each section to every guest', () => {
    const two = ['Plates', 'Ices'] as const;
    expect(portionsAboveCovers(tables(two, ['tart', 12], ['ice', 8]))).toEqual([]);
    expect(portionsAboveCovers(tables(two, ['tart', 12], ['ice', 9]))).toEqual([issue(21, 2)]);
  });

  test('portionsAboveCovers(a section of which nothing was on the menu) allows its own only where it was served', () => {
    const served = (sold: number) => {
      const book = new Book();
      const sugar = book.ingredient('Sugar', 'g', 0.01);
      const tart = book.dish('Tart', { section: 'Plates' }, [10, 'g', sugar]);
      const ice = book.dish('Ice', { section: 'Ices' }, [10, 'g', sugar]);
      book.menu(tart, 9);
      book.menu(ice, 9, { from: '2026-10-20' });
      book.cover('2026-10-05', 10);
      book.sell(tart, '2026-10-05', 12, 108);
      if (sold > 0) book.sell(ice, '2026-10-05', sold, 9 * sold);
      return portionsAboveCovers(costPeriod(book.facts(), days('2026-10')));
    };
    expect(served(0)).toEqual([issue(12, 1)]);
    expect(served(8)).toEqual([]);
    expect(served(9)).toEqual([issue(21, 2)]);
  });

  test('portionsAboveCovers(one section, however it is written, or none) allows one a guest', () => {
    expect(portionsAboveCovers(tables(['Plates', 'plates '], ['tart', 6], ['ice', 5]))).toEqual([issue(11, 1)]);
    expect(portionsAboveCovers(tables([null, null], ['tart', 6], ['ice', 5]))).toEqual([issue(11, 1)]);
    expect(portionsAboveCovers(tables([null, null], ['tart', 6], ['ice', 4]))).toEqual([]);
  });

  test('portionsAboveCovers(period) counts comps, and neither drinks nor what is taken away', () => {
    expect(portionsAboveCovers(tables([null, null], ['tart', 10, { comps: 1 }]))).toEqual([issue(11, 1)]);
    const apart: readonly Sold[] = [
      ['tart', 10],
      ['ice', 7, { channel: 'takeaway' }],
      ['glass', 30],
    ];
    expect(portionsAboveCovers(tables([null, null], ...apart))).toEqual([]);
  });

  test('portionsAboveCovers(days without covers) says nothing', () => {
    const book = new Book();
    const tart = book.dish('Tart', {});
    book.menu(tart, 9);
    book.sell(tart, '2026-10-05', 400, 1);
    expect(portionsAboveCovers(costPeriod(book.facts(), days('2026-10')))).toEqual([]);
  });

  test('menuMix(the whole menu) and dishCosts say it; the mix of one section does not', () => {
    const period = tables(['Plates', 'Plates'], ['tart', 6], ['ice', 5]);
    const codes = ({ issues }: { readonly issues: readonly { readonly code: string }[] }) =>
      issues.map(({ code }) => code).filter((code) => code === 'portions-above-covers');
    expect(codes(menuMix(period, { section: null }))).toHaveLength(1);
    expect(codes(dishCosts(period))).toHaveLength(1);
    expect(codes(menuMix(period, { section: 'Plates' }))).toEqual([]);
  });
});
