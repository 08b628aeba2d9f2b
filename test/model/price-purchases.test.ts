import { describe, expect, test } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import type { ItemId, OfferId } from '@/lib/model/facts';
import { unitReader } from '@/lib/model/measure';
import { boughtGoods, claimsOf, invoicePoints } from '@/lib/model/purchases';
import { Book, day, days } from '../books';
import { costOn, issuesIn } from './plate';

const CENT = 0.01;

/** Cream in tubs of 2 kg, 100 g of it on a plate. */
function cream(write: (book: Book, tub: OfferId, item: ItemId) => void) {
  const book = new Book();
  const item = book.item('ingredient', 'Cream');
  book.ingredientVersion(item, 'g', { densityGPerMl: 1 });
  const tub = book.offer(item, 1, 2, 'kg');
  write(book, tub, item);
  const dish = book.dish('Bowl', {}, [100, 'g', item]);
  book.menu(dish, 9);
  const facts = book.facts();
  const bought = boughtGoods(facts, unitReader('metric'));
  return { facts, dish, bought, cost: (on: string) => costOn(facts, dish, on) };
}
const prices = (write: Parameters<typeof cream>[0]) =>
  invoicePoints(cream(write).bought).map(({ validFrom, price }) => [validFrom, price]);
const claims = (write: Parameters<typeof cream>[0], leastUnit = CENT) =>
  claimsOf(cream(write).bought, leastUnit).map(({ kind, packs, difference, money }) => ({
    kind,
    packs,
    difference: Number(difference.toFixed(6)),
    money: Number(money.toFixed(6)),
  }));

