import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays, type Day } from '@/lib/core/days';
import { costPeriod } from '@/lib/model/costed-period';
import type { OfferId } from '@/lib/model/facts';
import { type BatchRun, runBatches } from '@/lib/model/small-batch/run-batches';
import { dishCosts } from '@/lib/reports/dish-costs';
import { smallBatch } from '@/lib/reports/small-batch';
import { Book, day, days } from '../books';
import { RUNS } from '../generated-books';

const OCTOBER = days('2026-10');
const kept = (use: readonly number[], smallest: number, life: number): BatchRun =>
  runBatches(use, () => ({ smallest, days: life }));

describe('runBatches', () => {
  // day 3 runs out after 200 g and makes the second kilogram, used up on day 5: nothing grows old
  test('runBatches(0.4 kg a day, batches of 1 kg, three days) loses nothing', () => {
    const { made, thrown, left } = kept(Array(31).fill(0.4), 1, 3);
    expect(thrown).toBe(0);
    expect(made).toBeCloseTo(13, 9);
    expect(left).toBeCloseTo(0.6, 9);
  });

  // made on days 1, 3, 5 ...: 800 g used, 200 g thrown of each
  test('runBatches(the same with two days) throws 200 g of every kilogram', () => {
    const { made, thrown } = kept(Array(10).fill(0.4), 1, 2);
    expect(made).toBeCloseTo(5, 9);
    expect(thrown).toBeCloseTo(1, 9);
  });

  test('runBatches(thrown at close) keeps one day; a day that needs more than a batch makes more', () => {
    expect(kept([0.4, 0, 1.5], 1, 1)).toEqual({ made: 2.5, thrown: 0.6, left: 0 });
  });

  // day 1 makes 10 (5 left), day 2 takes 5 of it and 1 of a new batch, day 3 takes from that one: 9 left on its last day
  test('runBatches(oldest first) uses what is left of one batch before the next', () => {
    expect(kept([5, 6, 0, 0], 10, 3)).toEqual({ made: 20, thrown: 9, left: 0 });
    expect(kept([5, 6, 0], 10, 3)).toEqual({ made: 20, thrown: 0, left: 9 });
  });

  // 300,000.3 - 3 * 100,000.1 is not quite 0 in binary fractions: what is missing is no need
  test('runBatches(a batch that is used up to the last bit) makes no second one for rounding', () => {
    const { made, thrown } = kept(Array(3).fill(100_000.1), 300_000.3, 5);
    expect(made).toBe(300_000.3);
    expect(thrown).toBe(0);
  });

  test('runBatches(any use) makes what is used, thrown and left, and never throws what is used within its life', () => {
    const use = fc.array(
      fc.integer({ min: 0, max: 40 }).map((tenths) => tenths / 10),
      { minLength: 1, maxLength: 60 },
    );
    fc.assert(
      fc.property(use, fc.integer({ min: 1, max: 30 }), fc.integer({ min: 1, max: 90 }), (daily, smallest, life) => {
        const { made, thrown, left } = kept(daily, smallest, life);
        const used = daily.reduce((sum, each) => sum + each, 0);
        expect(made).toBeCloseTo(used + thrown + left, 6);
        if (life >= daily.length + 1) expect(thrown).toBe(0);
        expect(kept(daily, smallest, life + 1).thrown).toBeLessThanOrEqual(made + 1e-9);
      }),
      RUNS,
    );
  });
});

/** A cream of 10.00 a kilogram in a dish of 100 g, sold on each of the first ten days of October. */
function cream(stated: Parameters<Book['component']>[1], portions = 4) {
  const book = new Book({ qFactor: 0.1 });
  const milk = book.ingredient('Milk', 'g', 0.01);
  const made = book.component('Cream', { yields: [1, 'kg'], ...stated }, [1, 'kg', milk]);
  const dish = book.dish('Cup', {}, [100, 'g', made]);
  for (let later = 0; later < 10; later++) {
    book.sellOn(dish, addDays(OCTOBER.from, later) as Day, portions, portions * 8);
  }
  return { book, made, dish };
}
const lossOf = (book: Book) => smallBatch(costPeriod(book.facts(), OCTOBER)).components[0];

