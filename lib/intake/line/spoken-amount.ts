import { type LineQuestion, lineQuestion, type StatedAmount } from '../../model/line-question';
import { leadingAmount, type ReadAmount } from './amount';
import { joined } from './joined-amounts';
import { approximate, type LineStyle, plainAmount, withOunces } from './plain-amount';
import { leadingUnit } from './unit-words';

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
const LEVEL = /^(?:level|whole|each|x(?= ))\b ?/i;
const UNLIKELY_COUNT = 50; // nobody counts out five hundred of anything on one line; grams are meant
const TIMES = /^[x×] ?(?=\d)/i;
const CONTAINER = /^(?:can|tin|packet|package|pack|jar|bottle|carton|bag|box|tub|sachet)s? (?:of )?(?=\p{L})/iu;

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
      questions: [...questions, lineQuestion('pack-size', facts, whole)],
      rest: word?.rest ?? pack.rest,
    };
  }
  if (!unit) {
    const many = amount.quantity >= UNLIKELY_COUNT ? [lineQuestion('no-unit', { quantity: amount.quantity })] : [];
    return { ...common, unit: 'each', measure: false, others: [], questions: [...questions, ...many], rest };
  }
  const whole = {
    ...common,
    unit: unit.unit,
    measure: unit.measure,
    others: [],
    questions: [...questions, ...unit.questions],
    rest: unit.measure ? unit.rest : unit.rest.replace(CONTAINER, ''),
  };
  return whole.upTo === null ? withOunces(whole, style) : whole;
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
    questions: [...amount.questions, lineQuestion('pack-size', facts, { quantity, unit: size.unit })],
    rest: size.rest.replace(CONTAINER, ''),
  };
}

/** The amount that a text begins with, or null. Where no unit is said, things are counted: each. */
export function spokenAmount(text: string, style: LineStyle): SpokenAmount | null {
  const about = approximate(text.replace(/^from (?=\d)/i, ''));
  const amount = leadingAmount(about.rest, style.decimalComma);
  if (!amount || /^(?:and\b|little\b|bit\b|touch\b|%|\/)/i.test(amount.rest)) return null;
  const spoken = joined(multiplied(amount, style) ?? afterNumber(amount, style), style);
  return { ...spoken, questions: [...about.questions, ...spoken.questions] };
}
