import { describe, expect, test } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import type { ItemId } from '@/lib/model/facts';
import { lineCount } from '@/lib/model/half-known';
import { plateCost } from '@/lib/model/plate-cost';
import { Book, day, days, type Line } from '../books';
import { costOn, issuesIn, plateOn } from './plate';

/** What a plate of these lines costs, in a book that holds what the lines need. */
function plate(write: (book: Book) => readonly Line[]): number | null {
  const book = new Book();
  const lines = write(book);
  const dish = book.dish('Plate', {}, ...lines);
  book.menu(dish, 9);
  return costOn(book.facts(), dish);
}

describe('costPeriod: quantities', () => {
  // 100 g at 0.02 a gram
  test('costPeriod(a line) costs quantity times the price of its base unit', () => {
    expect(plate((book) => [[100, 'g', book.ingredient('Butter', 'g', 0.02)]])).toBeCloseTo(2, 12);
  });

  // 80 g of peeled pear at a usable yield of 80 % are 100 g bought
  test('costPeriod(prepared) divides by the usable yield', () => {
    expect(plate((book) => [[80, 'g', book.ingredient('Pear', 'g', 0.02, { usableYield: 0.8 })]])).toBeCloseTo(2, 12);
  });

  test('costPeriod(bought) does not apply the yield', () => {
    expect(
      plate((book) => [[80, 'g', book.ingredient('Pear', 'g', 0.02, { usableYield: 0.8 }), 'bought']]),
    ).toBeCloseTo(1.6, 12);
  });

  // 100 ml of honey at 1.4 g/ml are 140 g
  test('costPeriod(a line by volume of what is bought by weight) takes its density', () => {
    expect(plate((book) => [[100, 'ml', book.ingredient('Honey', 'g', 0.01, { densityGPerMl: 1.4 })]])).toBeCloseTo(
      1.4,
      12,
    );
  });

  // 2 eggs of 55 g
  test('costPeriod(a line by the piece of what is bought by weight) takes the weight of a piece', () => {
    expect(plate((book) => [[2, 'each', book.ingredient('Egg', 'g', 0.004, { gramsEach: 55 })]])).toBeCloseTo(0.44, 12);
  });

  // 2 pods of 3 g
  test('costPeriod(a line in a measure of the ingredient’s own) takes what it says', () => {
    expect(
      plate((book) => {
        const vanilla = book.ingredient('Vanilla', 'g', 0.5);
        book.measure(vanilla, 'pod', 3, 'g');
        return [[2, 'pod', vanilla]];
      }),
    ).toBeCloseTo(3, 12);
  });
});

