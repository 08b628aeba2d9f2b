import { expect, test } from 'vitest';
import { latestWeek, weeksBeside, weekWithin } from '@/lib/answers/latest-week';
import { yearBefore } from '@/lib/answers/year-before';
import { addDays, dayText } from '@/lib/core/days';
import { periodNamed } from '@/lib/core/periods';
import { day } from '../books';

/** Wednesday to Sunday of each week from Wednesday 7 October 2026 up to a day. */
function soldUpTo(last: string) {
  const days = Array.from({ length: 60 }, (_, later) => addDays(day('2026-10-07'), later));
  return days.filter((each) => each <= day(last) && (each - day('2026-10-07')) % 7 < 5);
}
const never = () => false;
const period = (name: string) => periodNamed(name).period ?? expect.unreachable(name);

test.each([
  ['2026-10-25', '2026-W43'], // Sunday: all days are in
  ['2026-10-24', '2026-W42'], // Saturday: Sunday traded the week before
  ['2026-10-28', '2026-W43'],
  ['2026-10-09', '2026-W41'], // the first week there is
])('latestWeek(sold up to %s) is %s', (last, expected) => {
  expect(latestWeek(soldUpTo(last), never)?.name).toBe(expected);
});

test('latestWeek(sold) steps back from a week that is still running, and is null where nothing was sold', () => {
  expect(latestWeek(soldUpTo('2026-10-25'), ({ name }) => name === '2026-W43')?.name).toBe('2026-W42');
  expect(latestWeek([], never)).toBeNull();
});

test('weeksBeside(sold, week) are the nearest weeks with sales', () => {
  const sold = [...soldUpTo('2026-10-11'), ...soldUpTo('2026-11-15').filter((each) => each > day('2026-11-01'))];
  const names = (week: string) => weeksBeside(sold, period(week)).map((each) => each?.name ?? null);
  expect(names('2026-W41')).toEqual([null, '2026-W45']);
  expect(names('2026-W43')).toEqual(['2026-W41', '2026-W45']);
  expect(names('2026-W46')).toEqual(['2026-W45', null]);
});

test('weekWithin(sold, month) is the last week with sales that begins in the month, the latest whole one where that is within it', () => {
  const sold = soldUpTo('2026-10-28');
  const latest = latestWeek(sold, never);
  expect(weekWithin(sold, period('2026-10'), latest)?.name).toBe('2026-W43');
  expect(weekWithin(soldUpTo('2026-11-29'), period('2026-10'), period('2026-W48'))?.name).toBe('2026-W44');
  expect(weekWithin(sold, period('2026-12'), latest)).toBeNull();
});

test('yearBefore(period) has the same number in the year before, where there is one', () => {
  const named = (name: string, calendar: Parameters<typeof yearBefore>[1] = 'months') =>
    yearBefore(periodNamed(name, calendar).period ?? expect.unreachable(name), calendar)?.name ?? null;
  expect(named('2026-10')).toBe('2025-10');
  expect(named('2026-W43')).toBe('2025-W43');
  expect(named('2026-W53')).toBeNull(); // 2025 has 52 weeks
  expect(named('2026-P10', '13x4')).toBe('2025-P10');
  expect(named('2026-10-01..2026-10-15')).toBeNull();
  expect(dayText(period('2026-W43').range.from)).toBe('2026-10-19');
});
