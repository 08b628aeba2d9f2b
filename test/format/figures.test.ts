import { expect, test } from 'vitest';
import { figure, perCent, perCentFigure, signedFigure } from '@/lib/format/figures';

test('figure(value, locale, decimals) groups and points by locale', () => {
  expect(figure(27883.78, 'en-GB', 2)).toBe('27,883.78');
  expect(figure(27883.78, 'de-DE', 2)).toBe('27.883,78');
  expect(figure(27883.78, 'fr-FR', 2)).toBe('27\u2009883,78');
  expect(figure(27883.78, 'ar-EG', 2)).not.toMatch(/[\u0660-\u0669]/);
});

test('figure(value, locale, decimals) has a true minus and no negative zero', () => {
  expect(figure(-1.5, 'en-GB', 2)).toBe('\u22121.50');
  expect(figure(-0.001, 'en-GB', 2)).toBe('0.00');
});

test('figure(value, locale, decimals) rounds halves away from zero, and decimal strings as they stand', () => {
  expect(figure('2.675', 'en-GB', 2)).toBe('2.68');
  expect(figure('-2.675', 'en-GB', 2)).toBe('\u22122.68');
  expect(figure('90071992547409931.125', 'en-GB', 2)).toBe('90,071,992,547,409,931.13');
});

test('figure(value, locale, { least, most }) prints what there is between the two', () => {
  expect(figure('8.17', 'en-GB', { least: 2, most: 4 })).toBe('8.17');
  expect(figure('8.17236', 'en-GB', { least: 2, most: 4 })).toBe('8.1724');
});

test('signedFigure(value, locale, decimals) signs every change but none that rounds to nothing', () => {
  expect(signedFigure(126, 'en-GB', 2)).toBe('+126.00');
  expect(signedFigure(-37.6, 'en-GB', 2)).toBe('\u221237.60');
  expect(signedFigure(0.001, 'en-GB', 2)).toBe('0.00');
  expect(signedFigure(-0.001, 'en-GB', 2)).toBe('0.00');
});

test('perCent(fraction, locale) sets a thin space before the sign, whatever the locale', () => {
  expect(perCent(0.25, 'en-GB')).toBe('25.0\u2009%');
  expect(perCent(0.25, 'tr-TR')).toBe('25,0\u2009%');
  expect(perCent(-0.012, 'en-GB')).toBe('\u22121.2\u2009%');
});

test('perCentFigure(fraction, locale, decimals) moves the point without a double in between', () => {
  expect(perCentFigure(0.7 / 16, 'en-GB', { least: 0, most: 3 })).toBe('4.375');
  expect(perCentFigure(0.145, 'en-GB', 0)).toBe('15');
});
