import { Decimal } from 'decimal.js';

/** An exact decimal number in its one shortest form: no plus, no spare zeros, never an exponent. Two are equal where their texts are. */
export type DecimalText = string & { readonly __brand: 'DecimalText' };

const PLAIN = /^([+-]?)0*(\d*)(?:\.(\d*))?$/;

/** The number in its shortest form, or null where the text is no plain decimal number. "+012.50" is "12.5", "-0.0" is "0", ".5" is "0.5". */
export function decimalText(text: string): DecimalText | null {
  const parts = PLAIN.exec(text);
  if (!parts || !/\d/.test(text)) return null;
  const whole = parts[2] || '0';
  const decimals = (parts[3] ?? '').replace(/0+$/, '');
  const size = decimals === '' ? whole : `${whole}.${decimals}`;
  return (parts[1] === '-' && size !== '0' ? `-${size}` : size) as DecimalText;
}

const DOUBLE_DIGITS = 15;

/**
 * A number as a spreadsheet keeps it, in the fifteen digits that it shows of it: "0.30000000000000004" is 0.3, "1E-3" is 0.001. Null where
 * the text is no number.
 */
export function shortestDouble(text: string): DecimalText | null {
  if (!/^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d{1,3})?$/i.test(text)) return null;
  return decimalText(new Decimal(text).toSignificantDigits(DOUBLE_DIGITS).toFixed());
}

/** Per cent as a fraction, exactly: 27.5 is 0.275. */
export function fractionOfPerCent(perCent: DecimalText): DecimalText {
  return new Decimal(perCent).div(100).toFixed() as DecimalText;
}

/** -1, 0 or 1 as the number is below, at or above the other. Exact for any number of digits. */
export function compareDecimals(a: DecimalText, b: DecimalText | number): number {
  return new Decimal(a).cmp(b);
}
