/** Least and most decimals; one number means exactly so many. */
export type Decimals = number | { readonly least: number; readonly most: number };

/** A number, or an exact decimal string, which is rounded as it stands and never passes through a double. */
export type Numeral = number | string;

const MINUS = '\u2212';
const THIN_SPACE = '\u2009';

const made = new Map<string, Intl.NumberFormat>();

function formatter(locale: string, decimals: Decimals, more: Intl.NumberFormatOptions): Intl.NumberFormat {
  const { least, most } = typeof decimals === 'number' ? { least: decimals, most: decimals } : decimals;
  const key = JSON.stringify([locale, least, most, more]);
  const known = made.get(key);
  if (known) return known;
  const format = new Intl.NumberFormat(locale, {
    minimumFractionDigits: least,
    maximumFractionDigits: most,
    numberingSystem: 'latn',
    signDisplay: 'negative',
    ...more,
  });
  made.set(key, format);
  return format;
}

/** The sign or digits of one part; the narrow no-break space of some locales is in neither typeface, so a thin space stands in. */
function partText(part: Intl.NumberFormatPart): string {
  if (part.type === 'minusSign') return MINUS;
  if (part.type === 'percentSign' || part.type === 'literal') return '';
  return part.type === 'group' ? part.value.replace('\u202f', THIN_SPACE) : part.value;
}

function written(format: Intl.NumberFormat, value: Numeral): string {
  return format
    .formatToParts(value as `${number}`)
    .map(partText)
    .join('');
}

/**
 * A number with the thousands and decimals of a locale, rounded half away from zero; the minus is U+2212 and nothing rounds to a
 * negative zero.
 */
export function figure(value: Numeral, locale: string, decimals: Decimals): string {
  return written(formatter(locale, decimals, {}), value);
}

/** A change: always with its sign, but a change that rounds to nothing has none. */
export function signedFigure(value: Numeral, locale: string, decimals: Decimals): string {
  return written(formatter(locale, decimals, { signDisplay: 'exceptZero' }), value);
}

/** A fraction as a figure in per cent without the sign, as tables print it: 0.25 is 25.0. */
export function perCentFigure(fraction: number, locale: string, decimals: Decimals = 1): string {
  return written(formatter(locale, decimals, { style: 'percent' }), fraction);
}

/** A fraction in per cent as sentences print it: the figure, a thin space, the sign. */
export function perCent(fraction: number, locale: string, decimals: Decimals = 1): string {
  return `${perCentFigure(fraction, locale, decimals)}${THIN_SPACE}%`;
}
