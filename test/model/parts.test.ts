import { describe, expect, test } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import type { ItemId } from '@/lib/model/facts';
import { needOfServed } from '@/lib/model/served';
import { type SplitNeed, surplusParts } from '@/lib/model/surplus-parts';
import { Book, day, days } from '../books';
import { costOn, issuesIn } from './plate';

// common practice: a hen's egg of 58 g gives about 18 g of yolk and 32 g of white; six tenths of its price go to the yolk
function eggs(price: number | null = 0.3): { book: Book; egg: ItemId } {
  const book = new Book();
  const egg = book.ingredient('Eggs', 'each', price, { gramsEach: 50 });
  book.part(egg, 'yolk', 18, 'g', 0.6);
  book.part(egg, 'white', 32, 'g', 0.4);
  return { book, egg };
}
function split(book: Book): SplitNeed {
  const period = costPeriod(book.facts(), days('2026-10'));
  const [first] = surplusParts(period, needOfServed(period));
  if (!first) throw new RangeError('nothing is split');
  return first;
}

describe('costPeriod: split ingredients', () => {
  // 18 g of yolk: 0.30 * 0.6 / 18 * 18 = 0.18; 16 g of white: 0.30 * 0.4 / 32 * 16 = 0.06; a whole egg 0.30
  test('costPeriod(a line to a part) costs unit price * share / output, the yield of the whole not applied again', () => {
    const { book, egg } = eggs();
    book.ingredientVersion(egg, 'each', { gramsEach: 50, usableYield: 0.88, from: '2026-10-10' });
    const yolk = book.dish('Sabayon', {}, [18, 'g', egg, { part: 'Yolk' }]);
    const white = book.dish('Meringue', {}, [16, 'g', egg, { part: 'white' }]);
    const whole = book.dish('Custard', {}, [1, 'each', egg]);
    for (const dish of [yolk, white, whole]) book.menu(dish, 9);
    const facts = book.facts();
    expect(costOn(facts, yolk)).toBeCloseTo(0.18, 12);
    expect(costOn(facts, white)).toBeCloseTo(0.06, 12);
    expect(costOn(facts, whole)).toBeCloseTo(0.3, 12);
    expect(costOn(facts, yolk, '2026-10-10')).toBeCloseTo(0.18, 12);
    expect(costOn(facts, whole, '2026-10-10')).toBeCloseTo(0.3 / 0.88, 12);
    expect(issuesIn(facts)).toEqual([]);
  });

  // a pod of 3.00: seeds 85 %, husk 15 %, both counted
  test('costPeriod(parts that are counted) costs each piece its share', () => {
    const book = new Book();
    const pod = book.ingredient('Vanilla pods', 'each', 3);
    book.measure(pod, 'pod', 1, 'each');
    book.part(pod, 'seeds', 1, 'each', 0.85);
    book.part(pod, 'husk', 1, 'each', 0.15);
    const ice = book.component('Ice', { yields: [1000, 'g'] }, [2, 'pod', pod, { part: 'seeds' }]);
    const sugar = book.component('Vanilla sugar', { yields: [1000, 'g'] }, [3, 'each', pod, { part: 'husk' }]);
    const dish = book.dish('Scoop', {}, [100, 'g', ice], [20, 'g', sugar]);
    book.menu(dish, 6);
    expect(costOn(book.facts(), dish)).toBeCloseTo(0.1 * 2 * 2.55 + 0.02 * 3 * 0.45, 12);
  });

  // a lemon of 0.40 gives 0.05 kg of juice for 75 % of its price: 0.30 for 50 g
  test('costPeriod(a part measured by the kilogram) costs a gram the thousandth', () => {
    const book = new Book();
    const lemon = book.ingredient('Lemons', 'each', 0.4);
    book.part(lemon, 'juice', 0.05, 'kg', 0.75);
    book.part(lemon, 'zest', 2, 'g', 0.25);
    const dish = book.dish('Posset', {}, [20, 'g', lemon, { part: 'juice' }]);
    book.menu(dish, 8);
    expect(costOn(book.facts(), dish)).toBeCloseTo(0.12, 12);
  });

  // 20 g of yolk weigh 20 g in the bowl: with 80 g of sugar 100 g
  test('costPeriod(a component without yield) weighs a part as stated', () => {
    const { book, egg } = eggs();
    const sugar = book.ingredient('Sugar', 'g', 0.01);
    const base = book.component('Base', {}, [20, 'g', egg, { part: 'yolk' }], [80, 'g', sugar]);
    const dish = book.dish('Cup', {}, [50, 'g', base]);
    book.menu(dish, 6);
    expect(costOn(book.facts(), dish)).toBeCloseTo((0.2 + 0.8) / 2, 12);
  });

  test('costPeriod(shares of parts that do not sum to 1) costs no part, and says what they come to', () => {
    const { book, egg } = eggs();
    book.part(egg, 'shell', 6, 'g', 0.1);
    const dish = book.dish('Sabayon', {}, [18, 'g', egg, { part: 'yolk' }]);
    const whole = book.dish('Custard', {}, [1, 'each', egg]);
    book.menu(dish, 9);
    book.menu(whole, 9);
    expect(costOn(book.facts(), dish)).toBeNull();
    expect(costOn(book.facts(), whole)).toBeCloseTo(0.3, 12);
    const [issue, ...others] = issuesIn(book.facts());
    expect(issue).toMatchObject({ code: 'part-shares', about: 'Eggs', day: day('2026-10-01') });
    expect(issue?.facts.sum).toBeCloseTo(1.1, 12);
    expect(others).toEqual([]);
  });

  test('costPeriod(a part that nobody has stated, or in a unit that it has not) asks for it by name', () => {
    const { book, egg } = eggs();
    const dish = book.dish('Plate', {}, [1, 'g', egg, { part: 'membrane' }], [2, 'each', egg, { part: 'yolk' }]);
    book.menu(dish, 9);
    expect(issuesIn(book.facts()).map(({ code, about, facts }) => [code, about, facts])).toEqual([
      ['unknown-part', 'Eggs', { recipe: 'Plate', part: 'membrane' }],
      ['part-unit', 'Eggs, yolk', { recipe: 'Plate', unit: 'each', outputs: ['g'] }],
    ]);
  });

  test('costPeriod(a part given in a unit that is none, or of something not bought that day) says so', () => {
    const book = new Book();
    const egg = book.item('ingredient', 'Eggs');
    book.ingredientVersion(egg, 'each', { from: '2026-10-05' });
    book.price(book.offer(egg, 1, 1, 'each'), 0.3);
    book.part(egg, 'yolk', 18, 'spoon', 1);
    const dish = book.dish('Sabayon', {}, [18, 'g', egg, { part: 'yolk' }]);
    book.menu(dish, 9);
    expect(issuesIn(book.facts()).map(({ code, about, facts }) => [code, about, facts])).toEqual([
      ['unknown-unit', 'Eggs', { unit: 'spoon', where: 'Eggs, yolk' }],
      ['no-version', 'Eggs', { recipe: 'Eggs, yolk' }],
    ]);
  });
});

