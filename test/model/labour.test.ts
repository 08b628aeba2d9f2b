import { describe, expect, test } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import type { ItemId } from '@/lib/model/facts';
import { dishCosts } from '@/lib/reports/dish-costs';
import { type ItemLabour, labour } from '@/lib/reports/labour';
import { Book, day, days } from '../books';

const OCTOBER = days('2026-10');

/** A dough of 20 minutes a kilogram (chef, 24.00 an hour) inside a tart of 60 minutes for 12 pieces, a quarter of them broken. */
function bakery(): { book: Book; tart: ItemId; dough: ItemId; flour: ItemId } {
  const book = new Book();
  book.labour('Pastry chef', 24);
  book.labour('finisher', 18);
  const flour = book.ingredient('Flour', 'g', 0.001);
  const dough = book.component('Dough', { yields: [1000, 'g'], handsOnMinutes: 20, grade: 'pastry chef' }, [
    1000,
    'g',
    flour,
  ]);
  const tart = book.component(
    'Tart',
    { yields: [16, 'each'], breakage: 0.25, handsOnMinutes: 60, grade: 'PASTRY CHEF ' },
    [600, 'g', dough],
  );
  return { book, tart, dough, flour };
}
const rowOf = (book: Book, name: string): ItemLabour | undefined =>
  labour(costPeriod(book.facts(), OCTOBER)).items.find(({ item }) => item === name);

