import { currencyDigits } from './currency-digits';

const MOST_DECIMALS = 10;
/** A sum of many thousand doubles is good to twelve digits at the least (IEEE 754 binary64 holds nearly sixteen); what follows is noise. */
const GOOD_DIGITS = 12;

/**
 * Money as the interface writes it: an unrounded decimal string with at least the currency's own decimals, and beyond them no more than
 * twelve digits and ten decimals (2196069.6099999999 is a sum of cents and is written 2196069.61).
 */
export function moneyText(amount: number, currency: string): string {
  const least = currencyDigits(currency) ?? 2;
  const before = Math.trunc(Math.abs(amount)).toFixed(0).length;
  const most = Math.min(MOST_DECIMALS, Math.max(least, GOOD_DIGITS - before));
  const [whole = '0', decimals = ''] = amount.toFixed(most).split('.');
  const kept = decimals.replace(/0+$/, '').padEnd(least, '0');
  const text = kept === '' ? whole : `${whole}.${kept}`;
  return Number(text) === 0 ? text.replace('-', '') : text;
}