describe('costPeriod: batches', () => {
  const sugar = (book: Book): ItemId => book.ingredient('Sugar', 'g', 0.01);

  // 1,000 g go in for 10.00 and 800 g come out: 0.0125 a gram
  test('costPeriod(a component) spreads its batch over the measured output', () => {
    expect(
      plate((book) => [[80, 'g', book.component('Syrup', { yields: [800, 'g'] }, [1, 'kg', sugar(book)])]]),
    ).toBeCloseTo(1, 12);
  });

  // 900 g fill 1,500 ml; 30 ml weigh 18 g; the batch costs 9.00, so 0.01 a gram
  test('costPeriod(a component with two outputs) takes the pair as its density', () => {
    expect(
      plate((book) => [
        [30, 'ml', book.component('Cream', { yields: [900, 'g'], also: [1500, 'ml'] }, [900, 'g', sugar(book)])],
      ]),
    ).toBeCloseTo(0.18, 12);
    expect(
      plate((book) => [
        [18, 'g', book.component('Cream', { yields: [1.5, 'l'], also: [900, 'g'] }, [900, 'g', sugar(book)])],
      ]),
    ).toBeCloseTo(0.18, 12);
  });

  // 12 tuiles for 6.00
  test('costPeriod(a component counted in pieces) costs by the piece', () => {
    expect(
      plate((book) => [[2, 'each', book.component('Tuile', { yields: [12, 'each'] }, [600, 'g', sugar(book)])]]),
    ).toBeCloseTo(1, 12);
  });

  // 1,000 g less 40 g that stay in the pan: 960 g for 9.60
  test('costPeriod(a fixed batch loss) takes it from the measured output', () => {
    expect(
      plate((book) => [
        [96, 'g', book.component('Syrup', { yields: [1000, 'g'], batchLossG: 40 }, [960, 'g', sugar(book)])],
      ]),
    ).toBeCloseTo(0.96, 12);
  });

  // 1,000 g = 2,000 ml less 100 g: 900 g = 1,800 ml for 9.00; 180 ml cost 0.90
  test('costPeriod(a fixed batch loss with two outputs) shrinks the second in proportion', () => {
    const recipe = { yields: [1000, 'g'], also: [2000, 'ml'], batchLossG: 100 } as const;
    expect(plate((book) => [[180, 'ml', book.component('Foam', recipe, [900, 'g', sugar(book)])]])).toBeCloseTo(
      0.9,
      12,
    );
    const byVolume = { yields: [2000, 'ml'], also: [1000, 'g'], batchLossG: 100 } as const;
    expect(plate((book) => [[180, 'ml', book.component('Foam', byVolume, [900, 'g', sugar(book)])]])).toBeCloseTo(
      0.9,
      12,
    );
  });

  // 400 g sugar, 500 ml cream of 1.02 g/ml = 510 g, 2 eggs of 55 g = 110 g, less 20 g: 1,000 g usable for 4 + 5 + 2 = 11.00
  test('costPeriod(a component without yield) gives what its lines weigh, less what every batch loses', () => {
    expect(
      plate((book) => {
        const cream = book.ingredient('Cream', 'ml', 0.01, { densityGPerMl: 1.02 });
        const egg = book.ingredient('Egg', 'each', 1, { gramsEach: 55 });
        const lines: Line[] = [
          [400, 'g', sugar(book)],
          [500, 'ml', cream],
          [2, 'each', egg],
        ];
        return [[100, 'g', book.component('Custard', { batchLossG: 20 }, ...lines)]];
      }),
    ).toBeCloseTo(1.1, 12);
  });

  // prepared or bought, 500 g stand in the bowl; the yield is in the price alone: 500 / 0.5 * 0.01 = 10.00 over 500 g
  test('costPeriod(a component without yield) weighs lines as stated, whatever was peeled away', () => {
    const apple = (as: 'prepared' | 'bought'): number | null =>
      plate((book) => [
        [
          50,
          'g',
          book.component('Apple', {}, [500, 'g', book.ingredient('Apples', 'g', 0.01, { usableYield: 0.5 }), as]),
        ],
      ]);
    expect(apple('prepared')).toBeCloseTo(1, 12);
    expect(apple('bought')).toBeCloseTo(0.5, 12);
  });

  // the foam inside weighs 300 ml * 900/1500 = 180 g, and costs 1.80; with 20 g of sugar 200 g for 2.00
  test('costPeriod(a component without yield) weighs components by their own two outputs', () => {
    expect(
      plate((book) => {
        const sweet = sugar(book);
        const foam = book.component('Foam', { yields: [1500, 'ml'], also: [900, 'g'] }, [900, 'g', sweet]);
        return [[100, 'g', book.component('Mousse', {}, [300, 'ml', foam], [20, 'g', sweet])]];
      }),
    ).toBeCloseTo(1, 12);
  });

  // 500 g of sugar fill 1,000 ml: 0.5 g/ml
  test('costPeriod(a component without yield but with a second output) has a density', () => {
    expect(
      plate((book) => [[100, 'ml', book.component('Floss', { also: [1, 'l'] }, [500, 'g', sugar(book)])]]),
    ).toBeCloseTo(0.5, 12);
  });

  test('costPeriod(two outputs of one dimension) holds the first', () => {
    const recipe = { yields: [800, 'g'], also: [2, 'kg'] } as const;
    expect(plate((book) => [[80, 'g', book.component('Syrup', recipe, [1, 'kg', sugar(book)])]])).toBeCloseTo(1, 12);
  });

  // 4 % of what is made breaks: 0.96 served of each made
  test('costPeriod(a second output without its unit, or a unit without a quantity) goes by the first', () => {
    const book = new Book();
    const milk = book.ingredient('Milk', 'g', 0.01);
    for (const half of [{ alsoQuantity: 2 }, { alsoUnit: 'each' }]) {
      const base = book.component('Base', { yields: [100, 'g'], ...half }, [200, 'g', milk]);
      const dish = book.dish('Cup', {}, [50, 'g', base]);
      book.menu(dish, 6);
      expect(costOn(book.facts(), dish)).toBeCloseTo(1, 12);
    }
  });

  test('costPeriod(breakage) makes more than is served, on components and on plates', () => {
    const tuile = (breakage: number) => (book: Book) =>
      book.component('Tuile', { yields: [12, 'each'], breakage }, [600, 'g', sugar(book)]);
    expect(plate((book) => [[2, 'each', tuile(0.04)(book)]])).toBeCloseTo(1 / 0.96, 12);
    const book = new Book();
    const dish = book.dish('Plate', { breakage: 0.2 }, [2, 'each', tuile(0.04)(book)]);
    book.menu(dish, 9);
    expect(costOn(book.facts(), dish)).toBeCloseTo(1 / 0.96 / 0.8, 12);
  });

  test('costPeriod(a component in a component) goes down to what is bought', () => {
    // praline: 500 g sugar = 5.00 -> 400 g; feuillantine: 100 g praline (1.25) + 25 g butter (0.50) -> 125 g: 0.014 a gram
    expect(
      plate((book) => {
        const praline = book.component('Praline', { yields: [400, 'g'] }, [500, 'g', sugar(book)]);
        const lines: Line[] = [
          [100, 'g', praline],
          [25, 'g', book.ingredient('Butter', 'g', 0.02)],
        ];
        return [[50, 'g', book.component('Feuillantine', { yields: [125, 'g'] }, ...lines)]];
      }),
    ).toBeCloseTo(0.7, 12);
  });
});