describe('labour', () => {
  // one of 12 tarts: 60 / 12 = 5 min and 50 g of dough = 1 min; 6 min of a chef at 0.40 = 2.40; 1 min by a finisher = 0.30
  test('labour(period) rolls the minutes of batches down to portions, by grade, breakage included', () => {
    const { book, tart } = bakery();
    const stated = { handsOnMinutes: 1, grade: 'Finisher', platingMinutes: 2, platingGrade: 'finisher' };
    const dish = book.dish('Plate', stated, [1, 'each', tart]);
    book.menu(dish, 9);
    book.sell(dish, '2026-10-02', 10, 90, { comps: 2 });
    const row = rowOf(book, 'Plate');
    expect(row?.recipeLabour).toBeCloseTo(2.4 + 0.3, 12);
    expect(row?.plateCost).toBeCloseTo(0.05, 12);
    expect(row?.foodPlusLabour).toBeCloseTo(2.75, 12);
    // plating apart: (9.00 - 0.05) / 2 min
    expect(row?.platingMinutes).toBe(2);
    expect(row?.marginPerPlatingMinute).toBeCloseTo(8.95 / 2, 12);
    expect(row?.withoutMinutes).toEqual([]);
    const { grades } = labour(costPeriod(book.facts(), OCTOBER));
    expect(
      grades.map(({ grade, handsOnMinutes, platingMinutes, cost }) => [
        grade,
        handsOnMinutes.toFixed(9),
        platingMinutes,
        cost?.toFixed(9),
      ]),
    ).toEqual([
      ['Finisher', '12.000000000', 24, (36 * 0.3).toFixed(9)],
      ['pastry chef', '72.000000000', 0, (72 * 0.4).toFixed(9)],
    ]);
    const [cost] = dishCosts(costPeriod(book.facts(), OCTOBER)).items;
    expect(cost?.recipeLabour).toBeCloseTo(2.7, 12);
    expect(cost?.platingMinutes).toBe(2);
    expect(cost?.marginPerPlatingMinute).toBeCloseTo(8.95 / 2, 12);
  });

  // 6 min at 0.40 up to the 15th, at 0.50 from the 16th; 1 of 4 portions before
  test('labour(a rate that changes) weighs the days by their portions', () => {
    const { book, tart } = bakery();
    book.labour('pastry chef', 30, '2026-10-16');
    const dish = book.dish('Plate', { platingMinutes: 0 }, [1, 'each', tart]);
    book.menu(dish, 9);
    book.sell(dish, '2026-10-15', 1, 9);
    book.sell(dish, '2026-10-16', 3, 27);
    expect(rowOf(book, 'Plate')?.recipeLabour).toBeCloseTo((2.4 + 3 * 3) / 4, 12);
    expect(rowOf(book, 'Plate')).toMatchObject({ platingMinutes: 0, marginPerPlatingMinute: null });
  });

  test('labour(a set menu) takes the work of its courses by their shares, their plating too', () => {
    const { book, tart } = bakery();
    const plate = book.dish('Plate', { platingMinutes: 2 }, [1, 'each', tart]);
    const cup = book.dish('Cup', { platingMinutes: 4 }, [2, 'each', tart]);
    const choice = (share: number) => ({ choice: 'One', choiceShare: share });
    const set = book.item('set_menu', 'Set');
    book.recipe(set, {}, [1, 'each', plate, choice(0.5)], [1, 'each', cup, choice(0.5)]);
    book.menu(set, 20);
    const row = rowOf(book, 'Set');
    expect(row?.recipeLabour).toBeCloseTo(0.5 * 2.4 + 0.5 * 4.8, 12);
    expect(row?.platingMinutes).toBeCloseTo(3, 12);
  });

  test('labour(a component without minutes) is not known, and names it; a part and a by-product take none', () => {
    const { book, tart, flour } = bakery();
    const egg = book.ingredient('Eggs', 'each', 0.3);
    book.part(egg, 'yolk', 18, 'g', 1);
    const trim = book.component('Trimmings', {});
    const cream = book.component('Cream', { yields: [100, 'g'] }, [100, 'g', flour]);
    const known = { handsOnMinutes: 0, platingMinutes: 1 };
    const made = [1, 'g', trim, { byProductCredit: 0 }] as const;
    const crust = book.component('Crust', { yields: [1, 'each'], handsOnMinutes: 0 }, [1, 'g', flour], made);
    const plain = book.dish('Plain', known, [1, 'each', tart], [1, 'g', egg, { part: 'yolk' }], [1, 'each', crust]);
    const used = book.dish('Used', known, [1, 'g', trim]);
    const dish = book.dish('Plate', known, [1, 'each', tart], [10, 'g', cream]);
    const silent = book.dish('Silent', {}, [1, 'each', tart]);
    for (const item of [plain, used, dish, silent]) book.menu(item, 9);
    const rows = labour(costPeriod(book.facts(), OCTOBER)).items;
    expect(
      rows.map(({ item, recipeLabour, withoutMinutes }) => [item, recipeLabour?.toFixed(9), withoutMinutes]),
    ).toEqual([
      ['Plain', '2.400000000', []],
      ['Plate', undefined, ['Cream']],
      ['Silent', undefined, ['Silent']],
      ['Used', '0.000000000', []],
    ]);
    expect(rows[2]).toMatchObject({ platingMinutes: null, marginPerPlatingMinute: null, foodPlusLabour: null });
  });

  test('labour(minutes without a grade, or of a grade without a rate) is an issue and no figure', () => {
    const { book, tart, flour } = bakery();
    const glaze = book.component('Glaze', { yields: [1, 'kg'], handsOnMinutes: 5 }, [1, 'kg', flour]);
    const leaf = { yields: [1, 'kg'], handsOnMinutes: 5, grade: 'Commis' } as const;
    const crisp = book.component('Crisp', leaf, [1, 'kg', flour]);
    const a = book.dish('A', { platingMinutes: 1 }, [1, 'each', tart], [1, 'g', glaze]);
    const b = book.dish('B', { platingMinutes: 1 }, [1, 'each', tart], [1, 'g', crisp]);
    book.menu(a, 9);
    book.menu(b, 9);
    book.labour('commis', 16, '2026-10-20');
    book.sell(b, '2026-10-20', 1, 9);
    const { items, issues } = labour(costPeriod(book.facts(), OCTOBER));
    expect(items[0]?.recipeLabour).toBeNull();
    expect(items[1]?.recipeLabour).toBeCloseTo(2.4 + (0.005 * 16) / 60, 12);
    expect(issues).toEqual([
      { code: 'no-grade', about: 'Glaze', facts: { minutes: 5 }, day: day('2026-10-01') },
      { code: 'no-labour-rate', about: 'Commis', facts: { recipe: 'Crisp' }, day: day('2026-10-01') },
    ]);
    expect(dishCosts(costPeriod(book.facts(), OCTOBER)).issues).toEqual(issues);
  });

  test('labour(a plate on estimate, or that asks for what cannot be read) has no labour that is known', () => {
    const { book, tart, flour } = bakery();
    const honey = book.ingredient('Honey', 'g', null);
    const estimated = { estimatedCost: 3, platingMinutes: 1 };
    const dish = book.dish('On estimate', estimated, [1, 'each', tart], [1, 'g', honey]);
    const bare = book.dish('Bare', { estimatedCost: 3, handsOnMinutes: 10, grade: 'finisher' });
    const odd = book.dish('Odd', { platingMinutes: 1 }, [1, 'ml', tart]);
    const unpriced = book.dish('Unpriced', { platingMinutes: 1 }, [1, 'each', tart], [1, 'g', honey], [1, 'ml', flour]);
    const plated = book.dish('Plated', { estimatedCost: 3, platingMinutes: 2 });
    for (const item of [dish, bare, odd, unpriced, plated]) book.menu(item, 9);
    const rows = labour(costPeriod(book.facts(), OCTOBER)).items;
    expect(
      rows.map(({ item, recipeLabour, platingMinutes }) => [item, recipeLabour?.toFixed(9), platingMinutes]),
    ).toEqual([
      ['Bare', '3.000000000', null],
      ['Odd', undefined, 1],
      ['On estimate', undefined, 1],
      ['Plated', undefined, 2],
      ['Unpriced', '2.400000000', 1],
    ]);
  });

  // a finisher's minute is 0.30: Apple all month, Pear up to the 15th; from the 16th nobody says how long a pear takes
  test('labour(a recipe that says nothing of its work from a day on) is not known from that day, and only there', () => {
    const { book, tart } = bakery();
    const stated = { handsOnMinutes: 1, grade: 'finisher' };
    const apple = book.dish('Apple', stated, [1, 'each', tart]);
    const pear = book.dish('Pear', stated, [1, 'each', tart]);
    book.recipe(pear, { from: '2026-10-16' }, [1, 'each', tart]);
    book.sell(apple, '2026-10-20', 1, 9);
    book.sell(pear, '2026-10-02', 1, 9);
    const known = [rowOf(book, 'Apple'), rowOf(book, 'Pear')].map((row) => row?.recipeLabour?.toFixed(9));
    expect(known).toEqual(['2.700000000', '2.700000000']);
    book.sell(pear, '2026-10-20', 1, 9);
    expect(rowOf(book, 'Pear')?.recipeLabour).toBeNull();
    expect(rowOf(book, 'Apple')?.recipeLabour).toBeCloseTo(2.7, 12);
  });

  test('labour(a component that says nothing of its work) leaves the plating of a dish known', () => {
    const { book, flour } = bakery();
    const cream = book.component('Cream', { yields: [100, 'g'] }, [100, 'g', flour]);
    book.menu(book.dish('Plate', { platingMinutes: 2 }, [10, 'g', cream]), 9);
    expect(rowOf(book, 'Plate')).toMatchObject({ recipeLabour: null, platingMinutes: 2 });
  });

  test('labour(a set menu with a course that cannot be read) knows neither its work nor its plating', () => {
    const { book, tart } = bakery();
    const set = book.item('set_menu', 'Set');
    const plate = book.dish('Plate', { platingMinutes: 2 }, [1, 'each', tart]);
    book.recipe(set, {}, [1, 'each', plate], [1, 'ml', plate]);
    book.menu(set, 20);
    expect(rowOf(book, 'Set')).toMatchObject({ recipeLabour: null, platingMinutes: null });
  });

  // 3 portions of 1 min by a finisher, whatever they are packed in; the tarts in them take 6 min of a chef
  test('labour(a dish that is packed in one channel) takes its work once', () => {
    const { book, tart } = bakery();
    const box = book.ingredient('Box', 'each', 0.2, { department: 'packaging' });
    const line = [1, 'each', box, { channel: 'takeaway' }] as const;
    const dish = book.dish('Plate', { handsOnMinutes: 1, grade: 'finisher' }, [1, 'each', tart], line);
    book.sell(dish, '2026-10-02', 1, 9);
    book.sell(dish, '2026-10-02', 2, 18, { channel: 'takeaway' });
    expect(rowOf(book, 'Plate')?.recipeLabour).toBeCloseTo(2.7, 12);
    const { grades } = labour(costPeriod(book.facts(), OCTOBER));
    expect(grades.map(({ grade, handsOnMinutes }) => [grade, handsOnMinutes.toFixed(9)])).toEqual([
      ['finisher', '3.000000000'],
      ['pastry chef', '18.000000000'],
    ]);
  });
});
