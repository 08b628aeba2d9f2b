import { expect, test } from 'vitest';
import { MARK_SHAPES, markPath, shapesOfSections } from '@/app/_ui/mark-shape';

test('shapesOfSections(sections) tells nine sections and the dishes without one apart', () => {
  const sections = ['Bread', 'Cakes', 'Cold', 'Frozen', 'Hot', 'Ices', 'Small', 'Tarts', 'Warm', null];
  const shapes = shapesOfSections([...sections].reverse());
  expect([...shapes.keys()]).toEqual(sections);
  expect(new Set(shapes.values()).size).toBe(10);
});

test('markPath(shape) is another outline for each shape, closed, and no more than 14 px across', () => {
  const paths = MARK_SHAPES.map(markPath);
  expect(new Set(paths).size).toBe(MARK_SHAPES.length);
  for (const path of paths) {
    expect(path).toMatch(/^M.*Z$/);
    for (const figure of path.match(/-?\d+(\.\d+)?/g) ?? []) expect(Math.abs(Number(figure))).toBeLessThanOrEqual(7);
  }
});
