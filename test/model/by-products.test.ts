import { describe, expect, test } from 'vitest';
import { byProductFlows } from '@/lib/model/by-product-flows';
import { costPeriod } from '@/lib/model/costed-period';
import type { ItemId } from '@/lib/model/facts';
import { needOfServed } from '@/lib/model/served';
import { Book, day, days } from '../books';
import { costOn, issuesIn } from './plate';

const codes = (book: Book): readonly unknown[] =>
  issuesIn(book.facts()).map(({ code, about, facts, day: from }) => [code, about, facts, from]);

/** A brownie of 10.00 a batch (20 pieces), which leaves a tray of 300 g of trimmings worth `credit`; a crumb made of 150 g of them. */
function bakery(credit: number, trimmings: 'ingredient' | 'component' = 'ingredient') {
  const book = new Book({ qFactor: 0.1 });
  const flour = book.ingredient('Flour', 'g', 0.01);
  const trim =
    trimmings === 'ingredient'
      ? book.ingredient('Trimmings', 'g', null)
      : book.component('Trimmings', { yields: [1, 'kg'] });
  book.measure(trim, 'tray', 300, 'g');
  const brownie = book.component(
    'Brownie',
    { yields: [20, 'each'] },
    [1000, 'g', flour],
    [1, 'tray', trim, { byProductCredit: credit }],
  );
  const crumb = book.component('Crumb', { yields: [100, 'g'] }, [150, 'g', trim]);
  const plate = book.dish('Plate', { section: 'A' }, [1, 'each', brownie]);
  const cup = book.dish('Cup', { section: 'A' }, [50, 'g', crumb]);
  book.menu(plate, 9);
  book.menu(cup, 6);
  return { book, flour, trim, brownie, crumb, plate, cup };
}

