import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { OfferId } from '@/lib/model/facts';
import { atFifo } from '@/lib/model/valuation/fifo';
import { atLastInvoice, atPriceInForce, atWeightedAverage } from '@/lib/model/valuation/one-price';
import { available, type StockFlow, sumOf } from '@/lib/model/valuation/stock-flow';
import { RUNS } from '../../generated-books';
import { flow, receipt } from './flows';

const OTHER = 2 as OfferId;

describe('atWeightedAverage', () => {
  // 10 at 2.00 and 30 at 3.00 are 40 for 110.00: 2.75 each. 5 handed on, 12 left, 23 used.
  const stock = flow({
    opening: [{ quantity: 10, value: 20 }],
    receipts: [receipt(30, 90)],
    transferredOut: 5,
    closing: 12,
  });

  test('atWeightedAverage(stock) is value / quantity of opening and what came', () => {
    expect(atWeightedAverage(stock)).toEqual({
      name: 'weighted-average',
      price: 2.75,
      closing: [{ quantity: 12, value: 33 }],
      transferredOut: { quantity: 5, value: 13.75 },
      used: { quantity: 23, value: 63.25 },
    });
  });

  // 10 came for 30.00; 6.00 off without goods; 2 back for 6.00: 8 for 18.00
  test('atWeightedAverage(credits) takes value for a price credit, and both for goods that went back', () => {
    const credits = flow({ receipts: [receipt(10, 30), receipt(0, -6), receipt(-2, -6)] });
    expect(atWeightedAverage(credits).price).toBe(2.25);
  });

  test('atWeightedAverage(not counted at the end) has a price, and neither closing nor use', () => {
    expect(atWeightedAverage({ ...stock, closing: null })).toMatchObject({ price: 2.75, closing: null, used: null });
  });

  test('atWeightedAverage(never counted before) has purchases’ price and no use; without purchases the price in force', () => {
    const first = flow({ opening: null, receipts: [receipt(4, 10)], closing: 3 });
    expect(atWeightedAverage(first)).toMatchObject({ price: 2.5, closing: [{ quantity: 3, value: 7.5 }], used: null });
    expect(atWeightedAverage({ ...first, receipts: [], priceInForce: 3 })).toMatchObject({
      price: 3,
      closing: [{ quantity: 3, value: 9 }],
    });
    expect(atWeightedAverage({ ...first, receipts: [], closing: null, priceInForce: 3 }).price).toBeNull();
  });

  test('atWeightedAverage(nothing there, or credited beyond all that came) has no price', () => {
    expect(atWeightedAverage(flow({ closing: 2, priceInForce: 3 }))).toMatchObject({ price: null, closing: null });
    expect(atWeightedAverage(flow({ receipts: [receipt(2, 4), receipt(0, -5)] })).price).toBeNull();
    expect(atWeightedAverage(flow({ receipts: [receipt(2, 4), receipt(-3, -4)] })).price).toBeNull();
  });

  test('atWeightedAverage(nothing left) leaves nothing, price or not', () => {
    expect(atWeightedAverage(flow({ closing: 0 }))).toMatchObject({
      price: null,
      closing: [],
      used: { quantity: 0, value: 0 },
    });
  });
});

