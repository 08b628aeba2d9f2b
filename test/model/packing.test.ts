import { describe, expect, test } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import type { ItemId } from '@/lib/model/facts';
import { lineCount } from '@/lib/model/half-known';
import { plateCost } from '@/lib/model/plate-cost';
import { needOfServed } from '@/lib/model/served';
import { dishCosts } from '@/lib/reports/dish-costs';
import { menuMix } from '@/lib/reports/menu-mix';
import { Book, days } from '../books';
import { issuesIn } from './plate';

const OCTOBER = days('2026-10');

/** A brownie of 2.00 that leaves in a carton of 0.30 as takeaway, in a carton and a bag of 0.10 when it is delivered. */
function brownie(boxPrice: number | null = 0.3) {
  const book = new Book({ qFactor: 0.1 });
  const flour = book.ingredient('Flour', 'g', 0.01);
  const box = book.ingredient('Carton', 'each', boxPrice, { department: 'packaging' });
  const bag = book.ingredient('Bag', 'each', 0.1, { department: 'packaging' });
  const dish = book.dish(
    'Brownie',
    {},
    [200, 'g', flour],
    [1, 'each', box, { channel: 'takeaway' }],
    [1, 'each', box, { channel: 'delivery' }],
    [1, 'each', bag, { channel: 'delivery' }],
  );
  return { book, flour, box, bag, dish };
}
function costIn(book: Book, item: ItemId, channel: string | null, segment = 0) {
  const period = costPeriod(book.facts(), OCTOBER);
  return plateCost(period, period.nodeOf.get(item) ?? -1, segment, channel);
}

