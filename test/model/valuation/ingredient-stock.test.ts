import { describe, expect, test } from 'vitest';
import { atFifo } from '@/lib/model/valuation/fifo';
import { type IngredientStock, periodStock } from '@/lib/model/valuation/ingredient-stock';
import { atPriceInForce, atWeightedAverage } from '@/lib/model/valuation/one-price';
import { sumOf } from '@/lib/model/valuation/stock-flow';
import { day, days } from '../../books';
import { receipt } from './flows';

const on = (text: string, quantity: number) => ({ day: day(text), quantity });
const came = (text: string, quantity: number, value: number) => receipt(quantity, value, { day: day(text) });

/** Counted at the end of each month; the price in force is 1.00 until 1 October, then 2.00. */
const stock: IngredientStock = {
  counts: [on('2026-07-31', 10), on('2026-08-31', 5), on('2026-09-15', 1), on('2026-09-30', 20), on('2026-10-31', 8)],
  receipts: [came('2026-08-10', 10, 20), came('2026-09-10', 25, 75), came('2026-10-10', 12, 48)],
  transfersOut: [on('2026-10-20', 4)],
  priceInForce: (at) => (at < day('2026-10-01') ? 1 : 2),
  lastInvoice: () => null,
};
const october = (
  valuation: Parameters<typeof periodStock>[2],
  of = stock,
  calendar: Parameters<typeof periodStock>[3] = 'months',
) => periodStock(of, days('2026-10'), valuation, calendar);

describe('periodStock', () => {
  /*
   * July closes with 10 at the price in force, 10.00. August: 20 for 30.00, 1.50 each, closes with 5 for 7.50. September, whatever was
   * counted inside it: 30 for 82.50, 2.75 each, closes with 20 for 55.00. October: 32 for 103.00, 3.21875 each.
   */
  test('periodStock(month, weighted average) opens with what closed the month before, month by month from the first count', () => {
    const { flow, valued, countedFrom, countedTo } = october(atWeightedAverage);
    expect([countedFrom, countedTo]).toEqual([on('2026-09-30', 20), on('2026-10-31', 8)]);
    expect(flow.opening).toEqual([{ quantity: 20, value: 55 }]);
    expect(valued.price).toBe(3.21875);
    expect(valued.closing).toEqual([{ quantity: 8, value: 25.75 }]);
    expect(valued.transferredOut).toEqual({ quantity: 4, value: 12.875 });
    expect(valued.used).toEqual({ quantity: 20, value: 64.375 });
  });

  // FIFO: August leaves 5 of the 10 at 2.00; September 20 of the 25 at 3.00; October 8 of the 12 at 4.00.
  test('periodStock(month, FIFO) opens with the layers that closed the month before', () => {
    const { flow, valued } = october(atFifo);
    expect(flow.opening).toEqual([{ quantity: 20, value: 60 }]);
    expect(valued.closing).toEqual([{ quantity: 8, value: 32 }]);
    expect(
      sumOf([valued.used ?? expect.unreachable('unused'), valued.transferredOut ?? expect.unreachable('none')]),
    ).toEqual({
      quantity: 24,
      value: 76,
    });
  });

  test('periodStock(month) closes with what opens the next, by every valuation', () => {
    for (const valuation of [atWeightedAverage, atFifo, atPriceInForce]) {
      const september = periodStock(stock, days('2026-09'), valuation, 'months');
      expect(october(valuation).flow.opening).toEqual(september.valued.closing);
    }
  });

  test('periodStock(month) cuts at the counts, so that no delivery falls between two', () => {
    const late = { ...stock, counts: [on('2026-09-28', 20), on('2026-10-29', 8)], receipts: [] };
    const with29th = { ...late, receipts: [came('2026-09-29', 3, 9), came('2026-10-30', 4, 16)] };
    expect(october(atFifo, with29th).flow.receipts.map(({ value }) => value)).toEqual([9]);
    expect(periodStock(with29th, days('2026-11'), atFifo, 'months').flow.receipts.map(({ value }) => value)).toEqual([
      16,
    ]);
  });

  test('periodStock(month not counted at its end) takes its deliveries to the last day and closes with nothing known', () => {
    const { flow, countedTo, valued } = october(atWeightedAverage, { ...stock, counts: stock.counts.slice(0, 4) });
    expect([flow.receipts.length, flow.closing, countedTo]).toEqual([1, null, null]);
    expect([valued.price, valued.used]).toEqual([3.21875, null]);
  });

  test('periodStock(never counted before) takes the deliveries of its own days only', () => {
    const { flow, valued } = october(atWeightedAverage, { ...stock, counts: [] });
    expect([flow.opening, flow.receipts.length, valued.price]).toEqual([null, 1, 4]);
  });

  test('periodStock(first count without a price) does not know what it is worth; a count of nothing is worth nothing', () => {
    const silent = { ...stock, counts: [on('2026-09-30', 20)], priceInForce: () => null };
    expect(october(atWeightedAverage, silent).flow.opening).toBeNull();
    expect(october(atWeightedAverage, { ...silent, lastInvoice: () => 3 }).flow.opening).toEqual([
      { quantity: 20, value: 60 },
    ]);
    expect(october(atWeightedAverage, { ...silent, counts: [on('2026-09-30', 0)] }).flow.opening).toEqual([]);
  });

  /*
   * In quarters of 4, 4 and 5 weeks 31 July lies in P08 (27 July to 23 August), 15 September in P09 (to 27 September) and 30 September
   * in P10. The count of 31 August closes nothing: 45 for 105.00 are 7/3 each on 15 September, and so are the 20 of 30 September.
   */
  test('periodStock(a calendar of weeks) chains the closings of its own periods', () => {
    const opening = october(atWeightedAverage, stock, '4-4-5').flow.opening ?? [];
    expect(opening.map(({ quantity }) => quantity)).toEqual([20]);
    expect(sumOf(opening).value).toBeCloseTo(140 / 3, 9);
  });

  test('periodStock(counts on the first day, and on the day after the last) are in the period, and in the next', () => {
    const september = on('2026-09-30', 20);
    const first = october(atWeightedAverage, { ...stock, counts: [september, on('2026-10-01', 19)] });
    expect([first.countedFrom, first.countedTo]).toEqual([september, on('2026-10-01', 19)]);
    const later = october(atWeightedAverage, { ...stock, counts: [september, on('2026-11-01', 3)] });
    expect([later.countedFrom, later.countedTo]).toEqual([september, null]);
  });

  test('periodStock(month) hands on what left on its own days', () => {
    const transfersOut = [on('2026-09-30', 7), ...stock.transfersOut, on('2026-11-01', 9)];
    expect(october(atWeightedAverage, { ...stock, transfersOut }).flow.transferredOut).toBe(4);
  });

  // as in the first example: a count on 1 September closes no month
  test('periodStock(counted on the first of a month) chains by what closed the month before', () => {
    const counts = [...stock.counts.slice(0, 2), on('2026-09-01', 7), ...stock.counts.slice(2)];
    expect(october(atWeightedAverage, { ...stock, counts }).flow.opening).toEqual([{ quantity: 20, value: 55 }]);
  });

  // nothing prices August; September closes with 20 at the 2.00 in force, not at the 3.00 of its purchases
  test('periodStock(first count without a price) starts at the price in force of the next count', () => {
    const silent = {
      ...stock,
      counts: [on('2026-08-31', 5), on('2026-09-30', 20)],
      priceInForce: (at: number) => (at < day('2026-09-15') ? null : 2),
    };
    expect(october(atWeightedAverage, silent).flow.opening).toEqual([{ quantity: 20, value: 40 }]);
  });
});
