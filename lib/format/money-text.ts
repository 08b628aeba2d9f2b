import { currencyDigits } from './currency-digits';

const MOST_DECIMALS = 10;

/**
 * Money as the interface writes it: an unrounded decimal string with at least the currency's own decimals and at most ten
 * (3.1799999999999997 is the double nearest to 3.18 and is written 3.18).
 */
export function moneyText(amount: number, currency: string): string {
  const least = currencyDigits(currency) ?? 2;
  const [whole = '0', decimals = ''] = amount.toFixed(MOST_DECIMALS).split('.');
  const kept = decimals.replace(/0+$/, '').padEnd(least, '0');
  const text = kept === '' ? whole : `${whole}.${kept}`;
  return Number(text) === 0 ? text.replace('-', '') : text;
}
