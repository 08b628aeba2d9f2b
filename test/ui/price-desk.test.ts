import { describe, expect, test } from 'vitest';
import { deskFigures } from '@/app/_ui/price-desk/desk-figures';
import { deskRuler } from '@/app/_ui/price-desk/desk-ruler';
import { typedNumber } from '@/app/_ui/price-desk/figure-field';
import type { Moves } from '@/app/_ui/price-desk/moves';
import { priceChoices } from '@/app/_ui/price-desk/price-choices';
import { dearestGoods, standsAt, stepTo, targetFacts } from '@/app/_ui/price-desk/target-facts';
import { plainText } from '@/lib/format/phrase';
import { costPeriod } from '@/lib/model/costed-period';
import type { EditTarget, PriceStep } from '@/lib/model/price-model/edits';
import { priceModelOf } from '@/lib/model/price-model/price-model-of';
import { Book } from '../books';
import { BOOK_DAYS } from '../generated-books';

const SCOPE = { period: 'October 2026', purse: { currency: 'EUR', locale: 'en-GB' } };
const NONE = { touches: [] };
const SUGAR: EditTarget = { of: 'ingredient', name: 'Sugar' };
const moved = (target: EditTarget, step: PriceStep | null): Moves => ({ list: [{ target, step }], at: 0 });

/** Sweet: 100 g of sugar at 4.00 a kilogram; Salty: 500 g of salt at 1.00. 20 and 10 portions a day for 15 days, at 10.00 net. */
function model() {
  const book = new Book();
  const sugar = book.ingredient('Sugar', 'g', 4 / 1000, { productGroup: 'Dry goods' });
  const salt = book.ingredient('Salt', 'g', 1 / 1000, { productGroup: 'Dry goods' });
  const sweet = book.dish('Sweet', { section: 'Plated' }, [100, 'g', sugar]);
  const salty = book.dish('Salty', { section: 'Plated' }, [500, 'g', salt]);
  for (const dish of [sweet, salty]) book.menu(dish, 10);
  for (let day = 1; day <= 15; day++) {
    const date = `2026-10-${String(day).padStart(2, '0')}`;
    book.sell(sweet, date, 20, 200);
    book.sell(salty, date, 10, 100);
  }
  return priceModelOf(costPeriod(book.facts(), BOOK_DAYS), null);
}

describe('deskFigures(model, moves, scope, shown)', () => {
  test('of sugar at 6.00: 300 portions leave 0.20 less each, 60.00 in all, and both dishes turn', () => {
    const figures = deskFigures(model(), moved(SUGAR, { how: 'flat', to: 6 }), SCOPE, 30, NONE);
    // 300 x 9.60 + 150 x 9.50 = 4,305.00 before; food cost 195 of 4,500 is 4.3 %, then 255 of 4,500, 5.7 %
    expect(plainText(figures.sentence)).toBe(
      'Sugar at €6.00 a kg, 50.0\u2009% more than now, would have taken €60 from October 2026' +
        ' and lifted food cost by recipe from 4.3 to 5.7\u2009%.' +
        ' Sweet would turn from star to plowhorse. Salty would turn from dog to puzzle.',
    );
    const [sweet, salty] = figures.table.rows;
    expect(sweet).toMatchObject({
      ...{ item: 'Sweet', before: '9.60', after: '9.40', foodCost: '6.0', classNow: 'plowhorse', classWas: 'star' },
      ...{
        change: { text: '\u22120.20', tone: 'dear' },
        inPeriod: { text: '\u221260.00', tone: 'dear' },
        tone: 'dear',
      },
      // to leave 0.20 more at no tax; to keep 4 % of the price: 0.60 / 0.04
      ...{ holdMargin: '10.20', holdPct: '15.00' },
      // 300 x 0.20 / 9.40 = 6.4
      breakEven: '+6',
    });
    expect(salty).toMatchObject({
      item: 'Salty',
      change: { text: '0.00', tone: 'plain' },
      classNow: 'puzzle',
      classWas: 'dog',
    });
    expect(figures.table.total).toMatchObject({
      before: { text: '4,305.00' },
      after: { text: '4,245.00' },
      inPeriod: { text: '\u221260.00', tone: 'dear' },
    });
    expect(figures.table).toMatchObject({ more: 0, untouched: null });
    expect(figures.chosen).toMatchObject({ price: '6.00', change: '50.0', unit: '€ a kg', value: 6, isMoved: true });
  });

  test('shows as many rows as are asked for, and nothing where nothing moves', () => {
    expect(deskFigures(model(), moved(SUGAR, { how: 'flat', to: 6 }), SCOPE, 1, NONE).table).toMatchObject({ more: 1 });
    const rest = deskFigures(model(), moved(SUGAR, null), SCOPE, 30, NONE);
    expect(rest.table).toMatchObject({ rows: [], untouched: 'Two dishes as now' });
    expect(rest.basis.join()).not.toContain('touched');
    expect(rest.table.total.inPeriod?.text).toBe('0.00');
    const kept = deskFigures(model(), moved(SUGAR, null), SCOPE, 30, deskRuler(model(), moved(SUGAR, null), SCOPE));
    expect(kept.table.rows.map(({ item, inPeriod }) => [item, inPeriod.text])).toEqual([
      ['Salty', '0.00'],
      ['Sweet', '0.00'],
    ]);
  });

  test('says what no change can be made of', () => {
    const pepper: EditTarget = { of: 'ingredient', name: 'Pepper' };
    expect(deskFigures(model(), moved(pepper, { how: 'share', by: 0.1 }), SCOPE, 30, NONE).troubles[0]).toContain(
      '“Pepper”',
    );
    expect(deskFigures(model(), moved(SUGAR, { how: 'amount', by: -5 }), SCOPE, 30, NONE).troubles).toEqual([
      'Sugar cannot cost less than nothing. Take back a part of the change.',
    ]);
  });

  test('works nothing out from a change that cannot be made, and all else from the others', () => {
    const impossible = deskFigures(model(), moved(SUGAR, { how: 'amount', by: -5 }), SCOPE, 30, NONE);
    expect(plainText(impossible.sentence)).toMatch(/^Move a price/);
    const both: Moves = {
      list: [
        { target: { of: 'ingredient', name: 'Pepper' }, step: { how: 'share', by: 0.1 } },
        { target: SUGAR, step: { how: 'flat', to: 6 } },
      ],
      at: 1,
    };
    const rest = deskFigures(model(), both, SCOPE, 30, NONE);
    expect(plainText(rest.sentence)).toMatch(/^Sugar at €6.00 a kg.*would have taken €60/);
    expect(rest.troubles).toHaveLength(1);
  });
});

