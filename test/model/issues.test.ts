import { describe, expect, test } from 'vitest';
import type { ItemId } from '@/lib/model/facts';
import { Book, day, type Line } from '../books';
import { costOn, issuesIn } from './plate';

/** The issues of a plate on the menu, as code, about and facts. */
function asked(write: (book: Book) => readonly Line[]): readonly unknown[] {
  const book = new Book();
  const dish = book.dish('Plate', {}, ...write(book));
  book.menu(dish, 9);
  expect(costOn(book.facts(), dish)).toBeNull();
  return issuesIn(book.facts()).map(({ code, about, facts, day: from }) => {
    expect(from).toBe(day('2026-10-01'));
    return [code, about, facts];
  });
}
const sugar = (book: Book): ItemId => book.ingredient('Sugar', 'g', 0.01);

describe('costPeriod: issues', () => {
  test('costPeriod(a crossing without its fact) names the thing, the recipe and the unit', () => {
    expect(asked((book) => [[10, 'ml', sugar(book)]])).toEqual([
      ['no-density', 'Sugar', { recipe: 'Plate', unit: 'ml' }],
    ]);
    expect(asked((book) => [[1, 'dozen', sugar(book)]])).toEqual([
      ['no-piece-weight', 'Sugar', { recipe: 'Plate', unit: 'dozen' }],
    ]);
    expect(asked((book) => [[1, 'each', book.ingredient('Lemon juice', 'ml', 0.01)]])).toEqual([
      ['no-density', 'Lemon juice', { recipe: 'Plate', unit: 'each' }],
      ['no-piece-weight', 'Lemon juice', { recipe: 'Plate', unit: 'each' }],
    ]);
  });

  test('costPeriod(one fact missing in several recipes) asks for it once, at the first recipe by name', () => {
    expect(
      asked((book) => {
        const milk = book.ingredient('Milk', 'g', 0.01);
        const b = book.component('B', { yields: [1, 'l'] }, [1, 'l', milk]);
        const a = book.component('A', { yields: [1, 'l'] }, [5, 'cl', milk]);
        return [
          [10, 'ml', b],
          [10, 'ml', a],
        ];
      }),
    ).toEqual([['no-density', 'Milk', { recipe: 'A', unit: 'cl' }]]);
  });

  test('costPeriod(a unit that nobody knows) says where: a line, or an output', () => {
    expect(asked((book) => [[1, 'pinch', sugar(book)]])).toEqual([
      ['unknown-unit', 'Sugar', { unit: 'pinch', where: 'Plate' }],
    ]);
    expect(asked((book) => [[1, 'g', book.component('Syrup', { yields: [1, 'pot'] }, [1, 'g', sugar(book)])]])).toEqual(
      [['unknown-unit', 'Syrup', { unit: 'pot', where: 'Syrup' }]],
    );
  });

  test('costPeriod(a component without yield that cannot be weighed) names each thing that has no weight, once', () => {
    expect(
      asked((book) => {
        const milk = book.ingredient('Milk', 'ml', 0.01);
        const leaf = book.ingredient('Leaf', 'each', 0.1);
        return [
          [
            1,
            'g',
            book.component('Cream', {}, [1, 'l', milk], [2, 'each', leaf], [1, 'cl', milk], [5, 'g', sugar(book)]),
          ],
        ];
      }),
    ).toEqual([['no-yield', 'Cream', { missing: ['Milk', 'Leaf'] }]]);
  });

  test('costPeriod(a component asked for in a dimension it was not measured in) says in which it was', () => {
    expect(
      asked((book) => {
        const foam = book.component('Foam', { yields: [2, 'l'], also: [9, 'each'] }, [1, 'kg', sugar(book)]);
        return [[50, 'g', foam]];
      }),
    ).toEqual([['no-output-unit', 'Foam', { recipe: 'Plate', unit: 'g', outputs: ['ml', 'each'] }]]);
  });

  test('costPeriod(a loss in grams of a batch without grams) asks for the batch in grams', () => {
    expect(
      asked((book) => [
        [50, 'ml', book.component('Foam', { yields: [2, 'l'], batchLossG: 0.5 }, [1, 'kg', sugar(book)])],
      ]),
    ).toEqual([['no-output-unit', 'Foam', { recipe: 'Foam', unit: 'g', outputs: ['ml'] }]]);
  });

  test('costPeriod(a loss as large as the batch) leaves nothing', () => {
    const lossy =
      (batchLossG: number) =>
      (book: Book): readonly Line[] => [
        [50, 'g', book.component('Syrup', { yields: [1, 'kg'], batchLossG }, [1, 'kg', sugar(book)])],
      ];
    expect(asked(lossy(1000))).toEqual([['nothing-left', 'Syrup', { output: 1000, loss: 1000 }]]);
    expect(asked(lossy(1001))).toEqual([['nothing-left', 'Syrup', { output: 1000, loss: 1001 }]]);
  });

  test('costPeriod(recipes without lines, with refused lines, or not in force) says which', () => {
    expect(asked((book) => [[50, 'g', book.component('Syrup', { yields: [1, 'kg'] })]])).toEqual([
      ['no-lines', 'Syrup', {}],
    ]);
    expect(asked((book) => [[50, 'g', book.component('Syrup', { refusedLines: 2 }, [1, 'kg', sugar(book)])]])).toEqual([
      ['refused-lines', 'Syrup', { lines: 2 }],
    ]);
    expect(asked((book) => [[50, 'g', book.item('component', 'Syrup')]])).toEqual([
      ['no-version', 'Syrup', { recipe: 'Plate' }],
    ]);
    expect(asked(() => [])).toEqual([['no-lines', 'Plate', {}]]);
    // one refused line is all there was
    expect(asked((book) => [[50, 'g', book.component('Syrup', { yields: [1, 'kg'], refusedLines: 1 })]])).toEqual([
      ['refused-lines', 'Syrup', { lines: 1 }],
    ]);
    expect(asked((book) => [[50, 'g', book.component('Syrup', { refusedLines: 1 }, [1, 'kg', sugar(book)])]])).toEqual([
      ['refused-lines', 'Syrup', { lines: 1 }],
    ]);
  });

  test('costPeriod(a component without yield) of which a single thing has no weight names that', () => {
    const lines = (book: Book): Line[] => [
      [1, 'l', book.ingredient('Milk', 'ml', 0.01)],
      [5, 'g', sugar(book)],
    ];
    expect(asked((book) => [[1, 'g', book.component('Cream', {}, ...lines(book))]])).toEqual([
      ['no-yield', 'Cream', { missing: ['Milk'] }],
    ]);
  });

  test('costPeriod(a version that begins later) is an issue from the first day on which it is needed', () => {
    const book = new Book();
    const syrup = book.component('Syrup', { yields: [1, 'kg'], from: '2026-10-10' }, [1, 'kg', sugar(book)]);
    const dish = book.dish('Plate', {}, [100, 'g', syrup]);
    book.menu(dish, 9, { from: '2026-10-05' });
    const facts = book.facts();
    expect([costOn(facts, dish, '2026-10-09'), costOn(facts, dish, '2026-10-10')]).toEqual([null, 1]);
    expect(issuesIn(facts)).toEqual([
      { code: 'no-version', about: 'Syrup', facts: { recipe: 'Plate' }, day: day('2026-10-01') },
    ]);
  });

  test('costPeriod(a price missing only before the dish is on the menu) is no issue', () => {
    const book = new Book();
    const butter = book.item('ingredient', 'Butter');
    book.ingredientVersion(butter, 'g');
    book.price(book.offer(butter, 1, 1, 'g'), 0.02, { from: '2026-10-10' });
    const dish = book.dish('Tart', {}, [100, 'g', butter]);
    book.menu(dish, 9, { from: '2026-10-10' });
    expect(issuesIn(book.facts())).toEqual([]);
    book.sell(dish, '2026-10-09', 1, 9);
    expect(issuesIn(book.facts()).map(({ code }) => code)).toEqual(['no-price']);
  });

  test('costPeriod(a price missing only while no recipe in force asks for it) is no issue', () => {
    const book = new Book();
    const [almond, hazelnut] = ['Almond', 'Hazelnut'].map((name) => book.item('ingredient', name)) as [ItemId, ItemId];
    for (const nut of [almond, hazelnut]) book.ingredientVersion(nut, 'g');
    book.price(book.offer(almond, 1, 1, 'g'), 1, { kind: 'agreed', to: '2026-10-15' });
    book.price(book.offer(hazelnut, 1, 1, 'g'), 1, { from: '2026-10-16' });
    const tart = book.dish('Tart', {}, [1, 'g', almond]);
    book.recipe(tart, { from: '2026-10-16' }, [1, 'g', hazelnut]);
    book.menu(tart, 9);
    expect(issuesIn(book.facts())).toEqual([]);
    expect([costOn(book.facts(), tart, '2026-10-15'), costOn(book.facts(), tart, '2026-10-16')]).toEqual([1, 1]);
  });

  test('costPeriod(something sold only, and late) asks from the first segment in which it is sold', () => {
    const book = new Book();
    const almond = book.item('ingredient', 'Almond');
    book.ingredientVersion(almond, 'g');
    const offer = book.offer(almond, 1, 1, 'g');
    for (const from of ['2026-09-01', '2026-10-05', '2026-10-10']) book.price(offer, Number(from.slice(-2)), { from });
    const tart = book.dish('Tart', {}, [1, 'g', almond], [1, 'ml', almond]);
    const bread = book.dish('Bread', { estimatedCost: 1 });
    book.sell(bread, '2026-10-02', 1, 5);
    book.sell(tart, '2026-10-12', 1, 9);
    book.sell(tart, '2026-10-06', 1, 9);
    expect(issuesIn(book.facts()).map(({ code, day: from }) => [code, from])).toEqual([
      ['no-density', day('2026-10-05')],
    ]);
  });

  test('costPeriod(something sold without recipe or estimate) asks for either, on the days on which it is offered', () => {
    const book = new Book();
    const dish = book.item('dish', 'Pavlova');
    book.menu(dish, 9, { from: '2026-10-05' });
    book.menu(dish, null, { from: '2026-10-20' });
    const later = book.dish('Tart', { from: '2026-10-15', estimatedCost: 2 });
    book.menu(later, 9, { from: '2026-10-15' });
    expect(issuesIn(book.facts())).toEqual([
      { code: 'no-recipe', about: 'Pavlova', facts: {}, day: day('2026-10-01') },
    ]);
    expect(costOn(book.facts(), dish)).toBeNull();
  });

  test('costPeriod(what is neither on the menu nor sold) asks for nothing', () => {
    const book = new Book();
    book.dish('Old tart', {}, [1, 'pinch', book.ingredient('Spice', 'g', null)]);
    const off = book.dish('Off', {}, [1, 'pinch', book.ingredient('Salt', 'g', null)]);
    book.menu(off, null);
    const before = book.dish('Before', {}, [1, 'pinch', book.ingredient('Zest', 'g', null)]);
    book.sell(before, '2026-09-30', 1, 9);
    book.sell(before, '2026-11-01', 1, 9);
    expect(issuesIn(book.facts())).toEqual([]);
    expect(issuesIn(book.facts(), '2026-11').map(({ about }) => about)).toEqual(['Zest', 'Zest']);
  });

  test('costPeriod(settings that nobody stated) names each with what stands in, without a day', () => {
    const book = new Book({ defaulted: ['currency', 'q_factor_pct', 'business_day_ends'], qFactor: 0.02 });
    expect(issuesIn(book.facts())).toEqual([
      { code: 'setting-defaulted', about: 'business_day_ends', facts: { setting: 'business_day_ends', value: null } },
      { code: 'setting-defaulted', about: 'currency', facts: { setting: 'currency', value: 'EUR' } },
      { code: 'setting-defaulted', about: 'q_factor_pct', facts: { setting: 'q_factor_pct', value: 2 } },
    ]);
  });

  test('costPeriod(issues of several things in several segments) each have their own first day', () => {
    const book = new Book();
    const sugar = book.ingredient('Sugar', 'g', 0.01);
    const offer = book.offer(book.ingredient('Almond', 'g', null), 1, 1, 'g');
    book.price(offer, 1, { from: '2026-10-05' });
    book.price(offer, 2, { from: '2026-10-08' });
    const almond = book.facts().items[1]?.id as ItemId;
    const early = book.dish('Early', { from: '2026-09-01' }, [1, 'g', almond], [1, 'ml', sugar]);
    const late = book.dish('Late', { from: '2026-10-12' }, [1, 'each', sugar], [1, 'g', almond]);
    const wine = book.ingredient('Wine', 'ml', 0.02);
    const gone = book.item('dish', 'Zabaione');
    book.menu(early, 9);
    book.menu(late, 9, { from: '2026-10-13' });
    book.menu(wine, 9, { from: '2026-10-08' });
    book.menu(gone, 9, { from: '2026-10-05' });
    expect(issuesIn(book.facts()).map(({ code, about, day: from }) => [code, about, from])).toEqual([
      ['no-price', 'Almond', day('2026-10-01')],
      ['no-density', 'Sugar', day('2026-10-01')],
      ['no-piece-weight', 'Sugar', day('2026-10-12')],
      ['no-recipe', 'Zabaione', day('2026-10-05')],
      ['no-portion', 'Wine', day('2026-10-08')],
    ]);
    book.menu(early, null, { from: '2026-10-01' });
    expect(issuesIn(book.facts()).map(({ code, about, day: from }) => [code, about, from])).toEqual([
      ['no-piece-weight', 'Sugar', day('2026-10-12')],
      ['no-recipe', 'Zabaione', day('2026-10-05')],
      ['no-portion', 'Wine', day('2026-10-08')],
    ]);
  });
});
