import { type KitchenMeasures, unitNamed } from '../../core/units';
import type { LineQuestion, StatedAmount } from '../../model/line-question';
import { leadingAmount, type ReadAmount } from './amount';
import { leadingUnit } from './unit-words';

/** How a line is to be read: what the venue's kitchen measures with, and whether it writes a decimal comma. */
export interface LineStyle {
  readonly measures: KitchenMeasures;
  readonly decimalComma: boolean;
}

/** An amount with its unit as it stands at the beginning of a text. */
export interface SpokenAmount {
  readonly quantity: number;
  readonly upTo: number | null;
  readonly unit: string;
  readonly measure: boolean;
  readonly size: string | null;
  /** Amounts of the same thing in other words: the size of a pack, the weight in ounces. */
  readonly others: readonly StatedAmount[];
  readonly questions: readonly LineQuestion[];
  readonly rest: string;
}

const SIZE = /^((?:extra[- ])?(?:large|big|small)|medium|jumbo|tiny|huge)(?:[- ]sized?)?\b,? ?/i;
const ABOUT =
  /^(?:(about|around|approx(?:imately)?|appr|roughly|circa|ca|nearly|almost|at least|up to|heaped|heaping|rounded|scant|generous|good)\b\.? ?|~ ?)/i;
const LEVEL = /^(?:level|whole|each)\b ?/i;
const TIMES = /^[x×] ?(?=\d)/i;
const CONTAINER = /^(?:can|tin|packet|package|pack|jar|bottle|carton|bag|box|tub|sachet)s? (?:of )?(?=\p{L})/iu;
const JOINT = /^(?:\/|\||=|or\b|-|to\b) ?/i;
const PLUS = /^(?:\+|plus\b|and\b) ?/i;

const asked = (
  code: LineQuestion['code'],
  facts: LineQuestion['facts'],
  proposal: StatedAmount | null = null,
): LineQuestion => ({ code, facts, proposal });

/** A text without the word that makes an amount approximate, and the question that it raises. */
export function approximate(text: string): { readonly rest: string; readonly questions: readonly LineQuestion[] } {
  const found = ABOUT.exec(text);
  if (!found) return { rest: text, questions: [] };
  return { rest: text.slice(found[0].length), questions: [asked('approximate', { word: found[0].trim() })] };
}

/** A number and a unit, in figures or words, and nothing between them; null where there is none. */
export function plainAmount(text: string, style: LineStyle): (StatedAmount & { readonly rest: string }) | null {
  const amount = leadingAmount(text, style.decimalComma);
  const unit = amount && leadingUnit(amount.rest.replace(/^-(?=\p{L})/u, ''), style.measures);
  if (!amount || !unit || Number.isNaN(amount.quantity)) return null;
  return { quantity: amount.quantity, unit: unit.unit, rest: unit.rest };
}

/** What follows a number: its unit, a size, the size of a pack. */
function afterNumber(amount: ReadAmount, style: LineStyle): SpokenAmount {
  const about = approximate(amount.rest.replace(/^-(?=\p{L})/u, ''));
  const size = SIZE.exec(about.rest);
  const rest = about.rest.slice(size?.[0].length ?? 0).replace(LEVEL, '');
  const pack = plainAmount(rest, style);
  const unit = leadingUnit(pack ? pack.rest : rest, style.measures);
  const questions = [...amount.questions, ...about.questions];
  const common = { quantity: amount.quantity, upTo: amount.upTo, size: size?.[1]?.toLowerCase() ?? null };
  if (pack) {
    const word = unit?.measure ? unit : null;
    const facts = { count: amount.quantity, size: pack.quantity, unit: pack.unit };
    const whole = { quantity: amount.quantity * pack.quantity, unit: pack.unit };
    return {
      ...common,
      unit: word?.unit ?? 'each',
      measure: word !== null,
      others: [],
      questions: [...questions, asked('pack-size', facts, whole)],
      rest: word?.rest ?? pack.rest,
    };
  }
  if (!unit) return { ...common, unit: 'each', measure: false, others: [], questions, rest };
  return {
    ...common,
    unit: unit.unit,
    measure: unit.measure,
    others: [],
    questions: [...questions, ...unit.questions],
    rest: unit.measure ? unit.rest : unit.rest.replace(CONTAINER, ''),
  };
}

/** 2 x 400 g: the whole of it, with the question whether that is meant. */
function multiplied(amount: ReadAmount, style: LineStyle): SpokenAmount | null {
  const times = TIMES.exec(amount.rest);
  const size = times && plainAmount(amount.rest.slice(times[0].length), style);
  if (!size) return null;
  const quantity = amount.quantity * size.quantity;
  const facts = { count: amount.quantity, size: size.quantity, unit: size.unit };
  return {
    quantity,
    upTo: amount.upTo === null ? null : amount.upTo * size.quantity,
    unit: size.unit,
    measure: false,
    size: null,
    others: [],
    questions: [...amount.questions, asked('pack-size', facts, { quantity, unit: size.unit })],
    rest: size.rest.replace(CONTAINER, ''),
  };
}

/** 1 cup plus 2 tbsp: the sum in the first unit, with the question whether that is meant; null where nothing of the kind is said. */
function added(spoken: SpokenAmount, style: LineStyle): SpokenAmount | null {
  const plus = PLUS.exec(spoken.rest);
  const other = plus && plainAmount(spoken.rest.slice(plus[0].length), style);
  const [one, two] = [unitNamed(spoken.unit, style.measures), other && unitNamed(other.unit, style.measures)];
  if (!other || !one || !two || one.base !== two.base || one.base === 'each') return null;
  const quantity = spoken.quantity + (other.quantity * two.size) / one.size;
  const question = asked('more-quantities', { other: `${other.quantity} ${other.unit}` });
  return { ...spoken, quantity, upTo: null, questions: [...spoken.questions, question], rest: other.rest };
}

/** Takes up what is said right after an amount: 30 g to 70 g is a range, 500 g / 1 lb the same in other words. */
function joined(spoken: SpokenAmount, style: LineStyle): SpokenAmount {
  const sum = added(spoken, style);
  if (sum) return sum;
  const joint = JOINT.exec(spoken.rest);
  const other = joint && plainAmount(spoken.rest.slice(joint[0].length), style);
  if (!other) return spoken;
  if (/^(?:-|to)/i.test(joint[0]) && other.unit === spoken.unit) {
    const [from, to] = [Math.min(spoken.quantity, other.quantity), Math.max(spoken.quantity, other.quantity)];
    const questions = [...spoken.questions, asked('range', { from, to })];
    return { ...spoken, quantity: from, upTo: to, questions, rest: other.rest };
  }
  const { rest, ...stated } = other;
  return joined({ ...spoken, others: [...spoken.others, stated], rest }, style);
}

/** The amount that a text begins with, or null. Where no unit is said, things are counted: each. */
export function spokenAmount(text: string, style: LineStyle): SpokenAmount | null {
  const about = approximate(text.replace(/^from (?=\d)/i, ''));
  const amount = leadingAmount(about.rest, style.decimalComma);
  if (!amount || /^(?:and\b|little\b|bit\b|touch\b|%|\/)/i.test(amount.rest)) return null;
  const spoken = joined(multiplied(amount, style) ?? afterNumber(amount, style), style);
  return { ...spoken, questions: [...about.questions, ...spoken.questions] };
}
