import { describe, expect, test } from 'vitest';
import { ascending, byText, grouped } from '@/lib/core/grouped';

describe('grouped', () => {
  test('grouped(rows, keyOf) keeps rows in order under each key', () => {
    const groups = grouped([3, 1, 4, 1, 5], (n) => n % 2 === 0);
    expect([...groups]).toEqual([
      [false, [3, 1, 1, 5]],
      [true, [4]],
    ]);
  });
});

describe('ascending', () => {
  const up = (a: number, b: number): number => a - b;

  test('ascending(rows, compare) sorts without touching the rows', () => {
    const rows = [2, 3, 1];
    expect(ascending(rows, up)).toEqual([1, 2, 3]);
    expect(rows).toEqual([2, 3, 1]);
  });

  test('ascending(rows, compare) hands back rows that are in order, equal ones included', () => {
    const rows = [1, 1, 2];
    expect(ascending(rows, up)).toBe(rows);
    expect(ascending([], up)).toEqual([]);
  });
});

describe('byText', () => {
  test('byText(a, b) goes by code units, capitals before small letters', () => {
    expect(['b', 'a', 'B', 'é'].sort(byText)).toEqual(['B', 'a', 'b', 'é']);
    expect(byText('a', 'a')).toBe(0);
  });
});
