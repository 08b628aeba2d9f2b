import { expect, test } from 'vitest';
import { addDays } from '@/lib/core/days';
import { costPeriod } from '@/lib/model/costed-period';
import type { Facts, ItemId } from '@/lib/model/facts';
import { kitchenChange } from '@/lib/reports/kitchen-change';
import { Book, day } from '../books';

const ON = day('2026-10-31');
const costed = (facts: Facts) => costPeriod(facts, { from: ON, to: addDays(ON, 1) }, 'everything');

/** A tart of one base; the base as it is told. Ids are the same in every book. */
function book(tell: (written: Book, ids: { sugar: ItemId; nuts: ItemId; base: ItemId }) => void): Facts {
  const written = new Book();
  const sugar = written.ingredient('Sugar', 'g', 0.001, { contains: [], mayContain: [] });
  const nuts = written.ingredient('Walnuts', 'g', 0.02, { contains: ['walnuts'], mayContain: ['almond'] });
  const base = written.item('component', 'Base');
  const tart = written.dish('Tart', {}, [100, 'g', base]);
  written.menu(tart, 9);
  written.menu(written.dish('Plain', {}, [100, 'g', sugar]), 3);
  tell(written, { sugar, nuts, base });
  return written.facts();
}
const plain = book((written, { sugar, base }) => written.recipe(base, { yields: [100, 'g'] }, [100, 'g', sugar]));
const nutty = book((written, { sugar, nuts, base }) =>
  written.recipe(base, { yields: [100, 'g'] }, [50, 'g', sugar], [50, 'g', nuts]),
);
const none = book(() => {});
const BASE = 3 as ItemId;

// 100 g of sugar: 0.10; half of it walnuts: 0.05 + 1.00. What does not hang on the base is not named.
test('kitchenChange(before, after, day, item) names all above the item, with the allergens that come and go', () => {
  const change = kitchenChange(costed(plain), costed(nutty), ON, BASE);
  expect(change.items.map(({ item, before, after }) => [item, before?.plateCost, after?.plateCost])).toEqual([
    ['Base', 0.1, 1.05],
    ['Tart', 0.1, 1.05],
  ]);
  expect(
    change.allergens.map(({ word, state, added, items }) => [word, state, added, items.map(({ item }) => item)]),
  ).toEqual([
    ['almond', 'may-contain', true, ['Base', 'Tart']],
    ['walnuts', 'contains', true, ['Base', 'Tart']],
  ]);
  const back = kitchenChange(costed(nutty), costed(plain), ON, BASE);
  expect(back.allergens.map(({ word, added }) => [word, added])).toEqual([
    ['almond', false],
    ['walnuts', false],
  ]);
  expect(back.lines.map(({ item, before, after }) => [item, before?.quantity, after?.quantity])).toEqual([
    ['Sugar', 50, 100],
    ['Walnuts', 50, undefined],
  ]);
});

test('kitchenChange(before, after, day, item) of nothing is nothing', () => {
  const { items, allergens, lines, issuesAdded, issuesGone } = kitchenChange(costed(nutty), costed(nutty), ON, BASE);
  expect([items, allergens, lines, issuesAdded, issuesGone]).toEqual([[], [], [], [], []]);
});

// Without a recipe of its base nobody knows any more what is in the tart: that is said of the tart, whose own recipe stands.
test('kitchenChange(before, after, day, item) that takes a recipe away says what is no longer known', () => {
  const change = kitchenChange(costed(plain), costed(none), ON, BASE);
  expect(change.items.map(({ item, after }) => [item, after?.plateCost ?? null])).toEqual([
    ['Base', null],
    ['Tart', null],
  ]);
  expect(change.allergens).toEqual([
    { word: null, state: 'unknown', added: true, items: [{ item: 'Tart', kind: 'dish' }] },
  ]);
  expect(change.issuesAdded.map(({ code, about }) => [code, about])).toContainEqual(['no-version', 'Base']);
  const back = kitchenChange(costed(none), costed(plain), ON, BASE);
  expect(back.allergens).toMatchObject([{ word: null, state: 'unknown', added: false }]);
  expect(back.issuesGone).toEqual(change.issuesAdded);
});