describe('plateCost in a channel', () => {
  // 2.00 with q of 10 % is 2.20; packaging takes none and is in no food-cost %
  test('plateCost(period, node, segment, channel) adds what the portion takes there, and only there', () => {
    const { book, dish } = brownie();
    book.menu(dish, 9);
    expect(costIn(book, dish, null)).toMatchObject({ complete: true, total: 2.2, food: 2.2 });
    expect(costIn(book, dish, 'dine_in')).toMatchObject({ complete: true, total: 2.2 });
    expect(costIn(book, dish, 'takeaway')).toMatchObject({ complete: true, total: 2.5, food: 2.2 });
    expect(costIn(book, dish, 'delivery').total).toBeCloseTo(2.6, 12);
  });

  // a tart of 2.00; taken away it comes with a hamper of 0.50, which itself takes a bag of 0.10 where it is taken away
  test('plateCost(what only a channel takes, and that takes more there) brings both', () => {
    const { book, flour, bag } = brownie();
    const paper = book.ingredient('Paper', 'each', 0.5, { department: 'packaging' });
    const lines = [
      [1, 'each', paper],
      [1, 'each', bag, { channel: 'takeaway' }],
    ] as const;
    const hamper = book.component('Hamper', { yields: [1, 'each'] }, ...lines);
    const tart = book.dish('Tart', {}, [200, 'g', flour], [1, 'each', hamper, { channel: 'takeaway' }]);
    book.menu(tart, 9);
    expect(costIn(book, tart, 'dine_in').total).toBeCloseTo(2.2, 12);
    expect(costIn(book, tart, 'takeaway').total).toBeCloseTo(2.2 + 0.6, 12);
  });

  // a wooden spoon 0.04, a steel one 0.20; delivered, half of the guests ask for either
  test('plateCost(a choice of each channel) has shares that sum to 1 in each by itself', () => {
    const { book, flour } = brownie();
    const wood = book.ingredient('Wooden spoon', 'each', 0.04, { department: 'packaging' });
    const steel = book.ingredient('Steel spoon', 'each', 0.2, { department: 'packaging' });
    const spoon = (channel: string, choiceShare: number) => ({ choice: 'Spoon', choiceShare, channel });
    const cup = book.dish(
      'Cup',
      {},
      [200, 'g', flour],
      [1, 'each', wood, spoon('takeaway', 1)],
      [1, 'each', wood, spoon('delivery', 0.5)],
      [1, 'each', steel, spoon('delivery', 0.5)],
    );
    book.menu(cup, 9);
    expect(costIn(book, cup, 'takeaway').total).toBeCloseTo(2.2 + 0.04, 12);
    expect(costIn(book, cup, 'delivery').total).toBeCloseTo(2.2 + 0.12, 12);
    expect(issuesIn(book.facts())).toEqual([]);
  });

  test('plateCost(an estimate, packed in what has no price) is not known where it is packed: the estimate is the plate alone', () => {
    const { book, bag } = brownie();
    const tin = book.ingredient('Tin', 'each', null, { department: 'packaging' });
    const cake = book.dish('Cake', { estimatedCost: 3 }, [1, 'each', tin, { channel: 'takeaway' }]);
    const slice = book.dish('Slice', { estimatedCost: 3 }, [1, 'each', bag, { channel: 'takeaway' }]);
    for (const item of [cake, slice]) book.menu(item, 9);
    expect(costIn(book, cake, 'dine_in')).toMatchObject({ complete: true, total: 3 });
    expect(costIn(book, cake, 'takeaway').complete).toBe(false);
    expect(costIn(book, slice, 'takeaway').total).toBeCloseTo(3.1, 12);
  });

  test('plateCost(a component with an estimate) takes none: only a plate can be estimated', () => {
    const { book } = brownie();
    const cream = book.component('Cream', { yields: [100, 'g'], estimatedCost: 5 });
    const bowl = book.dish('Bowl', {}, [10, 'g', cream]);
    book.menu(bowl, 9);
    expect(costIn(book, bowl, null).complete).toBe(false);
  });

  test('plateCost(a course in a set menu sold in a channel) brings its packaging along, by its share', () => {
    const { book, bag, dish } = brownie();
    const set = book.recipe(
      book.item('set_menu', 'Two to go'),
      {},
      [2, 'each', dish, { choice: 'Sweet', choiceShare: 0.5 }],
      [2, 'each', book.dish('Nothing', { estimatedCost: 0 }), { choice: 'Sweet', choiceShare: 0.5 }],
      [1, 'each', bag, { channel: 'takeaway' }],
    );
    book.menu(set, 15);
    expect(costIn(book, set, 'dine_in').total).toBeCloseTo(2.2, 12);
    expect(costIn(book, set, 'takeaway').total).toBeCloseTo(2.2 + 0.3 + 0.1, 12);
    expect(costIn(book, set, 'delivery').total).toBeCloseTo(2.2 + 0.4, 12);
  });

  test('plateCost(a carton without price) leaves only that channel unknown', () => {
    const { book, dish } = brownie(null);
    book.menu(dish, 9);
    expect(costIn(book, dish, 'dine_in').complete).toBe(true);
    expect(costIn(book, dish, 'delivery')).toMatchObject({ complete: false, food: 2.2 });
    expect(issuesIn(book.facts()).map(({ code, about }) => `${code} ${about}`)).toEqual(['no-offer Carton']);
    const period = costPeriod(book.facts(), OCTOBER);
    const node = period.nodeOf.get(dish) ?? -1;
    expect(lineCount(period, node, 0)).toEqual({ lines: 1, missing: 0 });
    expect(lineCount(period, node, 0, 'delivery')).toEqual({ lines: 3, missing: 1 });
  });

  test('plateCost(a plate on estimate) has its packaging on top', () => {
    const book = new Book();
    const box = book.ingredient('Carton', 'each', 0.3, { department: 'packaging' });
    const dish = book.dish('Soufflé', { estimatedCost: 3 }, [1, 'each', box, { channel: 'takeaway' }]);
    const bare = book.dish('Unknown', {}, [1, 'each', box, { channel: 'takeaway' }]);
    book.menu(dish, 9);
    book.menu(bare, 9);
    expect(costIn(book, dish, 'dine_in')).toMatchObject({ complete: true, total: 3, estimated: true });
    expect(costIn(book, dish, 'takeaway')).toMatchObject({ complete: true, total: 3.3, food: 3, estimated: true });
    expect(costIn(book, bare, 'takeaway').complete).toBe(false);
    expect(issuesIn(book.facts()).map(({ code, about }) => `${code} ${about}`)).toEqual(['no-lines Unknown']);
  });

  test('plateCost(a recipe that packs only from some day on) takes nothing more before', () => {
    const { book, flour, box } = brownie();
    const dish = book.dish('Tart', {}, [100, 'g', flour]);
    const packed = [1, 'each', box, { channel: 'takeaway' }] as const;
    book.recipe(dish, { from: '2026-10-12' }, [100, 'g', flour], packed);
    book.menu(dish, 9);
    expect(costIn(book, dish, 'takeaway', 0)).toMatchObject({ complete: true, total: 1.1 });
    expect(costIn(book, dish, 'takeaway', 1)).toMatchObject({ complete: true, total: 1.4000000000000001 });
  });
});

