import { expect, test } from 'vitest';
import {
  coinsFigure,
  currencySign,
  exactMoneyFigure,
  money,
  moneyFigure,
  printedCoins,
  wholeMoney,
} from '@/lib/format/money';

const EURO = { currency: 'EUR', locale: 'en-GB' };

test('moneyFigure(amount, purse) prints the decimals of ISO 4217', () => {
  expect(moneyFigure('27883.784', EURO)).toBe('27,883.78');
  expect(moneyFigure('27883.784', { currency: 'JPY', locale: 'en-GB' })).toBe('27,884');
  expect(moneyFigure('2.5', { currency: 'KWD', locale: 'en-GB' })).toBe('2.500');
  // ISO 4217 gives the Iraqi dinar three decimals, Intl none.
  expect(moneyFigure('2.5', { currency: 'IQD', locale: 'en-GB' })).toBe('2.500');
});

test('exactMoneyFigure(amount, purse) shows up to two decimals more', () => {
  expect(exactMoneyFigure('8.17236', EURO)).toBe('8.1724');
  expect(exactMoneyFigure('8.1', EURO)).toBe('8.10');
});

test('wholeMoney(amount, purse) puts the currency in front, closed up, and the minus before it', () => {
  expect(wholeMoney('27883.78', EURO)).toBe('€27,884');
  expect(wholeMoney('27883.78', { currency: 'EUR', locale: 'de-DE' })).toBe('€27.884');
  expect(wholeMoney('-1200', EURO)).toBe('\u2212€1,200');
  expect(wholeMoney('-0.2', EURO)).toBe('€0');
  expect(wholeMoney('27884', { currency: 'CHF', locale: 'en-GB' })).toBe('CHF\u00a027,884');
});

test('money(amount, purse) keeps the small change', () => {
  expect(money('9.307', EURO)).toBe('€9.31');
});

test('currencySign(purse) is the sign, or the code where there is none', () => {
  expect(currencySign(EURO)).toBe('€');
  expect(currencySign({ currency: 'USD', locale: 'en-GB' })).toBe('$');
  expect(currencySign({ currency: 'XAF', locale: 'en-GB' })).toBe('FCFA');
});

// 1.005 and 2.675 print as 1.01 and 2.68: their printed sum is 3.69, while the sum of the amounts, 3.68, is not.
test('printedCoins(amount, currency) adds up to the rows as printed', () => {
  const coins = printedCoins('1.005', 'EUR') + printedCoins('2.675', 'EUR');
  expect(coins).toBe(369);
  expect(coinsFigure(coins, EURO)).toBe('3.69');
  expect(printedCoins('-12.345', 'EUR')).toBe(-1235);
  expect(printedCoins('12345.6', 'JPY')).toBe(12346);
});