describe('invoicePoints', () => {
  test('invoicePoints(goods) is amount / packs, on the day of delivery; the invoice’s where none is stated', () => {
    expect(
      prices((book, offer) => {
        book.buy('2026-10-05', { offer, packs: 4, amount: 40, delivered: '2026-10-03' });
        book.buy('2026-10-12', { offer, packs: 5, amount: 55 });
      }),
    ).toEqual([
      [day('2026-10-03'), 10],
      [day('2026-10-12'), 11],
    ]);
  });

  // 5.2 kg for 26.00 is 5.00 a kg: 10.00 for what a pack of 2 kg holds
  test('invoicePoints(catch weight) is amount / weight delivered, however many pieces it came in', () => {
    const weighed = [[day('2026-10-05'), 10]];
    expect(prices((book, offer) => book.buy('2026-10-05', { offer, quantity: 5.2, unit: 'kg', amount: 26 }))).toEqual(
      weighed,
    );
    expect(
      prices((book, offer) => book.buy('2026-10-05', { offer, packs: 3, quantity: 5200, unit: 'ml', amount: 26 })),
    ).toEqual(weighed);
  });

  // 8 kg are four packs where three were invoiced: 40.00 is for what came
  test('invoicePoints(more than was invoiced) is amount / what came; a weight without its unit says nothing', () => {
    expect(
      prices((book, offer) => {
        book.buy('2026-10-05', { offer, packs: 3, quantity: 8, unit: 'kg', amount: 40 });
        book.buy('2026-10-06', { offer, packs: 4, quantity: 3, amount: 42 });
      }).map(([, price]) => price),
    ).toEqual([10, 10.5]);
  });

  test('invoicePoints(goods before their ingredient is described) has none, and raises nothing', () => {
    const book = new Book();
    const cheese = book.item('ingredient', 'Cheese');
    book.ingredientVersion(cheese, 'g', { from: '2026-10-10' });
    const wheel = book.offer(cheese, 1, 2, 'kg');
    book.buy('2026-10-05', { offer: wheel, quantity: 2, unit: 'kg', amount: 20 });
    const bought = boughtGoods(book.facts(), unitReader('metric'));
    expect(invoicePoints(bought)).toEqual([]);
    expect(bought.map(({ came, issue }) => [came, issue])).toEqual([[null, null]]);
  });

  test('invoicePoints(credit, freight, deposit, rebate, non-food, goods that went back) has none of them', () => {
    expect(
      prices((book, offer) => {
        for (const kind of ['credit', 'freight', 'deposit', 'rebate', 'non_food'] as const) {
          book.buy('2026-10-05', { kind, offer, packs: 2, amount: 99 });
        }
        book.buy('2026-10-06', { offer, packs: -1, amount: -10 });
        book.buy('2026-10-07', { offer, packs: 0, amount: 10 });
      }),
    ).toEqual([]);
  });

  test('invoicePoints(no invoice, or no amount) has none', () => {
    expect(
      prices((book, offer) => {
        book.buy('2026-10-05', { offer, packs: 4, amount: 40, invoice: null });
        book.buy('2026-10-06', { offer, packs: 4 });
      }),
    ).toEqual([]);
  });

  test('invoicePoints(two lines of a day) has one, the last', () => {
    expect(
      prices((book, offer) => {
        book.buy('2026-10-05', { offer, packs: 1, amount: 10 });
        book.buy('2026-10-05', { offer, packs: 1, amount: 11 });
      }),
    ).toEqual([[day('2026-10-05'), 11]]);
  });

  test('invoicePoints(more than 20 % off the last) waits; 20 % does not; the last is the last that was taken', () => {
    expect(
      prices((book, offer) => {
        book.buy('2026-10-01', { offer, packs: 1, amount: 10 });
        book.buy('2026-10-02', { offer, packs: 1, amount: 12.01 });
        book.buy('2026-10-03', { offer, packs: 1, amount: 12 });
        book.buy('2026-10-04', { offer, packs: 1, amount: 9.59 });
        book.buy('2026-10-05', { offer, packs: 1, amount: 9.6 });
      }).map(([, price]) => price),
    ).toEqual([10, 12, 9.6]);
  });

  test('invoicePoints(far from the last invoice) is taken where an agreed, a list or a typed invoice price says the same', () => {
    for (const kind of ['agreed', 'list', 'invoice'] as const) {
      const taken = prices((book, offer) => {
        book.price(offer, 15, { kind, from: '2026-10-05' });
        book.buy('2026-10-01', { offer, packs: 1, amount: 10 });
        book.buy('2026-10-05', { offer, packs: 1, amount: 15 });
      });
      expect(taken.map(([, price]) => price)).toEqual([10, 15]);
    }
    const quoted = prices((book, offer) => {
      book.price(offer, 15, { kind: 'quote' });
      book.buy('2026-10-01', { offer, packs: 1, amount: 10 });
      book.buy('2026-10-05', { offer, packs: 1, amount: 15 });
    });
    expect(quoted.map(([, price]) => price)).toEqual([10]);
  });

  test('invoicePoints(lines) judges by day of delivery, in whatever order they were written', () => {
    const first = ['2026-10-01', 10] as const;
    const second = ['2026-10-02', 12.01] as const;
    for (const written of [
      [first, second],
      [second, first],
    ]) {
      const taken = prices((book, offer) => {
        for (const [on, amount] of written) book.buy(on, { offer, packs: 1, amount });
      });
      expect(taken).toEqual([[day('2026-10-01'), 10]]);
    }
  });

  // 0.84 is 0.70 and a fifth of it, though 0.84 - 0.7 is a little more than 0.2 * 0.7 in binary fractions
  test('invoicePoints(a fifth more, to the last bit or not) does not wait', () => {
    const taken = prices((book, offer) => {
      book.buy('2026-10-01', { offer, packs: 1, amount: 0.7 });
      book.buy('2026-10-02', { offer, packs: 1, amount: 0.84 });
    });
    expect(taken.map(([, price]) => price)).toEqual([0.7, 0.84]);
  });

  test('invoicePoints(a typed invoice price) is the last one from its day on, for orders of its size', () => {
    const before = prices((book, offer) => {
      book.price(offer, 15, { kind: 'invoice', from: '2026-10-01' });
      book.buy('2026-10-05', { offer, packs: 1, amount: 20 });
    });
    expect(before).toEqual([]);
    const large = prices((book, offer) => {
      book.price(offer, 15, { kind: 'invoice', from: '2026-10-05', minimumPacks: 10 });
      book.buy('2026-10-01', { offer, packs: 1, amount: 10 });
      book.buy('2026-10-05', { offer, packs: 10, amount: 150 });
    });
    expect(large.map(([, price]) => price)).toEqual([10, 15]);
    // 18.10 is more than a fifth above the 15.00 typed for that day, whatever came on it before
    const sameDay = prices((book, offer) => {
      book.price(offer, 15, { kind: 'invoice', from: '2026-10-05' });
      book.buy('2026-10-05', { offer, packs: 1, amount: 17 });
      book.buy('2026-10-05', { offer, packs: 1, amount: 18.1 });
    });
    expect(sameDay.map(([, price]) => price)).toEqual([17]);
  });

  test('invoicePoints(a foreign list price without a rate) is not held against it', () => {
    const taken = prices((book, offer) => {
      book.price(offer, 10, { currency: 'GBP' });
      book.buy('2026-10-05', { offer, packs: 1, amount: 14 });
    });
    expect(taken.map(([, price]) => price)).toEqual([14]);
  });

  // 10 pounds at 1.20 are 12 euros
  test('invoicePoints(a foreign offer) is judged at the rate of its delivery', () => {
    const taken = (amount: number) =>
      prices((book, offer) => {
        book.price(offer, 10, { currency: 'GBP' });
        book.rate('GBP', '2026-09-01', 1.2);
        book.rate('GBP', '2026-10-06', 9);
        book.buy('2026-10-05', { offer, packs: 1, amount });
      });
    expect(taken(14.4)).toHaveLength(1);
    expect(taken(14.5)).toHaveLength(0);
    expect(taken(9.5)).toHaveLength(0);
  });
});

