import { describe, expect, test } from 'vitest';
import { unitReader } from '@/lib/model/measure';
import { stocksOf } from '@/lib/model/valuation/all-stocks';
import { priceReaders } from '@/lib/model/valuation/price-reader';
import { Book, day } from '../../books';

const stocks = (book: Book) => stocksOf(book.facts(), { spreadFreight: false });

describe('stocksOf', () => {
  test('stocksOf(counts) has ingredients by day, whatever was written first; neither components nor parts', () => {
    const book = new Book();
    const egg = book.ingredient('Egg', 'each', 0.3);
    book.part(egg, 'yolk', 18, 'g', 1);
    const cream = book.component('Cream', { yields: [1, 'kg'] }, [10, 'each', egg]);
    for (const [on, quantity] of [
      ['2026-10-20', 4],
      ['2026-10-05', 6],
      ['2026-10-31', 2],
      ['2026-10-05', 1],
    ] as const)
      book.count(on, egg, quantity, 'each');
    book.count('2026-10-31', cream, 1, 'kg');
    book.move('2026-10-12', cream, 1, 'kg', { reason: 'transfer_in', value: 5 });
    book.move('2026-10-12', cream, 1, 'kg', { reason: 'transfer_out' });
    const facts = book.facts();
    const yolks = { item: egg, day: day('2026-10-31'), part: 'yolk', quantity: 90, unit: 'g', place: null };
    const found = stocksOf({ ...facts, counts: [...facts.counts, yolks] }, { spreadFreight: false });
    expect([...found.of.keys()]).toEqual([egg]);
    expect(found.of.get(egg)?.counts).toEqual([
      { day: day('2026-10-05'), quantity: 7 },
      { day: day('2026-10-20'), quantity: 4 },
      { day: day('2026-10-31'), quantity: 2 },
    ]);
    expect(found.issues).toEqual([]);
  });

  test('stocksOf(purchases) keeps apart what enters no stock: not goods, nor credits, of what is known', () => {
    const book = new Book();
    const offer = book.offer(book.ingredient('Butter', 'g', null), 1, 5, 'kg');
    book.buy('2026-10-05', { offer, packs: 1, amount: 50 });
    book.buy('2026-10-06', { kind: 'credit', offer, amount: -2 });
    book.buy('2026-10-07', { amount: 9 });
    expect(stocks(book).ownLines.map(({ amount }) => amount)).toEqual([9]);
  });

  test('stocksOf(goods without packs or weight) takes nothing in, amount or not', () => {
    const book = new Book();
    const butter = book.ingredient('Butter', 'g', null);
    book.buy('2026-10-05', { offer: book.offer(butter, 1, 5, 'kg'), amount: 50 });
    expect(stocks(book).of.get(butter)?.receipts ?? []).toEqual([]);
  });

  test('stocksOf(a transfer in what leads nowhere) names the ingredient', () => {
    const book = new Book();
    book.move('2026-10-10', book.ingredient('Butter', 'g', 0.01), 1, 'each', { reason: 'transfer_in' });
    expect(stocks(book).issues).toMatchObject([{ code: 'unknown-count-unit', about: 'Butter' }]);
  });
});

describe('priceReaders', () => {
  const readers = (book: Book) => {
    const facts = book.facts();
    return priceReaders(facts, facts.pricePoints, unitReader('metric'));
  };

  test('inForce(item, day) goes by the offer chosen on the day, the latest choice that has begun', () => {
    const book = new Book();
    const butter = book.ingredient('Butter', 'g', null);
    const [one, two, three] = [1, 2, 3].map((price) => {
      const offer = book.offer(butter, 1, 1, 'g', `Supplier ${price}`);
      book.price(offer, price);
      return offer;
    });
    if (!one || !two || !three) throw new RangeError('three offers were made');
    book.choose(butter, two, '2026-10-10');
    book.choose(butter, one);
    book.choose(butter, three, '2026-10-20');
    const { inForce } = readers(book);
    const on = ['2026-10-09', '2026-10-10', '2026-10-19', '2026-10-20'];
    expect(on.map((each) => inForce(butter, day(each)))).toEqual([1, 2, 2, 3]);
  });

  // 10 pounds for 2 kg at 1.20: 6.00 euros a kg
  test('lastInvoice(item, day) is that of the day itself or before, in venue currency; null without a rate or a way to grams', () => {
    const book = new Book();
    const butter = book.ingredient('Butter', 'g', null);
    const offer = book.offer(butter, 1, 2, 'kg');
    book.price(offer, 10, { kind: 'invoice', currency: 'GBP', from: '2026-10-05' });
    book.price(offer, 10, { kind: 'invoice', currency: 'CHF', from: '2026-10-08' });
    book.rate('GBP', '2026-09-01', 1.2);
    const milk = book.ingredient('Milk', 'g', null);
    book.price(book.offer(milk, 1, 1, 'l'), 1, { kind: 'invoice', from: '2026-10-05' });
    const { lastInvoice } = readers(book);
    expect(lastInvoice(butter, day('2026-10-04'))).toBeNull();
    expect(lastInvoice(butter, day('2026-10-05'))).toBeCloseTo(0.006, 12);
    expect(lastInvoice(butter, day('2026-10-08'))).toBeNull();
    expect(lastInvoice(milk, day('2026-10-08'))).toBeNull();
  });
});
