import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import type { ItemId, VenueSettings } from '@/lib/model/facts';
import { type MenuMix, menuMix } from '@/lib/reports/menu-mix';
import { Book, days, type Line } from '../../books';
import { RUNS } from '../../generated-books';

const OCTOBER = days('2026-10');
const mixOf = (book: Book, setMenus: 'section' | 'spread', section: string | null = null): MenuMix =>
  menuMix(costPeriod(book.facts(), OCTOBER), { section, setMenus, resamples: 0 });
const itemOf = (mix: MenuMix, name: string) => mix.items.find(({ item }) => item === name);
const codes = (mix: MenuMix) =>
  mix.issues.flatMap(({ code, about }) => (/set-menu|course/.test(code) ? [`${code} ${about}`] : []));

interface Stated {
  readonly settings?: Partial<VenueSettings>;
  readonly prices?: readonly (number | null)[];
  readonly taxes?: readonly number[];
  readonly setTax?: number;
  readonly taxIncluded?: boolean;
  readonly lines?: (courses: readonly ItemId[], sugar: ItemId) => readonly Line[];
}

/** Tart, Cake and Ice cost 2.00, 3.00 and 4.00; ten set menus of a tart and a choice of the others brought 240.00 in all. */
function houseOf({ settings = {}, prices = [8, 10, 12], taxes = [], setTax = 0, taxIncluded = false, lines }: Stated) {
  const book = new Book(settings);
  const sugar = book.ingredient('Sugar', 'g', 0.01);
  const courses = ['Tart', 'Cake', 'Ice'].map((name, at) => {
    const dish = book.dish(name, { section: 'Plates' }, [200 + 100 * at, 'g', sugar]);
    const price = prices[at] ?? null;
    if (price !== null) book.menu(dish, price, { tax: taxes[at] ?? 0, taxIncluded });
    return dish;
  });
  const [tart, cake, ice] = courses as [ItemId, ItemId, ItemId];
  const usual: readonly Line[] = [
    [1, 'each', tart],
    [1, 'each', cake, { choice: 'Second', choiceShare: 0.7 }],
    [1, 'each', ice, { choice: 'Second', choiceShare: 0.3 }],
  ];
  const menu = book.recipe(
    book.item('set_menu', 'Low tide'),
    { section: 'Set menus' },
    ...(lines?.(courses, sugar) ?? usual),
  );
  book.menu(menu, 24, { tax: setTax, taxIncluded });
  book.sell(tart, '2026-10-05', 5, 40);
  book.sell(menu, '2026-10-05', 10, 240, { comps: 2 });
  return book;
}

