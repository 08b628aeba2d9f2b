import { expect, test } from 'vitest';
import { dayName, momentName, monthAbbreviation, monthName, periodName } from '@/lib/format/periods';
import { countWord, portions, portionsFigure } from '@/lib/format/portions';

test('monthName(month, locale) and dayName(day, locale) speak English, in the order of an English locale', () => {
  expect(monthName('2026-10', 'en-GB')).toBe('October 2026');
  expect(monthName('2026-10', 'de-DE')).toBe('October 2026');
  expect(dayName('2026-10-02', 'en-GB')).toBe('2 October 2026');
  expect(dayName('2026-10-02', 'en-US')).toBe('October 2, 2026');
  expect(dayName('2026-10-02', 'ja-JP')).toBe('2 October 2026');
});

test('monthAbbreviation(month, locale) has three letters and no point', () => {
  expect(monthAbbreviation('2026-09', 'en-GB')).toBe('Sep');
  expect(monthAbbreviation('2026-10', 'de-DE')).toBe('Oct');
});

test('periodName(period, locale) names months, weeks, thirteenths and ranges, of which the end is excluded', () => {
  expect(periodName('2026-10', 'en-GB')).toBe('October 2026');
  expect(periodName('2026-W41', 'en-GB')).toBe('Week 41 of 2026');
  expect(periodName('2026-P10', 'en-GB')).toBe('Period 10 of 2026');
  expect(periodName('2026-10-01..2026-10-15', 'en-GB')).toBe('1 October 2026 to 14 October 2026');
  expect(periodName('2026-10-01..2026-10-02', 'en-GB')).toBe('1 October 2026');
});

test('periodName(no period, locale) is the text as it was given', () => {
  for (const text of [
    'nonsense',
    '2026-13',
    '2026-10-05..2026-10-05',
    '2026-10-05..2026-10-01',
    '2026-02-30..2026-03-02',
  ])
    expect(periodName(text, 'en-GB')).toBe(text);
});

test('portions(count, locale) counts one and many', () => {
  expect(portions(3412, 'en-GB')).toBe('3,412 portions');
  expect(portions(1, 'en-GB')).toBe('1 portion');
  expect(portionsFigure(12.5, 'en-GB')).toBe('12.5');
});

test('countWord(count, locale) writes small counts as words', () => {
  expect(countWord(6, 'en-GB')).toBe('six');
  expect(countWord(12, 'en-GB')).toBe('twelve');
  expect(countWord(13, 'en-GB')).toBe('13');
});

test('momentName(iso, place) is what the clock there says', () => {
  const at = '2026-10-31T23:50:12.123456Z';
  expect(momentName(at, { locale: 'en-IE', timeZone: 'Europe/Dublin' })).toBe('31 October 2026, 23:50');
  expect(momentName(at, { locale: 'en-IE', timeZone: 'Europe/Vienna' })).toBe('1 November 2026, 00:50');
});
