import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { costPeriod } from '@/lib/model/costed-period';
import type { ItemId } from '@/lib/model/facts';
import { type Advice, advice } from '@/lib/model/mix/advice';
import { Book, days } from '../../books';
import { RUNS } from '../../generated-books';

const OCTOBER = days('2026-10');
const plain = costPeriod(new Book().facts(), OCTOBER);

/** Advice where nothing is known but portions and margins. */
function onMargins(...rows: (readonly [sold: number, margin: number | null])[]): readonly (Advice | undefined)[] {
  const items = rows.map(([sold, margin], index) => ({ id: (index + 1) as ItemId, sold, margin, leavesLess: null }));
  const found = advice(plain, items, 'eu');
  return items.map(({ id }) => found.get(id));
}

describe('advice', () => {
  // 60 portions at 6.00 and 40 at 3.00: the average is 4.80. At 3.00 more the second leaves 6.00, and so does the average.
  test('advice(a dish below the average) has the rise that reaches the average, which the dish lifts too', () => {
    const [first, second] = onMargins([60, 6], [40, 3]);
    expect(second?.againstAverage).toBeCloseTo(-1.8, 12);
    expect(second?.rise).toBeCloseTo(3, 12);
    expect(second?.mayLose).toBeCloseTo(0.5, 12); // 20 portions at 6.00 leave as much as 40 at 3.00
    expect(second?.takenOffFrom).toBeCloseTo(0.5, 12); // a guest brings 6.00 with the other, 3.00 with this
    expect(first?.againstAverage).toBeCloseTo(1.2, 12);
    expect(first).toMatchObject({ rise: null, mayLose: null, takenOffFrom: 2 });
  });

  test('advice(a dish that costs more than it brings) may lose every portion, and goes whatever its guests do', () => {
    const [, second] = onMargins([50, 6], [50, -2]);
    expect(second?.rise).toBeCloseTo(8, 12);
    expect(second?.mayLose).toBe(1);
    expect(second?.takenOffFrom).toBeCloseTo(-1 / 3, 12);
  });

  test('advice(the only dish, others that leave nothing, none sold) says what it can', () => {
    expect(onMargins([10, 5])).toEqual([
      expect.objectContaining({ againstAverage: 0, rise: null, mayLose: null, takenOffFrom: null }),
    ]);
    expect(onMargins([10, 5], [10, 0])[0]?.takenOffFrom).toBeNull();
    expect(onMargins([0, 5], [0, 3])).toEqual([undefined, undefined]);
  });

  test('advice(a dish without a known margin) has none, and is out of the average', () => {
    const [first, unknown, second] = onMargins([60, 6], [900, null], [40, 3]);
    expect(unknown).toBeUndefined();
    expect([first?.againstAverage, second?.rise]).toEqual([
      onMargins([60, 6], [40, 3])[0]?.againstAverage,
      onMargins([60, 6], [40, 3])[1]?.rise,
    ]);
  });

  test('advice(any menu) reaches the average at the rise, and leaves as much after losing the portions', () => {
    const row = fc.tuple(fc.integer({ min: 1, max: 500 }), fc.integer({ min: 1, max: 2000 }));
    fc.assert(
      fc.property(fc.array(row, { minLength: 2, maxLength: 8 }), (all) => {
        const rows = all.map(([sold, cents]) => [sold, cents / 100] as const);
        const sold = rows.reduce((sum, [portions]) => sum + portions, 0);
        onMargins(...rows).forEach((each, index) => {
          const [own, margin] = rows[index] ?? [0, 0];
          if (!each || each.rise === null || each.mayLose === null) return;
          const { rise, mayLose } = each;
          const average = rows.reduce((sum, [portions, of]) => sum + portions * of, 0) / sold;
          expect(margin + rise).toBeCloseTo(average + (rise * own) / sold, 9);
          expect(own * (1 - mayLose) * (margin + rise)).toBeCloseTo(own * margin, 6);
        });
      }),
      RUNS,
    );
  });
});

describe('advice: what else a dish carries', () => {
  function book(): Book {
    const made = new Book();
    const flour = made.ingredient('Flour', 'g', 0.001, { contains: ['wheat'], mayContain: [] });
    const cream = made.ingredient('Cream', 'ml', 0.004, { contains: ['milk'], mayContain: [] });
    const pear = made.ingredient('Pear', 'g', 0.003, { contains: [], mayContain: [] });
    const tart = made.dish('Tart', { platingMinutes: 3 }, [80, 'g', flour], [50, 'ml', cream]);
    const slice = made.dish('Slice', { platingMinutes: 1 }, [80, 'g', flour], [20, 'g', pear]);
    const granita = made.dish('Granita', { platingMinutes: 2 }, [90, 'g', pear], [10, 'ml', cream]);
    for (const dish of [tart, slice, granita]) {
      made.menu(dish, 9);
      made.sell(dish, '2026-10-05', 10, 90);
    }
    return made;
  }
  const of = (made: Book, name: string): Advice | undefined => {
    const period = costPeriod(made.facts(), OCTOBER);
    const items = period.things.flatMap(({ id, kind }) =>
      kind === 'dish' ? [{ id, sold: 10, margin: 5, leavesLess: null }] : [],
    );
    const thing = period.things.find((each) => each.name === name);
    return thing && advice(period, items, 'eu').get(thing.id);
  };

  test('advice(the only one without) names the allergens that nothing in it alone declares', () => {
    expect(of(book(), 'Granita')?.onlyWithout).toEqual(['gluten']);
    expect(of(book(), 'Slice')?.onlyWithout).toEqual(['milk']);
    expect(of(book(), 'Tart')?.onlyWithout).toEqual([]);
  });

  test('advice(two without, or one that went off the menu) is the only one of those on the menu', () => {
    const two = book();
    const sorbet = two.dish('Sorbet', { platingMinutes: 1 }, [
      90,
      'g',
      two.ingredient('Plum', 'g', 0.003, { contains: [], mayContain: [] }),
    ]);
    two.menu(sorbet, 8);
    expect(of(two, 'Granita')?.onlyWithout).toEqual([]);
    two.menu(sorbet, null, { from: '2026-10-20' });
    expect(of(two, 'Granita')?.onlyWithout).toEqual(['gluten']);
  });

  test('advice(something undeclared in it) is never the only one without', () => {
    const made = book();
    const ice = made.dish('Ice', {}, [90, 'g', made.ingredient('Base mix', 'g', 0.003)]);
    made.menu(ice, 8);
    expect(of(made, 'Ice')?.onlyWithout).toEqual([]);
  });

  test('advice(the most plating minutes) are said where no other dish has as many', () => {
    expect(of(book(), 'Tart')?.mostPlating).toBe(3);
    expect(of(book(), 'Granita')?.mostPlating).toBeNull();
    const made = book();
    made.menu(made.dish('Choux', { platingMinutes: 3 }), 8);
    expect(of(made, 'Tart')?.mostPlating).toBeNull();
  });
});