describe('smallBatch', () => {
  test('smallBatch(0.4 kg a day, a batch of 1 kg, three days) loses nothing', () => {
    const { book } = cream({ smallestBatch: 1, shelfLifeDays: 3 });
    expect(lossOf(book)).toMatchObject({ item: 'Cream', unit: 'g', lost: 0, money: 0, thrown: 0, notStated: false });
    expect(lossOf(book)?.used).toBeCloseTo(4000, 9);
  });

  // 5 kg made, 1 kg thrown: a fifth; 4 kg used cost 40.00, so 40 * 0.2 / 0.8 = 10.00 more; a portion of 1.00 carries 0.25
  test('smallBatch(two days) loses a fifth, and a portion carries its share by use', () => {
    const { book } = cream({ smallestBatch: 1, shelfLifeDays: 2 });
    expect(lossOf(book)?.made).toBeCloseTo(5000, 9);
    expect(lossOf(book)?.lost).toBeCloseTo(0.2, 12);
    expect(lossOf(book)?.money).toBeCloseTo(10, 9);
    const [row] = dishCosts(costPeriod(book.facts(), OCTOBER)).items;
    expect(row?.smallBatchLoss).toBeCloseTo(0.25, 12);
    expect(row?.plateCost).toBeCloseTo(1.1, 12);
    expect(smallBatch(costPeriod(book.facts(), OCTOBER)).money).toBeCloseTo(10, 9);
  });

  // 10.00 a kilogram up to the 5th, 20.00 after: 2 kg and 2 kg used are 60.00, and a fifth of what is made is thrown
  test('smallBatch(a price that changes) costs what was used on each day at that day’s price', () => {
    const { book } = cream({ smallestBatch: 1, shelfLifeDays: 2 });
    book.price(1 as OfferId, 0.02, { from: '2026-10-06' });
    book.menu(book.item('dish', 'Apple'), 5); // before it by name
    expect(lossOf(book)?.money).toBeCloseTo((60 * 0.2) / 0.8, 9);
    const row = dishCosts(costPeriod(book.facts(), OCTOBER)).items.find(({ item }) => item === 'Cup');
    expect(row?.smallBatchLoss).toBeCloseTo((0.25 + 0.5) / 2, 12);
  });

  test('smallBatch(terms or prices not stated on some days) is known where nothing was used on those days', () => {
    const made = (priceFrom: string) => {
      const book = new Book();
      const milk = book.item('ingredient', 'Milk');
      book.ingredientVersion(milk, 'g');
      book.price(book.offer(milk, 1, 1, 'g'), 0.01, { from: priceFrom });
      const cream = book.component('Cream', { yields: [1, 'kg'] }, [1, 'kg', milk]);
      const stated = { yields: [1, 'kg'], smallestBatch: 1, shelfLifeDays: 1, from: '2026-10-10' } as const;
      book.recipe(cream, stated, [1, 'kg', milk]);
      const dish = book.dish('Cup', {}, [100, 'g', cream]);
      for (const on of ['2026-10-12', '2026-10-20']) book.sell(dish, on, 5, 40);
      return { book, dish };
    };
    expect(lossOf(made('2026-10-11').book)).toMatchObject({ lost: 0.5, money: 10 });
    expect(lossOf(made('2026-10-15').book)).toMatchObject({ lost: 0.5, money: null });
    const early = made('2026-10-01');
    early.book.sell(early.dish, '2026-10-05', 1, 8);
    expect(lossOf(early.book)).toMatchObject({ lost: null, money: null });
  });

  // thrown at close: each day 1 kg made, 0.6 thrown, whatever life is stated
  test('smallBatch(thrown at close) keeps one day', () => {
    expect(lossOf(cream({ smallestBatch: 1, shelfLifeDays: 9, thrownAtClose: true }).book)?.lost).toBeCloseTo(0.6, 12);
    expect(lossOf(cream({ smallestBatch: 1, thrownAtClose: true }).book)?.lost).toBeCloseTo(0.6, 12);
  });

  // half a batch of 1,000 g that loses 100 g leaves 450 g; with r = 10 % a day of 405 g served takes 450 g: made each day, all used
  test('smallBatch(a loss and breakage) counts what is left of a smallest batch, and what breaks as used', () => {
    const { book, made } = cream({ smallestBatch: 0.5, shelfLifeDays: 1, batchLossG: 100, breakage: 0.1 });
    const dish = book.dish('More', {}, [1, 'g', made]);
    for (let later = 0; later < 10; later++) book.sellOn(dish, addDays(OCTOBER.from, later) as Day, 5, 5);
    expect(lossOf(book)?.used).toBeCloseTo(4500, 9);
    expect(lossOf(book)?.made).toBeCloseTo(4500, 9);
    expect(lossOf(book)?.lost).toBe(0);
  });

  // a yield that is blank: 1,000 g weighed less 100 g; a smallest batch of 500 g leaves 450 g of which 400 g are used
  test('smallBatch(a component without yield) takes its smallest batch in grams', () => {
    const book = new Book();
    const milk = book.ingredient('Milk', 'g', 0.01);
    const made = book.component('Cream', { batchLossG: 100, smallestBatch: 500, shelfLifeDays: 1 }, [1, 'kg', milk]);
    const dish = book.dish('Cup', {}, [100, 'g', made]);
    book.sell(dish, '2026-10-02', 4, 32);
    expect(lossOf(book)?.made).toBeCloseTo(450, 9);
    expect(lossOf(book)?.lost).toBeCloseTo(50 / 450, 12);
  });

  test('smallBatch(no use, or no smallest batch or life) is null, and so is the share of a dish', () => {
    const unused = cream({ smallestBatch: 1, shelfLifeDays: 2 }, 0);
    unused.book.menu(unused.dish, 8);
    expect(lossOf(unused.book)).toMatchObject({ used: 0, lost: null, money: null, notStated: false });
    expect(dishCosts(costPeriod(unused.book.facts(), OCTOBER)).items[0]?.smallBatchLoss).toBeNull();
    for (const stated of [{}, { smallestBatch: 1 }, { shelfLifeDays: 2 }]) {
      const { book } = cream(stated);
      expect(lossOf(book)).toMatchObject({ lost: null, made: null, money: null, notStated: true });
      expect(dishCosts(costPeriod(book.facts(), OCTOBER)).items[0]?.smallBatchLoss).toBeNull();
      expect(smallBatch(costPeriod(book.facts(), OCTOBER)).money).toBeNull();
    }
  });

  // the inner cream's loss of a fifth on 0.50, and the outer mousse's of a half on 1.00 (0.50 cream and 0.50 sugar)
  test('dishCosts(components inside components) adds the losses of all of them', () => {
    const book = new Book();
    const milk = book.ingredient('Milk', 'g', 0.01);
    const inner = { yields: [100, 'g'], smallestBatch: 62.5, shelfLifeDays: 1 } as const;
    const base = book.component('Base', inner, [100, 'g', milk]);
    const outer = { yields: [100, 'g'], smallestBatch: 200, shelfLifeDays: 1 } as const;
    const mousse = book.component('Mousse', outer, [50, 'g', base], [50, 'g', milk]);
    const dish = book.dish('Cup', {}, [100, 'g', mousse]);
    book.sell(dish, '2026-10-02', 1, 9);
    const [row] = dishCosts(costPeriod(book.facts(), OCTOBER)).items;
    expect(row?.smallBatchLoss).toBeCloseTo(0.5 * (0.2 / 0.8) + 1 * (0.5 / 0.5), 12);
  });

  test('dishCosts(a dish on estimate) has no small-batch loss that is known', () => {
    const book = new Book();
    const dish = book.dish('Soufflé', { estimatedCost: 3 });
    book.menu(dish, 9, { from: '2026-10-01' });
    expect(dishCosts(costPeriod(book.facts(), OCTOBER)).items[0]?.smallBatchLoss).toBeNull();
  });

  // half of October at 0.01, half at 0.02: cost of use 5 * 4 + 5 * 8 = 60.00, a fifth lost: 15.00
  test('smallBatch(a price that changes) costs each day at its own', () => {
    const book = new Book();
    const milk = book.item('ingredient', 'Milk');
    book.ingredientVersion(milk, 'g');
    const offer = book.offer(milk, 1, 1, 'g');
    book.price(offer, 0.01);
    book.price(offer, 0.02, { from: '2026-10-06' });
    const stated = { yields: [1, 'kg'], smallestBatch: 1, shelfLifeDays: 2 } as const;
    const dish = book.dish('Cup', {}, [100, 'g', book.component('Cream', stated, [1, 'kg', milk])]);
    for (let later = 0; later < 10; later++) book.sellOn(dish, addDays(day('2026-10-01'), later) as Day, 4, 32);
    expect(lossOf(book)?.money).toBeCloseTo(15, 9);
    book.price(offer, 0.02, { from: '2026-10-06', currency: 'GBP', kind: 'agreed' });
    expect(lossOf(book)).toMatchObject({ money: null });
    expect(lossOf(book)?.lost).toBeCloseTo(0.2, 12);
  });
});
