import { currencyDigits } from './currency-digits';
import { type Decimals, figure, type Numeral, signedFigure } from './figures';

/** How a venue writes money: its currency (ISO 4217) and its locale (BCP 47). */
export interface Purse {
  readonly currency: string;
  readonly locale: string;
}

function minorDigits(currency: string): number {
  return currencyDigits(currency) ?? 2;
}

/** What stands before an amount or in the head of a column: the sign of the currency, or its code where it has none. */
export function currencySign({ currency, locale }: Purse): string {
  const parts = new Intl.NumberFormat(locale, { style: 'currency', currency, currencyDisplay: 'narrowSymbol' });
  return parts.formatToParts(0).find((part) => part.type === 'currency')?.value ?? currency;
}

/** Money in a table: the currency's own decimals, no sign of the currency, since the head of the column has it. */
export function moneyFigure(amount: Numeral, { currency, locale }: Purse): string {
  return figure(amount, locale, minorDigits(currency));
}

/** Money in a table with up to two decimals more than the currency has, where rounding could hide on which side a dish stands. */
export function exactMoneyFigure(amount: Numeral, { currency, locale }: Purse): string {
  const least = minorDigits(currency);
  return figure(amount, locale, { least, most: least + 2 });
}

function withSign(amount: Numeral, purse: Purse, decimals: Decimals): string {
  const text = figure(amount, purse.locale, decimals);
  const sign = currencySign(purse);
  const before = /\p{L}$/u.test(sign) ? `${sign}\u00a0` : sign;
  return text.startsWith('\u2212') ? `\u2212${before}${text.slice(1)}` : `${before}${text}`;
}

/** Money in a sentence: whole units, the currency in front and closed up (a code of letters keeps a space). */
export function wholeMoney(amount: Numeral, purse: Purse): string {
  return withSign(amount, purse, 0);
}

/** Money of one portion in a sentence, where the small change matters: the currency's own decimals, or so many. */
export function money(amount: Numeral, purse: Purse, decimals = minorDigits(purse.currency)): string {
  return withSign(amount, purse, decimals);
}

/** Money in a sentence with up to two decimals more than the currency has: a price that is multiplied further. */
export function exactMoney(amount: Numeral, purse: Purse): string {
  const least = minorDigits(purse.currency);
  return withSign(amount, purse, { least, most: least + 2 });
}

/**
 * An amount as a table prints it, as a whole number of the currency's smallest coins, so that a total can be made the sum of its rows
 * as printed. Unit: 1 / 10^digits of the currency. Rounds half away from zero, as the printed figure does.
 */
export function printedCoins(amount: Numeral, currency: string): number {
  const digits = minorDigits(currency);
  return Math.round(Number(plainFormat(digits).format(amount as `${number}`)) * 10 ** digits);
}

const plainFormats = new Map<number, Intl.NumberFormat>();

/** Made once for each number of decimals: to make one takes longer than to write a thousand amounts. */
function plainFormat(digits: number): Intl.NumberFormat {
  const known = plainFormats.get(digits);
  if (known) return known;
  const made = new Intl.NumberFormat('en', {
    minimumFractionDigits: digits,
    maximumFractionDigits: digits,
    useGrouping: false,
  });
  plainFormats.set(digits, made);
  return made;
}

/** The least amount that a table does not print as nothing: half the smallest coin. */
export function leastPrinted(currency: string): number {
  return 0.5 / 10 ** minorDigits(currency);
}

/** So many of the smallest coins, as a table prints money. */
export function coinsFigure(coins: number, { currency, locale }: Purse): string {
  const digits = minorDigits(currency);
  return figure(coins / 10 ** digits, locale, digits);
}

/** A change in so many of the smallest coins, as a table prints it: with its sign. */
export function signedCoins(coins: number, { currency, locale }: Purse): string {
  const digits = minorDigits(currency);
  return signedFigure(coins / 10 ** digits, locale, digits);
}
