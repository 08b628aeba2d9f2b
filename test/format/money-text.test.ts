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

// ISO 4217, list one, as in the table of minor units: yen and won none, dinars of Bahrain three.
test('moneyText(amount, currency) follows ISO 4217', () => {
  expect([moneyText(7, 'JPY'), moneyText(7, 'BHD'), moneyText(7, 'CLF')]).toEqual(['7', '7.000', '7.0000']);
});
