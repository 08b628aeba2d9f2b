import { describe, expect, test } from 'vitest';
import { addDays } from '@/lib/core/days';
import { weekdayStrata } from '@/lib/model/mix/strata';
import { day } from '../../books';

// Monday, 5 October 2026
const monday = day('2026-10-05');
const strataOf = (offsets: readonly number[], portions: readonly number[]) =>
  weekdayStrata(
    offsets.map((offset) => addDays(monday, offset)),
    portions,
  );

describe('weekdayStrata', () => {
  test('weekdayStrata(days, portions) draws weekdays for each other, Monday first', () => {
    // Sunday, Monday, Monday, Sunday
    expect(strataOf([-1, 0, 7, 6], [9, 1, 2, 9])).toEqual([
      [1, 2],
      [0, 3],
    ]);
  });

  test('weekdayStrata(days, portions) makes one group of the weekdays with a single day', () => {
    expect(strataOf([0, 7, 1, 2], [5, 5, 5, 5])).toEqual([
      [0, 1],
      [2, 3],
    ]);
  });

  test('weekdayStrata(days, portions) adds a single day to the weekday nearest in mean portions', () => {
    // Mondays 10 and 20, Tuesdays 40 and 60; Wednesday of 30 is 15 from 15 and 20 from 50
    expect(strataOf([0, 7, 1, 8, 2], [10, 20, 40, 60, 30])).toEqual([
      [0, 1, 4],
      [2, 3],
    ]);
    expect(strataOf([0, 7, 1, 8, 2], [10, 20, 40, 60, 35])).toEqual([
      [0, 1],
      [2, 3, 4],
    ]);
    // as near to both: the earlier in the week
    expect(strataOf([0, 7, 1, 8, 2], [10, 20, 40, 50, 30])).toEqual([
      [0, 1, 4],
      [2, 3],
    ]);
  });

  // Mondays have a mean of 20, Tuesdays one of 30
  test('weekdayStrata(days, portions) goes by the mean of a weekday, however many days it has', () => {
    expect(strataOf([0, 7, 14, 1, 8, 2], [19, 20, 21, 29, 31, 25.05])).toEqual([
      [0, 1, 2],
      [3, 4, 5],
    ]);
  });

  test('weekdayStrata(a single day, none) is one group, none', () => {
    expect(strataOf([3], [7])).toEqual([[0]]);
    expect(strataOf([], [])).toEqual([]);
  });
});
