import { describe, expect, test } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import type { OfferId, PricePoint } from '@/lib/model/facts';
import { priceFor, pricePointInForce } from '@/lib/model/price-book';
import { Book, day, days } from '../books';
import { costOn, issuesIn } from './plate';

function point(kind: PricePoint['kind'], price: number, from: string, stated: Partial<PricePoint> = {}): PricePoint {
  return {
    offer: 1 as OfferId,
    kind,
    validFrom: day(from),
    validTo: null,
    minimumPacks: null,
    price,
    currency: null,
    ...stated,
  };
}
const priceOn = (points: readonly PricePoint[], on: string): number | null =>
  pricePointInForce(points, day(on))?.price ?? null;

describe('pricePointInForce', () => {
  test('pricePointInForce(points, day) is agreed, before list, before the last invoice', () => {
    const points = [
      point('invoice', 4, '2026-10-05'),
      point('invoice', 3, '2026-10-01'),
      point('list', 6, '2026-10-10'),
      point('agreed', 5, '2026-10-20', { validTo: day('2026-10-22') }),
    ];
    expect(['2026-09-30', '2026-10-01', '2026-10-04', '2026-10-05'].map((on) => priceOn(points, on))).toEqual([
      null,
      3,
      3,
      4,
    ]);
    expect(['2026-10-09', '2026-10-10', '2026-10-19', '2026-10-20'].map((on) => priceOn(points, on))).toEqual([
      4, 6, 6, 5,
    ]);
  });

  test('pricePointInForce(points, day) has an agreed price on its last day and not after it', () => {
    const points = [point('list', 6, '2026-10-01'), point('agreed', 5, '2026-10-20', { validTo: day('2026-10-22') })];
    expect(['2026-10-22', '2026-10-23'].map((on) => priceOn(points, on))).toEqual([5, 6]);
  });

  test('pricePointInForce(points, day) takes no quote', () => {
    expect(priceOn([point('quote', 1, '2026-10-01')], '2026-10-02')).toBeNull();
    expect(priceOn([point('quote', 1, '2026-10-01'), point('list', 6, '2026-09-01')], '2026-10-02')).toBe(6);
  });

  test('pricePointInForce(points, day) takes the price without a minimum, however old; else the smallest minimum', () => {
    const tiers = [
      point('agreed', 5, '2026-09-01', { minimumPacks: 10 }),
      point('agreed', 4, '2026-09-01', { minimumPacks: 20 }),
    ];
    expect(priceOn(tiers, '2026-10-01')).toBe(5);
    expect(priceOn([...tiers].reverse(), '2026-10-01')).toBe(5);
    const whole = point('agreed', 7, '2026-08-01');
    expect(priceOn([...tiers, whole], '2026-10-01')).toBe(7);
    expect(priceOn([whole, ...tiers], '2026-10-01')).toBe(7);
  });

  test('pricePointInForce(points, day) holds a minimum of one pack for none: the later one goes first', () => {
    const points = [point('agreed', 7, '2026-08-01'), point('agreed', 8, '2026-09-01', { minimumPacks: 1 })];
    expect(priceOn(points, '2026-10-01')).toBe(8);
    expect(priceOn([...points].reverse(), '2026-10-01')).toBe(8);
    expect(priceOn(points, '2026-08-15')).toBe(7);
  });

  test('pricePointInForce(points, day) holds a minimum of part of a pack for none, too', () => {
    const points = [point('agreed', 7, '2026-08-01', { minimumPacks: 0.5 }), point('agreed', 8, '2026-09-01')];
    expect(priceOn(points, '2026-10-01')).toBe(8);
  });

  test('pricePointInForce(points, day) of a price that began and ended is the one before it again', () => {
    const points = [point('agreed', 5, '2026-10-05', { validTo: day('2026-10-05') }), point('agreed', 6, '2026-10-01')];
    expect(['2026-10-04', '2026-10-05', '2026-10-06'].map((on) => priceOn(points, on))).toEqual([6, 5, 6]);
  });
});

