import fc from 'fast-check';
import { expect, test } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import type { PriceEdit } from '@/lib/model/price-model/edits';
import { priceModelOf } from '@/lib/model/price-model/price-model-of';
import { pricedMix } from '@/lib/model/price-model/priced-mix';
import { turningValues } from '@/lib/model/price-model/turning-values';
import { turningPrices } from '@/lib/reports/turning-prices';
import { largeBook, MONTH, soldDaily } from '../../bench/large-book';
import { Book } from '../../books';
import { BOOK_DAYS } from '../../generated-books';

const flat =
  (name: string) =>
  (to: number): readonly PriceEdit[] => [{ target: { of: 'ingredient', name }, step: { how: 'flat', to } }];

/** Two dishes at 10.00 net, 20 portions of one with 100 g of sugar, 10 of one without. */
function twoDishes() {
  const book = new Book();
  const sugar = book.ingredient('Sugar', 'g', 4 / 1000);
  const salt = book.ingredient('Salt', 'g', 1 / 1000);
  const sweet = book.dish('Sweet', {}, [100, 'g', sugar]);
  const salty = book.dish('Salty', {}, [500, 'g', salt]);
  for (const dish of [sweet, salty]) book.menu(dish, 10);
  for (let day = 1; day <= 15; day++) {
    const date = `2026-10-${String(day).padStart(2, '0')}`;
    book.sell(sweet, date, 20, 200);
    book.sell(salty, date, 10, 100);
  }
  return priceModelOf(costPeriod(book.facts(), BOOK_DAYS), null);
}

test('turningValues(model, edits, a, b): both dishes turn where 100 g of sugar cost what 500 g of salt do', () => {
  // Salty leaves 10 - 0.50 = 9.50, Sweet 10 - 0.1 p: equal, and equal to their mean, at p = 5.00 a kilogram.
  // Expected are 15 a day, times 0.7: 10.5; Sweet is popular, Salty is not.
  const turning = turningValues(twoDishes(), flat('Sugar'), 1, 2);
  expect(turning.map(({ item, below, above }) => [item, below, above])).toEqual([
    ['Salty', 'dog', 'puzzle'],
    ['Sweet', 'star', 'plowhorse'],
  ]);
  for (const { value } of turning) expect(value).toBeCloseTo(5, 9);
  expect(turningValues(twoDishes(), flat('Sugar'), 2, 1)).toEqual(
    turning.map((each) => ({ ...each, value: expect.closeTo(5, 9) })),
  );
});

test('turningValues(model, edits, a, b) of what no dish is made of has none', () => {
  expect(turningValues(twoDishes(), flat('Pepper'), 1, 2)).toEqual([]);
});

test('turningValues(model, edits, a, b) is where bisection over the whole calculation finds the change of class', () => {
  let found = 0;
  fc.assert(
    fc.property(fc.nat({ max: 10_000 }), fc.nat(), (seed, pick) => {
      const size = { dishes: 7, components: 4, ingredients: 5, lines: 60 };
      const facts = soldDaily(largeBook(size, 3, seed), (item, day) => 1 + ((item * item + day * seed) % 9));
      const model = priceModelOf(costPeriod(facts, MONTH), null);
      const goods = model.goods[pick % Math.max(1, model.goods.length)];
      if (!goods) return;
      const edits = flat(goods.name);
      const classAt = (item: string, value: number) =>
        pricedMix(model, edits(value)).items.find((each) => each.item.name === item)?.class;
      for (const { item, value, below, above } of turningValues(model, edits, 1, 9)) {
        if (value < 1e-3) continue;
        let [low, high] = [value * 0.9, value * 1.1];
        if (classAt(item, low) === null) continue;
        expect([classAt(item, low), classAt(item, high)]).toEqual([below, above]);
        for (let step = 0; step < 60; step++) {
          const middle = (low + high) / 2;
          if (classAt(item, middle) === below) low = middle;
          else high = middle;
        }
        // a value within a relative 1e-9 of the threshold counts as the better side, whose width the slope decides
        expect(Math.abs(low - value) / value).toBeLessThan(1e-4);
        found += 1;
      }
    }),
    { numRuns: 30 },
  );
  expect(found).toBeGreaterThan(20);
});

test('turningValues(model, edits, a, b) of one ingredient alone are the turning prices of the report', () => {
  const facts = soldDaily(
    largeBook({ dishes: 7, components: 4, ingredients: 5, lines: 60 }, 3),
    (item) => 1 + (item % 9),
  );
  const model = priceModelOf(costPeriod(facts, MONTH), null);
  for (const { name } of model.goods) {
    const reported = turningPrices(model, name)?.items.flatMap(({ item, turningPrice, classBeyond }) =>
      turningPrice === null ? [] : [{ item: item.name, turningPrice, classBeyond }],
    );
    const found = turningValues(model, flat(name), 1, 9).filter(({ value }) => value >= 0);
    expect(found.map(({ item }) => item)).toEqual(reported?.map(({ item }) => item));
    found.forEach(({ value, below, above }, index) => {
      expect(value / (reported?.[index]?.turningPrice ?? 0)).toBeCloseTo(1, 9);
      expect([below, above]).toContain(reported?.[index]?.classBeyond);
    });
  }
});
