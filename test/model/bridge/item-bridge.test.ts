import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type BridgeSide, type ItemBridge, itemBridge } from '@/lib/model/bridge/item-bridge';
import { RUNS } from '../../generated-books';

const side = (sold: number, netPrice: number, listPrice: number, plateCost: number): BridgeSide => ({
  ...{ sold, netPrice, listPrice, plateCost },
});
const sumOf = (parts: ItemBridge) => Object.values(parts).reduce((sum, part) => sum + part, 0);
const rounded = (parts: ItemBridge) =>
  Object.fromEntries(Object.entries(parts).map(([name, part]) => [name, +part.toFixed(9) + 0]));

describe('itemBridge', () => {
  // w0 = 20 / 100, CM0 = 10 - 3 = 7; volume (150 - 100) * 0.2 * 7; mix (45 - 30) * 7; price 45 * (11 - 10.5);
  // discounts 45 * [(10.8 - 11) - (10 - 10.5)]; costs -45 * (3.4 - 3) and -45 * (3.1 - 3.4)
  test('itemBridge(before, after, f01, portions) is the hand-worked split', () => {
    const parts = itemBridge(side(20, 10, 10.5, 3), side(45, 10.8, 11, 3.1), 3.4, { before: 100, after: 150 });
    expect(rounded(parts)).toEqual({
      ...{ volume: 70, mix: 105, menuPrice: 22.5, discounts: 13.5, ingredientPrice: -18, recipe: 13.5 },
    });
    expect(sumOf(parts)).toBeCloseTo(45 * 7.7 - 20 * 7, 9);
  });

  test('itemBridge of a new dish is mix', () => {
    const new1 = itemBridge(null, side(30, 10, 10, 4), null, { before: 100, after: 130 });
    expect(rounded(new1)).toEqual({
      ...{ volume: 0, mix: 180, menuPrice: 0, discounts: 0, ingredientPrice: 0, recipe: 0 },
    });
    expect(itemBridge(side(0, 8, 8, 1), side(30, 10, 10, 4), 2, { before: 100, after: 130 })).toEqual(new1);
  });

  test('itemBridge of a dish that is gone is volume and mix; without portions before all is volume', () => {
    const gone = itemBridge(side(20, 10, 11, 3), null, null, { before: 100, after: 50 });
    expect(rounded(gone)).toEqual({
      ...{ volume: -70, mix: -70, menuPrice: 0, discounts: 0, ingredientPrice: 0, recipe: 0 },
    });
    const first = itemBridge(null, side(5, 10, 10, 4), null, { before: 0, after: 5 });
    expect(rounded(first)).toEqual({
      ...{ volume: 30, mix: 0, menuPrice: 0, discounts: 0, ingredientPrice: 0, recipe: 0 },
    });
  });

  test('itemBridge adds up to what an item left more, over a whole menu of any figures', () => {
    const amount = fc.integer({ min: 0, max: 4000 }).map((cents) => cents / 100);
    const drawn = fc.record({
      sold: fc.integer({ min: 0, max: 60 }),
      netPrice: amount,
      listPrice: amount,
      plateCost: amount,
    });
    const item = fc.record({ before: fc.option(drawn), after: fc.option(drawn), f01: amount });
    fc.assert(
      fc.property(fc.array(item, { minLength: 1, maxLength: 8 }), (items) => {
        const portions = (of: 'before' | 'after') => items.reduce((sum, each) => sum + (each[of]?.sold ?? 0), 0);
        const whole = { before: portions('before'), after: portions('after') };
        const left = (one: BridgeSide | null) => (one ? one.sold * (one.netPrice - one.plateCost) : 0);
        for (const { before, after, f01 } of items) {
          const parts = itemBridge(before, after, f01, whole);
          const scale = Math.max(
            1,
            ...Object.values(parts).map(Math.abs),
            Math.abs(left(before)),
            Math.abs(left(after)),
          );
          expect(Math.abs(sumOf(parts) - (left(after) - left(before)))).toBeLessThanOrEqual(1e-9 * scale);
        }
      }),
      RUNS,
    );
  });
});
