import { describe, expect, test } from 'vitest';
import { lineList } from '@/lib/model/flat-lines';
import { downward, upward } from '@/lib/model/passes';

// nodes: 0 sugar, 1 butter, 2 base, 3 plate
function twoSegments() {
  const list = lineList();
  list.add(2, 0, 0.5, 0, 2);
  list.add(2, 1, 0.25, 0, 1); // butter in the base in the first segment only
  list.add(3, 2, 10, 0, 2);
  list.add(3, 1, 4, 1, 2); // butter on the plate in the second only
  return list.lines();
}
function oneSegment() {
  const list = lineList();
  list.add(2, 0, 0.5, 0, 1);
  list.add(2, 1, 0.25, 0, 1);
  list.add(3, 2, 10, 0, 1);
  return list.lines();
}

describe('upward', () => {
  // base 0.5 * 2 + 0.25 * 4 = 2; plate 20
  test('upward(lines, prices, 1) is the unit cost of everything, prices included', () => {
    expect([...upward(oneSegment(), Float64Array.of(2, 4, 0, 0), 1)]).toEqual([2, 4, 2, 20]);
    expect([...upward(oneSegment(), Float64Array.of(2, 4, 1, 7), 1)]).toEqual([2, 4, 3, 37]);
  });

  // first segment as above; second: base 0.5 * 3 = 1.5, plate 15 + 4 * 5 = 35
  test('upward(lines, prices, segments) costs each segment with its own lines and prices', () => {
    const prices = Float64Array.of(2, 3, 4, 5, 0, 0, 0, 0);
    expect([...upward(twoSegments(), prices, 2)]).toEqual([2, 3, 4, 5, 2, 1.5, 20, 35]);
  });

  test('upward(lines, a single 1, segments) is how much of that one thing a unit of everything takes', () => {
    expect([...upward(twoSegments(), Float64Array.of(0, 0, 1, 1, 0, 0, 0, 0), 2)]).toEqual([
      0, 0, 1, 1, 0.25, 0, 2.5, 4,
    ]);
  });

  test('upward(lines, prices, segments) leaves the prices as they were', () => {
    const prices = Float64Array.of(2, 4, 0, 0);
    upward(oneSegment(), prices, 1);
    expect([...prices]).toEqual([2, 4, 0, 0]);
  });
});

describe('upward of recipes of one to five lines', () => {
  // every node costs the sum of the thing bought, 1, and all before it: 1, 1 + 1, 1 + 1 + 2 ...
  test('upward(lines, prices, 1) takes every line once, however many a recipe has, and groups that name a parent again', () => {
    const list = lineList();
    for (let node = 1; node <= 5; node++) for (let child = 0; child < node; child++) list.add(node, child, 1, 0, 1);
    list.add(6, 0, 1, 0, 1);
    list.add(7, 5, 1, 0, 1);
    list.add(6, 7, 2, 0, 1);
    const prices = Float64Array.of(1, 0, 0, 0, 0, 0, 0, 0);
    const costs = [1, 1, 2, 4, 8, 16, 1 + 2 * 16, 16];
    expect([...upward(list.lines(), prices, 1)]).toEqual(costs);
    const twice = Float64Array.from([...prices].flatMap((price) => [price, price]));
    const { from, to, ...lines } = list.lines();
    const both = { ...lines, from, to: to.map(() => 2) };
    expect([...upward(both, twice, 2)]).toEqual(costs.flatMap((cost) => [cost, cost]));
    expect([...lineList().lines().starts]).toEqual([0]);
    expect([...upward(lineList().lines(), prices, 1)]).toEqual([...prices]);
  });
});

describe('downward', () => {
  // 3 plates: 30 base, 15 sugar, 7.5 butter; 2 g of base sold by itself add 1 and 0.5
  test('downward(lines, wanted, 1) is the need of everything, what is wanted included', () => {
    expect([...downward(oneSegment(), Float64Array.of(0, 0, 0, 3), 1)]).toEqual([15, 7.5, 30, 3]);
    expect([...downward(oneSegment(), Float64Array.of(0, 0, 2, 3), 1)]).toEqual([16, 8, 32, 3]);
  });

  test('downward(lines, wanted, segments) needs in each segment what its own lines take', () => {
    const wanted = Float64Array.of(0, 0, 0, 0, 0, 0, 3, 2);
    expect([...downward(twoSegments(), wanted, 2)]).toEqual([15, 10, 7.5, 8, 30, 20, 3, 2]);
    expect([...wanted]).toEqual([0, 0, 0, 0, 0, 0, 3, 2]);
  });
});
