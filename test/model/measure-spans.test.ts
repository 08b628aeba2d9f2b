import { describe, expect, test } from 'vitest';
import { batchMeasure } from '@/lib/model/measure';
import { changesWithin, extend, type MeasureSpan } from '@/lib/model/measure-spans';

const gram = batchMeasure('g', { g: 1, ml: null, each: null }, new Map());
const litre = batchMeasure('ml', { g: null, ml: 1, each: null }, new Map());
const written = (spans: readonly MeasureSpan[]): string[] =>
  spans.map(({ from, to, measure }) => `${from}-${to} ${measure?.base ?? 'unknown'}`);

describe('extend', () => {
  test('extend(spans, span) joins what follows without a change, and only that', () => {
    const spans: MeasureSpan[] = [];
    extend(spans, { from: 0, to: 1, measure: gram });
    extend(spans, { from: 1, to: 2, measure: gram });
    extend(spans, { from: 2, to: 4, measure: litre });
    extend(spans, { from: 4, to: 5, measure: litre });
    extend(spans, { from: 6, to: 7, measure: litre });
    extend(spans, { from: 7, to: 8, measure: null });
    extend(spans, { from: 8, to: 9, measure: null });
    expect(written(spans)).toEqual(['0-2 g', '2-5 ml', '6-7 ml', '7-9 unknown']);
  });
});

describe('changesWithin', () => {
  const recipe = { from: 2, to: 8, children: [1, 0], lines: [], byProduct: false, version: {} as never };

  test('changesWithin(recipe, measures) are its first segment and those in which a child begins or ends, in order', () => {
    const first = [
      { from: 0, to: 7, measure: gram },
      { from: 7, to: 9, measure: litre },
    ];
    const second = [
      { from: 1, to: 3, measure: gram },
      { from: 5, to: 8, measure: gram },
    ];
    expect(changesWithin(recipe, [first, second])).toEqual([2, 3, 5, 7]);
  });

  test('changesWithin(recipe, measures) passes over what begins or ends with it or outside it', () => {
    const around = [
      { from: 0, to: 2, measure: gram },
      { from: 2, to: 8, measure: litre },
      { from: 8, to: 9, measure: gram },
    ];
    expect(changesWithin(recipe, [around, []])).toEqual([2]);
  });
});