describe('surplusParts', () => {
  // 180 g / 18 g = 10 eggs of yolk, 320 g / 32 g = 10 eggs of white
  test('surplusParts(180 g of yolk and 320 g of white) needs ten eggs, which cost ten eggs, and leaves none', () => {
    const { book, egg } = eggs(0.3);
    const yolk = book.dish('Sabayon', {}, [18, 'g', egg, { part: 'yolk' }]);
    const white = book.dish('Meringue', {}, [64, 'g', egg, { part: 'white' }]);
    book.sell(yolk, '2026-10-02', 10, 50);
    book.sell(white, '2026-10-20', 4, 20, { comps: 1 });
    const { units, asWhole, surplusUnits, surplusCost, parts } = split(book);
    expect(units).toBeCloseTo(10, 12);
    expect(asWhole).toBeCloseTo(0, 12);
    expect(surplusUnits).toBeCloseTo(0, 12);
    expect(surplusCost).toBeCloseTo(0, 12);
    expect(parts.map(({ name, need }) => [name, need])).toEqual([
      ['white', 320],
      ['yolk', 180],
    ]);
    const costs = [costOn(book.facts(), yolk), costOn(book.facts(), white)] as number[];
    expect(10 * (costs[0] ?? 0) + 5 * (costs[1] ?? 0)).toBeCloseTo(10 * 0.3, 12);
  });

  // yolk 180 g = 10 eggs, white 160 g = 5 eggs, 3 whole ones with r = 25 %: 4. Paid for by the parts: 6 + 2 = 8 of 10: 2 surplus.
  test('surplusParts(more yolk than white) buys for the yolk, breakage included, and prices what is left at the mean price', () => {
    const { book, egg } = eggs(null);
    const offer = book.offer(egg, 1, 1, 'each');
    book.price(offer, 0.3);
    book.price(offer, 0.6, { from: '2026-10-16' });
    const both = book.dish('Both', {}, [18, 'g', egg, { part: 'yolk' }], [16, 'g', egg, { part: 'white' }]);
    const whole = book.dish('Custard', { breakage: 0.25 }, [1, 'each', egg]);
    book.sell(both, '2026-10-02', 10, 50);
    book.sell(whole, '2026-10-20', 3, 20);
    const { units, asWhole, surplusUnits, surplusCost } = split(book);
    expect(asWhole).toBeCloseTo(4, 12);
    expect(units).toBeCloseTo(14, 12);
    expect(surplusUnits).toBeCloseTo(2, 12);
    // 8 eggs at 0.30 and 4 at 0.60 are needed by the lines: 0.40 on the mean
    expect(surplusCost).toBeCloseTo(2 * 0.4, 12);
  });

  test('surplusParts(parts without price, with wrong shares, or of nothing used) has no cost, no row, no surplus', () => {
    const unpriced = eggs(null);
    unpriced.book.sell(
      unpriced.book.dish('Sabayon', {}, [18, 'g', unpriced.egg, { part: 'yolk' }]),
      '2026-10-02',
      10,
      50,
    );
    expect(split(unpriced.book)).toMatchObject({ surplusCost: null, units: 10 });
    const unused = eggs();
    unused.book.menu(unused.book.dish('Custard', {}, [1, 'each', unused.egg]), 9);
    expect(split(unused.book)).toMatchObject({ units: 0, surplusUnits: 0, surplusCost: 0 });
    const wrong = eggs();
    wrong.book.part(wrong.egg, 'shell', 6, 'g', 0.1);
    wrong.book.menu(wrong.book.dish('Sabayon', {}, [18, 'g', wrong.egg, { part: 'yolk' }]), 9);
    const period = costPeriod(wrong.book.facts(), days('2026-10'));
    expect(surplusParts(period, needOfServed(period))).toEqual([]);
  });
});
