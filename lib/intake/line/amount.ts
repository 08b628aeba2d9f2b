import type { LineQuestion } from '../../model/line-question';

/** A number as a cook writes it, what follows it, and what is not certain about it. */
export interface ReadAmount {
  readonly quantity: number;
  readonly upTo: number | null;
  readonly questions: readonly LineQuestion[];
  /** The rest of the text. */
  readonly rest: string;
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
const RANGE = /^ ?(?:-|to |or |~) ?/i;
const COMMON_DENOMINATORS: readonly number[] = [2, 3, 4, 5, 8, 16];
const OF_A = /^ ?(?:of )?an? /i; // a quarter of a pound, half a lemon
const MOST_DIGITS = 12;

const asked = (code: LineQuestion['code'], facts: LineQuestion['facts']): LineQuestion => ({
  code,
  facts,
  proposal: null,
});

interface OneNumber {
  readonly value: number;
  readonly length: number;
  readonly questions: readonly LineQuestion[];
}

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
  return { value, questions: [asked('comma', { written, read: value, otherwise })] };
}

function wordNumber(text: string): OneNumber | null {
  const word = WORD.exec(text)?.[1]?.toLowerCase();
  if (word === undefined) return null;
  const last = word.split(' ').at(-1) ?? word;
  const open = ASKED[last];
  if (open !== undefined) return { value: open, length: word.length, questions: [asked('approximate', { word })] };
  const value = WORDS[last];
  return value === undefined ? null : { value, length: word.length, questions: [] };
}

const AND_A_HALF = /^ and an? (half|quarter)\b/i;

/** A number, and the half or quarter that may be said after it. */
function oneNumber(text: string, decimalComma: boolean): OneNumber | null {
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
    const questions = joint === '-' ? [asked('mixed-number', { written, read: value })] : [];
    return { value, length: written.length, questions };
  }
  const fraction = FRACTION.exec(text);
  if (fraction && Number(fraction[2]) > 0) {
    const [written, above, below] = fraction;
    const plain = COMMON_DENOMINATORS.includes(Number(below));
    const questions = plain ? [] : [asked('odd-fraction', { written })];
    return { value: Number(above) / Number(below), length: written.length, questions };
  }
  const digits = DIGITS.exec(text)?.[0];
  if (digits !== undefined) return { ...digitsValue(digits, decimalComma), length: digits.length };
  return wordNumber(text);
}

/** The number that a text begins with, or null: 250, 1 1/2, 0,5, "half a", "two or three", 2-3. */
export function leadingAmount(text: string, decimalComma: boolean): ReadAmount | null {
  const first = oneNumber(text, decimalComma);
  if (!first) return null;
  const after = text.slice(first.length);
  const joint = RANGE.exec(after);
  const second = joint ? oneNumber(after.slice(joint[0].length), decimalComma) : null;
  const isRange = joint && second && !/^(?:a|an)\b/i.test(after.slice(joint[0].length));
  const [from, to] = isRange
    ? [Math.min(first.value, second.value), Math.max(first.value, second.value)]
    : [first.value, null];
  const rest = isRange ? after.slice(joint[0].length + second.length) : after;
  const written = text.slice(0, text.length - rest.length);
  const tooLong = (written.match(/\d+/g) ?? []).some((digits) => digits.length > MOST_DIGITS);
  if (tooLong || !Number.isFinite(to ?? from)) {
    return { quantity: Number.NaN, upTo: null, questions: [asked('quantity-size', { written })], rest };
  }
  const questions = [
    ...(isRange
      ? [...first.questions, ...second.questions, asked('range', { from, to: to ?? from })]
      : first.questions),
    ...(from > 0 ? [] : [asked('quantity-size', { written })]),
  ];
  return { quantity: from > 0 ? from : Number.NaN, upTo: to, questions, rest: rest.replace(OF_A, '').trimStart() };
}
