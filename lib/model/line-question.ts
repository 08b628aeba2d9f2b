/**
 * What is not certain about an ingredient line as a cook typed it. Each is asked in words (lib/format/words) with what was read as a
 * proposal; none is settled by a guess.
 */
export const LINE_QUESTIONS = [
  'line-too-long', // facts: limit (characters)
  'nothing-read', // there is no word in it
  'no-name', // an amount of nothing
  'no-quantity', // salt to taste. facts: written
  'quantity-size', // zero, or more digits than a quantity may have. facts: written
  'range', // 2-3 eggs; the lower end is proposed. facts: from, to
  'approximate', // about, heaped, a few. facts: word
  'comma', // 1,500 may be one and a half or fifteen hundred. facts: written, read, otherwise
  'mixed-number', // 1-1/2 may be one and a half or a range. facts: written, read
  'odd-fraction', // 5/6 may be five to six. facts: written
  'named-measure', // a leaf, a can: how much is one? facts: measure
  'unit-spelling', // facts: written, read
  'no-unit', // 500 cream: grams? facts: quantity
  'which-unit', // a bare pint or fluid ounce where the kitchen measures are metric. facts: unit, read, otherwise
  'pack-size', // 1 (14 oz) can. facts: count, size, unit
  'two-quantities', // 500 g (1 lb), 1 cup (125 g): they differ, or the weight says more than the first. facts: other
  'more-quantities', // a further amount later in the line. facts: other
  'alternatives', // milk or cream. facts: names[]
  'two-things', // salt and pepper; words after a comma that may be another thing. facts: written
  'two-uses', // zest and juice of a lemon. facts: uses[]
  'optional', // nobody knows whether it is in the dish
  'per-portion', // 2 figs per person, 1 g per kg: of how much? facts: written
  'and-more', // plus extra for dusting. facts: written
] as const;

export type LineQuestionCode = (typeof LINE_QUESTIONS)[number];

/** An amount in a unit, or in a word that only the ingredient can explain (a leaf, a tin). */
export interface StatedAmount {
  readonly quantity: number;
  readonly unit: string;
}

export interface LineQuestion {
  readonly code: LineQuestionCode;
  readonly facts: Readonly<Record<string, string | number | readonly string[]>>;
  /** What may be meant instead of what was read; null where the line itself holds the proposal, or there is none. */
  readonly proposal: StatedAmount | null;
}

export function lineQuestion(
  code: LineQuestionCode,
  facts: LineQuestion['facts'] = {},
  proposal: StatedAmount | null = null,
): LineQuestion {
  return { code, facts, proposal };
}

/** An ingredient line as it was understood. What is not certain stands in `questions`; there are none in a line that is. */
export interface TypedLine {
  /** The line as it was typed. */
  readonly written: string;
  /** Above zero; the lower end of a range; null where none is stated: unknown, never one. */
  readonly quantity: number | null;
  /** Upper end of a range, else null. */
  readonly upTo: number | null;
  /**
   * A name that lib/core/units knows ("g", "us pt", a bare "tbsp", which follows the venue's setting; "each" for things that are counted)
   * or, where `measure`, a word in the singular that only the ingredient can explain ("leaf").
   */
  readonly unit: string | null;
  readonly measure: boolean;
  /**
   * Whether usable yield applies. What is weighed is prepared; whole things, and measures of a word, are taken as they are bought: the zest
   * of 4 lemons takes four lemons.
   */
  readonly as: 'prepared' | 'bought';
  /** The thing, without its size, use and preparation; '' where none is named. */
  readonly name: string;
  /** small, medium, large ...: said of what is counted. */
  readonly size: string | null;
  /** What is taken of a whole thing and has a usable yield of its own: zest, juice, flesh. */
  readonly use: string | null;
  /** The part of a split thing: yolk, white, seeds. */
  readonly part: string | null;
  /** softened, finely chopped: what is done to it, as written. */
  readonly preparation: string | null;
  /** Words in brackets and whatever else was said. */
  readonly note: string | null;
  /** Other things that may be taken instead, as written. */
  readonly alternatives: readonly string[];
  readonly certain: boolean;
  readonly questions: readonly LineQuestion[];
}
