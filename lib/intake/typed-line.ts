import { unitNamed } from '../core/units';
import { type LineQuestion, lineQuestion, type StatedAmount, type TypedLine } from '../model/line-question';
import { withoutBrackets } from './line/brackets';
import { laterAmount } from './line/later-amount';
import { otherAmount } from './line/other-amount';
import { placedAmount } from './line/placed-amount';
import { approximate, type LineStyle, plainAmount } from './line/plain-amount';
import { plainLine } from './line/plain-line';
import { bracketRemark, NO_REMARKS, tailRemark, together } from './line/remarks';
import type { SpokenAmount } from './line/spoken-amount';
import { type SpokenName, spokenName, trimmed } from './line/spoken-name';
import { measureWord } from './line/unit-words';

/** Longer than any line of one ingredient: a paragraph is not taken apart. */
const LINE_LIMIT = 400;

/**
 * One ingredient line as a cook types it: "250 g double cream", "zest of 4 lemons", "butter, 100 g, softened", "1 (14 oz) can condensed
 * milk", "2-3 eggs". Whatever is not certain is asked, with what was read as the proposal; any text gives a line and nothing throws.
 * Usual writing: the amount comes first, or last after the name; sizes are counted; a word such as leaf or can is a measure that the
 * ingredient has to explain (settledLine). Units by lib/core/units, in which a bare cup, tbsp or tsp follows the venue.
 */
export function typedLine(written: string, style: LineStyle): TypedLine {
  if (written.length > LINE_LIMIT) return unread(written, lineQuestion('line-too-long', { limit: LINE_LIMIT }));
  const plain = plainLine(written);
  const { text, inside } = withoutBrackets(plain);
  const { amount, use, part, words } = placedAmount(text, style);
  const [first = '', ...tail] = words.split(/[,;] ?|: | - /);
  const named = spokenName(trimmed(first));
  const bracketed = inside.map((inner) => ({ inner, stated: plainAmount(approximate(inner).rest, style) }));
  const others: readonly StatedAmount[] = [
    ...(amount?.others ?? []),
    ...bracketed.flatMap(({ stated }) => (amount && stated ? [{ quantity: stated.quantity, unit: stated.unit }] : [])),
  ];
  const remarks = together([
    { ...NO_REMARKS, use: [...use, ...named.use], alternatives: named.alternatives },
    ...(named.preparation === null ? [] : [named.preparation]).map(tailRemark),
    { ...NO_REMARKS, notes: named.note === null ? [] : [named.note] },
    { ...NO_REMARKS, notes: (amount?.others ?? []).map(({ quantity, unit }) => `${quantity} ${unit}`) },
    ...bracketed.map(({ inner, stated }) =>
      amount && stated ? { ...NO_REMARKS, notes: [inner] } : bracketRemark(inner),
    ),
    ...tail.map(tailRemark),
  ]);
  const isPack = /^[\d\s./,-]+\(/.test(plain) && amount?.unit === 'each';
  const uses = [...new Set(remarks.use)];
  const further = amount && laterAmount(words, style);
  const questions: readonly LineQuestion[] = [
    ...nameQuestions(plain, named, amount),
    ...(amount?.questions ?? []),
    ...(amount ? others.flatMap((other) => otherAmount(amount, other, isPack, style)) : []),
    ...(further ? [lineQuestion('more-quantities', { other: further.words })] : []),
    ...(remarks.alternatives.length > 0 ? [lineQuestion('alternatives', { names: remarks.alternatives })] : []),
    ...(uses.length > 1 ? [lineQuestion('two-uses', { uses })] : []),
    ...remarks.questions,
  ];
  const stated = amount === null || Number.isNaN(amount.quantity) ? null : amount;
  const counted = stated !== null && (stated.measure || unitNamed(stated.unit, style.measures)?.base === 'each');
  const partOf = part ?? named.part ?? remarks.part[0] ?? null;
  return {
    written,
    quantity: stated?.quantity ?? null,
    upTo: stated?.upTo ?? null,
    unit: stated?.unit ?? null,
    measure: stated?.measure ?? false,
    as: counted && partOf === null ? 'bought' : 'prepared',
    name: named.name,
    size: amount?.size ?? null,
    use: uses[0] ?? null,
    part: partOf,
    preparation: remarks.preparation.join(', ') || null,
    note: remarks.notes.join('; ') || null,
    alternatives: remarks.alternatives,
    certain: questions.length === 0,
    questions,
  };
}

function nameQuestions(plain: string, named: SpokenName, amount: SpokenAmount | null): readonly LineQuestion[] {
  if (!/[\p{L}\p{N}]/u.test(plain)) return [lineQuestion('nothing-read')];
  const wordAlone = amount !== null && !amount.measure && measureWord(named.name) !== null; // "2 cloves", but of what
  return [
    ...(named.name === '' || wordAlone ? [lineQuestion('no-name')] : []),
    ...(amount === null ? [lineQuestion('no-quantity', { written: plain })] : []),
    ...(named.several ? [lineQuestion('two-things', { written: named.name })] : []),
    ...(named.optional ? [lineQuestion('optional')] : []),
    ...(named.more === null ? [] : [lineQuestion('and-more', { written: named.more })]),
    ...(named.perPortion === null ? [] : [lineQuestion('per-portion', { written: named.perPortion })]),
  ];
}

function unread(written: string, question: LineQuestion): TypedLine {
  return {
    written,
    quantity: null,
    upTo: null,
    unit: null,
    measure: false,
    as: 'prepared',
    name: '',
    size: null,
    use: null,
    part: null,
    preparation: null,
    note: null,
    alternatives: [],
    certain: false,
    questions: [question],
  };
}
