import { describe, expect, test } from 'vitest';
import type { ItemId, OfferId } from '@/lib/model/facts';
import { type PriceValuations, priceValuations, type ValuationOptions } from '@/lib/reports/price-valuations';
import { Book, day, days } from '../books';

const CENT = 0.01;

/** Butter in boxes of 5 kg at an agreed 50.00, counted on the last of September and of October. */
function butter(
  write: (book: Book, box: OfferId, item: ItemId) => void,
  options: Partial<ValuationOptions> = {},
): PriceValuations {
  const book = new Book();
  const item = book.item('ingredient', 'Butter');
  book.ingredientVersion(item, 'g');
  const box = book.offer(item, 20, 250, 'g');
  book.price(box, 50, { kind: 'agreed' });
  write(book, box, item);
  return priceValuations(book.facts(), days('2026-10'), { leastUnit: CENT, ...options });
}
const only = ({ ingredients }: PriceValuations) => ingredients[0] ?? expect.unreachable('no ingredient');
const valued = (report: PriceValuations) =>
  Object.fromEntries(only(report).valued.map((each) => [each.valuation, each]));

describe('priceValuations', () => {
  /*
   * Opening 2 kg in two places, at the agreed 10.00 a kg: 20.00. 5 kg for 52.50 (a claim of 2.50), 5 kg for 45.00, 2.50 credited, 1 kg
   * back for 9.00, 2 kg from another venue for 16.00: 13 kg for 122.00. 3 kg left.
   */
  const month: Parameters<typeof butter>[0] = (book, offer, item) => {
    book.count('2026-09-30', item, 1.5, 'kg', 'Walk-in');
    book.count('2026-09-30', item, 500, 'g', 'Pastry');
    book.buy('2026-10-05', { offer, packs: 1, amount: 52.5 });
    book.buy('2026-10-08', { kind: 'credit', offer, amount: -2.5 });
    book.buy('2026-10-12', { offer, packs: 1, amount: 45, invoice: 'I2' });
    book.buy('2026-10-13', { kind: 'credit', offer, quantity: 1, unit: 'kg', amount: 9, invoice: 'I3' });
    book.move('2026-10-20', item, 2, 'kg', { reason: 'transfer_in', value: 16, otherVenue: 'Tern House' });
    book.count('2026-10-31', item, 3, 'kg');
    book.buy('2026-11-02', { offer, packs: 9, amount: 450 });
  };

  test('priceValuations(facts, month) has what came in, net of credits, between the two counts', () => {
    expect(only(butter(month))).toMatchObject({
      ingredient: 'Butter',
      unit: 'g',
      countedFrom: day('2026-09-30'),
      countedTo: day('2026-10-31'),
      opening: 2000,
      closing: 3000,
      purchased: { quantity: 9000, value: 86 },
      accrued: 0,
      transferredIn: { quantity: 2000, value: 16 },
      transferredOut: 0,
    });
  });

  test('priceValuations(facts, month) names every valuation, each with its price, closing and use', () => {
    const by = valued(butter(month));
    expect(Object.keys(by)).toEqual(['price-in-force', 'last-invoice', 'weighted-average', 'fifo']);
    expect(by['price-in-force']?.price).toBeCloseTo(0.01, 12);
    expect(by['last-invoice']?.price).toBeCloseTo(0.009, 12);
    // (20 + 86 + 16) / 13 kg
    expect(by['weighted-average']?.price).toBeCloseTo(122 / 13000, 12);
    expect(by['weighted-average']?.closing).toBeCloseTo((3 * 122) / 13, 9);
    expect(by['weighted-average']?.used).toBeCloseTo((10 * 122) / 13, 9);
    // left: the 2 kg transferred in for 16.00 and 1 kg of the 4 kg at 9.00
    expect(by.fifo?.closing).toBeCloseTo(25, 9);
    expect(by.fifo?.used).toBeCloseTo(97, 9);
    for (const each of Object.values(by)) expect((each?.closing ?? 0) + (each?.used ?? 0)).toBeCloseTo(122, 9);
  });

  test('priceValuations(facts, month) lists the claim on what was dearer than agreed', () => {
    expect(
      butter(month).claims.map(({ kind, packs, difference, money }) => ({ kind, packs, difference, money })),
    ).toEqual([{ kind: 'price', packs: 1, difference: 2.5, money: 2.5 }]);
  });

  test('priceValuations(goods without an invoice or an amount) accrues them at the agreed price', () => {
    const report = butter((book, offer) => {
      book.buy('2026-10-05', { offer, packs: 2, invoice: null });
      book.buy('2026-10-06', { offer, packs: 1 });
      book.buy('2026-10-07', { offer, packs: 1, amount: 60, invoice: null });
    });
    expect(only(report)).toMatchObject({ purchased: { quantity: 20000, value: 200 }, accrued: 200 });
    expect(report.issues).toEqual([]);
  });

  // written down on delivery without an invoice: 10 kg at the agreed 10.00 a kg; invoiced since: 5 kg for 48.00
  test('priceValuations(an accrual whose invoice came) counts the delivery once, as invoiced', () => {
    const report = butter((book, offer) => {
      book.buy('2026-10-05', { offer, packs: 2, invoice: null });
      book.buy('2026-10-09', { offer, packs: 1, amount: 48, delivered: '2026-10-05' });
      book.buy('2026-10-12', { offer, packs: 1, invoice: null });
      book.buy('2026-10-13', { kind: 'credit', offer, amount: -1, delivered: '2026-10-12' });
    });
    expect(only(report)).toMatchObject({ purchased: { quantity: 10000, value: 97 }, accrued: 50 });
  });

  test('priceValuations(goods that nothing prices) leaves them out and says so', () => {
    const book = new Book();
    const item = book.item('ingredient', 'Butter');
    book.ingredientVersion(item, 'g');
    const offer = book.offer(item, 1, 5, 'kg');
    book.buy('2026-10-05', { offer, packs: 2, invoice: null });
    const report = priceValuations(book.facts(), days('2026-10'), { leastUnit: CENT });
    expect(report.ingredients).toEqual([]);
    expect(report.issues.map(({ code, about }) => [code, about])).toEqual([['goods-without-value', 'Butter']]);
  });

  // 5 kg at 80.00 where 50.00 was agreed and last paid: until a yes it is worth 50.00, and a claim of 30.00
  test('priceValuations(a price that waits) enters no cost: the goods are worth the agreed price until a yes', () => {
    const report = butter((book, offer) => book.buy('2026-10-05', { offer, packs: 1, amount: 80 }));
    expect(only(report)).toMatchObject({ purchased: { quantity: 5000, value: 50 }, accrued: 50 });
    expect(report.issues.map(({ code }) => code)).toEqual(['price-waits']);
    expect(report.claims.map(({ money }) => money)).toEqual([30]);
  });

  test('priceValuations(freight, deposits, rebates, non-food, credits for nothing named) stand on their own lines', () => {
    const lines: Parameters<typeof butter>[0] = (book, offer) => {
      book.buy('2026-10-05', { offer, packs: 1, amount: 50 });
      book.buy('2026-10-05', { kind: 'freight', amount: 6 });
      book.buy('2026-10-05', { kind: 'deposit', amount: 7 });
      book.buy('2026-10-09', { kind: 'deposit', amount: -3.5 });
      book.buy('2026-10-15', { kind: 'rebate', amount: -20 });
      book.buy('2026-10-15', { kind: 'non_food', amount: 31 });
      book.buy('2026-10-16', { kind: 'credit', amount: -4 });
      book.buy('2026-11-16', { kind: 'rebate', amount: -99 });
    };
    const own = { freight: 6, rebates: 20, deposits: 3.5, nonFood: 31, otherCredits: 4 };
    expect(butter(lines).ownLines).toEqual(own);
    expect(only(butter(lines)).purchased.value).toBe(50);
    const spread = butter(lines, { spreadFreight: true });
    expect(spread.ownLines).toEqual({ ...own, freight: 0 });
    expect(only(spread).purchased.value).toBe(56);
  });

  test('priceValuations(a transfer without an agreed value) enters at the price in force; one out leaves at the valuation’s price', () => {
    const report = butter((book, _, item) => {
      book.count('2026-09-30', item, 2, 'kg');
      book.move('2026-10-10', item, 1, 'kg', { reason: 'transfer_in' });
      book.move('2026-10-20', item, 500, 'g', { reason: 'transfer_out' });
      book.move('2026-10-20', item, 500, 'g', { reason: 'spoiled' });
      book.count('2026-10-31', item, 1, 'kg');
    });
    expect(only(report)).toMatchObject({ transferredIn: { quantity: 1000, value: 10 }, transferredOut: 500 });
    expect(valued(report)['weighted-average']).toMatchObject({ opening: 20, closing: 10, transferredOut: 5, used: 15 });
  });

  test('priceValuations(counts and transfers in what leads nowhere) raises issues', () => {
    const report = butter((book, offer, item) => {
      book.buy('2026-10-05', { offer, packs: 1, amount: 50 });
      book.count('2026-10-31', item, 1, 'slab');
      book.move('2026-10-10', item, 1, 'each', { reason: 'transfer_in' });
    });
    expect(report.issues.map(({ code, facts }) => [code, facts.unit])).toEqual([
      ['unknown-count-unit', 'each'],
      ['unknown-count-unit', 'slab'],
    ]);
    expect(only(report)).toMatchObject({ closing: null, transferredIn: { quantity: 0, value: 0 } });
  });
});
