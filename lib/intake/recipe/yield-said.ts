import { lineQuestion } from '../../model/line-question';
import type { PastedYield } from '../../model/pasted-recipe';
import { withoutBrackets } from '../line/brackets';
import type { LineStyle } from '../line/plain-amount';
import { plainLine } from '../line/plain-line';
import { spokenAmount } from '../line/spoken-amount';
import { trimmed } from '../line/spoken-name';

const SAID =
  /^(?:(serves|servings?|serving size|portions?|feeds)|makes|yields?|recipe yield|quantity)\b(?: ?[:=-])? ?(?=\S)/i;
const PORTIONS = /^(?:people|persons?|servings?|portions?|guests?|covers?)\b/i;
const FOR = /^for (?=.* (?:people|persons?|servings?|portions?|guests?|covers?)[.]?$)/i;
const LONGEST = 60;

/** Reads what a batch gives from its own words: "4-6 servings", "12 tarts", "1 kg". */
export function yieldIn(written: string, words: string, portions: boolean, style: LineStyle): PastedYield {
  const { text, inside } = withoutBrackets(plainLine(words));
  const amount = spokenAmount(text, style);
  if (!amount || Number.isNaN(amount.quantity)) {
    const questions = [lineQuestion('no-quantity', { written })];
    return { written, quantity: null, upTo: null, unit: null, of: null, questions };
  }
  const counted = trimmed(amount.rest);
  const named = portions || PORTIONS.test(counted) ? 'portions' : counted || null;
  const others = inside.map((other) => lineQuestion('two-quantities', { other }));
  return {
    written,
    quantity: amount.quantity,
    upTo: amount.upTo,
    unit: amount.unit,
    of: amount.unit === 'each' ? named : null,
    questions: [...amount.questions, ...others],
  };
}

/** The yield that a line of text states, or null where it states none: "Serves 6", "Makes 12 tarts", "For 4 people", "4 servings". */
export function yieldSaid(written: string, style: LineStyle): PastedYield | null {
  const text = plainLine(written).replace(/^#+ /, '');
  if (text.length > LONGEST) return null;
  const said = SAID.exec(text) ?? FOR.exec(text);
  if (said) {
    const read = yieldIn(written, text.slice(said[0].length), said[1] !== undefined || /^for/i.test(text), style);
    return read.quantity === null ? null : read;
  }
  const amount = spokenAmount(text, style);
  return amount &&
    /(?:servings?|portions?|people|persons?)\.?$/i.test(text) &&
    /^\S+(?: ?- ?\S+| to \S+)? \p{L}+\.?$/iu.test(text)
    ? yieldIn(written, text, true, style)
    : null;
}
