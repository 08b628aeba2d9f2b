import { describe, expect, test } from 'vitest';
import type { Day } from '@/lib/core/days';
import { costPeriod } from '@/lib/model/costed-period';
import type { Facts, ItemId } from '@/lib/model/facts';
import { type CostWorking, costWorking } from '@/lib/reports/cost-working';
import { Book, day } from '../books';
import { everyLine, expectParts } from '../cost-parts';

const OCT_10 = day('2026-10-10');

function worked(facts: Facts, item: ItemId, on = OCT_10): CostWorking {
  const range = { from: on, to: (on + 1) as Day };
  return costWorking(costPeriod(facts, range, 'everything'), item, on) ?? expect.unreachable('the item has a name');
}

/** A crisp with re-fires on a plate: every factor that a line can have. */
function crispPlate(qFactor = 0) {
  const book = new Book({ qFactor });
  const nuts = book.ingredient('Hazelnuts', 'g', null, { usableYield: 0.8 });
  const offer = book.offer(nuts, 4, 2.5, 'kg', 'Strand Dry Goods');
  book.price(offer, 160, { kind: 'agreed', from: '2026-10-01', to: '2026-10-31' });
  const sugar = book.ingredient('Sugar', 'g', 0.002);
  const box = book.ingredient('Box', 'each', 0.25, { department: 'packaging' });
  const crisp = book.component(
    'Crisp',
    { yields: [520, 'g'], batchLossG: 20, breakage: 0.2, from: '2026-09-01' },
    [300, 'g', nuts],
    [0.1, 'kg', sugar, 'bought'],
  );
  const dish = book.dish('Tide', { breakage: 0.5 }, [50, 'g', crisp], [1, 'each', box]);
  book.menu(dish, 12);
  return { book, dish, crisp };
}