describe('costPeriod with invoices', () => {
  test('costPeriod(facts) takes the last invoice where there is neither an agreed nor a list price', () => {
    const { cost } = cream((book, offer) => {
      book.buy('2026-10-05', { offer, packs: 4, amount: 40 });
      book.buy('2026-10-12', { offer, packs: 4, amount: 44 });
    });
    expect(cost('2026-10-04')).toBeNull();
    expect(cost('2026-10-05')).toBeCloseTo(0.5, 12);
    expect(cost('2026-10-11')).toBeCloseTo(0.5, 12);
    expect(cost('2026-10-12')).toBeCloseTo(0.55, 12);
  });

  test('costPeriod(facts) keeps an agreed price before any invoice', () => {
    const { cost } = cream((book, offer) => {
      book.price(offer, 9, { kind: 'agreed' });
      book.buy('2026-10-05', { offer, packs: 4, amount: 40 });
    });
    expect(cost('2026-10-06')).toBeCloseTo(0.45, 12);
  });

  test('costPeriod(a price that waits) costs with the last one and says so, until a later invoice is taken', () => {
    const write: Parameters<typeof cream>[0] = (book, offer) => {
      book.buy('2026-09-25', { offer, packs: 1, amount: 10 });
      book.buy('2026-09-29', { offer, packs: 1, amount: 20, invoice: 'I2' });
    };
    const { facts, cost } = cream(write);
    expect(cost('2026-10-05')).toBeCloseTo(0.5, 12);
    const waits = {
      code: 'price-waits',
      about: 'Cream',
      facts: { supplier: 'Bay Dairy', code: 'P1', invoice: 'I2', price: 20, last: 10 },
    };
    expect(issuesIn(facts)).toEqual([{ ...waits, day: day('2026-10-01') }]);
    expect(issuesIn(facts, '2026-09')).toEqual(expect.arrayContaining([{ ...waits, day: day('2026-09-29') }]));
    expect(issuesIn(facts, '2026-08').filter(({ code }) => code === 'price-waits')).toEqual([]);
    const settled = cream((book, offer, item) => {
      write(book, offer, item);
      book.buy('2026-09-30', { offer, packs: 1, amount: 11 });
    });
    expect(issuesIn(settled.facts)).toEqual([]);
  });

  test('costPeriod(a price that waits) is said until the period in which one is taken, even on its own day, and not before it came', () => {
    const waiting = (write: Parameters<typeof cream>[0]) =>
      issuesIn(
        cream((book, offer, item) => {
          book.buy('2026-09-25', { offer, packs: 1, amount: 10 });
          book.buy('2026-09-29', { offer, packs: 1, amount: 20, invoice: 'I2' });
          write(book, offer, item);
        }).facts,
      ).map(({ code, facts: { invoice } }) => [code, invoice]);
    expect(waiting((book, offer) => book.buy('2026-10-05', { offer, packs: 1, amount: 30, invoice: 'I3' }))).toEqual([
      ['price-waits', 'I2'],
      ['price-waits', 'I3'],
    ]);
    const I2 = [['price-waits', 'I2']];
    expect(waiting((book, offer) => book.buy('2026-11-01', { offer, packs: 1, amount: 11 }))).toEqual(I2);
    expect(waiting((book, offer) => book.buy('2026-09-29', { offer, packs: 1, amount: 10 }))).toEqual(I2);
    expect(waiting((book, offer) => book.buy('2026-11-01', { offer, packs: 1, amount: 40, invoice: 'I4' }))).toEqual(
      I2,
    );
  });

  test('costPeriod(goods of the first day that do not say how much) raises the issue on that day', () => {
    const { facts } = cream((book, offer) => {
      book.price(offer, 9);
      book.buy('2026-10-01', { offer, amount: 40 });
    });
    expect(issuesIn(facts).map(({ code, day: on }) => [code, on])).toEqual([
      ['goods-without-quantity', day('2026-10-01')],
    ]);
  });

  test('costPeriod(goods that do not say how much) raises an issue and takes no price', () => {
    const { facts } = cream((book, offer) => {
      book.price(offer, 9);
      book.buy('2026-10-05', { offer, amount: 40 });
    });
    expect(issuesIn(facts)).toEqual([
      {
        code: 'goods-without-quantity',
        about: 'Cream',
        facts: { supplier: 'Bay Dairy', code: 'P1', invoice: 'I1' },
        day: day('2026-10-05'),
      },
    ]);
  });

  test('costPeriod(goods weighed in what leads nowhere) raises an issue', () => {
    const codes = (unit: string) =>
      issuesIn(
        cream((book, offer) => {
          book.price(offer, 9);
          book.buy('2026-10-05', { offer, quantity: 3, unit, amount: 40 });
        }).facts,
      ).map(({ code, facts }) => [code, facts]);
    expect(codes('each')).toEqual([
      ['pack-unit-mismatch', { unit: 'each', missing: 'grams_each', supplier: 'Bay Dairy', code: 'P1' }],
    ]);
    expect(codes('churn')).toEqual([['unknown-unit', { unit: 'churn', where: 'Bay Dairy P1' }]]);
  });

  test('costPeriod(deliveries at one price) is cut nowhere', () => {
    const { facts } = cream((book, offer) => {
      book.price(offer, 9);
      for (const on of ['2026-10-05', '2026-10-12']) book.buy(on, { offer, packs: 4, amount: 36 });
    });
    expect(costPeriod(facts, days('2026-10')).segments.count).toBe(1);
  });
});

