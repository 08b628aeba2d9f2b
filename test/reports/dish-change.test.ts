import { describe, expect, test } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import type { ItemId } from '@/lib/model/facts';
import { type DishChange, dishChange } from '@/lib/reports/dish-change';
import { Book, days } from '../books';

function changeIn(book: Book, item: ItemId, section: string | null = null): DishChange | null {
  const facts = book.facts();
  const [before, after] = [days('2026-09'), days('2026-10')].map((range) => costPeriod(facts, range, 'everything'));
  return before && after ? dishChange(before, after, item, section) : null;
}

/** Posset of 100 g of cream (0.02, then 0.03 a gram), beside a tart without a recipe and one that costs 2. */
function book(): { book: Book; posset: ItemId } {
  const kept = new Book();
  const cream = kept.ingredient('Cream', 'g', null);
  const offer = kept.offer(cream, 1, 1, 'g');
  kept.price(offer, 0.02);
  kept.price(offer, 0.03, { from: '2026-10-01' });
  const posset = kept.dish('Posset', {}, [100, 'g', cream]);
  kept.menu(posset, 10);
  kept.menu(posset, 11, { from: '2026-10-01' });
  kept.sell(posset, '2026-09-10', 20, 200);
  kept.sell(posset, '2026-10-10', 40, 400);
  const plain = kept.dish('Plain tart', { estimatedCost: 2 });
  kept.menu(plain, 6);
  kept.sell(plain, '2026-09-10', 60, 360);
  kept.sell(plain, '2026-10-10', 60, 360);
  const tart = kept.item('dish', 'Tart');
  kept.menu(tart, 9);
  kept.sell(tart, '2026-09-10', 20, 180);
  kept.sell(tart, '2026-10-10', 100, 900);
  return { book: kept, posset };
}

describe('dishChange', () => {
  // costed in both: Posset and the plain tart, 80 then 100 portions; CM0 = 8, w0 = 1/4; 40 portions left 7 each, 20 left 8 each
  test('dishChange(before, after, item) says what changed and why; dishes without cost stand outside volume and mix', () => {
    const { book: kept, posset } = book();
    const change = changeIn(kept, posset);
    expect(change).toMatchObject({
      sold: { before: 20, after: 40 },
      share: { before: 0.2, after: 0.2 },
      netPrice: { before: 10, after: 10 },
      listPrice: { before: 10, after: 11 },
      margin: { before: 8, after: 7 },
    });
    expect(change?.cost?.price).toBeCloseTo(1, 12);
    expect(change?.cost?.recipe).toBeCloseTo(0, 12);
    expect(change?.contribution).toMatchObject({ before: 160, after: 280 });
    const parts = Object.entries(change?.contribution?.parts ?? {}).map(([name, part]) => [name, +part.toFixed(9)]);
    expect(Object.fromEntries(parts)).toEqual({
      ...{ volume: 40, mix: 120, menuPrice: 40, discounts: -40, ingredientPrice: -40, recipe: 0 },
    });
  });

  test('dishChange(before, after, item) of what was off the menu in the month before is null; of what is not costed it has no cost', () => {
    const { book: kept, posset } = book();
    const fresh = kept.dish('Fresh', { estimatedCost: 1 });
    kept.menu(fresh, 5, { from: '2026-10-01' });
    expect(changeIn(kept, fresh)).toBeNull();
    const facts = kept.facts();
    const tart = facts.items.find(({ name }) => name === 'Tart')?.id ?? posset;
    expect(changeIn(kept, tart)).toMatchObject({ cost: null, contribution: null, netPrice: { before: 9, after: 9 } });
  });

  test('dishChange(before, after, item) of portions without a listed price takes the whole change as price', () => {
    const { book: kept } = book();
    const special = kept.dish('Special', { estimatedCost: 1 });
    kept.sell(special, '2026-09-10', 10, 50);
    kept.sell(special, '2026-10-10', 10, 70);
    const change = changeIn(kept, special);
    expect(change?.listPrice).toEqual({ before: null, after: null });
    expect(change?.contribution?.parts).toMatchObject({ menuPrice: 20, discounts: 0 });
  });

  test('dishChange(before, after, item, section) looks at the portions of that section', () => {
    const kept = new Book();
    const wine = kept.dish('Wine', { section: 'Glasses', estimatedCost: 2 });
    const port = kept.dish('Port', { section: 'Glasses', estimatedCost: 2 });
    for (const item of [wine, port]) kept.menu(item, 6);
    kept.sell(wine, '2026-09-10', 5, 30);
    kept.sell(port, '2026-09-10', 15, 90);
    kept.sell(wine, '2026-10-10', 10, 60);
    kept.sell(port, '2026-10-10', 10, 60);
    expect(changeIn(kept, wine, 'Glasses')?.share).toEqual({ before: 0.25, after: 0.5 });
  });
});
