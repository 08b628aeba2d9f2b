import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { spread } from '@/app/_ui/cost-tree/spread';
import { boughtInAll, isTree, treeFacts } from '@/app/_ui/cost-tree/tree-facts';
import { treeLayout } from '@/app/_ui/cost-tree/tree-layout';
import { TREE_SIZES } from '@/app/_ui/cost-tree/tree-size';
import type { CostLineAnswer } from '@/lib/answers/dish-cost-shape';
import { RUNS } from '../generated-books';

const NOTHING: CostLineAnswer = {
  ...{ item: '', kind: 'ingredient', position: 1, quantity: 1, unit: 'g', as: 'bought', use: null, part: null },
  ...{ choice: null, sharePct: null, byProduct: null, bought: 1, boughtUnit: 'g', usableYieldPct: 1, unitPrice: null },
  ...{ cost: null, floor: null, department: null, estimated: false, offer: null, recipe: null, issues: [] },
  ...{ closed: false, lines: [] },
};
const line = (item: string, cost: number | null, ...lines: CostLineAnswer[]): CostLineAnswer => ({
  ...{ ...NOTHING, item, lines, cost: cost === null ? null : String(cost) },
  kind: lines.length > 0 ? 'component' : 'ingredient',
});
const facts = (...lines: CostLineAnswer[]) =>
  treeFacts({
    item: 'Posset',
    currency: 'EUR',
    plateCost: lines.some(({ cost }) => cost === null) ? null : '1',
    lines,
  });

describe('spread', () => {
  test('spread(wanted, heights, low, high) leaves labels alone that do not touch', () => {
    expect(spread([10, 40, 80], [20, 20, 20], 0, 100)).toEqual([10, 40, 80]);
  });

  // both want 50: together they are 40 high around it; the third at 72 joins them: tops wanted 40, 40 and 62, less 0, 20 and 40
  test('spread(wanted, heights, low, high) lets labels that push each other stand together around what they want', () => {
    expect(spread([50, 50], [20, 20], 0, 100)).toEqual([40, 60]);
    const [a = 0, b = 0, c = 0] = spread([50, 50, 72], [20, 20, 20], 0, 100);
    expect([b - a, c - b]).toEqual([20, 20]);
    expect(a - 10).toBeCloseTo((40 + 20 + 22) / 3, 9);
  });

  test('spread(wanted, heights, low, high) keeps the order, never overlaps and stays inside', () => {
    const label = fc.tuple(fc.integer({ min: 0, max: 300 }), fc.integer({ min: 5, max: 25 }));
    fc.assert(
      fc.property(fc.array(label, { maxLength: 12 }), (labels) => {
        const sorted = [...labels].sort(([a], [b]) => a - b);
        const heights = sorted.map(([, height]) => height);
        const places = spread(
          sorted.map(([wanted]) => wanted),
          heights,
          0,
          300,
        );
        places.forEach((place, index) => {
          const [half, next] = [(heights[index] ?? 0) / 2, places[index + 1]];
          expect(place - half).toBeGreaterThanOrEqual(-1e-9);
          expect(place + half).toBeLessThanOrEqual(300 + 1e-9);
          if (next !== undefined)
            expect(next - (heights[index + 1] ?? 0) / 2).toBeGreaterThanOrEqual(place + half - 1e-9);
        });
      }),
      RUNS,
    );
  });
});

