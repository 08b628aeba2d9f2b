import { describe, expect, test } from 'vitest';
import { EU_ALLERGENS } from '@/lib/model/allergens/allergen-lists';
import { costPeriod } from '@/lib/model/costed-period';
import { type AllergenRow, type Allergens, type AllergensOptions, allergens } from '@/lib/reports/allergens';
import { Book, day, days } from '../books';

const OCTOBER = days('2026-10');
const sheet = (book: Book, options: Partial<AllergensOptions> = {}): Allergens =>
  allergens(costPeriod(book.facts(), OCTOBER), { list: 'eu', ...options });
const rowOf = (book: Book, name: string, options: Partial<AllergensOptions> = {}): AllergenRow =>
  sheet(book, options).items.find(({ item }) => item === name) ?? expect.unreachable(`${name} is not on the sheet`);
/** Of a row, the answers that are not `none declared`, as state and where from. */
const answers = ({ allergens: each }: AllergenRow): Readonly<Record<string, string>> =>
  Object.fromEntries(
    each.flatMap(({ allergen, state, from }) =>
      state === 'none-declared' ? [] : [[allergen, `${state}: ${from.join(', ')}`] as const],
    ),
  );

/** Flour, butter and chocolate, all declared, in a tart with a filling. */
function bakery() {
  const book = new Book();
  const declared = (name: string, contains: readonly string[], mayContain: readonly string[] = []) =>
    book.ingredient(name, 'g', 0.01, { contains, mayContain });
  const flour = declared('Flour', ['Wheat']);
  const butter = declared('Butter', ['milk']);
  const chocolate = declared('Chocolate', ['soya', 'milk'], ['hazelnuts', 'milk']);
  const sugar = declared('Sugar', []);
  const dough = book.component('Dough', { yields: [1, 'kg'] }, [600, 'g', flour], [400, 'g', butter]);
  const filling = book.component('Filling', { yields: [1, 'kg'], cautions: ['alcohol'] }, [1, 'kg', chocolate]);
  const tart = book.dish('Tart', {}, [50, 'g', dough], [50, 'g', filling], [5, 'g', sugar]);
  book.menu(tart, 9);
  return { book, flour, butter, chocolate, sugar, dough, filling, tart };
}

