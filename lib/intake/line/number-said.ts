import { type LineQuestion, lineQuestion } from '../../model/line-question';

/** One number as a cook writes or says it, and how much of the text it takes. */
export interface OneNumber {
  readonly value: number;
  readonly length: number;
  readonly questions: readonly LineQuestion[];
}

const WORDS: Readonly<Record<string, number>> = {
  a: 1,
  an: 1,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  eleven: 11,
  twelve: 12,
  half: 0.5,
  quarter: 0.25,
};
const ASKED: Readonly<Record<string, number>> = { couple: 2, few: 3 };

const MIXED = /^(\d{1,6})( |-| and )(\d{1,3})\/(\d{1,3})(?![\d/])/;
const FRACTION = /^(\d{1,3})\/(\d{1,3})(?![\d/])/;
const DIGITS = /^\d+(?:[.,]\d+)*|^[.,]\d+/;
const WORD = /^(half|quarter|(?:a|an|one)(?: (?:half|quarter|couple|few))?|[a-z]+)(?![a-z'-])/i;
const COMMON_DENOMINATORS: readonly number[] = [2, 3, 4, 5, 8, 16];

function digitsValue(written: string, decimalComma: boolean): Omit<OneNumber, 'length'> {
  if (/^\d{1,3}(,\d{3}){2,}(\.\d+)?$/.test(written))
    return { value: Number(written.replaceAll(',', '')), questions: [] };
  if (/^\d{1,3}(\.\d{3}){2,}(,\d+)?$/.test(written)) {
    return { value: Number(written.replaceAll('.', '').replace(',', '.')), questions: [] };
  }
  const asDecimal = Number(written.replace(',', '.'));
  const looksGrouped = /^[1-9]\d{0,2}[.,]\d{3}$/.test(written) && (written.includes(',') || decimalComma);
  if (!looksGrouped) return { value: asDecimal, questions: [] };
  const grouped = Number(written.replace(/[.,]/, ''));
  const groupMark = decimalComma ? '.' : ',';
  const [value, otherwise] = written.includes(groupMark) ? [grouped, asDecimal] : [asDecimal, grouped];
  return { value, questions: [lineQuestion('comma', { written, read: value, otherwise })] };
}

function wordNumber(text: string): OneNumber | null {
  const word = WORD.exec(text)?.[1]?.toLowerCase();
  if (word === undefined) return null;
  const last = word.split(' ').at(-1) ?? word;
  const open = ASKED[last];
  if (open !== undefined)
    return { value: open, length: word.length, questions: [lineQuestion('approximate', { word })] };
  const value = WORDS[last];
  return value === undefined ? null : { value, length: word.length, questions: [] };
}

const AND_A_HALF = /^ and an? (half|quarter)\b/i;

/** A number, and the half or quarter that may be said after it. */
export function oneNumber(text: string, decimalComma: boolean): OneNumber | null {
  const number = plainNumber(text, decimalComma);
  const more = number && AND_A_HALF.exec(text.slice(number.length));
  if (!number || !more) return number;
  const value = number.value + (WORDS[(more[1] ?? '').toLowerCase()] ?? 0);
  return { ...number, value, length: number.length + more[0].length };
}

function plainNumber(text: string, decimalComma: boolean): OneNumber | null {
  const mixed = MIXED.exec(text);
  if (mixed && Number(mixed[4]) > 0) {
    const [written, whole, joint] = mixed;
    const value = Number(whole) + Number(mixed[3]) / Number(mixed[4]);
    const questions = joint === '-' ? [lineQuestion('mixed-number', { written, read: value })] : [];
    return { value, length: written.length, questions };
  }
  const fraction = FRACTION.exec(text);
  if (fraction && Number(fraction[2]) > 0) {
    const [written, above, below] = fraction;
    const plain = COMMON_DENOMINATORS.includes(Number(below));
    const questions = plain ? [] : [lineQuestion('odd-fraction', { written })];
    return { value: Number(above) / Number(below), length: written.length, questions };
  }
  const digits = DIGITS.exec(text)?.[0];
  if (digits !== undefined) return { ...digitsValue(digits, decimalComma), length: digits.length };
  return wordNumber(text);
}