describe('claimsOf', () => {
  // 4 packs at 10.50 where 10.00 was agreed
  test('claimsOf(an invoice above the agreed price) is packs times the difference', () => {
    expect(
      claims((book, offer) => {
        book.price(offer, 10, { kind: 'agreed' });
        book.buy('2026-10-05', { offer, packs: 4, amount: 42 });
      }),
    ).toEqual([{ kind: 'price', packs: 4, difference: 0.5, money: 2 }]);
  });

  test('claimsOf(at the agreed price, below it, above a list price, or without one) is none', () => {
    const invoice = (kind: 'agreed' | 'list', amount: number) =>
      claims((book, offer) => {
        book.price(offer, 10, { kind });
        book.buy('2026-10-05', { offer, packs: 4, amount });
      });
    expect([invoice('agreed', 40), invoice('agreed', 38), invoice('list', 42)]).toEqual([[], [], []]);
    expect(claims((book, offer) => book.buy('2026-10-05', { offer, packs: 4, amount: 42 }))).toEqual([]);
  });

  test('claimsOf(goods) takes rounding for none: half the least unit of a line', () => {
    const over = (amount: number, leastUnit: number) =>
      claims((book, offer) => {
        book.price(offer, 10, { kind: 'agreed' });
        book.buy('2026-10-05', { offer, packs: 1, amount });
      }, leastUnit).length;
    expect([over(10.005, CENT), over(10.006, CENT), over(10.4, 1), over(10.6, 1)]).toEqual([0, 1, 0, 1]);
  });

  test('claimsOf(an order large enough) is held against the agreed price of its size', () => {
    const tiers = (packs: number) =>
      claims((book, offer) => {
        book.price(offer, 10, { kind: 'agreed' });
        book.price(offer, 9, { kind: 'agreed', minimumPacks: 10 });
        book.price(offer, 8, { kind: 'agreed', minimumPacks: 20 });
        book.buy('2026-10-05', { offer, packs, amount: packs * 9.5 });
      });
    expect(tiers(9)).toEqual([]);
    expect(tiers(10)).toEqual([{ kind: 'price', packs: 10, difference: 0.5, money: 5 }]);
    expect(tiers(20)).toEqual([{ kind: 'price', packs: 20, difference: 1.5, money: 30 }]);
  });

  // 8 packs of 2 kg invoiced at 10.50, 14 kg came, 10.00 agreed: 7 packs 0.50 too dear, and one that did not come.
  test('claimsOf(fewer whole packs than were invoiced) is those that are short, and what came at its price', () => {
    const write: Parameters<typeof cream>[0] = (book, offer) => {
      book.price(offer, 10, { kind: 'agreed' });
      book.buy('2026-10-05', { offer, packs: 8, quantity: 14, unit: 'kg', amount: 84 });
    };
    expect(prices(write)).toEqual([[day('2026-10-05'), 10.5]]);
    expect(claims(write)).toEqual([
      { kind: 'price', packs: 7, difference: 0.5, money: 3.5 },
      { kind: 'short', packs: 1, difference: 10.5, money: 10.5 },
    ]);
  });

  test('claimsOf(nothing came of what was invoiced) is all of it; without an amount nothing can be claimed', () => {
    expect(
      claims((book, offer) => book.buy('2026-10-05', { offer, packs: 3, quantity: 0, unit: 'kg', amount: 30 })),
    ).toEqual([{ kind: 'short', packs: 3, difference: 10, money: 30 }]);
    expect(claims((book, offer) => book.buy('2026-10-05', { offer, packs: 8, quantity: 14, unit: 'kg' }))).toEqual([]);
  });

  test('claimsOf(goods of several suppliers) come by day, then by supplier', () => {
    const book = new Book();
    const item = book.ingredient('Cream', 'g', null);
    const [cove, bay] = ['Cove Foods', 'Bay Dairy'].map((supplier) => book.offer(item, 1, 2, 'kg', supplier));
    for (const [offer, on] of [
      [cove, '2026-10-12'],
      [cove, '2026-10-05'],
      [bay, '2026-10-12'],
    ] as const) {
      if (offer) book.buy(on, { offer, packs: 2, quantity: 2, unit: 'kg', amount: 20 });
    }
    const found = claimsOf(boughtGoods(book.facts(), unitReader('metric')), CENT);
    expect(found.map(({ goods }) => [goods.day, goods.offer.supplier])).toEqual([
      [day('2026-10-05'), 'Cove Foods'],
      [day('2026-10-12'), 'Bay Dairy'],
      [day('2026-10-12'), 'Cove Foods'],
    ]);
  });
});