describe('allergens', () => {
  test('allergens(period) rolls up contains and may contain from ingredients, kept apart, with where they come from', () => {
    const { book } = bakery();
    const row = rowOf(book, 'Tart');
    expect(answers(row)).toEqual({
      gluten: 'contains: Flour',
      milk: 'contains: Butter, Chocolate',
      soybeans: 'contains: Chocolate',
      nuts: 'may-contain: Chocolate',
    });
    expect(row.allergens.map(({ allergen }) => allergen)).toEqual(EU_ALLERGENS);
    expect(row.unknownFrom).toEqual([]);
    expect(row.cautions).toEqual([{ caution: 'alcohol', from: ['Filling'] }]);
    expect(answers(rowOf(book, 'Tart', { list: 'us' }))).toEqual({
      milk: 'contains: Butter, Chocolate',
      'tree nuts': 'may-contain: Chocolate',
      wheat: 'contains: Flour',
      soybeans: 'contains: Chocolate',
    });
  });

  test('allergens(something undeclared) leaves all that is not declared unknown, never free', () => {
    const { book, tart, filling, dough } = bakery();
    const mystery = book.ingredient('Syrup', 'g', 0.01);
    book.recipe(tart, { from: '2026-10-10' }, [50, 'g', dough], [50, 'g', filling], [5, 'g', mystery]);
    const row = rowOf(book, 'Tart');
    expect(row.allergens.filter(({ state }) => state === 'none-declared')).toEqual([]);
    expect(answers(row)).toMatchObject({
      gluten: 'contains: Flour',
      nuts: 'may-contain: Chocolate',
      lupin: 'unknown: Syrup',
    });
    expect(row.unknownFrom).toEqual(['Syrup']);
    expect(answers(rowOf(book, 'Tart', { day: day('2026-10-09') }))).not.toHaveProperty('lupin');
    // from that day on, before it takes effect
    expect(sheet(book).changes).toHaveLength(10);
    expect(sheet(book).changes[0]).toEqual({
      day: day('2026-10-10'),
      item: 'Tart',
      allergen: 'crustaceans',
      state: 'unknown',
      from: ['Syrup'],
    });
  });

  test('allergens(contains declared, may contain not) knows what it contains and nothing more', () => {
    const book = new Book();
    const nut = book.ingredient('Almonds', 'g', 0.01, { contains: ['almonds'] });
    book.menu(book.dish('Plate', {}, [5, 'g', nut]), 9);
    expect(answers(rowOf(book, 'Plate'))).toMatchObject({ nuts: 'contains: Almonds', milk: 'unknown: Almonds' });
  });

  test('allergens(gluten) does not say whether it is wheat', () => {
    const book = new Book();
    book.menu(
      book.dish('Plate', {}, [5, 'g', book.ingredient('Malt', 'g', 0.01, { contains: ['gluten'], mayContain: [] })]),
      9,
    );
    expect(answers(rowOf(book, 'Plate'))).toEqual({ gluten: 'contains: Malt' });
    expect(answers(rowOf(book, 'Plate', { list: 'us' }))).toEqual({ wheat: 'unknown: Malt' });
  });

  test('allergens(a word that nobody knows) is an issue, and leaves everything unknown', () => {
    const book = new Book();
    book.menu(
      book.dish('Plate', {}, [5, 'g', book.ingredient('Cream', 'g', 0.01, { contains: ['dairy'], mayContain: [] })]),
      9,
    );
    const row = rowOf(book, 'Plate');
    expect(row.otherWords).toEqual(['dairy']);
    expect(row.allergens.every(({ state }) => state === 'unknown')).toBe(true);
    expect(sheet(book).issues).toEqual([{ code: 'unknown-allergen', about: 'Plate', facts: { word: 'dairy' } }]);
  });

  test('allergens(no recipe, an estimate, refused lines, an ingredient of a later day) is unknown', () => {
    const { book, sugar } = bakery();
    const later = book.item('ingredient', 'Later');
    book.ingredientVersion(later, 'g', { from: '2026-11-20', contains: [], mayContain: [] });
    book.menu(book.dish('On estimate', { estimatedCost: 3 }), 9);
    book.menu(book.item('dish', 'Nothing'), 9);
    book.menu(book.dish('Refused', { refusedLines: 1 }, [1, 'g', sugar]), 9);
    book.menu(book.dish('Of later', {}, [1, 'g', later]), 9);
    const names = ['Nothing', 'Of later', 'On estimate', 'Refused'];
    expect(names.map((name) => rowOf(book, name).unknownFrom)).toEqual([
      ['Nothing'],
      ['Later'],
      ['On estimate'],
      ['Refused'],
    ]);
  });

  test('allergens(parts, packaging, extras, set menus, what a channel adds) are as declared of what is eaten', () => {
    const { book, tart, sugar } = bakery();
    const egg = book.ingredient('Eggs', 'each', 0.3, { contains: ['eggs'], mayContain: [] });
    book.part(egg, 'white', 32, 'g', 1);
    const box = book.ingredient('Box', 'each', 0.1, { department: 'packaging' });
    const nib = book.ingredient('Sesame brittle', 'g', 0.1, { contains: ['sesame'], mayContain: [] });
    const meringue = book.dish(
      'Meringue',
      { cautions: ['raw egg', 'alcohol'] },
      [30, 'g', egg, { part: 'white' }],
      [1, 'each', box, { channel: 'takeaway' }],
      [1, 'g', nib, { channel: 'takeaway' }],
    );
    book.menu(meringue, 9);
    const set = book.item('set_menu', 'Set');
    const choice = (share: number) => ({ choice: 'One', choiceShare: share });
    book.recipe(set, {}, [1, 'each', meringue, choice(1)], [1, 'each', tart, choice(0)]);
    book.menu(set, 20);
    book.recipe(book.item('extra', 'Pre-dessert'), {}, [1, 'g', sugar]);
    expect(answers(rowOf(book, 'Meringue'))).toEqual({ eggs: 'contains: Eggs', sesame: 'contains: Sesame brittle' });
    expect(answers(rowOf(book, 'Set'))).toMatchObject({ eggs: 'contains: Eggs', gluten: 'contains: Flour' });
    expect(rowOf(book, 'Set').cautions).toEqual([
      { caution: 'alcohol', from: ['Filling', 'Meringue'] },
      { caution: 'raw egg', from: ['Meringue'] },
    ]);
    expect(answers(rowOf(book, 'Pre-dessert'))).toEqual({});
  });

  // the trimmings are of the brownie; the brownie itself is not of its trimmings
  test('allergens(a by-product) has what it was made beside, where it is used and not where it is made', () => {
    const { book, flour } = bakery();
    const trim = book.ingredient('Trimmings', 'g', null);
    const salt = book.ingredient('Salt', 'g', 0.01, { contains: ['celery'], mayContain: [] });
    const made = [100, 'g', trim, { byProductCredit: 0 }] as const;
    const brownie = book.component('Brownie', { yields: [1, 'kg'], cautions: ['alcohol'] }, [1, 'kg', flour], made);
    book.menu(book.dish('Plate', {}, [100, 'g', brownie]), 9);
    book.menu(book.dish('Crumb', {}, [100, 'g', trim], [1, 'g', salt]), 9);
    expect(answers(rowOf(book, 'Plate'))).toEqual({ gluten: 'contains: Flour' });
    expect(answers(rowOf(book, 'Crumb'))).toEqual({ gluten: 'contains: Flour', celery: 'contains: Salt' });
    expect(rowOf(book, 'Crumb').cautions).toEqual([{ caution: 'alcohol', from: ['Brownie'] }]);
  });
});