describe('costWorking(a plate)', () => {
  // 50 g of crisp / (1 - 0.5) = 100 g made; a batch of 520 g loses 20 g: 500 g usable, of which 20 % breaks, so 100 g takes
  // 60 g of nuts / 0.8 / 0.8 = 93.75 g at 160 / 10,000 g = 1.50, and 20 g of sugar / 0.8 = 25 g at 0.002 = 0.05.
  test('keeps quantity, yield, breakage, batch loss and price of every line apart', () => {
    const { book, dish } = crispPlate();
    const working = worked(book.facts(), dish);
    expect(working).toMatchObject({ plateCost: 2.05, per: { quantity: 1, unit: 'each' }, halfKnown: null });
    expect(working.recipe).toMatchObject({
      validFrom: null,
      usable: 1,
      usableUnit: 'each',
      batchLossG: null,
      breakage: 0.5,
    });
    const [crisp, box] = working.lines;
    expect(crisp).toMatchObject({
      item: 'Crisp',
      kind: 'component',
      quantity: 50,
      unit: 'g',
      bought: 100,
      boughtUnit: 'g',
    });
    expect(crisp?.cost).toBeCloseTo(1.55, 12);
    expect(crisp?.recipe).toMatchObject({
      ...{ validFrom: day('2026-09-01'), usable: 500, usableUnit: 'g', batchLossG: 20, breakage: 0.2 },
    });
    expect(box).toMatchObject({ kind: 'ingredient', department: 'packaging', bought: 2, cost: 0.5 });
    const [nuts, sugar] = crisp?.lines ?? [];
    expect(nuts).toMatchObject({
      position: 1,
      quantity: 60,
      unit: 'g',
      as: 'prepared',
      usableYield: 0.8,
      unitPrice: 0.016,
    });
    expect(nuts?.bought).toBeCloseTo(93.75, 12);
    expect(nuts?.cost).toBeCloseTo(1.5, 12);
    expect(nuts?.price).toMatchObject({
      offer: { supplier: 'Strand Dry Goods', packCount: 4, packSize: 2.5, packUnit: 'kg' },
      point: { kind: 'agreed', price: 160, validFrom: day('2026-10-01'), validTo: day('2026-10-31') },
    });
    expect(sugar).toMatchObject({ position: 2, unit: 'kg', as: 'bought', usableYield: 1 });
    expect(sugar?.quantity).toBeCloseTo(0.02, 12);
    expect(sugar?.bought).toBeCloseTo(25, 12);
    expect(sugar?.cost).toBeCloseTo(0.05, 12);
  });

  // 2 % of the 1.55 of food: packaging takes no q
  test('shows q as a line of its own, on food and drink alone', () => {
    const { book, dish } = crispPlate(0.02);
    const working = worked(book.facts(), dish);
    const last = working.lines.at(-1);
    expect(last).toMatchObject({ kind: 'not_measured', quantity: 0.02, unit: null, boughtUnit: null });
    expect(last?.unitPrice).toBeCloseTo(1.55, 12);
    expect(last?.cost).toBeCloseTo(0.031, 12);
    expect(working.plateCost).toBeCloseTo(2.081, 12);
  });

  // one batch as it is written: 300 g / 0.8 = 375 g of nuts at 0.016 = 6, 100 g of sugar = 0.2; / (1 - 0.2) for what breaks
  test('of a component is that of one batch, without q', () => {
    const { book, crisp } = crispPlate(0.02);
    const working = worked(book.facts(), crisp);
    expect(working.per).toEqual({ quantity: 500, unit: 'g' });
    expect(working.plateCost).toBeCloseTo(7.75, 12);
    expect(working.lines.map(({ item, quantity }) => [item, quantity])).toEqual([
      ['Hazelnuts', 300],
      ['Sugar', 0.1],
    ]);
    expectParts(working);
  });

  test('of an ingredient is its price by the kilogram, or by the piece where it is sold', () => {
    const book = new Book({ qFactor: 0.1 });
    const sugar = book.ingredient('Sugar', 'g', 0.002);
    const truffle = book.ingredient('Truffle', 'each', 0.5);
    book.menu(truffle, 2);
    expect(worked(book.facts(), sugar)).toMatchObject({ per: { quantity: 1000, unit: 'g' }, plateCost: 2 });
    const sold = worked(book.facts(), truffle);
    expect(sold.plateCost).toBeCloseTo(0.55, 12);
    expect(sold.lines.map(({ kind }) => kind)).toEqual(['ingredient', 'not_measured']);
    expectParts(sold);
  });

  test('on estimate is one line, marked; a menu made of it too', () => {
    const book = new Book({ qFactor: 0.02 });
    const guess = book.dish('Guess', { estimatedCost: 3 });
    const menu = book.recipe(book.item('set_menu', 'Evening'), {}, [1, 'each', guess]);
    expect(worked(book.facts(), guess)).toMatchObject({
      ...{ plateCost: 3, estimated: true },
      lines: [{ kind: 'estimate', cost: 3, unitPrice: 3, estimated: true }],
    });
    const evening = worked(book.facts(), menu);
    expect(evening).toMatchObject({ plateCost: 3, estimated: true });
    expect(evening.lines[0]?.lines[0]).toMatchObject({ kind: 'estimate', cost: 3 });
  });
});

describe('costWorking(a day in the middle of a period)', () => {
  test('has the price, the estimate and the cost of that day', () => {
    const book = new Book();
    const sugar = book.ingredient('Sugar', 'g', null);
    const offer = book.offer(sugar, 1, 1, 'g');
    book.price(offer, 0.01);
    book.price(offer, 0.03, { from: '2026-10-08' });
    const plain = book.dish('Plain', {}, [10, 'g', sugar]);
    const guess = book.dish('Guess', { estimatedCost: 3 });
    book.recipe(guess, { estimatedCost: 4, from: '2026-10-08' });
    const period = costPeriod(book.facts(), { from: day('2026-10-01'), to: day('2026-11-01') }, 'everything');
    const one = { item: 'Sugar', unitPrice: 0.03, floor: null, estimated: false, closed: false };
    expect(costWorking(period, plain, OCT_10)?.lines).toMatchObject([one]);
    expect(costWorking(period, guess, OCT_10)?.lines).toMatchObject([{ item: 'Guess', cost: 4, closed: false }]);
  });
});