describe('costPeriod: by-products', () => {
  // a batch costs 10.00 less 1.50, a piece 0.425; 75 g of trimmings cost 75 * 1.50 / 300 = 0.375; both with q of 10 %
  test.each(['ingredient', 'component'] as const)(
    'costPeriod(a line made with a credit) takes it off the batch, and lines to it cost the credit (%s)',
    (kind) => {
      const { book, plate, cup } = bakery(1.5, kind);
      expect(costOn(book.facts(), plate)).toBeCloseTo(0.425 * 1.1, 12);
      expect(costOn(book.facts(), cup)).toBeCloseTo(0.375 * 1.1, 12);
      expect(codes(book)).toEqual([]);
    },
  );

  test('costPeriod(a typed 0) is a by-product without credit: known to be free', () => {
    const { book, plate, cup } = bakery(0);
    expect(costOn(book.facts(), plate)).toBeCloseTo(0.5 * 1.1, 12);
    expect(costOn(book.facts(), cup)).toBe(0);
  });

  test('costPeriod(a dish that uses what only something off the menu makes) costs its credit all the same', () => {
    const { book, plate, cup } = bakery(1.5);
    book.menu(plate, null, { from: '2026-10-01' });
    expect(costOn(book.facts(), cup)).toBeCloseTo(0.375 * 1.1, 12);
  });

  // its own recipe of 0.02 a gram holds only while no brownie that leaves trimmings is in force
  test('costPeriod(a by-product with a recipe of its own) is worth its credit while it is made, its lines never exploded', () => {
    const book = new Book();
    const flour = book.ingredient('Flour', 'g', 0.01);
    const trim = book.component('Trimmings', { yields: [100, 'g'] }, [200, 'g', flour]);
    const brownie = book.item('component', 'Brownie');
    book.recipe(brownie, { yields: [20, 'each'] }, [1000, 'g', flour]);
    const line = [300, 'g', trim, { byProductCredit: 0.005 }] as const; // of one gram
    book.recipe(brownie, { yields: [20, 'each'], from: '2026-10-10' }, [1000, 'g', flour], line);
    const plate = book.dish('Plate', {}, [1, 'each', brownie]);
    const cup = book.dish('Cup', {}, [30, 'g', trim]);
    book.menu(plate, 9);
    book.menu(cup, 6);
    const on = (item: ItemId) => ['2026-10-09', '2026-10-10'].map((each) => costOn(book.facts(), item, each));
    expect(on(cup)[0]).toBeCloseTo(0.6, 12);
    expect(on(cup)[1]).toBeCloseTo(0.15, 12);
    expect(on(plate)[0]).toBeCloseTo(0.5, 12);
    expect(on(plate)[1]).toBeCloseTo(0.425, 12);
    expect(codes(book)).toEqual([]);
  });

  // 2 g of flour a gram up to the 4th, 3 g from the 5th, and from the 12th what the brownie says
  test('costPeriod(a recipe of its own in two versions, then made as a by-product) holds each for its days alone', () => {
    const book = new Book();
    const flour = book.ingredient('Flour', 'g', 0.01);
    const trim = book.component('Trimmings', { yields: [100, 'g'] }, [200, 'g', flour]);
    book.recipe(trim, { yields: [100, 'g'], from: '2026-10-05' }, [300, 'g', flour]);
    const brownie = book.item('component', 'Brownie');
    const line = [300, 'g', trim, { byProductCredit: 0.005 }] as const;
    book.recipe(brownie, { yields: [20, 'each'] }, [1000, 'g', flour]);
    book.recipe(brownie, { yields: [20, 'each'], from: '2026-10-12' }, [1000, 'g', flour], line);
    book.recipe(brownie, { yields: [20, 'each'], from: '2026-10-20' }, [1000, 'g', flour]);
    const cup = book.dish('Cup', {}, [30, 'g', trim]);
    book.menu(book.dish('Plate', {}, [1, 'each', brownie]), 9);
    book.menu(cup, 6);
    const on = ['2026-10-04', '2026-10-05', '2026-10-11', '2026-10-12', '2026-10-19', '2026-10-20'];
    expect(on.map((each) => costOn(book.facts(), cup, each)?.toFixed(9))).toEqual(
      ['0.600', '0.900', '0.900', '0.150', '0.150', '0.900'].map((each) => `${each}000000`),
    );
  });

  test('costPeriod(a by-product that its maker uses again) is no loop', () => {
    const book = new Book();
    const flour = book.ingredient('Flour', 'g', 0.01);
    const syrup = book.item('component', 'Poaching syrup');
    const pear = book.component(
      'Poached pears',
      { yields: [10, 'each'] },
      [500, 'g', flour],
      [100, 'g', syrup],
      [300, 'g', syrup, { byProductCredit: 0 }],
    );
    book.recipe(syrup, {}, [100, 'g', pear]);
    const dish = book.dish('Plate', {}, [1, 'each', pear]);
    book.menu(dish, 9);
    expect(costOn(book.facts(), dish)).toBeCloseTo(0.5, 12);
    expect(codes(book)).toEqual([]);
  });

  // 1,000 g of flour less 300 g of trimmings: 700 g in the tray
  test('costPeriod(a component without yield) weighs less by what is made beside it', () => {
    const book = new Book();
    const flour = book.ingredient('Flour', 'g', 0.01);
    const trim = book.component('Trimmings', {});
    const made = [300, 'g', trim, { byProductCredit: 0 }] as const;
    const dish = book.dish('Plate', {}, [70, 'g', book.component('Brownie', {}, [1000, 'g', flour], made)]);
    book.menu(dish, 9);
    expect(costOn(book.facts(), dish)).toBeCloseTo(1, 12);
  });

  test('costPeriod(a credit that a new version of its maker changes) holds from that day', () => {
    const book = new Book();
    const flour = book.ingredient('Flour', 'g', 0.01);
    const trim = book.component('Trimmings', {});
    const made = (credit: number) => [300, 'g', trim, { byProductCredit: credit }] as const;
    const brownie = book.item('component', 'Brownie');
    book.recipe(brownie, { yields: [20, 'each'] }, [1000, 'g', flour], made(0.005));
    book.recipe(brownie, { yields: [20, 'each'], from: '2026-10-12' }, [1000, 'g', flour], made(0.008));
    const cup = book.dish('Cup', {}, [30, 'g', trim]);
    book.menu(cup, 6);
    expect(costOn(book.facts(), cup, '2026-10-11')).toBeCloseTo(0.15, 12);
    expect(costOn(book.facts(), cup, '2026-10-12')).toBeCloseTo(0.24, 12);
    expect(codes(book)).toEqual([]);
  });

  test('costPeriod(two recipes that say different credits on one day) is an issue, and neither holds', () => {
    const { book, flour, trim, plate, cup } = bakery(1.5);
    const made = [300, 'g', trim, { byProductCredit: 0.01 }] as const; // 3.00 a tray
    const cake = book.item('component', 'Cake');
    book.recipe(cake, { yields: [10, 'each'] }, [500, 'g', flour], [1, 'tray', trim, { byProductCredit: 1.5 }]);
    book.recipe(cake, { yields: [10, 'each'], from: '2026-10-12' }, [500, 'g', flour], made);
    expect([costOn(book.facts(), cup, '2026-10-11'), costOn(book.facts(), cup, '2026-10-12')]).toEqual([
      expect.closeTo(0.375 * 1.1, 12),
      null,
    ]);
    expect(costOn(book.facts(), plate, '2026-10-12')).toBeNull();
    expect(codes(book)).toEqual([['credits-differ', 'Trimmings', { recipes: ['Brownie', 'Cake'] }, day('2026-10-12')]]);
  });

  test('costPeriod(a by-product made in a unit that leads nowhere) asks for it where it is made', () => {
    const book = new Book();
    const flour = book.ingredient('Flour', 'g', 0.01);
    const whey = book.ingredient('Whey', 'ml', 99);
    const curd = book.component(
      'Curd',
      { yields: [1, 'kg'] },
      [1, 'kg', flour],
      [2, 'kg', whey, { byProductCredit: 1 }],
    );
    const dish = book.dish('Plate', {}, [70, 'g', curd]);
    book.menu(dish, 9);
    expect(costOn(book.facts(), dish)).toBeNull();
    expect(codes(book)).toEqual([['no-density', 'Whey', { recipe: 'Curd', unit: 'kg' }, day('2026-10-01')]]);
  });
});

