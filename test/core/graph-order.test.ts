import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { childrenFirst, type Graph, loopOf } from '@/lib/core/graph-order';

function graphOf(children: readonly (readonly number[])[]): Graph {
  const starts = [0];
  for (const each of children) starts.push((starts.at(-1) ?? 0) + each.length);
  return { starts: Int32Array.from(starts), children: Int32Array.from(children.flat()) };
}

describe('childrenFirst', () => {
  test('childrenFirst(graph) places every node after its children', () => {
    const { order, knots } = childrenFirst(graphOf([[1, 2], [3], [3], []]));
    expect([...order]).toEqual([3, 1, 2, 0]);
    expect(knots).toEqual([]);
  });

  test('childrenFirst(graph) gives a loop of two, and of one, as knots', () => {
    expect(childrenFirst(graphOf([[1], [2], [1], [3]])).knots).toEqual([[1, 2], [3]]);
  });

  test('childrenFirst(graph) still places what hangs on a knot, and what the knot hangs on', () => {
    const { order, knots } = childrenFirst(graphOf([[1], [2, 3], [1], []]));
    expect(knots).toEqual([[1, 2]]);
    expect(order[0]).toBe(3);
    expect(order[3]).toBe(0);
  });

  test('childrenFirst(graph) takes a chain of 100,000 without running out of stack', () => {
    const count = 100_000;
    const chain = Array.from({ length: count }, (_, node) => (node + 1 < count ? [node + 1] : []));
    const { order, knots } = childrenFirst(graphOf(chain));
    expect([order[0], order[count - 1], knots.length]).toEqual([count - 1, 0, 0]);
  });

  test('childrenFirst(graph) of no nodes is empty', () => {
    expect(childrenFirst(graphOf([])).order.length).toBe(0);
  });

  test('childrenFirst(any graph): every node once; knots are exactly the nodes that lead back to themselves', () => {
    const graphs = fc.integer({ min: 1, max: 9 }).chain((count) =>
      fc.array(fc.array(fc.integer({ min: 0, max: count - 1 }), { maxLength: 3 }), {
        minLength: count,
        maxLength: count,
      }),
    );
    fc.assert(
      fc.property(graphs, (children) => {
        const { order, knots } = childrenFirst(graphOf(children));
        expect([...order].sort((a, b) => a - b)).toEqual(children.map((_, node) => node));
        const reach = (from: number): Set<number> => {
          const seen = new Set(children[from]);
          for (const node of seen) for (const child of children[node] ?? []) seen.add(child);
          return seen;
        };
        const circular = children.flatMap((_, node) => (reach(node).has(node) ? [node] : []));
        expect(knots.flat().sort((a, b) => a - b)).toEqual(circular);
        const knotOf = new Map(knots.flatMap((knot) => knot.map((node) => [node, knot] as const)));
        const place = new Map([...order].map((node, index) => [node, index]));
        for (const [node, each] of children.entries()) {
          for (const child of each) {
            const sameKnot = knotOf.has(node) && knotOf.get(node) === knotOf.get(child);
            if (!sameKnot) expect(place.get(child)).toBeLessThan(place.get(node) ?? -1);
          }
        }
        for (const knot of knots) {
          const loop = loopOf(graphOf(children), knot);
          expect(loop[0]).toBe(knot[0]);
          expect(loop.at(-1)).toBe(knot[0]);
          expect(new Set(loop).size).toBe(loop.length - 1);
          for (const [index, node] of loop.entries()) {
            const next = loop[index + 1];
            if (next !== undefined) expect(children[node]).toContain(next);
          }
        }
      }),
    );
  });
});

describe('loopOf', () => {
  test('loopOf(graph, knot) is the shortest way back, its first node at both ends', () => {
    const graph = graphOf([[1], [2, 3], [3], [0]]);
    expect(loopOf(graph, [0, 1, 2, 3])).toEqual([0, 1, 3, 0]);
    expect(loopOf(graphOf([[0]]), [0])).toEqual([0, 0]);
  });

  test('loopOf(graph, knot) stays inside the knot', () => {
    // 0 and 1 are a knot; 2 and 3 another, which 0 leads to
    expect(loopOf(graphOf([[2, 1], [0], [3], [2]]), [0, 1])).toEqual([0, 1, 0]);
  });
});