describe('treeFacts', () => {
  test('treeFacts(working) has the lines of the plate by cost, each with what is bought for it, one leaf a name', () => {
    const found = facts(
      line('Sugar', 0.1),
      line('Mousse', 0.7, line('Cream', 0.2), line('Base', 0.5, line('Cream', 0.1), line('Couverture', 0.4))),
      line('Leaf', 0.2),
    );
    expect(found.parts.map(({ name, cost }) => [name, cost])).toEqual([
      ['Mousse', 0.7],
      ['Leaf', 0.2],
      ['Sugar', 0.1],
    ]);
    const leaves = found.parts[0]?.leaves.map(({ name, cost }) => [name, +cost.toFixed(9)]);
    expect(leaves).toEqual([
      ['Couverture', 0.4],
      ['Cream', 0.3],
    ]);
    expect(found.total).toBeCloseTo(1, 12);
    expect(found).toMatchObject({ isFloor: false, unknown: [], credits: 0 });
    expect(boughtInAll(found)[0]).toEqual({ name: 'Couverture', cost: 0.4 });
    expect(isTree(found)).toBe(true);
    expect(isTree(facts(line('Estimate', 3)))).toBe(false);
  });

  test('treeFacts(working) of a half-known plate is a floor, and names what is not known', () => {
    const mousse = { ...line('Mousse', null, line('Cream', 0.2), line('Gold', null)), floor: '0.2' };
    const found = facts(line('Sugar', 0.1), mousse);
    expect(found.total).toBeCloseTo(0.3, 12);
    expect(found).toMatchObject({ isFloor: true, unknown: ['Gold'] });
    expect(found.parts[0]).toMatchObject({ name: 'Mousse', cost: 0.2, isFloor: true });
  });

  test('treeFacts(working) takes off what is made beside it', () => {
    const found = facts(line('Egg base', 0.4, line('Yolk', 0.6), line('Whites, left over', -0.2)));
    expect(found.credits).toBeCloseTo(0.2, 12);
    expect(found.total).toBeCloseTo(0.4, 12);
  });
});

describe('treeLayout', () => {
  const [wide, , narrow] = TREE_SIZES;

  test('treeLayout(facts, size, followed): heights are cost, from top to bottom, in both bars', () => {
    const found = facts(line('Mousse', 0.75, line('Couverture', 0.5), line('Cream', 0.25)), line('Leaf', 0.25));
    const layout = treeLayout(found, wide, 'Couverture');
    expect(layout.parts.map(({ y, height }) => [y, height])).toEqual([
      [0, layout.known * 0.75],
      [layout.known * 0.75, layout.known * 0.25],
    ]);
    expect(layout.leaves.map(({ height, isFollowed }) => [+(height / layout.known).toFixed(9), isFollowed])).toEqual([
      [0.5, true],
      [0.25, false],
      [0.25, false],
    ]);
    expect(layout.leafLabels.filter(({ isFollowed }) => isFollowed).map(({ name }) => name)).toEqual(['Couverture']);
    expect(layout.folded).toBe(0);
  });

  test('treeLayout(facts, size, followed) names only what still stands by its piece, and counts the rest', () => {
    const crumbs = Array.from({ length: 30 }, (_, index) => line(`Crumb ${index}`, 0.01));
    const found = facts(line('Mousse', 1.3, line('Couverture', 1), ...crumbs));
    const layout = treeLayout(found, wide, null);
    expect(layout.leafLabels.length + layout.folded).toBe(31);
    expect(layout.leafLabels[0]?.name).toBe('Couverture');
    for (const { y, barY } of layout.leafLabels) expect(Math.abs(y - barY)).toBeLessThanOrEqual(15);
  });

  test('treeLayout(facts, size, followed) draws many parts as one, and has room for what is not known', () => {
    const many = Array.from({ length: 20 }, (_, index) => line(`Part ${index}`, 1 - index / 100));
    const layout = treeLayout(facts(...many, line('Gold', null)), wide, null);
    expect(layout.parts).toHaveLength(16);
    expect(layout.partLabels.at(-1)?.name).toBe('and 5 more');
    expect(layout.height).toBeGreaterThan(layout.known);
  });

  test('treeLayout(facts, narrow, followed) says under a part what most of it is, and what is followed before that', () => {
    const mousse = line('Mousse', 0.9, line('Couverture', 0.5), line('Cream', 0.4));
    const found = facts(mousse, line('Leaf', 0.4));
    expect(treeLayout(found, narrow, null).partLabels.map(({ mostly }) => mostly?.name)).toEqual([
      'Couverture',
      undefined,
    ]);
    expect(treeLayout(found, narrow, 'Cream').partLabels[0]?.mostly?.name).toBe('Cream');
    expect(treeLayout(found, narrow, 'Cream').leafLabels).toEqual([]);
  });
});