describe('costWorking(what is not known)', () => {
  test('half known shows its floor, and what is missing stands beside the line that lacks it', () => {
    const book = new Book();
    const cream = book.ingredient('Cream', 'g', 0.01);
    const honey = book.ingredient('Honey', 'g', null);
    const syrup = book.component('Syrup', { yields: [100, 'g'] }, [50, 'g', honey], [50, 'g', cream]);
    const dish = book.dish('Comb', {}, [40, 'g', syrup], [10, 'g', cream]);
    const working = worked(book.facts(), dish);
    expect(working.plateCost).toBeNull();
    expect(working.halfKnown?.missing).toBe(1);
    expect(working.halfKnown?.floor).toBeCloseTo(0.3, 12);
    const [line] = working.lines;
    expect(line).toMatchObject({ item: 'Syrup', cost: null, unitPrice: null, issues: [] });
    expect(line?.floor).toBeCloseTo(0.2, 12);
    expect(line?.lines[0]).toMatchObject({ item: 'Honey', bought: 20, cost: null, floor: null });
    expect(line?.lines[0]?.issues.map(({ code }) => code)).toEqual(['no-offer']);
    expectParts(working);
  });

  test('a line in a unit that leads nowhere has no bought quantity, and says so', () => {
    const book = new Book();
    const honey = book.ingredient('Honey', 'g', 0.01);
    const dish = book.dish('Comb', {}, [40, 'ml', honey]);
    const [line] = worked(book.facts(), dish).lines;
    expect(line).toMatchObject({ quantity: 40, unit: 'ml', bought: null, cost: null });
    expect(line?.issues.map(({ code }) => code)).toEqual(['no-density']);
  });

  test('a batch that gives nobody knows what shows its lines as they are written', () => {
    const book = new Book();
    const leaf = book.ingredient('Leaf', 'each', 0.1);
    const jelly = book.component('Jelly', {}, [4, 'each', leaf]);
    const working = worked(book.facts(), jelly);
    expect(working).toMatchObject({ per: null, plateCost: null });
    expect(working.lines[0]).toMatchObject({ quantity: 4, unit: 'each', bought: null });
    expect(working.issues.map(({ code }) => code)).toEqual(['no-yield']);
  });

  test('a loop is not followed for ever', () => {
    const book = new Book();
    const a = book.item('component', 'Starter');
    const b = book.component('Dough', { yields: [100, 'g'] }, [50, 'g', a]);
    book.recipe(a, { yields: [100, 'g'] }, [50, 'g', b]);
    const dish = book.dish('Loaf', {}, [40, 'g', b]);
    const working = worked(book.facts(), dish);
    expect(working.plateCost).toBeNull();
    expect(everyLine(working.lines).flatMap(({ issues }) => issues.map(({ code }) => code))).toContain('cycle');
  });

  test('an item without a recipe on the day has no lines, and the issue that names it', () => {
    const book = new Book();
    const sugar = book.ingredient('Sugar', 'g', 0.002);
    const dish = book.dish('Later', { from: '2026-12-01' }, [40, 'g', sugar]);
    const working = worked(book.facts(), dish);
    expect(working).toMatchObject({ plateCost: null, halfKnown: null, lines: [], per: null, recipe: null });
    expect(working.issues.map(({ code, about }) => [code, about])).toEqual([['no-recipe', 'Later']]);
  });

  test('a tree that doubles at every level is closed where it grows past reading', () => {
    const book = new Book();
    let below = book.ingredient('Sugar', 'g', 0.002);
    for (let level = 0; level < 60; level++) {
      below = book.component(`Level ${level}`, { yields: [100, 'g'] }, [50, 'g', below], [50, 'g', below]);
    }
    const dish = book.dish('Doubled', {}, [50, 'g', below]);
    const working = worked(book.facts(), dish);
    expect(working.plateCost).toBeCloseTo(0.1, 12);
    expect(everyLine(working.lines).length).toBeLessThan(1100);
    expect(everyLine(working.lines).some(({ closed }) => closed)).toBe(true);
    expectParts(working);
  });
});

