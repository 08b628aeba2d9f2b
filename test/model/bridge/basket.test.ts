import { describe, expect, test } from 'vitest';
import { basketOf, pricesOver } from '@/lib/model/bridge/basket';
import { costChange } from '@/lib/model/bridge/cost-change';
import { portionNeed } from '@/lib/model/bridge/portion-need';
import { costPeriod } from '@/lib/model/costed-period';
import { portionWeights } from '@/lib/model/portion-weights';
import { Book, days } from '../../books';

/** A tart of 200 g of flour, a yolk, and where it is taken away a carton; three of four were eaten here, the last after the 15th. */
function tart() {
  const book = new Book({ qFactor: 0.1 });
  const flour = book.ingredient('Flour', 'g', 0.01);
  book.price(1 as Parameters<Book['price']>[0], 0.02, { from: '2026-10-16' });
  const egg = book.ingredient('Egg', 'each', 0.4);
  book.part(egg, 'yolk', 18, 'g', 0.5);
  book.part(egg, 'white', 32, 'g', 0.5);
  const box = book.ingredient('Carton', 'each', 0.3, { department: 'packaging' });
  const carton = [1, 'each', box, { channel: 'takeaway' }] as const;
  const dish = book.dish('Tart', {}, [200, 'g', flour], [18, 'g', egg, { part: 'yolk' }], carton);
  book.menu(dish, 9);
  book.sell(dish, '2026-10-05', 2, 18);
  book.sell(dish, '2026-10-05', 1, 9, { channel: 'takeaway' });
  book.sell(dish, '2026-10-20', 1, 9);
  const period = costPeriod(book.facts(), days('2026-10'));
  const node = period.nodeOf.get(dish) ?? -1;
  const weights = portionWeights(period, node, period.things[node]?.sales ?? [], [], ['dine_in', 'takeaway']);
  return { period, node, weights, basket: basketOf(period, portionNeed(period, node, weights)) };
}

describe('basketOf', () => {
  // flour 200 g, at 0.01 three times of four and at 0.02 once, with q; half an egg by price; a carton for one of four, without q
  test('basketOf(portionNeed) is what one portion takes of what is bought, parts by their whole, packed as it was sold', () => {
    const { basket } = tart();
    const lines = [...basket.values()].map(({ item, need, cost }) => [item, need.toFixed(9), cost.toFixed(9)]);
    expect(lines).toEqual([
      ['Carton', '0.250000000', '0.075000000'],
      ['Egg', '0.500000000', '0.220000000'],
      ['Flour', '200.000000000', '2.750000000'],
    ]);
  });

  // 800 g of flour make four loaves of 250 g
  test('basketOf(portionNeed) of a component that is sold by the piece is what one piece takes', () => {
    const book = new Book();
    const flour = book.ingredient('Flour', 'g', 0.01);
    const loaf = book.component('Loaf', { yields: [1000, 'g'], also: [4, 'each'] }, [800, 'g', flour]);
    book.menu(loaf, 4);
    const period = costPeriod(book.facts(), days('2026-10'));
    const node = period.nodeOf.get(loaf) ?? -1;
    const need = portionNeed(period, node, [{ segment: 0, channel: 'dine_in', weight: 3 }]);
    expect([...basketOf(period, need).values()]).toMatchObject([{ item: 'Flour', need: 200, cost: 2 }]);
  });

  test('pricesOver(period, weights) is the mean price over the portions, by what it is the price of', () => {
    const { period, weights, basket } = tart();
    const priceOf = pricesOver(period, weights);
    const prices = [...basket].map(([key, line]) => priceOf(key, line)?.toFixed(9));
    expect(prices).toEqual(['0.300000000', '0.440000000', '0.013750000']);
    const [flour] = [...basket.values()].filter(({ item }) => item === 'Flour');
    expect(flour && priceOf(`estimate ${flour.id}`, flour)).toBeNull();
  });
});

// flour 2.75 -> 5.50 by its price; the egg 0.22 goes, the carton stays at 0.075; cream of 1.00 is new
test('costChange(before, after, prices) stands by how much each thing moved it, with the names of both recipes', () => {
  const { basket } = tart();
  const after = new Map([...basket].filter(([, { item }]) => item !== 'Egg'));
  const flour = [...basket].find(([, { item }]) => item === 'Flour');
  const carton = [...basket].find(([, { item }]) => item === 'Carton');
  if (!flour || !carton) throw new RangeError('both are in the basket');
  after.set(flour[0], { ...flour[1], cost: 5.5 });
  after.set('bought 99', { ...carton[1], item: 'Cream', need: 10, cost: 1 });
  const price = new Map([
    [flour[0], 0.0275],
    [carton[0], 0.3],
  ]);
  const { lines } = costChange(basket, after, (key) => price.get(key) ?? null);
  expect(lines.map((line) => [line.item, line.price.toFixed(9), line.recipe.toFixed(9)])).toEqual([
    ['Flour', '2.750000000', '0.000000000'],
    ['Cream', '0.000000000', '1.000000000'],
    ['Egg', '0.000000000', '-0.220000000'],
    ['Carton', '0.000000000', '0.000000000'],
  ]);
});
