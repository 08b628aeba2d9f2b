import fc from 'fast-check';
import { expect, test } from 'vitest';
import { markAt, nearestMark, type Spot } from '@/app/_ui/mix-plane/nearest-mark';

const CROSS: readonly Spot[] = [
  { x: 0, y: 0 },
  { x: 10, y: 1 },
  { x: -10, y: 1 },
  { x: 1, y: -10 },
  { x: 1, y: 10 },
];

test('nearestMark(spots, from, direction) goes where the arrow points', () => {
  expect(nearestMark(CROSS, 0, 'right')).toBe(1);
  expect(nearestMark(CROSS, 0, 'left')).toBe(2);
  expect(nearestMark(CROSS, 0, 'up')).toBe(3);
  expect(nearestMark(CROSS, 0, 'down')).toBe(4);
});

test('nearestMark(spots, from, direction) prefers what lies within 45 degrees, however near the rest', () => {
  const spots = [
    { x: 0, y: 0 },
    { x: 1, y: 20 },
    { x: 60, y: 0 },
  ];
  expect(nearestMark(spots, 0, 'right')).toBe(2);
  expect(nearestMark(spots.slice(0, 2), 0, 'right')).toBe(1);
});

test('nearestMark(spots, from, direction) is null at the edge', () => {
  expect(nearestMark(CROSS, 1, 'right')).toBeNull();
  expect(nearestMark([{ x: 0, y: 0 }], 0, 'up')).toBeNull();
});

test('nearestMark(spots, from, direction) steps through marks that lie on one another', () => {
  const pile = [
    { x: 5, y: 5 },
    { x: 5, y: 5 },
    { x: 5, y: 5 },
  ];
  expect(nearestMark(pile, 0, 'right')).toBe(1);
  expect(nearestMark(pile, 1, 'down')).toBe(2);
  expect(nearestMark(pile, 2, 'left')).toBe(1);
  expect(nearestMark(pile, 2, 'right')).toBeNull();
});

test('nearestMark(spots, from, direction) only stops in a direction where nothing lies that way', () => {
  const spot = fc.record({ x: fc.integer({ min: 0, max: 900 }), y: fc.integer({ min: 0, max: 500 }) });
  fc.assert(
    fc.property(fc.array(spot, { minLength: 1, maxLength: 40 }), (spots) => {
      spots.forEach((from, index) => {
        const right = nearestMark(spots, index, 'right');
        const further = spots.some((other) => other.x > from.x);
        if (further) expect(right).not.toBeNull();
        if (right !== null) expect(spots[right]?.x).toBeGreaterThanOrEqual(from.x);
      });
    }),
    { numRuns: 100 },
  );
});

test('markAt(spots, point, reach) is the nearest mark within reach, or none', () => {
  expect(markAt(CROSS, { x: 9, y: 3 }, 24)).toBe(1);
  expect(markAt(CROSS, { x: 100, y: 3 }, 24)).toBeNull();
});