describe('costWorking(what a line can ask for)', () => {
  // an egg of 0.36 gives 18 g of yolk at 45 % of its price: 0.162 / 18 = 0.009 a gram
  test('a part leads to the whole, at its share of the price', () => {
    const book = new Book();
    const egg = book.ingredient('Egg', 'each', 0.36);
    book.part(egg, 'yolk', 18, 'g', 0.45);
    book.part(egg, 'white', 32, 'g', 0.55);
    const dish = book.dish('Custard', {}, [36, 'g', egg, { part: 'yolk' }]);
    const working = worked(book.facts(), dish);
    expect(working.plateCost).toBeCloseTo(0.324, 12);
    const [yolk] = working.lines;
    expect(yolk).toMatchObject({
      item: 'Egg, yolk',
      part: 'yolk',
      quantity: 36,
      unit: 'g',
      bought: 36,
      boughtUnit: 'g',
    });
    expect(yolk?.recipe).toMatchObject({ usable: 18, usableUnit: 'g', costShare: 0.45 });
    expect(yolk?.lines[0]).toMatchObject({ item: 'Egg', boughtUnit: 'each', unitPrice: 0.36 });
    expect(yolk?.lines[0]?.bought).toBeCloseTo(0.9, 12);
    expectParts(working);
  });

  // of a kilogram at 4.00 come 600 g of flesh for nine tenths of the price: 100 g are 166.7 g of melon at nine tenths
  test('a part of what is bought by weight leads to a weight of it', () => {
    const book = new Book();
    const melon = book.ingredient('Melon', 'g', 0.004);
    book.part(melon, 'flesh', 0.6, 'g', 0.9);
    book.part(melon, 'seeds', 0.05, 'g', 0.1);
    const dish = book.dish('Melon plate', {}, [100, 'g', melon, { part: 'flesh' }]);
    const working = worked(book.facts(), dish);
    expect(working.plateCost).toBeCloseTo((100 / 0.6) * 0.9 * 0.004, 12);
    expect(working.lines[0]?.lines[0]).toMatchObject({ item: 'Melon', unit: 'g', boughtUnit: 'g', unitPrice: 0.004 });
  });

  // a batch of it is 250 g at a credit of 0.002 a gram
  test('a by-product with a recipe of its own is worth its credit for the whole of such a batch', () => {
    const book = new Book();
    const milk = book.ingredient('Milk', 'g', 0.001);
    const whey = book.component('Whey', { yields: [250, 'g'] }, [500, 'g', milk]);
    book.menu(
      book.dish('Curd', {}, [
        100,
        'g',
        book.component(
          'Curds',
          { yields: [400, 'g'] },
          [1000, 'g', milk],
          [600, 'g', whey, { byProductCredit: 0.002 }],
        ),
      ]),
      8,
    );
    const working = worked(book.facts(), whey);
    expect(working.per).toEqual({ quantity: 250, unit: 'g' });
    expect(working.plateCost).toBeCloseTo(0.5, 12);
  });

  // 40 g of juice at a yield of 0.4: 100 g of lemon at 0.003
  test('a use has its own yield', () => {
    const book = new Book();
    const lemon = book.ingredient('Lemon', 'g', 0.003, { usableYield: 0.8 });
    book.yieldFor(lemon, 'juice', 0.4);
    const dish = book.dish('Posset', {}, [40, 'g', lemon, { use: 'juice' }]);
    const [line] = worked(book.facts(), dish).lines;
    expect(line).toMatchObject({ use: 'juice', usableYield: 0.4, bought: 100 });
    expect(line?.cost).toBeCloseTo(0.3, 12);
  });

  // 1,000 g of syrup from 1.00 of fruit, less 200 g of pulp worth 0.002 a gram: 0.60
  test('a by-product is taken off where it is made, and costs its credit where it is used', () => {
    const book = new Book();
    const fruit = book.ingredient('Fruit', 'g', 0.001);
    const pulp = book.component('Pulp', { yields: [200, 'g'] });
    const syrup = book.component(
      'Syrup',
      { yields: [1000, 'g'] },
      [1000, 'g', fruit],
      [200, 'g', pulp, { byProductCredit: 0.002 }],
    );
    const made = worked(book.facts(), syrup);
    expect(made.plateCost).toBeCloseTo(0.6, 12);
    expect(made.lines[1]).toMatchObject({ item: 'Pulp', byProduct: 'made', quantity: 200, bought: -200, lines: [] });
    expect(made.lines[1]?.cost).toBeCloseTo(-0.4, 12);
    const cake = book.dish('Cake', {}, [50, 'g', pulp]);
    const [used] = worked(book.facts(), cake).lines;
    expect(used).toMatchObject({ byProduct: 'used', lines: [] });
    expect(used?.cost).toBeCloseTo(0.1, 12);
    expectParts(worked(book.facts(), pulp));
  });

  // a third choose the one of 1.20, two thirds the one of 0.90
  test('a choice of a set menu counts by its share of the guests', () => {
    const book = new Book({ qFactor: 0.1 });
    const sugar = book.ingredient('Sugar', 'g', 0.01);
    const one = book.dish('One', {}, [120, 'g', sugar]);
    const other = book.dish('Other', {}, [90, 'g', sugar]);
    const menu = book.recipe(
      book.item('set_menu', 'Evening'),
      {},
      [1, 'each', one, { choice: 'sweet', choiceShare: 0.25 }],
      [1, 'each', other, { choice: 'sweet', choiceShare: 0.75 }],
    );
    const working = worked(book.facts(), menu);
    expect(working.lines.map(({ item, share, quantity, bought }) => [item, share, quantity, bought])).toEqual([
      ['One', 0.25, 1, 0.25],
      ['Other', 0.75, 1, 0.75],
      ['Evening', null, 0.1, 0.1],
    ]);
    // q once, on the menu: (0.25 * 1.2 + 0.75 * 0.9) * 1.1
    expect(working.plateCost).toBeCloseTo(1.0725, 12);
    expectParts(working);
  });

  test('what a channel adds stands among the lines of that channel alone, with that of the courses', () => {
    const { book, dish } = crispPlate(0.02);
    const bag = book.ingredient('Bag', 'each', 0.4, { department: 'packaging' });
    const tub = book.ingredient('Tub', 'each', 0.3, { department: 'packaging' });
    const cold = book.dish('Cold tide', {}, [1, 'each', dish], [1, 'each', tub, { channel: 'takeaway' }]);
    const menu = book.recipe(
      book.item('set_menu', 'Evening'),
      {},
      [2, 'each', cold],
      [1, 'each', bag, { channel: 'takeaway' }],
    );
    const facts = book.facts();
    const period = costPeriod(facts, { from: OCT_10, to: (OCT_10 + 1) as Day }, 'everything');
    const [inside, away] = [null, 'takeaway'].map((channel) => costWorking(period, menu, OCT_10, channel));
    expect((away?.plateCost ?? 0) - (inside?.plateCost ?? 0)).toBeCloseTo(0.4 + 2 * 0.3, 12);
    expect(inside?.lines.map(({ item }) => item)).toEqual(['Cold tide', 'Evening']);
    expect(
      everyLine(away?.lines ?? [])
        .filter(({ department }) => department === 'packaging')
        .map(({ item }) => item),
    ).toEqual(['Box', 'Bag', 'Tub']);
    for (const working of [inside, away]) if (working) expectParts(working);
  });
});
