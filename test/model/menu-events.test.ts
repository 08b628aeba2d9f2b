import { describe, expect, test } from 'vitest';
import type { ItemId, MenuPrice } from '@/lib/model/facts';
import { lastMenuPrice, menuEvents, onMenuSince } from '@/lib/model/menu-events';
import { Book, day, days } from '../books';

/** Prices of one item: from (null: from the beginning), price (null: off), channel. */
function prices(...stated: (readonly [from: string | null, price: number | null, channel?: string])[]): MenuPrice[] {
  const book = new Book();
  const item = book.item('dish', 'Posset') as ItemId;
  for (const [from, price, channel = 'dine_in'] of stated)
    book.menu(item, price, { channel, ...(from ? { from } : {}) });
  return [...book.facts().menuPrices];
}

describe('menuEvents', () => {
  test('menuEvents(prices) says what came, what changed its price and what went, by day', () => {
    const events = menuEvents(
      prices(
        ['2026-03-01', null],
        ['2025-05-01', 8],
        ['2025-09-01', 8.5],
        ['2025-09-01', 8.5, 'takeaway'],
        ['2026-06-01', 9],
      ),
    );
    expect(events).toEqual([
      { day: day('2025-05-01'), channel: 'dine_in', kind: 'came', price: 8, before: null },
      { day: day('2025-09-01'), channel: 'dine_in', kind: 'price', price: 8.5, before: 8 },
      { day: day('2025-09-01'), channel: 'takeaway', kind: 'came', price: 8.5, before: null },
      { day: day('2026-03-01'), channel: 'dine_in', kind: 'went', price: null, before: 8.5 },
      { day: day('2026-06-01'), channel: 'dine_in', kind: 'came', price: 9, before: null },
    ]);
  });

  test('menuEvents(prices) has no event for a price that stands since the beginning, nor for one that is said again', () => {
    expect(menuEvents(prices([null, 8], ['2025-09-01', 8]))).toEqual([]);
    expect(menuEvents(prices([null, 8], ['2025-09-01', 9])).map(({ before }) => before)).toEqual([8]);
  });
});

describe('onMenuSince', () => {
  const stated = prices(['2025-05-01', 8], ['2025-09-01', 8.5], ['2026-03-01', null], ['2026-06-01', 9]);

  test('onMenuSince(prices, day) is the first day of the run up to then: a new price does not break it, a gap does', () => {
    expect(onMenuSince(stated, day('2025-12-24'))).toEqual({ from: day('2025-05-01') });
    expect(onMenuSince(stated, day('2026-02-28'))).toEqual({ from: day('2025-05-01') });
    expect(onMenuSince(stated, day('2026-06-01'))).toEqual({ from: day('2026-06-01') });
  });

  test('onMenuSince(prices, day) is null on a day without a price', () => {
    expect(onMenuSince(stated, day('2026-03-01'))).toBeNull();
    expect(onMenuSince(stated, day('2025-04-30'))).toBeNull();
    expect(onMenuSince([], day('2025-04-30'))).toBeNull();
  });

  test('onMenuSince(prices, day) bridges a gap in one channel by another, and reaches back to the beginning', () => {
    const bridged = prices(['2025-05-01', 8], ['2025-09-01', null], ['2025-11-01', 9], ['2025-08-01', 7, 'takeaway']);
    expect(onMenuSince(bridged, day('2026-01-01'))).toEqual({ from: day('2025-05-01') });
    expect(onMenuSince(prices([null, 8], ['2025-09-01', 9]), day('2026-01-01'))).toEqual({ from: null });
  });
});

describe('lastMenuPrice', () => {
  const stated = prices(['2026-09-01', 8], ['2026-10-15', 8.5], ['2026-10-20', null], ['2026-10-01', 7, 'takeaway']);

  test('lastMenuPrice(prices, days) is the one of the last of them on which there was one, in dine_in where it was there', () => {
    expect(lastMenuPrice(stated, days('2026-10'))).toBe(8.5);
    expect(lastMenuPrice(stated, days('2026-09'))).toBe(8);
    expect(lastMenuPrice(stated, days('2026-10-15..2026-10-16'))).toBe(8.5);
    expect(lastMenuPrice(stated, days('2026-10-14..2026-10-15'))).toBe(8);
  });

  test('lastMenuPrice(prices, days) takes another channel where dine_in had none, and is null where none had one', () => {
    expect(lastMenuPrice(stated, days('2026-11'))).toBe(7);
    expect(lastMenuPrice(stated, days('2026-08'))).toBeNull();
  });
});
