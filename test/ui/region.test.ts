import { expect, test } from 'vitest';
import { beyond, HALF_AXIS, meets } from '@/app/_ui/mix-plane/region';

const PLOT = { x: 50, y: 30, width: 800, height: 500 };
const LINES = { x: 300, y: 280 };

// The normal distribution has a tenth of its weight above 1.2816 standard deviations (any table of it).
test('HALF_AXIS is the normal quantile of nine tenths', () => {
  const density = (z: number) => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
  const step = 1e-4;
  let above = 0;
  for (let z = HALF_AXIS; z < 10; z += step) above += density(z + step / 2) * step;
  expect(above).toBeCloseTo(0.1, 4);
});

test('beyond(class, lines, plot) is everything but the own quarter', () => {
  expect(beyond('star', LINES, PLOT)).toEqual([
    { x: 50, y: 30, width: 250, height: 500 },
    { x: 300, y: 280, width: 550, height: 250 },
  ]);
  expect(beyond('dog', LINES, PLOT)).toEqual([
    { x: 300, y: 30, width: 550, height: 500 },
    { x: 50, y: 30, width: 250, height: 250 },
  ]);
});

test('beyond(class, lines, plot) and the own quarter make up the plot, for each class', () => {
  const quarters = { puzzle: 250 * 250, star: 550 * 250, dog: 250 * 250, plowhorse: 550 * 250 } as const;
  for (const name of ['star', 'plowhorse', 'puzzle', 'dog'] as const) {
    const area = beyond(name, LINES, PLOT).reduce((sum, box) => sum + box.width * box.height, 0);
    expect(area + quarters[name]).toBe(800 * 500);
  }
});

test('beyond(class, lines, plot) has no empty boxes where a line lies on the edge', () => {
  expect(beyond('plowhorse', { x: 50, y: 30 }, PLOT)).toEqual([]);
});

test('meets(ellipse, box) tells a region that reaches over a line from one that does not', () => {
  const [left, below] = beyond('star', LINES, PLOT);
  const near = { x: 330, y: 200, rx: 40, ry: 10 };
  expect(left && meets(near, left)).toBe(true);
  expect(below && meets(near, below)).toBe(false);
  expect(left && meets({ ...near, rx: 29 }, left)).toBe(false);
  expect(left && meets({ ...near, rx: 0 }, left)).toBe(false);
});

// The box about the ellipse reaches into the corner, the ellipse itself does not: at 45 degrees it ends at 0.71 of its axes.
test('meets(ellipse, box) goes by the ellipse and not by the box about it', () => {
  expect(meets({ x: 0, y: 0, rx: 10, ry: 10 }, { x: 8, y: 8, width: 9, height: 9 })).toBe(false);
  expect(meets({ x: 0, y: 0, rx: 10, ry: 10 }, { x: 7, y: 7, width: 9, height: 9 })).toBe(true);
});
