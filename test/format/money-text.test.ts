import { expect, test } from 'vitest';
import { moneyText } from '@/lib/format/money-text';

test('moneyText(amount, currency) writes at least the decimals of the currency and at most ten', () => {
  expect(moneyText(12.5, 'EUR')).toBe('12.50');
  expect(moneyText(3.1799999999999997, 'EUR')).toBe('3.18');
  expect(moneyText(1 / 3, 'EUR')).toBe('0.3333333333');
  expect(moneyText(21957.4, 'KRW')).toBe('21957.4');
  expect(moneyText(21957, 'KRW')).toBe('21957');
  expect(moneyText(0, 'EUR')).toBe('0.00');
  expect(moneyText(-1.2, 'EUR')).toBe('-1.20');
  expect(moneyText(-1e-12, 'EUR')).toBe('0.00');
});

// twelve digits in all, and the currency's own decimals however many stand before the point
test('moneyText(amount, currency) writes no digit that a sum of doubles does not hold', () => {
  expect(moneyText(2196069.6099999999, 'EUR')).toBe('2196069.61');
  expect(
    moneyText(
      Array.from({ length: 1e5 }, () => 0.1).reduce((a, b) => a + b, 0),
      'EUR',
    ),
  ).toBe('10000.00'); // 10000.000000018848
  expect(moneyText(1234567.0625, 'EUR')).toBe('1234567.0625');
  expect(moneyText(123456789012.34, 'EUR')).toBe('123456789012.34');
  expect(moneyText(-2196069.6099999999, 'EUR')).toBe('-2196069.61');
});

// ISO 4217, list one, as in the table of minor units: yen and won none, dinars of Bahrain three.
test('moneyText(amount, currency) follows ISO 4217', () => {
  expect([moneyText(7, 'JPY'), moneyText(7, 'BHD'), moneyText(7, 'CLF')]).toEqual(['7', '7.000', '7.0000']);
});
