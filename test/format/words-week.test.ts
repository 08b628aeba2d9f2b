import { expect, test } from 'vitest';
import { spanName, weekdayLabel, weekdayName } from '@/lib/format/periods';
import { plainText } from '@/lib/format/phrase';
import { type WeekSaid, weekSentences } from '@/lib/format/words/week';

const week = {
  ...{ covers: 501, spendPerCover: '17.886', sold: 595, contribution: '4357.68', foodCostPct: 0.232, coverage: 1 },
  provisional: false,
};
const said = (figures: Partial<WeekSaid>) =>
  plainText(
    weekSentences({
      ...{ month: '2026-W43', currency: 'EUR', locale: 'en-IE', running: false, week, before: null, yearBefore: null },
      days: ['2026-10-19', '2026-10-25'].map((day) => ({ day })),
      unsold: [],
      ...figures,
    }),
  ).replaceAll('\u2009', ' ');

test('weekSentences(week) says covers, spend, portions, what they left and the food cost', () => {
  expect(said({})).toBe(
    'Week 43, 19 to 25 October 2026: 501 covers spent €17.89 each; 595 portions left €4,358 before labour, at a food cost by recipe of 23.2 %.',
  );
  expect(said({ week: { ...week, covers: null, spendPerCover: null, contribution: null }, running: true })).toBe(
    'Week 43, 19 to 25 October 2026, so far: 595 portions were sold. What they left is not known yet.',
  );
});

test('weekSentences(week) holds it against the weeks before and the year before, as far as they are known', () => {
  const before = { ...week, weeks: 4, covers: 505, spendPerCover: '17.2', sold: 595.2 };
  const yearBefore = { ...week, month: '2025-W43', covers: null, spendPerCover: null, sold: 476 };
  expect(said({ before, yearBefore })).toContain(
    'Against the mean of the four weeks before: 1 % fewer covers, 4 % more spend per cover and as many portions; against week 43 of 2025: 25 % more portions.',
  );
  expect(said({ before: { ...before, weeks: 1 } })).toContain('Against the week before: ');
  expect(said({ before, running: true })).not.toContain('Against');
});

test('weekSentences(week) names what was on sale without selling', () => {
  const item = (name: string, daysWithoutSale: number) => ({ item: name, daysOnSale: 5, daysWithoutSale });
  expect(said({ unsold: [item('Figs, fig leaf cream', 5), item('Tart', 1)] })).toContain(
    'Two dishes had days on sale without a portion sold, most of all Figs, 5 of 5. One sold nothing all week.',
  );
  expect(said({ unsold: [item('Tart', 1)] })).toMatch(
    /One dish had days on sale without a portion sold: Tart, 1 of 5\.$/,
  );
});

test('spanName(first, last) and weekdayName(day) say days as the locale orders them', () => {
  expect(spanName('2026-10-26', '2026-11-01', 'en-IE')).toBe('26 October to 1 November 2026');
  expect(spanName('2026-10-19', '2026-10-25', 'en-US')).toBe('October 19 to 25, 2026');
  expect(spanName('2026-12-28', '2027-01-03', 'de-DE')).toBe('28 December 2026 to 3 January 2027');
  expect(weekdayName('2026-10-19', 'en-IE')).toBe('Mon 19 Oct');
  expect(weekdayLabel('2026-10-19', 'en-IE')).toEqual({ short: 'Mon', day: '19 Oct' });
});
