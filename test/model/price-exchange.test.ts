import { describe, expect, test } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import { exchangeOf } from '@/lib/model/exchange';
import { Book, day, days } from '../books';
import { costOn, issuesIn } from './plate';

describe('exchangeOf', () => {
  const rates = [
    { currency: 'GBP', validFrom: day('2026-10-10'), rate: 1.2 },
    { currency: 'GBP', validFrom: day('2026-09-01'), rate: 1.1 },
    { currency: 'USD', validFrom: day('2026-09-01'), rate: 0.9 },
  ];
  const { rateOn, changesOf } = exchangeOf(rates, 'EUR');

  test('exchangeOf(rates).rateOn(currency, day) is the latest stated on or before the day', () => {
    const on = ['2026-08-31', '2026-09-01', '2026-10-09', '2026-10-10'];
    expect(on.map((each) => rateOn('GBP', day(each)))).toEqual([null, 1.1, 1.1, 1.2]);
    expect(rateOn('USD', day('2026-10-10'))).toBe(0.9);
    expect(rateOn('JPY', day('2026-10-10'))).toBeNull();
  });

  test('exchangeOf(rates).rateOn(the venue’s own, named or not) is 1 on every day', () => {
    expect([rateOn(null, day('2020-01-01')), rateOn('EUR', day('2026-10-10'))]).toEqual([1, 1]);
  });

  test('exchangeOf(rates).changesOf(currency) is the days of its rates, none for the venue’s own', () => {
    expect(changesOf('GBP')).toEqual([day('2026-10-10'), day('2026-09-01')]);
    expect([changesOf(null), changesOf('EUR'), changesOf('JPY')]).toEqual([[], [], []]);
  });
});

describe('pricesInForce of a foreign offer', () => {
  function vanilla(price: (book: Book, offer: ReturnType<Book['offer']>) => void) {
    const book = new Book();
    const pods = book.item('ingredient', 'Vanilla');
    book.ingredientVersion(pods, 'g');
    price(book, book.offer(pods, 1, 100, 'g', 'Greywick Imports'));
    const dish = book.dish('Vanilla ice', {}, [10, 'g', pods]);
    book.menu(dish, 9);
    return { book, dish };
  }
  const cost = (on: string, price: Parameters<typeof vanilla>[0]): number | null => {
    const { book, dish } = vanilla(price);
    return costOn(book.facts(), dish, on);
  };

  // 100 g for 50 pounds: 10 g are 5 pounds, 5.50 at 1.10 and 6.00 at 1.20.
  const atTwoRates: Parameters<typeof vanilla>[0] = (book, offer) => {
    book.price(offer, 50, { currency: 'GBP' });
    book.rate('GBP', '2026-09-01', 1.1);
    book.rate('GBP', '2026-10-10', 1.2);
  };

  test('pricesInForce(a price in pounds) takes the rate of the business day, and the period is cut where the rate changes', () => {
    expect(cost('2026-10-09', atTwoRates)).toBeCloseTo(5.5, 12);
    expect(cost('2026-10-10', atTwoRates)).toBeCloseTo(6, 12);
    const { book } = vanilla(atTwoRates);
    expect(costPeriod(book.facts(), days('2026-10')).segments.cuts).toEqual(
      ['2026-10-01', '2026-10-10', '2026-11-01'].map(day),
    );
  });

  test('pricesInForce(a rate that changes) cuts nothing for prices in the venue’s own currency', () => {
    const { book } = vanilla((each, offer) => {
      each.price(offer, 50);
      each.rate('GBP', '2026-10-10', 1.2);
    });
    expect(costPeriod(book.facts(), days('2026-10')).segments.count).toBe(1);
  });

  test('pricesInForce(a price in pounds before the first rate) is an issue until the rate', () => {
    const late: Parameters<typeof vanilla>[0] = (book, offer) => {
      book.price(offer, 50, { currency: 'GBP' });
      book.rate('GBP', '2026-10-10', 1.2);
    };
    expect(cost('2026-10-09', late)).toBeNull();
    expect(cost('2026-10-10', late)).toBeCloseTo(6, 12);
    expect(issuesIn(vanilla(late).book.facts())).toEqual([
      {
        code: 'no-exchange-rate',
        about: 'Vanilla',
        facts: { currency: 'GBP', supplier: 'Greywick Imports', code: 'P1' },
        day: day('2026-10-01'),
      },
    ]);
  });

  test('pricesInForce(an invoice in pounds) keeps the rate of its delivery', () => {
    const delivered: Parameters<typeof vanilla>[0] = (book, offer) => {
      book.price(offer, 50, { currency: 'GBP', kind: 'invoice', from: '2026-10-05' });
      book.rate('GBP', '2026-09-01', 1.1);
      book.rate('GBP', '2026-10-10', 1.2);
    };
    expect(cost('2026-10-20', delivered)).toBeCloseTo(5.5, 12);
  });
});