describe('deskRuler(model, moves, scope)', () => {
  test('of sugar runs from half to more than its price now, with a flag where both dishes turn', () => {
    const { facts, note, touches } = deskRuler(model(), moved(SUGAR, null), SCOPE);
    expect(facts).toMatchObject({ label: 'Sugar, € a kg', now: 4, nowText: 'now 4.00', paid: [4, 4], dearAbove: true });
    expect(facts?.scale).toMatchObject({ low: 2, high: 7 });
    expect(facts?.flags.map(({ head, text }) => `${head} ${text}`)).toEqual([
      'Salty 5.00 puzzle from here',
      'Sweet 5.00 plowhorse from here',
    ]);
    // Salty has no sugar in it, and turns as the average moves
    expect([...touches].sort()).toEqual(['Salty', 'Sweet']);
    expect(note).toContain('€ a kg. Flags are turning prices');
  });

  test('has room for where the price stands, and none for a price that nobody stated', () => {
    expect(deskRuler(model(), moved(SUGAR, { how: 'flat', to: 20 }), SCOPE).facts?.scale.high).toBe(20);
    expect(deskRuler(model(), moved({ of: 'ingredient', name: 'Pepper' }, null), SCOPE).facts).toBeNull();
  });

  test('of a group is in per cent, and of a menu price more is for the house', () => {
    const group = deskRuler(model(), moved({ of: 'group', name: 'dry goods' }, { how: 'share', by: 0.1 }), SCOPE).facts;
    expect(group).toMatchObject({ label: 'All of Dry goods, %', now: 0, dearAbove: true });
    const dish = deskRuler(model(), moved({ of: 'item', name: 'Sweet' }, null), SCOPE).facts;
    expect(dish).toMatchObject({ label: 'Sweet, € on the menu', now: 10, dearAbove: false });
  });
});

test('standsAt(facts, step) and stepTo(facts, value) are each other’s way back', () => {
  const sugar = targetFacts(model(), SUGAR);
  expect(sugar).toMatchObject({ name: 'Sugar', now: 4, unit: 'g', paid: [4, 4] });
  expect(standsAt(sugar, { how: 'share', by: 0.25 })).toBe(5);
  expect(standsAt(sugar, { how: 'amount', by: -1 })).toBe(3);
  expect(standsAt(sugar, stepTo(sugar, 7))).toBe(7);
  const group = targetFacts(model(), { of: 'group', name: 'dry GOODS' });
  expect([group.name, group.now, standsAt(group, stepTo(group, 30))]).toEqual(['Dry goods', null, 30]);
});

test('dearestGoods(model) is what most was spent on: 30 kg of sugar at 4.00, not 75 kg of salt at 1.00', () => {
  expect(dearestGoods(model())).toEqual(SUGAR);
});

test('priceChoices(model) holds what is bought, groups, suppliers, dishes and sections, each under a key of its own', () => {
  const choices = priceChoices(model());
  expect(choices.map(({ key }) => key)).toEqual([
    ...['Salt', 'Sugar', 'group:Dry goods', 'supplier:Bay Dairy', 'everything'],
    ...['menu:Salty', 'menu:Sweet', 'section:Plated', 'menu'],
  ]);
});

test('typedNumber(text) reads what people type, and nothing else', () => {
  expect(['19.20', '19,2', '+10', '\u22125', ' 1 200.5 ', '1,200.50'].map(typedNumber)).toEqual([
    19.2, 19.2, 10, -5, 1200.5, 1200.5,
  ]);
  for (const wrong of ['', 'ten', '1.2.3', '5%', '--1']) expect(typedNumber(wrong), wrong).toBeNull();
});
