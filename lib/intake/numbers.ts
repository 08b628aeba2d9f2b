import { compareDecimals, type DecimalText, decimalText, fractionOfPerCent } from '../core/decimal-text';
import { CellFault, type ReadCell } from './cells';

/** How numbers are written in a file: a decimal comma is understood where the comma does not separate the cells. */
export interface NumberStyle {
  readonly decimalComma: boolean;
}

const MOST_DIGITS = 12;
const MOST_DECIMALS = 20;
const CURRENCY_SIGN = /\p{Sc}|^[A-Z]{3}\s*[+-]?[\d.,]+$|^[+-]?[\d.,]+\s*[A-Z]{3}$/u;

function read(cell: string, { decimalComma }: NumberStyle): DecimalText | CellFault {
  let plain = cell.replace(/^[\u2212\u2013]/, '-');
  if (decimalComma && /^[+-]?\d*,\d+$/.test(plain)) plain = plain.replace(',', '.');
  const number = decimalText(plain);
  if (number === null) {
    return CURRENCY_SIGN.test(cell)
      ? new CellFault('currency-sign')
      : new CellFault('not-a-number', { decimalComma: decimalComma ? 'yes' : 'no' });
  }
  const [whole = '', decimals = ''] = number.split('.');
  const fits = whole.replace('-', '').length <= MOST_DIGITS && decimals.length <= MOST_DECIMALS;
  return fits ? number : new CellFault('number-size');
}

const isNegative = (number: DecimalText): boolean => number.startsWith('-');

/** Any number. */
export function signed(style: NumberStyle): ReadCell<DecimalText> {
  return (cell) => read(cell, style);
}

/** Zero or more. */
export function notNegative(style: NumberStyle): ReadCell<DecimalText> {
  return (cell) => {
    const number = read(cell, style);
    return number instanceof CellFault || !isNegative(number) ? number : new CellFault('negative');
  };
}

/** More than zero. */
export function positive(style: NumberStyle): ReadCell<DecimalText> {
  return (cell) => {
    const number = read(cell, style);
    if (number instanceof CellFault) return number;
    return isNegative(number) || number === '0' ? new CellFault('not-positive') : number;
  };
}

/** A whole number, zero or more. */
export function whole(style: NumberStyle): ReadCell<DecimalText> {
  const zeroOrMore = notNegative(style);
  return (cell) => {
    const number = zeroOrMore(cell);
    return number instanceof CellFault || !number.includes('.') ? number : new CellFault('not-whole');
  };
}

/** A whole number of one or more, up to a limit. */
export function wholeUpTo(limit: number, style: NumberStyle): ReadCell<DecimalText> {
  const inRange = between({ from: 1, to: limit }, style);
  return (cell) => {
    const number = inRange(cell);
    return number instanceof CellFault || !number.includes('.') ? number : new CellFault('not-whole');
  };
}

/** The ends of a range; an end that is `open` does not belong to it. */
export interface Range {
  readonly from: number;
  readonly to: number;
  readonly open?: 'from' | 'to' | 'both';
}

function within(number: DecimalText, { from, to, open }: Range): boolean {
  const low = compareDecimals(number, from);
  const high = compareDecimals(number, to);
  return (
    (open === 'from' || open === 'both' ? low > 0 : low >= 0) &&
    (open === 'to' || open === 'both' ? high < 0 : high <= 0)
  );
}

function rangeWords({ from, to, open }: Range): string {
  const low = open === 'from' || open === 'both' ? `above ${from}` : `${from} or more`;
  const high = open === 'to' || open === 'both' ? `below ${to}` : `at most ${to}`;
  return `${low} and ${high}`;
}

/** A number within a range. */
export function between(range: Range, style: NumberStyle): ReadCell<DecimalText> {
  return (cell) => {
    const number = read(cell, style);
    if (number instanceof CellFault) return number;
    return within(number, range) ? number : new CellFault('out-of-range', { range: rangeWords(range) });
  };
}

/** Per cent within a range, as a fraction. The few rates of a long file are worked out once. */
export function perCent(range: Range, style: NumberStyle): ReadCell<DecimalText> {
  const percent = between(range, style);
  const known = new Map<string, DecimalText | CellFault>();
  return (cell) => {
    const before = known.get(cell);
    if (before !== undefined) return before;
    const number = percent(cell);
    const fraction = number instanceof CellFault ? number : fractionOfPerCent(number);
    if (known.size < 1000) known.set(cell, fraction);
    return fraction;
  };
}
