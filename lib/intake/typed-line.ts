import { unitNamed } from '../core/units';
import type { LineQuestion, StatedAmount, TypedLine } from '../model/line-question';
import { withoutBrackets } from './line/brackets';
import { laterAmount } from './line/later-amount';
import { plainLine } from './line/plain-line';
import { bracketRemark, NO_REMARKS, tailRemark, together } from './line/remarks';
import { approximate, type LineStyle, plainAmount, type SpokenAmount, spokenAmount } from './line/spoken-amount';
import { type SpokenName, spokenName, takenFrom, trimmed } from './line/spoken-name';
import { leadingUnit, measureWord } from './line/unit-words';

const asked = (
  code: LineQuestion['code'],
  facts: LineQuestion['facts'] = {},
  proposal: StatedAmount | null = null,
): LineQuestion => ({ code, facts, proposal });

/** The amount of a line, wherever it stands, and the words around it: what is before it comes first. */
interface Placed {
  readonly amount: SpokenAmount | null;
  readonly use: readonly string[];
  readonly part: string | null;
  readonly words: string;
}

function place(text: string, style: LineStyle): Placed {
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

const NEAR_ENOUGH = 0.01; // 450 g (1 lb) are one amount

function sameAmount(amount: SpokenAmount, other: StatedAmount, style: LineStyle): boolean {
  const [one, two] = [unitNamed(amount.unit, style.measures), unitNamed(other.unit, style.measures)];
  if (!one || !two || one.base !== two.base || amount.measure) return false;
  return Math.abs((other.quantity * two.size) / (amount.quantity * one.size) - 1) <= NEAR_ENOUGH;
}

function otherAmount(amount: SpokenAmount, other: StatedAmount, pack: boolean, style: LineStyle): LineQuestion[] {
  if (pack || amount.measure) {
    const facts = { count: amount.quantity, size: other.quantity, unit: other.unit };
    return [asked('pack-size', facts, { quantity: amount.quantity * other.quantity, unit: other.unit })];
  }
  const words = `${other.quantity} ${other.unit}`;
  return sameAmount(amount, other, style) ? [] : [asked('two-quantities', { other: words }, other)];
}

/**
 * One ingredient line as a cook types it: "250 g double cream", "zest of 4 lemons", "butter, 100 g, softened", "1 (14 oz) can condensed
 * milk", "2-3 eggs". Whatever is not certain is asked, with what was read as the proposal; any text gives a line and nothing throws.
 * Usual writing: the amount comes first, or last after the name; sizes are counted; a word such as leaf or can is a measure that the
 * ingredient has to explain (settledLine). Units by lib/core/units, in which a bare cup, tbsp or tsp follows the venue.
 */
export function typedLine(written: string, style: LineStyle): TypedLine {
  const plain = plainLine(written);
  const { text, inside } = withoutBrackets(plain);
  const { amount, use, part, words } = place(text, style);
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
    ...bracketed.filter(({ stated }) => !(amount && stated)).map(({ inner }) => bracketRemark(inner)),
    ...tail.map(tailRemark),
  ]);
  const isPack = /^[\d\s./,-]+\(/.test(plain) && amount?.unit === 'each';
  const uses = [...new Set(remarks.use)];
  const further = amount && laterAmount(words, style);
  const questions: readonly LineQuestion[] = [
    ...nameQuestions(plain, named, amount),
    ...(amount?.questions ?? []),
    ...(amount ? others.flatMap((other) => otherAmount(amount, other, isPack, style)) : []),
    ...(further ? [asked('more-quantities', { other: further.words })] : []),
    ...(remarks.alternatives.length > 0 ? [asked('alternatives', { names: remarks.alternatives })] : []),
    ...(uses.length > 1 ? [asked('two-uses', { uses })] : []),
    ...remarks.questions,
  ];
  const stated = amount === null || Number.isNaN(amount.quantity) ? null : amount;
  const counted = stated !== null && (stated.measure || unitNamed(stated.unit, style.measures)?.base === 'each');
  const partOf = part ?? named.part;
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
  if (!/[\p{L}\p{N}]/u.test(plain)) return [asked('nothing-read')];
  const wordAlone = amount !== null && !amount.measure && measureWord(named.name) !== null; // "2 cloves", but of what
  return [
    ...(named.name === '' || wordAlone ? [asked('no-name')] : []),
    ...(amount === null ? [asked('no-quantity', { written: plain })] : []),
    ...(named.several ? [asked('two-things', { written: named.name })] : []),
    ...(named.optional ? [asked('optional')] : []),
    ...(named.more === null ? [] : [asked('and-more', { written: named.more })]),
    ...(named.perPortion === null ? [] : [asked('per-portion', { written: named.perPortion })]),
  ];
}