describe('figures by channel', () => {
  function sold() {
    const { book, box, dish } = brownie();
    book.menu(dish, 9);
    book.menu(dish, 8, { channel: 'takeaway' });
    book.menu(dish, 10, { channel: 'delivery', commission: 0.3 });
    book.sell(dish, '2026-10-02', 6, 54);
    book.sell(dish, '2026-10-02', 2, 16, { channel: 'takeaway', comps: 1 });
    book.sell(dish, '2026-10-03', 2, 20, { channel: 'delivery' });
    return { book, box, dish, period: costPeriod(book.facts(), OCTOBER) };
  }

  test('needOfServed(period) takes a carton for each portion that leaves, comps too', () => {
    const { period, box } = sold();
    expect(needOfServed(period)[period.nodeOf.get(box) ?? -1]).toBe(5);
  });

  // delivery: 10.00 - 2.60 - 30 % of 10.00 = 4.40
  test('dishCosts(period) has the packaging of each channel, and the margin less its commission', () => {
    const { items } = dishCosts(sold().period);
    expect(
      items.map(({ channel, plateCost: cost, commission, margin, foodCost }) => [
        channel,
        cost?.toFixed(9),
        commission?.toFixed(9),
        margin?.toFixed(9),
        foodCost?.toFixed(9),
      ]),
    ).toEqual([
      ['delivery', '2.600000000', '3.000000000', '4.400000000', '0.220000000'],
      ['dine_in', '2.200000000', '0.000000000', '6.800000000', (2.2 / 9).toFixed(9)],
      ['takeaway', '2.500000000', '0.000000000', '5.500000000', '0.275000000'],
    ]);
  });

  // (54 + 16 + 20 - 6 * 2.20 - 2 * 2.50 - 2 * 2.60) / 10 = 6.66: the mix is net price - f, before any commission
  test('menuMix(period) weighs the channels by their portions, without commission', () => {
    const [item] = menuMix(sold().period, { section: null, resamples: 0 }).items;
    expect(item?.plateCost).toBeCloseTo((6 * 2.2 + 2 * 2.5 + 2 * 2.6) / 10, 12);
    expect(item?.margin).toBeCloseTo(6.66, 12);
    expect(item?.foodCost).toBeCloseTo(2.2 / 9, 12);
  });

  test('dishCosts(a channel in which nothing was sold) has its packaging and commission over its days on the menu', () => {
    const { book, dish } = brownie();
    book.menu(dish, 10, { channel: 'delivery', commission: 0.3 });
    book.menu(dish, 12, { channel: 'delivery', commission: 0.25, from: '2026-10-30' });
    const [item] = dishCosts(costPeriod(book.facts(), OCTOBER)).items;
    expect(item?.plateCost).toBeCloseTo(2.6, 12);
    expect(item?.netPrice).toBeCloseTo((29 * 10 + 2 * 12) / 31, 12);
    expect(item?.commission).toBeCloseTo((29 * 3 + 2 * 3) / 31, 12);
  });
});
