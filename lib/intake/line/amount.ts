import { type LineQuestion, lineQuestion } from '../../model/line-question';
import { oneNumber } from './number-said';

/** A number as a cook writes it, what follows it, and what is not certain about it. */
export interface ReadAmount {
  readonly quantity: number;
  readonly upTo: number | null;
  readonly questions: readonly LineQuestion[];
  /** The rest of the text. */
  readonly rest: string;
}

const RANGE = /^ ?(?:-|to |or |~) ?/i;
const OF_A = /^ ?(?:of )?an? /i; // a quarter of a pound, half a lemon
const MOST_DIGITS = 12;

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
    return { quantity: Number.NaN, upTo: null, questions: [lineQuestion('quantity-size', { written })], rest };
  }
  const questions = [
    ...(isRange
      ? [...first.questions, ...second.questions, lineQuestion('range', { from, to: to ?? from })]
      : first.questions),
    ...(from > 0 ? [] : [lineQuestion('quantity-size', { written })]),
  ];
  return { quantity: from > 0 ? from : Number.NaN, upTo: to, questions, rest: rest.replace(OF_A, '').trimStart() };
}
