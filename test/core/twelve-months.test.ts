import { expect, test } from 'vitest';
import { dayText } from '@/lib/core/days';
import { twelveMonthsTo } from '@/lib/core/twelve-months';
import { day } from '../books';

test.each([
  ['2026-11-01', '2025-11-01'],
  ['2025-03-01', '2024-03-01'],
  ['2024-02-29', '2023-02-28'],
])('twelveMonthsTo(%s) begins on %s', (to, from) => {
  const range = twelveMonthsTo(day(to));
  expect([dayText(range.from), dayText(range.to)]).toEqual([from, to]);
});