describe('menuMix: set menus spread over their courses', () => {
  test('menuMix(set menus in a section) leaves their courses alone', () => {
    const mix = mixOf(houseOf({}), 'section');
    expect([mix.setMenus, itemOf(mix, 'Tart')?.sold, itemOf(mix, 'Cake')?.sold]).toEqual(['section', 5, 0]);
  });

  // Ten menus: 10 tarts at 8.00, 7 cakes at 10.00, 3 ices at 12.00 alone are 80 + 70 + 36 = 186. Of 240: 103.23, 90.32 and 46.45.
  test('menuMix(spread) shares portions by choice and revenue by prices alone', () => {
    const mix = mixOf(houseOf({}), 'spread');
    expect(mix.items.map(({ item, sold, comps }) => [item, sold, comps]).sort()).toEqual([
      ['Cake', 7, 1.4],
      ['Ice', 3, 0.6],
      ['Tart', 15, 2],
    ]);
    expect(itemOf(mix, 'Tart')?.revenue).toBeCloseTo(40 + (240 * 80) / 186, 3);
    expect(itemOf(mix, 'Cake')?.revenue).toBeCloseTo((240 * 70) / 186, 3);
    expect(itemOf(mix, 'Ice')?.revenue).toBeCloseTo((240 * 36) / 186, 3);
    expect(mix.totals.revenue).toBeCloseTo(280, 9);
    expect(mix.totals.plateCost).toBeCloseTo(5 * 2 + 10 * (2 + 0.7 * 3 + 0.3 * 4), 9);
    expect(codes(mix)).toEqual([]);
    expect(mixOf(houseOf({}), 'spread', 'Set menus').totals.sold).toBe(0);
  });

  // 2.00 * 1.1 of a tart alone and 5.30 * 1.1 of ten menus: q is on each once
  test('menuMix(spread, q) has q on every course once', () => {
    const mix = mixOf(houseOf({ settings: { qFactor: 0.1 } }), 'spread');
    expect(mix.totals.plateCost).toBeCloseTo((5 * 2 + 10 * 5.3) * 1.1, 9);
  });

  // The ice has no price: 4.00 at a target of 25 % is 16.00 alone, 3 of them 48 of 80 + 70 + 48 = 198.
  test('menuMix(spread, a course without a price) takes it from its cost, and says so', () => {
    const mix = mixOf(houseOf({ settings: { targetFoodCost: 0.25 }, prices: [8, 10, null] }), 'spread');
    expect(itemOf(mix, 'Ice')?.revenue).toBeCloseTo((240 * 48) / 198, 3);
    expect(codes(mix)).toEqual(['course-estimated Ice']);
  });

  test('menuMix(spread, neither price nor target) leaves the set menu where it is, and says so', () => {
    const mix = mixOf(houseOf({ prices: [8, 10, null] }), 'spread');
    expect(itemOf(mix, 'Tart')?.sold).toBe(5);
    expect(codes(mix)).toEqual(['set-menu-not-spread Low tide']);
    expect(mixOf(houseOf({ prices: [8, 10, null] }), 'spread', 'Set menus').totals).toMatchObject({
      sold: 10,
      revenue: 240,
    });
  });

  test.each<[string, NonNullable<Stated['lines']>]>([
    [
      'something beside its courses',
      ([tart], sugar) => [
        [1, 'each', tart as ItemId],
        [5, 'g', sugar],
      ],
    ],
    ['shares that do not sum to 1', ([tart]) => [[1, 'each', tart as ItemId, { choice: 'One', choiceShare: 0.4 }]]],
  ])('menuMix(spread, %s) leaves the set menu where it is', (_, lines) => {
    expect(codes(mixOf(houseOf({ lines }), 'spread'))).toEqual(['set-menu-not-spread Low tide']);
  });

  /*
   * Prices with tax inside: the tart 11.00 at 10 % (10.00 net), the cake 12.30 at 23 % (10.00 net), one of each in a menu with 10 %. Ten menus
   * brought 240.00 net, 264.00 with tax: 264 * 11 / 23.3 = 124.64 and 264 * 12.3 / 23.3 = 139.36; net 113.30 each, as their net prices are.
   */
  test('menuMix(spread, goods of different tax) splits before the tax is taken out', () => {
    const lines: Stated['lines'] = ([tart, cake]) => [
      [1, 'each', tart as ItemId],
      [1, 'each', cake as ItemId],
    ];
    const house = houseOf({ prices: [11, 12.3, null], taxes: [0.1, 0.23], setTax: 0.1, taxIncluded: true, lines });
    const mix = mixOf(house, 'spread');
    expect((itemOf(mix, 'Tart')?.revenue ?? 0) - 40).toBeCloseTo((264 * 10) / 23.3, 3);
    expect(itemOf(mix, 'Cake')?.revenue).toBeCloseTo((264 * 10) / 23.3, 3);
  });

  test('menuMix(spread, any set menus of one tax) keeps portions, revenue and cost of the set menus', () => {
    const price = fc.integer({ min: 100, max: 3000 }).map((cents) => cents / 100);
    fc.assert(
      fc.property(
        fc.record({
          prices: fc.tuple(price, price, price),
          share: fc.integer({ min: 1, max: 99 }).map((percent) => percent / 100),
          sales: fc.array(fc.tuple(fc.integer({ min: 1, max: 28 }), fc.integer({ min: 1, max: 60 }), price), {
            minLength: 1,
            maxLength: 8,
          }),
          tax: fc.constantFrom(0, 0.1, 0.23),
          taxIncluded: fc.boolean(),
          q: fc.constantFrom(0, 0.02, 0.1),
        }),
        ({ prices, share, sales, tax, taxIncluded, q }) => {
          const house = houseOf({
            ...{ settings: { qFactor: q }, prices, taxes: [tax, tax, tax], setTax: tax, taxIncluded },
            lines: ([tart, cake, ice]) => [
              [1, 'each', tart as ItemId],
              [1, 'each', cake as ItemId, { choice: 'Second', choiceShare: share }],
              [2, 'each', ice as ItemId, { choice: 'Second', choiceShare: 1 - share }],
            ],
          });
          const menu = house.facts().items.find(({ kind }) => kind === 'set_menu')?.id as ItemId;
          for (const [on, sold, net] of sales) {
            house.sell(menu, `2026-10-${String(on).padStart(2, '0')}`, sold, sold * net);
          }
          const whole = mixOf(house, 'section').totals;
          const set = mixOf(house, 'section', 'Set menus').totals;
          const spread = mixOf(house, 'spread');
          const each = 1 + share + 2 * (1 - share);
          expect(codes(spread)).toEqual([]);
          expect(spread.totals.sold).toBeCloseTo(whole.sold + set.sold * each, 6);
          expect(spread.totals.revenue).toBeCloseTo((whole.revenue ?? 0) + (set.revenue ?? 0), 6);
          expect(spread.totals.plateCost).toBeCloseTo((whole.plateCost ?? 0) + (set.plateCost ?? 0), 6);
        },
      ),
      RUNS,
    );
  });
});
