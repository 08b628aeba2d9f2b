import { describe, expect, test } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import { editedPrices } from '@/lib/model/price-model/edited-prices';
import {
  type EditTarget,
  editTroubles,
  type PriceEdit,
  type PriceStep,
  spokenAmount,
  stepped,
  touchesGoods,
  touchesItem,
} from '@/lib/model/price-model/edits';
import { costsAtFlatPrice } from '@/lib/model/price-model/flat-price';
import { priceModelOf } from '@/lib/model/price-model/price-model-of';
import { Book, days } from '../../books';

/** Couverture at 20.00 a kilogram, 30.00 from the 16th; cream at 5.00 a litre; boxes at 0.25; salt that nobody offers. q is 10 %. */
function model() {
  const book = new Book({ qFactor: 0.1 });
  const couverture = book.ingredient('Couverture', 'g', null, { productGroup: 'Chocolate' });
  const offer = book.offer(couverture, 1, 1, 'kg', 'Strand Dry Goods');
  book.price(offer, 20);
  book.price(offer, 30, { from: '2026-10-16' });
  const box = book.ingredient('Box', 'each', 0.25, { department: 'packaging' });
  const cream = book.ingredient('Cream', 'ml', 0.005);
  const salt = book.ingredient('Salt', 'g', null);
  const torte = book.dish('Torte', { section: 'Sweet' }, [100, 'g', couverture], [1, 'each', box]);
  const fool = book.dish('Fool', { section: 'Cups' }, [200, 'ml', cream]);
  const soup = book.dish('Soup', {}, [2, 'g', salt]);
  book.menu(torte, 11, { tax: 0.1, taxIncluded: true });
  book.menu(fool, 6);
  book.menu(soup, 5);
  const made = priceModelOf(costPeriod(book.facts(), days('2026-10')), null);
  const named = <T extends { readonly name: string }>(all: readonly T[], name: string): T =>
    all.find((each) => each.name === name) ?? expect.unreachable(name);
  return { made, goods: (name: string) => named(made.goods, name), item: (name: string) => named(made.items, name) };
}

const edit = (of: EditTarget['of'], name: string | null, step: PriceStep): PriceEdit => ({
  target: { of, name } as EditTarget,
  step,
});
const more = (by: number): PriceStep => ({ how: 'amount', by });
const flat = (to: number): PriceStep => ({ how: 'flat', to });
const NONE = more(0);

test('stepped(price, step, spoken) is a share of itself, an amount of what is spoken of, or flat', () => {
  expect(stepped(20, { how: 'share', by: 0.25 })).toBe(25);
  expect(stepped(0.02, more(1), 1000)).toBeCloseTo(0.021, 12);
  expect(stepped(0.02, flat(5), 1000)).toBeCloseTo(0.005, 12);
  expect([spokenAmount({ unit: 'each' }), spokenAmount({ unit: 'g' })]).toEqual([1, 1000]);
});

test('touchesGoods(edit, goods, segment) goes by name, group or supplier, where there is a price', () => {
  const { goods } = model();
  const isTouched = (of: EditTarget['of'], name: string | null, whose: string) =>
    touchesGoods(edit(of, name, NONE), goods(whose), 1);
  expect(isTouched('supplier', 'strand dry goods', 'Couverture')).toBe(true);
  expect(isTouched('supplier', 'Bay Dairy', 'Couverture')).toBe(false);
  expect(isTouched('group', 'chocolate', 'Couverture')).toBe(true);
  expect(isTouched('group', 'chocolate', 'Cream')).toBe(false);
  expect(isTouched('ingredient', 'cream', 'Cream')).toBe(true);
  expect(isTouched('everything-bought', null, 'Cream')).toBe(true);
  expect(isTouched('everything-bought', null, 'Salt')).toBe(false);
  expect(isTouched('whole-menu', null, 'Cream')).toBe(false);
});