describe('byProductFlows', () => {
  // 40 plates are two batches: 600 g made, worth 3.00; 4 cups take 4 * 75 g = 300 g, worth 1.50
  test('byProductFlows(period, need) shows what was made and what was used, and what each was worth', () => {
    const { book, plate, cup, trim } = bakery(1.5);
    book.sell(plate, '2026-10-02', 38, 300, { comps: 2 });
    book.sell(cup, '2026-10-20', 4, 20);
    const period = costPeriod(book.facts(), days('2026-10'));
    const need = needOfServed(period);
    const [flow, ...others] = byProductFlows(period, need);
    expect(others).toEqual([]);
    expect(flow).toMatchObject({ node: period.nodeOf.get(trim), thing: { name: 'Trimmings' } });
    expect(flow?.made).toBeCloseTo(600, 9);
    expect(flow?.used).toBeCloseTo(300, 9);
    expect(flow?.creditOfMade).toBeCloseTo(3, 12);
    expect(flow?.costOfUsed).toBeCloseTo(1.5, 12);
    expect(need[(flow?.node ?? 0) * period.segments.count]).toBeCloseTo(-300, 9);
  });

  test('byProductFlows(credits that differ) knows amounts and no money', () => {
    const { book, flour, trim, plate } = bakery(1.5);
    book.component('Cake', { yields: [10, 'each'] }, [500, 'g', flour], [1, 'g', trim, { byProductCredit: 1 }]);
    book.sell(plate, '2026-10-02', 20, 300);
    const period = costPeriod(book.facts(), days('2026-10'));
    expect(byProductFlows(period, needOfServed(period))[0]).toMatchObject({
      made: 300,
      used: 0,
      creditOfMade: null,
      costOfUsed: null,
    });
  });

  // whey is made by what comes first in the order of names, ashes by what comes last
  test('byProductFlows(two by-products) stand by name, whichever is made first', () => {
    const { book, flour, plate } = bakery(1.5);
    const ashes = book.ingredient('Ashes', 'g', null);
    const whey = book.ingredient('Whey', 'g', null);
    const zest = book.component(
      'Zest',
      { yields: [1, 'each'] },
      [10, 'g', flour],
      [2, 'g', ashes, { byProductCredit: 0.1 }],
    );
    const bun = book.component(
      'A bun',
      { yields: [1, 'each'] },
      [10, 'g', flour],
      [3, 'g', whey, { byProductCredit: 0.2 }],
    );
    const both = book.dish('Both', {}, [1, 'each', bun], [1, 'each', zest]);
    book.sell(both, '2026-10-02', 2, 20);
    book.sell(plate, '2026-10-02', 20, 300);
    const period = costPeriod(book.facts(), days('2026-10'));
    expect(byProductFlows(period, needOfServed(period)).map(({ thing, made }) => [thing.name, made])).toEqual([
      ['Ashes', 4],
      ['Trimmings', 300],
      ['Whey', 6],
    ]);
  });

  // before the 16th another recipe says another credit, but nothing is made of either then
  test('byProductFlows(credits that differ on days on which nothing is made) knows the money', () => {
    const { book, flour, trim, plate } = bakery(1.5);
    const cake = book.component(
      'Cake',
      { yields: [10, 'each'] },
      [500, 'g', flour],
      [1, 'g', trim, { byProductCredit: 1 }],
    );
    book.recipe(cake, { from: '2026-10-16', yields: [10, 'each'] }, [500, 'g', flour]);
    book.sell(plate, '2026-10-20', 20, 300);
    const period = costPeriod(book.facts(), days('2026-10'));
    const [flow] = byProductFlows(period, needOfServed(period));
    expect(flow?.made).toBeCloseTo(300, 9);
    expect(flow?.creditOfMade).toBeCloseTo(1.5, 12);
    expect(flow?.costOfUsed).toBe(0);
  });
});