describe('priceFor', () => {
  const tiers = [
    point('agreed', 10, '2026-10-01'),
    point('agreed', 9, '2026-10-01', { minimumPacks: 5 }),
    point('agreed', 8.5, '2026-10-05', { minimumPacks: 5 }),
    point('agreed', 8, '2026-10-01', { minimumPacks: 10, validTo: day('2026-10-08') }),
    point('list', 1, '2026-10-01', { minimumPacks: 10 }),
  ];
  test.each([
    ['2026-09-30', 4, null],
    ['2026-10-01', 4, 10],
    ['2026-10-04', 5, 9],
    ['2026-10-05', 9, 8.5],
    ['2026-10-08', 10, 8],
    ['2026-10-09', 12, 8.5],
    ['2026-10-09', 0.5, 10],
  ])(
    'priceFor(points, agreed, %s, %d packs) is that of the largest minimum within them, the latest of those',
    (on, packs, price) => {
      expect(priceFor(tiers, 'agreed', day(on), packs)?.price ?? null).toBe(price);
      expect(priceFor(tiers.toReversed(), 'agreed', day(on), packs)?.price ?? null).toBe(price);
    },
  );
});

describe('pricesInForce', () => {
  function bought(buy: (book: Book, cocoa: ReturnType<Book['item']>) => void): Book {
    const book = new Book();
    const cocoa = book.item('ingredient', 'Cocoa');
    book.ingredientVersion(cocoa, 'g');
    buy(book, cocoa);
    book.menu(book.dish('Slate', {}, [100, 'g', cocoa]), 9);
    return book;
  }
  const cost = (buy: Parameters<typeof bought>[0], on?: string): number | null => {
    const facts = bought(buy).facts();
    return costOn(facts, facts.items[1]?.id as never, on);
  };
  const issues = (buy: Parameters<typeof bought>[0]) => issuesIn(bought(buy).facts());

  // 12 packs of 500 g for 54.00: 0.009 a gram, 0.90 for 100 g
  test('pricesInForce(a pack) spreads its price over count times size', () => {
    expect(cost((book, cocoa) => book.price(book.offer(cocoa, 12, 500, 'g'), 54))).toBeCloseTo(0.9, 12);
    expect(cost((book, cocoa) => book.price(book.offer(cocoa, 1, 5, 'kg'), 60))).toBeCloseTo(1.2, 12);
  });

  test('pricesInForce(offers) chooses one alone by itself; of several the chosen one holds from its day', () => {
    const two = (book: Book, cocoa: ReturnType<Book['item']>): void => {
      const dear = book.offer(cocoa, 1, 1, 'kg', 'Harbour Cocoa');
      book.price(dear, 20);
      const cheap = book.offer(cocoa, 1, 1, 'kg', 'Strand Dry Goods');
      book.price(cheap, 10);
      book.choose(cocoa, dear, '2026-09-01');
      book.choose(cocoa, cheap, '2026-10-10');
    };
    expect(cost(two, '2026-10-09')).toBeCloseTo(2, 12);
    expect(cost(two, '2026-10-10')).toBeCloseTo(1, 12);
    expect(issues(two)).toEqual([]);
  });

  test('pricesInForce(several offers, no choice) is an issue that names them, and no price', () => {
    const two = (book: Book, cocoa: ReturnType<Book['item']>): void => {
      book.price(book.offer(cocoa, 1, 1, 'kg', 'Strand Dry Goods'), 10);
      book.price(book.offer(cocoa, 1, 1, 'kg', 'Harbour Cocoa'), 20);
    };
    expect(cost(two)).toBeNull();
    expect(issues(two)).toEqual([
      {
        code: 'offer-not-chosen',
        about: 'Cocoa',
        facts: { offers: ['Harbour Cocoa P2', 'Strand Dry Goods P1'] },
        day: day('2026-10-01'),
      },
    ]);
  });

  test('pricesInForce(no offer, no price in force, a foreign price) are issues, each with its first day', () => {
    expect(issues(() => undefined)).toEqual([{ code: 'no-offer', about: 'Cocoa', facts: {}, day: day('2026-10-01') }]);
    const quoted = (book: Book, cocoa: ReturnType<Book['item']>): void => {
      const offer = book.offer(cocoa, 1, 1, 'kg');
      book.price(offer, 5, { kind: 'quote' });
      book.price(offer, 9, { kind: 'agreed', from: '2026-10-01', to: '2026-10-06' });
    };
    expect(issues(quoted)).toEqual([
      {
        code: 'no-price',
        about: 'Cocoa',
        facts: { supplier: 'Bay Dairy', code: 'P1', from: '2026-10-07', until: null },
        day: day('2026-10-07'),
      },
    ]);
    expect(cost(quoted, '2026-10-06')).toBeCloseTo(0.9, 12);
    expect(cost(quoted, '2026-10-07')).toBeNull();
    const foreign = (book: Book, cocoa: ReturnType<Book['item']>): void => {
      book.price(book.offer(cocoa, 1, 1, 'kg'), 5, { currency: 'GBP' });
    };
    expect(issues(foreign).map(({ code, facts }) => [code, facts])).toEqual([
      ['no-exchange-rate', { currency: 'GBP', supplier: 'Bay Dairy', code: 'P1' }],
    ]);
    expect(cost((book, cocoa) => book.price(book.offer(cocoa, 1, 1, 'kg'), 5, { currency: 'EUR' }))).toBeCloseTo(
      0.5,
      12,
    );
  });

  test('pricesInForce(a pack in another dimension) takes the fact that crosses it, and without it is an issue', () => {
    const litre = (book: Book, cocoa: ReturnType<Book['item']>): void => book.price(book.offer(cocoa, 1, 1, 'l'), 5);
    expect(cost(litre)).toBeNull();
    expect(issues(litre).map(({ code, about, facts }) => [code, about, facts])).toEqual([
      ['pack-unit-mismatch', 'Cocoa', { unit: 'l', missing: 'density_g_per_ml', supplier: 'Bay Dairy', code: 'P1' }],
    ]);
    // 1 l of 0.5 g/ml is 500 g: 0.01 a gram
    const book = new Book();
    const powder = book.item('ingredient', 'Powder');
    book.ingredientVersion(powder, 'g', { densityGPerMl: 0.5 });
    litre(book, powder);
    const dish = book.dish('Slate', {}, [100, 'g', powder]);
    book.menu(dish, 9);
    expect(costOn(book.facts(), dish)).toBeCloseTo(1, 12);
  });

  test('pricesInForce(a pack in a unit that nobody knows) is an issue about the ingredient, at the offer', () => {
    const sack = (book: Book, cocoa: ReturnType<Book['item']>): void => book.price(book.offer(cocoa, 1, 1, 'sack'), 5);
    expect(issues(sack).map(({ code, about, facts }) => [code, about, facts])).toEqual([
      ['unknown-unit', 'Cocoa', { unit: 'sack', where: 'Bay Dairy P1' }],
    ]);
  });

  test('pricesInForce(a pack in a measure of the ingredient’s own) is understood', () => {
    const sack = (book: Book, cocoa: ReturnType<Book['item']>): void => {
      book.measure(cocoa, 'sack', 20, 'kg');
      book.price(book.offer(cocoa, 1, 1, 'Sack'), 100);
    };
    expect(cost(sack)).toBeCloseTo(0.5, 12);
  });

  test('pricesInForce(what is free) is the price 0, not no price', () => {
    expect(cost((book, cocoa) => book.price(book.offer(cocoa, 1, 1, 'kg'), 0))).toBe(0);
  });

  test('pricesInForce(a pack by volume) follows the density that is in force on the day', () => {
    const book = new Book();
    const cream = book.item('ingredient', 'Cream');
    book.ingredientVersion(cream, 'g', { densityGPerMl: 1 });
    book.ingredientVersion(cream, 'g', { densityGPerMl: 0.5, from: '2026-10-10' });
    book.price(book.offer(cream, 1, 1, 'l'), 10);
    const dish = book.dish('Bowl', {}, [100, 'g', cream]);
    book.menu(dish, 9);
    expect(costOn(book.facts(), dish, '2026-10-09')).toBeCloseTo(1, 12);
    expect(costOn(book.facts(), dish, '2026-10-10')).toBeCloseTo(2, 12);
  });

  test('pricesInForce(no price in force, whatever else changes) is one span; another offer without a price is another issue', () => {
    const quoted = (book: Book, cocoa: ReturnType<Book['item']>): void => {
      const first = book.offer(cocoa, 1, 1, 'kg');
      for (const from of ['2026-10-03', '2026-10-06', '2026-10-09']) book.price(first, 5, { kind: 'quote', from });
      book.choose(cocoa, first);
      book.choose(cocoa, book.offer(cocoa, 1, 2, 'kg'), '2026-10-20');
    };
    const { segments, issues: found } = costPeriod(bought(quoted).facts(), days('2026-10'));
    expect(segments.cuts).toEqual(['2026-10-01', '2026-10-20', '2026-11-01'].map(day));
    expect(found.map(({ facts, day: from }) => [facts.code, from])).toEqual([
      ['P1', day('2026-10-01')],
      ['P2', day('2026-10-20')],
    ]);
  });
});