describe('atFifo', () => {
  const opening = [
    { quantity: 4, value: 4 },
    { quantity: 6, value: 12 },
  ];

  // 10 in two layers (1.00, 2.00) and 5 at 3.00: 8 left are 5 at 3.00 and 3 at 2.00; 7 gone are 4 at 1.00 and 3 at 2.00 = 10.00
  test('atFifo(stock) leaves what came last, oldest first, and uses the oldest', () => {
    const valued = atFifo(flow({ opening, receipts: [receipt(5, 15)], closing: 8 }));
    expect(valued).toEqual({
      name: 'fifo',
      price: 10 / 7,
      closing: [
        { quantity: 3, value: 6 },
        { quantity: 5, value: 15 },
      ],
      used: { quantity: 7, value: 10 },
      transferredOut: { quantity: 0, value: 0 },
    });
  });

  test('atFifo(transferred out) leaves at the price of what is used', () => {
    const { price, used, transferredOut } = atFifo(
      flow({ opening, receipts: [receipt(5, 15)], closing: 5, transferredOut: 4 }),
    );
    expect(price).toBeCloseTo(1.6, 12); // 16.00 for 10
    expect(transferredOut?.value).toBeCloseTo(6.4, 12);
    expect(used?.value).toBeCloseTo(9.6, 12);
  });

  test('atFifo(a price credit) lowers the newest layer of its offer, else the newest', () => {
    const receipts = [receipt(5, 15), receipt(5, 20, { offer: OTHER }), receipt(0, -5)];
    expect(atFifo(flow({ receipts, closing: 10 })).closing).toEqual([
      { quantity: 5, value: 10 },
      { quantity: 5, value: 20 },
    ]);
    const none = [receipt(5, 15), receipt(0, -5, { offer: OTHER })];
    expect(atFifo(flow({ receipts: none, closing: 5 })).closing).toEqual([{ quantity: 5, value: 10 }]);
  });

  test('atFifo(a credit larger than its layer) goes on to the next, and what is over lowers what was used', () => {
    const receipts = [receipt(5, 15), receipt(5, 20), receipt(0, -24)];
    expect(atFifo(flow({ receipts, closing: 10 })).closing).toEqual([
      { quantity: 5, value: 11 },
      { quantity: 5, value: 0 },
    ]);
    const { closing, used } = atFifo(flow({ receipts: [receipt(5, 15), receipt(0, -16)], closing: 5 }));
    expect([closing, used]).toEqual([[{ quantity: 5, value: 0 }], { quantity: 0, value: -1 }]);
  });

  test('atFifo(goods that went back) leave the newest layer; a credit of more or less than they cost moves what stays', () => {
    const back = (value: number) =>
      atFifo(flow({ receipts: [receipt(5, 15), receipt(-2, value)], closing: 3 })).closing;
    expect(back(-6)).toEqual([{ quantity: 3, value: 9 }]);
    expect(back(-8)).toEqual([{ quantity: 3, value: 7 }]);
    expect(back(-3)).toEqual([{ quantity: 3, value: 12 }]);
  });

  test('atFifo(counted beyond all that came) values the rest as the newest layer, and use is below zero', () => {
    const { closing, used, price } = atFifo(flow({ receipts: [receipt(5, 15)], closing: 7 }));
    expect(closing).toEqual([
      { quantity: 5, value: 15 },
      { quantity: 2, value: 6 },
    ]);
    expect([used, price]).toEqual([{ quantity: -2, value: -6 }, null]);
    expect(atFifo(flow({ closing: 2, priceInForce: 4 })).closing).toEqual([{ quantity: 2, value: 8 }]);
    expect(atFifo(flow({ closing: 2 })).closing).toBeNull();
  });

  test('atFifo(not counted at both ends) has no price and no use', () => {
    expect(atFifo(flow({ opening, closing: null }))).toMatchObject({ price: null, closing: null, used: null });
    expect(atFifo(flow({ opening: null, receipts: [receipt(5, 15)], closing: 2 }))).toMatchObject({
      price: null,
      closing: [{ quantity: 2, value: 6 }],
      used: null,
    });
  });
});

describe('atPriceInForce, atLastInvoice', () => {
  // 10 for 20.00 and 30 for 90.00; 12 left at 4.00 are 48.00, so 62.00 were used
  const stock = flow({ opening: [{ quantity: 10, value: 20 }], receipts: [receipt(30, 90)], closing: 12 });

  test('atPriceInForce(stock) values what is left at the price in force, and what prices did falls on what was used', () => {
    expect(atPriceInForce({ ...stock, priceInForce: 4, lastInvoice: 3 })).toEqual({
      name: 'price-in-force',
      price: 4,
      closing: [{ quantity: 12, value: 48 }],
      used: { quantity: 28, value: 62 },
      transferredOut: { quantity: 0, value: 0 },
    });
  });

  test('atLastInvoice(stock) takes the last invoice', () => {
    expect(atLastInvoice({ ...stock, priceInForce: 4, lastInvoice: 3, transferredOut: 2 })).toMatchObject({
      name: 'last-invoice',
      price: 3,
      closing: [{ quantity: 12, value: 36 }],
      transferredOut: { quantity: 2, value: 6 },
      used: { quantity: 26, value: 68 },
    });
  });

  test('atPriceInForce(no price), atLastInvoice(no invoice) know nothing', () => {
    for (const valued of [atPriceInForce(stock), atLastInvoice(stock)]) {
      expect(valued).toMatchObject({ price: null, closing: null, used: null });
    }
  });
});

const amount = fc.integer({ min: 1, max: 5000 }).map((count) => count / 8);
const layer = fc.record({ quantity: amount, value: amount });
const offer = fc.constantFrom(1 as OfferId, OTHER);
const delivery = fc
  .tuple(amount, amount, offer)
  .map(([quantity, value, of]) => receipt(quantity, value, { offer: of }));
