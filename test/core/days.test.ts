import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  addDays,
  type Day,
  dateOfDay,
  dayCount,
  dayOfDate,
  dayText,
  isWithin,
  parseDay,
  weekday,
} from '@/lib/core/days';

describe('parseDay', () => {
  test('parseDay(text) counts from 1970-01-01', () => {
    expect(parseDay('1970-01-01')).toBe(0);
    expect(parseDay('1970-01-02')).toBe(1);
    expect(parseDay('1969-12-31')).toBe(-1);
    expect(parseDay('2026-10-01')).toBe(20_727);
    expect(parseDay('0099-03-01')).toBe(dayOfDate(new Date('0099-03-01')));
  });

  test('parseDay(text) is null for a day that does not exist or another form', () => {
    for (const text of [
      '2026-02-29',
      '2026-13-01',
      '2026-00-10',
      '2026-04-31',
      '0000-01-01',
      '1.10.2026',
      '2026-1-1',
      '',
    ]) {
      expect(parseDay(text)).toBeNull();
    }
    expect(parseDay('2024-02-29')).not.toBeNull();
  });

  test('parseDay(dayText(day)) is the day', () => {
    fc.assert(
      fc.property(fc.integer({ min: -700_000, max: 2_900_000 }), (count) => {
        expect(parseDay(dayText(count as Day))).toBe(count);
        expect(dayOfDate(dateOfDay(count as Day))).toBe(count);
      }),
    );
  });
});

describe('weekday', () => {
  test('weekday(day) is 1 for Monday to 7 for Sunday', () => {
    expect(weekday(parseDay('1970-01-01') as Day)).toBe(4);
    expect(weekday(parseDay('2026-10-05') as Day)).toBe(1);
    expect(weekday(parseDay('2026-10-11') as Day)).toBe(7);
    expect(weekday(parseDay('1969-12-28') as Day)).toBe(7);
  });
});

describe('ranges', () => {
  const range = { from: 10 as Day, to: 13 as Day };

  test('isWithin(day, range) has the first day and not the last', () => {
    expect([9, 10, 12, 13].map((each) => isWithin(each as Day, range))).toEqual([false, true, true, false]);
  });

  test('dayCount(range) is never negative', () => {
    expect(dayCount(range)).toBe(3);
    expect(dayCount({ from: range.to, to: range.from })).toBe(0);
  });

  test('addDays(day, count) goes both ways', () => {
    expect(addDays(range.from, 3)).toBe(13);
    expect(addDays(range.from, -3)).toBe(7);
  });
});
