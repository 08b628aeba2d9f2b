import { laterAmount } from './later-amount';
import type { LineStyle } from './plain-amount';
import { type SpokenAmount, spokenAmount } from './spoken-amount';
import { takenFrom } from './spoken-name';
import { leadingUnit } from './unit-words';

/** The amount of a line, wherever it stands, and the words around it: what is before it comes first. */
export interface Placed {
  readonly amount: SpokenAmount | null;
  readonly use: readonly string[];
  readonly part: string | null;
  readonly words: string;
}

export function placedAmount(text: string, style: LineStyle): Placed {
  const leading = spokenAmount(text, style);
  if (leading) return { amount: leading, use: [], part: null, words: leading.rest };
  const from = takenFrom(text);
  if (from) {
    const amount = spokenAmount(from.from, style);
    return { amount, use: from.use, part: from.part, words: amount ? amount.rest : from.from };
  }
  const word = leadingUnit(text, style.measures);
  if (word?.measure && / of /i.test(text.slice(0, text.length - word.rest.length))) {
    const amount = { ...word, quantity: 1, upTo: null, size: null, others: [] }; // "pinch of salt" is one
    return { amount, use: [], part: null, words: word.rest };
  }
  const later = laterAmount(text, style);
  if (!later) return { amount: null, use: [], part: null, words: text };
  return { amount: later.amount, use: [], part: null, words: `${later.before}, ${later.amount.rest}` };
}