const credit = fc
  .tuple(fc.oneof(fc.constant(0), amount), amount, offer)
  .map(([quantity, value, of]) => receipt(-quantity, -value, { offer: of }));
const flows = (receipts: fc.Arbitrary<ReturnType<typeof receipt>>): fc.Arbitrary<StockFlow> =>
  fc.record({
    opening: fc.array(layer, { maxLength: 3 }),
    receipts: fc.array(receipts, { maxLength: 6 }),
    transferredOut: fc.oneof(fc.constant(0), amount),
    closing: fc.oneof(fc.constant(0), amount),
    priceInForce: amount,
    lastInvoice: amount,
  });
const near = (a: number, b: number, size: number): boolean => Math.abs(a - b) <= 1e-9 * Math.max(1, size);

describe('every valuation', () => {
  test('atAny(flow) loses no value: opening + receipts = used + transferred out + closing', () => {
    fc.assert(
      fc.property(flows(fc.oneof({ weight: 3, arbitrary: delivery }, { weight: 1, arbitrary: credit })), (stock) => {
        const whole = available(stock);
        for (const valuation of [atPriceInForce, atLastInvoice, atWeightedAverage, atFifo]) {
          const { closing, used, transferredOut } = valuation(stock);
          if (used === null) continue;
          const parts = [used, sumOf(closing ?? []), transferredOut ?? { quantity: 0, value: 0 }];
          const size = parts.reduce((sum, part) => sum + Math.abs(part.value) + Math.abs(part.quantity), 0);
          expect(near(sumOf(parts).value, whole.value, size)).toBe(true);
          expect(near(sumOf(parts).quantity, whole.quantity, size)).toBe(true);
          expect(near(sumOf(closing ?? []).quantity, stock.closing ?? 0, size)).toBe(true);
        }
      }),
      RUNS,
    );
  });

  test('atFifo(flow) and atPriceInForce(flow) always know what is left where there is a price', () => {
    fc.assert(
      fc.property(flows(fc.oneof(delivery, credit)), (stock) => {
        expect([atFifo(stock).used, atPriceInForce(stock).used].includes(null)).toBe(false);
      }),
      RUNS,
    );
  });

  test('atWeightedAverage(deliveries) lies between the least and the greatest of their prices', () => {
    fc.assert(
      fc.property(flows(delivery), (stock) => {
        const prices = [...(stock.opening ?? []), ...stock.receipts].map(({ quantity, value }) => value / quantity);
        const { price } = atWeightedAverage(stock);
        if (prices.length === 0) {
          expect(price).toBeNull();
          return;
        }
        expect(price).toBeGreaterThanOrEqual(Math.min(...prices) * (1 - 1e-12));
        expect(price).toBeLessThanOrEqual(Math.max(...prices) * (1 + 1e-12));
      }),
      RUNS,
    );
  });

  test('atFifo(flow, credits and returns included) has no layer below zero', () => {
    fc.assert(
      fc.property(flows(fc.oneof(delivery, credit)), (stock) => {
        for (const { quantity, value } of atFifo(stock).closing ?? []) {
          expect(quantity).toBeGreaterThanOrEqual(0);
          expect(value).toBeGreaterThanOrEqual(0);
        }
      }),
      RUNS,
    );
  });
});

describe('deliveries that go back', () => {
  // 10 at 2.00, then 5 at 3.00, and those 5 went back for what they had cost: the ten stay as they came
  test('atFifo(a whole delivery goes back) takes its layer, and leaves the price of the others', () => {
    const stock = flow({ receipts: [receipt(10, 20), receipt(5, 15), receipt(-5, -15)], closing: 10 });
    expect(atFifo(stock)).toMatchObject({ closing: [{ quantity: 10, value: 20 }], used: { quantity: 0, value: 0 } });
  });

  test('atFifo(never counted before) knows what was handed on only where that is nothing', () => {
    const first = flow({ opening: null, receipts: [receipt(4, 10)], closing: 3 });
    expect(atFifo(first).transferredOut).toEqual({ quantity: 0, value: 0 });
    expect(atFifo({ ...first, transferredOut: 1 }).transferredOut).toBeNull();
  });
});

test('atWeightedAverage(goods that came for nothing) is the price 0, not no price', () => {
  expect(atWeightedAverage(flow({ receipts: [receipt(4, 0)], closing: 1 }))).toMatchObject({ price: 0 });
});
