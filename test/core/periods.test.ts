import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays, type Day, dayCount, dayText, parseDay, weekday } from '@/lib/core/days';
import { monthOf, periodBefore, periodNamed, weekOf } from '@/lib/core/periods';

function written(name: string): string {
  const { period, refusal } = periodNamed(name);
  return period ? `${dayText(period.range.from)} ${dayText(period.range.to)}` : refusal;
}

describe('periodNamed', () => {
  test('periodNamed(month) is the calendar month', () => {
    expect(written('2026-10')).toBe('2026-10-01 2026-11-01');
    expect(written('2026-12')).toBe('2026-12-01 2027-01-01');
    expect(written('2024-02')).toBe('2024-02-01 2024-03-01');
    expect(written(' 2026-10 ')).toBe('2026-10-01 2026-11-01');
  });

  // ISO 8601: 2026 has 53 weeks; 2026-W01 starts in 2025; 2021-W53 does not exist.
  test('periodNamed(week) is the ISO week', () => {
    expect(written('2026-W41')).toBe('2026-10-05 2026-10-12');
    expect(written('2026-W01')).toBe('2025-12-29 2026-01-05');
    expect(written('2026-W53')).toBe('2026-12-28 2027-01-04');
    expect(written('2027-W01')).toBe('2027-01-04 2027-01-11');
    expect(written('2021-W53')).toBe('no-such-week');
    expect(written('2026-W00')).toBe('no-such-week');
    expect(written('2026-W54')).toBe('no-such-week');
  });

  test('periodNamed(A..B) leaves the end out', () => {
    expect(written('2026-10-01..2026-10-15')).toBe('2026-10-01 2026-10-15');
    expect(written('2026-10-01..2026-10-01')).toBe('end-not-after-start');
    expect(written('2026-10-02..2026-10-01')).toBe('end-not-after-start');
    expect(written('2026-02-30..2026-03-01')).toBe('no-such-day');
    expect(written('2026-02-01..2026-02-30')).toBe('no-such-day');
  });

  test('periodNamed(anything else) says why', () => {
    expect(written('2026-13')).toBe('no-such-month');
    expect(written('2026-00')).toBe('no-such-month');
    expect(written('0000-01')).toBe('no-such-month');
    expect(written('0000-W01')).toBe('no-such-week');
    expect(written('2026-P10')).toBe('needs-calendar');
    expect(written('October 2026')).toBe('form');
    expect(written('2026-1')).toBe('form');
    expect(written('')).toBe('form');
  });

  test('periodNamed(name of any week) starts on Monday, has seven days, and its first four hold 4 January in week 1', () => {
    fc.assert(
      fc.property(fc.integer({ min: -20_000, max: 50_000 }), (count) => {
        const week = weekOf(count as Day);
        expect(week.range.from <= count && count < week.range.to).toBe(true);
        expect([weekday(week.range.from), dayCount(week.range)]).toEqual([1, 7]);
        expect(periodNamed(week.name).period).toEqual(week);
        const fourth = parseDay(`${week.name.slice(0, 4)}-01-04`) as Day;
        const holds = week.range.from <= fourth && fourth < week.range.to;
        expect(week.name.endsWith('W01')).toBe(holds);
      }),
    );
  });
});

describe('monthOf', () => {
  test('monthOf(day) is the month that holds it, whose name reads back', () => {
    fc.assert(
      fc.property(fc.integer({ min: -20_000, max: 50_000 }), (count) => {
        const month = monthOf(count as Day);
        expect(month.range.from <= count && count < month.range.to).toBe(true);
        expect(periodNamed(month.name).period).toEqual(month);
        expect(dayText(count as Day).startsWith(month.name)).toBe(true);
      }),
    );
  });
});

describe('periodBefore', () => {
  const nameBefore = (name: string): string => {
    const { period } = periodNamed(name);
    return period ? periodBefore(period).name : 'none';
  };

  test('periodBefore(period) is the one of its kind that ends where it starts', () => {
    expect(nameBefore('2026-10')).toBe('2026-09');
    expect(nameBefore('2026-01')).toBe('2025-12');
    expect(nameBefore('2027-W01')).toBe('2026-W53');
    expect(nameBefore('2026-10-08..2026-10-15')).toBe('2026-10-01..2026-10-08');
    const { period } = periodNamed('2026-03');
    expect(period && addDays(periodBefore(period).range.to, 0)).toBe(period?.range.from);
  });
});