describe('costPeriod: what is sold', () => {
  // food 2.00 with q 2 % is 2.04; the box of 0.30 takes none
  test('costPeriod(q) is added once, on food, never on packaging', () => {
    const book = new Book({ qFactor: 0.02 });
    const base = book.component('Base', { yields: [100, 'g'] }, [100, 'g', book.ingredient('Butter', 'g', 0.02)]);
    const box = book.ingredient('Box', 'each', 0.3, { department: 'packaging' });
    const dish = book.dish('To go', {}, [100, 'g', base], [1, 'each', box]);
    book.menu(dish, 9);
    const { food, total, complete } = plateOn(book.facts(), dish);
    expect(food).toBeCloseTo(2.04, 12);
    expect(total).toBeCloseTo(2.34, 12);
    expect(complete).toBe(true);
  });

  // a leaf counts as food to the 9th and as packaging from the 10th on: q of 50 % on it only before
  test('costPeriod(an ingredient that becomes packaging) takes q up to that day', () => {
    const book = new Book({ qFactor: 0.5 });
    const sugar = book.ingredient('A sugar', 'g', 0.01);
    const leaf = book.item('ingredient', 'Leaf');
    book.ingredientVersion(leaf, 'each');
    book.ingredientVersion(leaf, 'each', { department: 'packaging', from: '2026-10-10' });
    const offer = book.offer(leaf, 1, 1, 'each');
    book.price(offer, 1);
    book.price(offer, 2, { from: '2026-10-20' });
    const dish = book.dish('Plate', {}, [100, 'g', sugar], [1, 'each', leaf]);
    book.menu(dish, 9);
    const totals = ['2026-10-09', '2026-10-10', '2026-10-20'].map((on) => costOn(book.facts(), dish, on));
    expect(totals).toEqual([3, 2.5, 3.5]);
  });

  test('costPeriod(an estimate) stands in where there is no recipe, without q', () => {
    const book = new Book({ qFactor: 0.02 });
    const dish = book.dish('Soufflé', { estimatedCost: 3.1 });
    book.menu(dish, 12);
    expect(plateOn(book.facts(), dish)).toEqual({ complete: true, food: 3.1, total: 3.1, estimated: true });
    expect(issuesIn(book.facts())).toEqual([]);
  });

  test('costPeriod(a recipe and an estimate) takes the recipe where it can be costed, else the estimate', () => {
    const book = new Book();
    const butter = book.item('ingredient', 'Butter');
    book.ingredientVersion(butter, 'g');
    book.price(book.offer(butter, 1, 1, 'g'), 0.02, { from: '2026-10-10' });
    const dish = book.dish('Tart', { estimatedCost: 3 }, [100, 'g', butter]);
    book.menu(dish, 12);
    expect(plateOn(book.facts(), dish, '2026-10-09')).toMatchObject({ complete: true, total: 3, estimated: true });
    expect(plateOn(book.facts(), dish, '2026-10-10')).toMatchObject({ complete: true, total: 2, estimated: false });
    expect(issuesIn(book.facts()).map(({ code }) => code)).toEqual(['no-price']);
  });

  test('costPeriod(an estimated plate inside a set menu) marks the menu as estimated and takes no q on that part', () => {
    const book = new Book({ qFactor: 0.1 });
    const soufflé = book.dish('Soufflé', { estimatedCost: 3 });
    const tart = book.dish('Tart', {}, [100, 'g', book.ingredient('Butter', 'g', 0.02)]);
    const both = book.recipe(book.item('set_menu', 'Two courses'), {}, [1, 'each', soufflé], [1, 'portion', tart]);
    book.menu(both, 20);
    expect(plateOn(book.facts(), both).total).toBeCloseTo(3 + 2 * 1.1, 12);
    expect(plateOn(book.facts(), both).estimated).toBe(true);
    book.menu(tart, 9);
    expect(plateOn(book.facts(), tart).estimated).toBe(false);
    book.recipe(tart, { from: '2026-10-10' }, [1, 'g', book.ingredient('Almond', 'g', 1)]);
    book.recipe(soufflé, { from: '2026-10-20' }, [1, 'g', tart], [1, 'each', tart]);
    const marked = ['2026-10-09', '2026-10-10', '2026-10-20'].map((on) => plateOn(book.facts(), both, on));
    expect(marked.map(({ estimated, complete }) => [estimated, complete])).toEqual([
      [true, true],
      [true, true],
      [false, false],
    ]);
    expect(plateOn(book.facts(), tart, '2026-10-10').estimated).toBe(false);
  });

  test('costPeriod(an estimate of 0) is known to be free', () => {
    const book = new Book();
    const dish = book.dish('Mignardise', { estimatedCost: 0 });
    const both = book.recipe(book.item('set_menu', 'Both'), {}, [1, 'each', dish]);
    book.menu(dish, 0);
    book.menu(both, 5);
    expect(plateOn(book.facts(), dish)).toMatchObject({ complete: true, total: 0, estimated: true });
    expect(plateOn(book.facts(), both)).toMatchObject({ complete: true, total: 0, estimated: true });
  });

  test('costPeriod(an ingredient or a component sold as it is) costs one piece of it', () => {
    const book = new Book({ qFactor: 0.1 });
    const bottle = book.ingredient('Bottle', 'each', 8, { department: 'drink' });
    const egg = book.ingredient('Egg', 'g', 0.01, { gramsEach: 55 });
    const tuile = book.component('Tuile', { yields: [10, 'each'], estimatedCost: 99 }, [100, 'g', egg]);
    const wine = book.ingredient('Wine', 'ml', 0.02, { department: 'drink' });
    for (const item of [bottle, egg, tuile, wine]) book.menu(item, 20);
    const facts = book.facts();
    expect(costOn(facts, bottle)).toBeCloseTo(8.8, 12);
    expect(costOn(facts, egg)).toBeCloseTo(0.605, 12);
    expect(costOn(facts, tuile)).toBeCloseTo(0.11, 12);
    expect(plateOn(facts, wine)).toEqual({ complete: false, food: 0, total: 0, estimated: false });
    expect(issuesIn(facts)).toEqual([
      { code: 'no-portion', about: 'Wine', facts: { unit: 'ml' }, day: day('2026-10-01') },
    ]);
  });
});

