import fc from 'fast-check';
import { expect, test } from 'vitest';
import { flagPlaces } from '@/app/_ui/price-ruler/flag-places';

test('flagPlaces(flags, width, rows) puts a lone flag right of its pole, and at the right end left of it', () => {
  expect(flagPlaces([{ at: 0, letters: 10 }], 600, 3)).toEqual([{ side: 'right', row: 0 }]);
  expect(flagPlaces([{ at: 1, letters: 10 }], 600, 3)).toEqual([{ side: 'left', row: 0 }]);
});

test('flagPlaces(flags, width, rows) turns the second of two near flags the other way, and lifts the third', () => {
  const near = [0.5, 0.48, 0.52].map((at) => ({ at, letters: 12 }));
  expect(flagPlaces(near, 600, 3)).toEqual([{ side: 'right', row: 0 }, { side: 'left', row: 0 }, null]);
  // the pole of the third would cross the text of the first; further off it has room above
  expect(flagPlaces([...near.slice(0, 2), { at: 0.7, letters: 30 }], 600, 3)[2]).toEqual({ side: 'left', row: 1 });
});

test('flagPlaces(flags, width, rows): no two texts of a row lie over each other, and none leaves the drawing', () => {
  const flag = fc.record({ at: fc.double({ min: 0, max: 1, noNaN: true }), letters: fc.integer({ min: 3, max: 40 }) });
  fc.assert(
    fc.property(fc.array(flag, { maxLength: 12 }), fc.constantFrom(358, 690, 1312), (flags, width) => {
      const placed = flagPlaces(flags, width, 4).flatMap((place, index) => {
        const { at, letters } = flags[index] ?? { at: 0, letters: 0 };
        const pole = 12 + at * (width - 24);
        const text = letters * 6.6 + 6;
        return place ? [{ row: place.row, from: place.side === 'right' ? pole : pole - text, pole, text }] : [];
      });
      placed.forEach((one, index) => {
        expect(one.from).toBeGreaterThanOrEqual(0);
        expect(one.from + one.text).toBeLessThanOrEqual(width);
        placed.slice(0, index).forEach((other) => {
          const isApart = one.from >= other.from + other.text || other.from >= one.from + one.text;
          expect(isApart || one.row !== other.row).toBe(true);
        });
      });
    }),
  );
});