test('touchesItem(edit, item) goes by name or section', () => {
  const { item } = model();
  const isTouched = (of: EditTarget['of'], name: string | null, whose: string) =>
    touchesItem(edit(of, name, NONE), item(whose));
  expect(isTouched('section', 'sweet', 'Torte')).toBe(true);
  expect(isTouched('section', 'sweet', 'Fool')).toBe(false);
  expect(isTouched('section', 'sweet', 'Soup')).toBe(false);
  expect(isTouched('item', 'torte', 'Torte')).toBe(true);
  expect(isTouched('whole-menu', null, 'Soup')).toBe(true);
  expect(isTouched('ingredient', 'Torte', 'Torte')).toBe(false);
});

describe('editTroubles', () => {
  const troubles = (...edits: readonly PriceEdit[]) => editTroubles(model().made, edits).map(({ why }) => why);

  test('editTroubles(model, edits of what has no price) touches nothing', () => {
    expect(troubles(edit('ingredient', 'Pepper', NONE))).toEqual(['touches-nothing']);
    expect(troubles(edit('ingredient', 'Salt', NONE))).toEqual(['touches-nothing']);
    expect(troubles(edit('item', 'Soup', NONE))).toEqual([]);
  });

  test('editTroubles(model, an amount) takes off the whole lowest price, and no more', () => {
    expect(troubles(edit('ingredient', 'Couverture', more(-20)))).toEqual([]);
    expect(troubles(edit('ingredient', 'Couverture', more(-25)))).toEqual(['below-zero']);
    expect(troubles(edit('ingredient', 'Box', more(-0.25)))).toEqual([]);
    expect(troubles(edit('ingredient', 'Box', more(-0.26)))).toEqual(['below-zero']);
    expect(troubles(edit('item', 'Torte', more(-11)))).toEqual([]);
    expect(troubles(edit('item', 'Torte', more(-11.01)))).toEqual(['below-zero']);
  });

  test('editTroubles(model, edits) applies each on what those before it left of the same price', () => {
    expect(troubles(edit('ingredient', 'Couverture', flat(50)), edit('group', 'Chocolate', more(-40)))).toEqual([]);
    expect(troubles(edit('ingredient', 'Cream', flat(0)), edit('group', 'Chocolate', more(-20)))).toEqual([]);
    expect(troubles(edit('item', 'Torte', flat(10)), edit('item', 'Torte', more(-11)))).toEqual(['below-zero']);
    expect(troubles(edit('item', 'Fool', flat(0)), edit('item', 'Torte', more(-11)))).toEqual([]);
  });
});

test('editedPrices(model, edits) writes the cells of what is touched alone, one edit after the other', () => {
  const { made, goods } = model();
  const at = (name: string, segment: number) => goods(name).node * made.segments + segment;
  const edited = editedPrices(made, [
    edit('ingredient', 'Couverture', { how: 'share', by: 0.5 }),
    edit('group', 'Chocolate', more(1)),
  ]);
  expect(made.segments).toBe(2);
  expect(edited.food[at('Couverture', 0)]).toBeCloseTo(0.031, 12);
  expect(edited.food[at('Couverture', 1)]).toBeCloseTo(0.046, 12);
  expect(edited.food[at('Cream', 1)]).toBe(0.005);
  expect(edited.packaging).toBe(made.prices.packaging);
  expect(made.prices.food[at('Couverture', 0)]).toBeCloseTo(0.02, 12);
  const boxes = editedPrices(made, [edit('ingredient', 'Box', more(0.05))]);
  expect(boxes.packaging[at('Box', 1)]).toBeCloseTo(0.3, 12);
  expect(boxes.food).toBe(made.prices.food);
});

// a torte takes 0.1 kg with q of 10 %, and its box; the fool has 200 ml at 5.00 a litre with q
test('costsAtFlatPrice(model, couverture) is the box and 0.11 for each euro of a kilogram', () => {
  const costs = new Map(costsAtFlatPrice(model().made, 'Couverture').map(({ item, cost }) => [item.name, cost]));
  expect(costs.get('Torte')?.total.at0).toBeCloseTo(0.25, 12);
  expect(costs.get('Torte')?.total.slope).toBeCloseTo(0.11, 12);
  expect(costs.get('Torte')?.food).toEqual({ at0: 0, slope: expect.closeTo(0.11, 12) });
  expect(costs.get('Fool')?.total).toEqual({ at0: expect.closeTo(1.1, 12), slope: 0 });
  expect(costs.get('Soup')).toBeNull();
});
