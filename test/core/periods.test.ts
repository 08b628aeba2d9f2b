import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Calendar } from '@/lib/core/calendar';
import { addDays, type Day, dayCount, dayText, parseDay, weekday } from '@/lib/core/days';
import { calendarPeriodOf, monthOf, periodBefore, periodNamed, periodsUpTo, weekOf } from '@/lib/core/periods';

function written(name: string, calendar?: Calendar): string {
  const { period, refusal } = periodNamed(name, calendar);
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
    expect(written('2026-10-01..2026-10-01')).toBe('no-days');
    expect(written('2026-10-02..2026-10-01')).toBe('end-before-start');
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

  test('periodNamed(period outside the years 1900 to 2199) is refused, and the period before the first one can be written', () => {
    for (const far of ['9999-12', '2200-01', '1899-12', '0001-01', '9999-W52', '0001-01-01..0002-01-01']) {
      expect([far, written(far)]).toEqual([far, 'far-year']);
    }
    expect(written('2026-10-01..9999-12-31')).toBe('far-year');
    expect(written('1900-01')).toBe('1900-01-01 1900-02-01');
    expect(written('2199-12')).toBe('2199-12-01 2200-01-01');
    expect(periodBefore(periodNamed('1900-01').period ?? expect.unreachable()).name).toBe('1899-12');
    const all = periodNamed('1900-01-01..2200-01-01').period ?? expect.unreachable();
    expect(periodBefore(all).name).toMatch(/^16\d\d-\d\d-\d\d\.\.1900-01-01$/);
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

// Hand-worked from ISO 8601's weeks: 2026-W01 starts on Monday 29 December 2025, and 2026 has 53 weeks.
describe('periodNamed in a calendar of weeks', () => {
  test('periodNamed(P01 to P13, thirteen four-week periods) has four weeks each, and week 53 in the last', () => {
    expect(written('2026-P01', '13x4')).toBe('2025-12-29 2026-01-26');
    expect(written('2026-P10', '13x4')).toBe('2026-09-07 2026-10-05');
    expect(written('2026-P13', '13x4')).toBe('2026-11-30 2027-01-04');
    expect(written('2025-P13', '13x4')).toBe('2025-12-01 2025-12-29');
    expect(written('2027-P01', '13x4')).toBe('2027-01-04 2027-02-01');
  });

  test('periodNamed(P01 to P12, 4-4-5) has quarters of 4, 4 and 5 weeks, and week 53 in the last', () => {
    expect(written('2026-P01', '4-4-5')).toBe('2025-12-29 2026-01-26');
    expect(written('2026-P03', '4-4-5')).toBe('2026-02-23 2026-03-30');
    expect(written('2026-P04', '4-4-5')).toBe('2026-03-30 2026-04-27');
    expect(written('2026-P10', '4-4-5')).toBe('2026-09-28 2026-10-26');
    expect(written('2026-P12', '4-4-5')).toBe('2026-11-23 2027-01-04');
    expect(written('2025-P12', '4-4-5')).toBe('2025-11-24 2025-12-29');
  });

  test('periodNamed(a number that the calendar does not have) says why', () => {
    expect(written('2026-P13', '4-4-5')).toBe('no-such-number');
    expect(written('2026-P14', '13x4')).toBe('no-such-number');
    expect(written('2026-P00', '13x4')).toBe('no-such-number');
    expect(written('0000-P01', '13x4')).toBe('no-such-number');
    expect(written('2026-P1', '13x4')).toBe('form');
  });

  test('periodNamed(month or week) is the same in every calendar', () => {
    for (const calendar of ['4-4-5', '13x4'] as const) {
      expect(written('2026-10', calendar)).toBe('2026-10-01 2026-11-01');
      expect(written('2026-W41', calendar)).toBe('2026-10-05 2026-10-12');
    }
  });
});

describe('calendarPeriodOf', () => {
  test('calendarPeriodOf(day, months) is its month', () => {
    expect(calendarPeriodOf(parseDay('2026-10-05') as Day, 'months')).toEqual(monthOf(parseDay('2026-10-05') as Day));
  });

  test('calendarPeriodOf(day) holds it, reads back by its name, is whole weeks, and follows on the one before without a gap', () => {
    const anyDay = fc.integer({ min: -20_000, max: 50_000 });
    fc.assert(
      fc.property(anyDay, fc.constantFrom<Calendar>('months', '4-4-5', '13x4'), (count, calendar) => {
        const period = calendarPeriodOf(count as Day, calendar);
        expect(period.range.from <= count && count < period.range.to).toBe(true);
        expect(periodNamed(period.name, calendar).period).toEqual(period);
        const before = periodBefore(period, calendar);
        expect(before.range.to).toBe(period.range.from);
        expect(calendarPeriodOf(before.range.from, calendar)).toEqual(before);
        if (calendar === 'months') return;
        const weeks = dayCount(period.range) / 7;
        const usual = calendar === '13x4' ? [4] : [[5, 4, 4][Number(period.name.slice(-2)) % 3]];
        const isLast = period.name.endsWith(calendar === '13x4' ? 'P13' : 'P12');
        expect([...usual, ...(isLast ? usual.map((each) => (each ?? 0) + 1) : [])]).toContain(weeks);
        expect(weekday(period.range.from)).toBe(1);
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
    const numbered = (name: string, calendar: Calendar): string | undefined => {
      const { period } = periodNamed(name, calendar);
      return period ? periodBefore(period, calendar).name : undefined;
    };
    expect(numbered('2026-P10', '4-4-5')).toBe('2026-P09');
    expect(numbered('2026-P01', '4-4-5')).toBe('2025-P12');
    expect(numbered('2027-P01', '13x4')).toBe('2026-P13');
    const { period } = periodNamed('2026-03');
    expect(period && addDays(periodBefore(period).range.to, 0)).toBe(period?.range.from);
  });
});

test('periodsUpTo(period, count) are of one kind, oldest first, without a gap', () => {
  const named = (name: string, calendar?: Parameters<typeof periodNamed>[1]) =>
    periodNamed(name, calendar).period ?? expect.unreachable(name);
  expect(periodsUpTo(named('2026-02'), 3).map(({ name }) => name)).toEqual(['2025-12', '2026-01', '2026-02']);
  expect(periodsUpTo(named('2026-P01', '13x4'), 2, '13x4').map(({ name }) => name)).toEqual(['2025-P13', '2026-P01']);
  expect(periodsUpTo(named('2026-W41'), 1).map(({ name }) => name)).toEqual(['2026-W41']);
});