describe('costPeriod: days', () => {
  test('costPeriod(a month) is cut where a price, a version or a choice changes, and every day costs its own', () => {
    const book = new Book();
    const butter = book.item('ingredient', 'Butter');
    book.ingredientVersion(butter, 'g');
    const offer = book.offer(butter, 1, 1, 'kg');
    book.price(offer, 10);
    book.price(offer, 20, { from: '2026-10-08' });
    book.price(offer, 99, { from: '2026-10-09', kind: 'quote' });
    book.price(offer, 99, { from: '2026-10-09', kind: 'invoice' });
    const dish = book.dish('Tart', { from: '2026-09-01' }, [100, 'g', butter]);
    book.recipe(dish, { from: '2026-10-20' }, [50, 'g', butter]);
    book.menu(dish, 9);
    const facts = book.facts();
    const period = costPeriod(facts, days('2026-10'));
    expect(period.segments.cuts).toEqual(['2026-10-01', '2026-10-08', '2026-10-20', '2026-11-01'].map(day));
    const costs = ['2026-10-07', '2026-10-08', '2026-10-19', '2026-10-20'].map((on) => costOn(facts, dish, on));
    expect(costs.map((cost) => cost?.toFixed(12))).toEqual([
      '1.000000000000',
      '2.000000000000',
      '2.000000000000',
      '1.000000000000',
    ]);
  });

  test('costPeriod(a month) is not cut by what nothing sold hangs on, nor by a delivery at the same price', () => {
    const book = new Book();
    const butter = book.item('ingredient', 'Butter');
    book.ingredientVersion(butter, 'g');
    const offer = book.offer(butter, 1, 1, 'kg');
    for (const from of ['2026-09-30', '2026-10-05', '2026-10-12']) book.price(offer, 10, { from, kind: 'invoice' });
    book.ingredient('Unused', 'g', 1);
    const unused = book.offer(book.item('ingredient', 'Unused too'), 1, 1, 'g');
    book.price(unused, 1, { from: '2026-10-10' });
    book.menu(book.dish('Tart', {}, [100, 'g', butter]), 9);
    expect(costPeriod(book.facts(), days('2026-10')).segments.count).toBe(1);
  });

  test('costPeriod(a component that changes how it is measured) reads the lines to it anew from that day', () => {
    const book = new Book();
    const sugar = book.ingredient('Sugar', 'g', 0.01);
    const foam = book.component('Foam', { yields: [1000, 'g'], also: [2000, 'ml'] }, [1000, 'g', sugar]);
    book.recipe(foam, { yields: [4000, 'ml'], from: '2026-10-11' }, [1000, 'g', sugar]);
    const dish = book.dish('Cup', {}, [200, 'ml', foam]);
    book.menu(dish, 9);
    expect(costOn(book.facts(), dish, '2026-10-10')).toBeCloseTo(1, 12);
    expect(costOn(book.facts(), dish, '2026-10-11')).toBeCloseTo(0.5, 12);
  });

  // with the second density the batch weighs 500 g instead of 1,000 g, so a gram of it costs twice as much
  test('costPeriod(a density that changes) changes what a component without yield weighs', () => {
    const book = new Book();
    const cream = book.ingredient('Cream', 'ml', 0.01, { densityGPerMl: 1 });
    book.ingredientVersion(cream, 'ml', { densityGPerMl: 0.5, from: '2026-10-11' });
    const base = book.component('Base', {}, [1, 'l', cream]);
    const dish = book.dish('Cup', {}, [100, 'g', book.component('Top', {}, [50, 'g', base])]);
    book.menu(dish, 9);
    expect(costOn(book.facts(), dish, '2026-10-10')).toBeCloseTo(1, 12);
    expect(costOn(book.facts(), dish, '2026-10-11')).toBeCloseTo(2, 12);
  });

  test('costPeriod(recipes of different days that together form a loop) costs each day by its own', () => {
    const book = new Book();
    const sugar = book.ingredient('Sugar', 'g', 0.01);
    const a = book.item('component', 'A');
    const b = book.item('component', 'B');
    book.recipe(a, { yields: [100, 'g'] }, [100, 'g', b]);
    book.recipe(b, { yields: [100, 'g'] }, [100, 'g', sugar]);
    book.recipe(a, { yields: [100, 'g'], from: '2026-10-16' }, [200, 'g', sugar]);
    book.recipe(b, { yields: [100, 'g'], from: '2026-10-16' }, [150, 'g', a]);
    const dish = book.dish('Cup', {}, [100, 'g', b], [100, 'g', a]);
    book.menu(dish, 9);
    const facts = book.facts();
    expect(costOn(facts, dish, '2026-10-15')).toBeCloseTo(1 + 1, 12);
    expect(costOn(facts, dish, '2026-10-16')).toBeCloseTo(3 + 2, 12);
    expect(issuesIn(facts)).toEqual([]);
  });

  test('costPeriod(recipes that turn more than once) costs each run of days by its own', () => {
    const book = new Book();
    const sugar = book.ingredient('Sugar', 'g', 0.01);
    // the later change is written by the thing that comes first by name
    const a = book.item('component', 'A');
    const b = book.item('component', 'B');
    const c = book.item('component', 'C');
    book.recipe(a, { yields: [100, 'g'] }, [100, 'g', b]);
    book.recipe(a, { yields: [100, 'g'], from: '2026-10-21' }, [300, 'g', sugar]);
    book.recipe(b, { yields: [100, 'g'] }, [100, 'g', c]);
    book.recipe(b, { yields: [100, 'g'], from: '2026-10-11' }, [200, 'g', sugar]);
    book.recipe(c, { yields: [100, 'g'] }, [100, 'g', sugar]);
    book.recipe(c, { yields: [100, 'g'], from: '2026-10-21' }, [100, 'g', a]);
    const dish = book.dish('Cup', {}, [100, 'g', a], [100, 'g', c]);
    book.menu(dish, 9);
    const facts = book.facts();
    const costs = ['2026-10-10', '2026-10-11', '2026-10-20', '2026-10-21'].map((on) => costOn(facts, dish, on));
    expect(costs).toEqual([1 + 1, 2 + 1, 2 + 1, 3 + 3]);
    expect(issuesIn(facts)).toEqual([]);
  });

  test('costPeriod(a loop) names it once with its first day, and costs nothing above it', () => {
    const book = new Book();
    const sugar = book.ingredient('Sugar', 'g', 0.01);
    const a = book.item('component', 'Almond paste');
    const b = book.component('Biscuit', { yields: [100, 'g'] }, [100, 'g', a], [100, 'g', sugar]);
    book.recipe(a, { yields: [100, 'g'] }, [100, 'g', sugar]);
    book.recipe(a, { yields: [100, 'g'], from: '2026-10-16' }, [100, 'g', b]);
    const dish = book.dish('Cake', {}, [100, 'g', b], [50, 'g', sugar]);
    const other = book.dish('Glass', {}, [100, 'g', sugar]);
    book.menu(dish, 9);
    book.menu(other, 9);
    const facts = book.facts();
    expect([costOn(facts, dish, '2026-10-15'), costOn(facts, dish, '2026-10-16')]).toEqual([2.5, null]);
    expect(costOn(facts, other, '2026-10-16')).toBeCloseTo(1, 12);
    expect(issuesIn(facts)).toEqual([
      {
        code: 'cycle',
        about: 'Almond paste',
        facts: { loop: ['Almond paste', 'Biscuit', 'Almond paste'] },
        day: day('2026-10-16'),
      },
    ]);
    // what is known of the cake without the biscuit
    const period = costPeriod(facts, days('2026-10'));
    const node = period.nodeOf.get(dish) ?? -1;
    expect(plateCost(period, node, 1)).toMatchObject({ complete: false, total: 0.5 });
    expect(lineCount(period, node, 1)).toEqual({ lines: 2, missing: 1 });
    expect(lineCount(period, node, 0)).toEqual({ lines: 3, missing: 0 });
  });

  test('costPeriod(a recipe that uses itself) is a loop of one', () => {
    const book = new Book();
    const dough = book.item('component', 'Dough');
    book.recipe(dough, { yields: [100, 'g'] }, [10, 'g', dough]);
    const dish = book.dish('Loaf', {}, [10, 'g', dough]);
    book.menu(dish, 9);
    expect(issuesIn(book.facts()).map(({ facts }) => facts)).toEqual([{ loop: ['Dough', 'Dough'] }]);
    expect(costOn(book.facts(), dish)).toBeNull();
  });
});
