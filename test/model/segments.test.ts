import { describe, expect, test } from 'vitest';
import type { Day } from '@/lib/core/days';
import { segmentOf, segmentsOf, segmentsWithin } from '@/lib/model/segments';

const range = { from: 10 as Day, to: 20 as Day };
const cutAt = (...changes: number[]) => segmentsOf(range, changes as Day[]);

describe('segmentsOf', () => {
  test('segmentsOf(range, changes) cuts at the days inside it, once each', () => {
    const segments = cutAt(15, 12, 15, 10, 20, 3, 25);
    expect([...segments.cuts]).toEqual([10, 12, 15, 20]);
    expect(segments.count).toBe(3);
    expect([...segments.ofDay]).toEqual([0, 0, 1, 1, 1, 2, 2, 2, 2, 2]);
  });

  test('segmentsOf(range, nothing) is one segment; of no days there is none', () => {
    expect(cutAt().count).toBe(1);
    expect(segmentsOf({ from: range.to, to: range.from }, [])).toMatchObject({ count: 0, cuts: [10] });
    expect(segmentsOf({ from: range.from, to: range.from }, [range.from]).count).toBe(0);
  });
});

describe('segmentOf', () => {
  test('segmentOf(segments, day) is the one that holds the day; outside the period it is a bug', () => {
    expect([10, 11, 12, 19].map((day) => segmentOf(cutAt(12), day as Day))).toEqual([0, 0, 1, 1]);
    expect(() => segmentOf(cutAt(12), 20 as Day)).toThrow(RangeError);
    expect(() => segmentOf(cutAt(12), 9 as Day)).toThrow(RangeError);
  });
});

describe('segmentsWithin', () => {
  test('segmentsWithin(segments, days) are those between two cuts', () => {
    const segments = cutAt(12, 15);
    const within = (from: number, to: number) => segmentsWithin(segments, { from: from as Day, to: to as Day });
    expect(within(10, 12)).toEqual({ from: 0, to: 1 });
    expect(within(12, 15)).toEqual({ from: 1, to: 2 });
    expect(within(12, 20)).toEqual({ from: 1, to: 3 });
  });
});
