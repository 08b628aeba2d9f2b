import fc from 'fast-check';
import { expect, test } from 'vitest';
import { crosses, crossesBox, overlap, type Surroundings } from '@/app/_ui/mix-plane/label-clashes';
import type { Label } from '@/app/_ui/mix-plane/label-places';
import { placeLabels } from '@/app/_ui/mix-plane/place-labels';

const BOUNDS = { x: 50, y: 30, width: 830, height: 530 };

function label(x: number, y: number, width = 90, first = false): Label {
  return { x, y, width, height: 16, first, clearX: 0, clearY: 0 };
}

function around(labels: readonly Label[], change: Partial<Surroundings> = {}): Surroundings {
  return { bounds: BOUNDS, marks: labels, words: [], uprights: [], levels: [], regions: [], ...change };
}

test('placeLabels(labels, around) puts a lone label at the right of its mark', () => {
  const labels = [label(200, 200)];
  const [place] = placeLabels(labels, around(labels));
  expect(place?.leader).toBeNull();
  expect(place?.box).toEqual({ x: 212, y: 192, width: 90, height: 16 });
});

test('placeLabels(labels, around) goes left at the right edge', () => {
  const labels = [label(870, 200)];
  const [place] = placeLabels(labels, around(labels));
  expect((place?.box.x ?? 0) + 90).toBeLessThan(870);
});

test('placeLabels(labels, around) keeps off marks, other words and lines', () => {
  const labels = [label(200, 200), label(260, 200)];
  const word = { x: 100, y: 190, width: 90, height: 20 };
  const places = placeLabels(labels, around(labels, { words: [word], levels: [216] }));
  for (const place of places) {
    expect(place).not.toBeNull();
    if (!place) continue;
    expect(overlap(place.box, word, 0)).toBe(false);
    expect(place.box.y + place.box.height <= 217 || place.box.y >= 215).toBe(true);
  }
});

test('placeLabels(labels, around) is the same every time', () => {
  const labels = Array.from({ length: 20 }, (_, index) => label(200 + 7 * index, 200 + 5 * ((index * 7) % 11)));
  expect(placeLabels(labels, around(labels))).toEqual(placeLabels(labels, around(labels)));
});

test('placeLabels(labels, around) never lets two labels overlap or one leave the plot, with forty dishes anywhere', () => {
  const one = fc.record({
    x: fc.integer({ min: 50, max: 880 }),
    y: fc.integer({ min: 30, max: 560 }),
    width: fc.integer({ min: 20, max: 180 }),
    first: fc.boolean(),
  });
  fc.assert(
    fc.property(fc.array(one, { minLength: 1, maxLength: 40 }), (asked) => {
      const labels = asked.map(({ x, y, width, first }) => label(x, y, width, first));
      const places = placeLabels(labels, around(labels)).filter((place) => place !== null);
      places.forEach((place, index) => {
        expect(place.box.x).toBeGreaterThanOrEqual(BOUNDS.x);
        expect(place.box.x + place.box.width).toBeLessThanOrEqual(BOUNDS.x + BOUNDS.width);
        for (const other of places.slice(index + 1)) expect(overlap(place.box, other.box, 0)).toBe(false);
      });
    }),
    { numRuns: 12 },
  );
});

test('placeLabels(labels, around) drops what has no room, the doubtful ones last', () => {
  const pile = Array.from({ length: 60 }, (_, index) => label(400, 300, 120, index === 59));
  const places = placeLabels(pile, around(pile, { bounds: { x: 380, y: 260, width: 160, height: 80 } }));
  expect(places.filter((place) => place === null).length).toBeGreaterThan(50);
  expect(places[59]).not.toBeNull();
});

test('placeLabels(labels, around) finds room for at least nine in ten of forty dishes spread as a menu is', () => {
  const labels = Array.from({ length: 40 }, (_, index) => {
    const share = 830 * (0.1 + 0.8 * ((index * 0.618) % 1) ** 1.6);
    return label(50 + share, 60 + 440 * ((index * 0.414 + 0.2) % 1), 70 + ((index * 13) % 60));
  });
  const placed = placeLabels(labels, around(labels, { uprights: [250], levels: [290] })).filter(
    (place) => place !== null,
  );
  expect(placed.length).toBeGreaterThanOrEqual(36);
});

test('crosses(a, b) and crossesBox(segment, box) see crossings and nothing else', () => {
  const rising = { x1: 0, y1: 0, x2: 10, y2: 10 };
  expect(crosses(rising, { x1: 0, y1: 10, x2: 10, y2: 0 })).toBe(true);
  expect(crosses(rising, { x1: 0, y1: 1, x2: 9, y2: 10 })).toBe(false);
  const box = { x: 4, y: 4, width: 4, height: 2 };
  expect(crossesBox({ x1: 0, y1: 5, x2: 20, y2: 5 }, box)).toBe(true);
  expect(crossesBox({ x1: 0, y1: 9, x2: 20, y2: 9 }, box)).toBe(false);
  expect(crossesBox({ x1: 5, y1: 5, x2: 6, y2: 5 }, box)).toBe(true);
});
