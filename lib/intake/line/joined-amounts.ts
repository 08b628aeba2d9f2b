import { unitNamed } from '../../core/units';
import { lineQuestion } from '../../model/line-question';
import { type LineStyle, plainAmount } from './plain-amount';
import type { SpokenAmount } from './spoken-amount';

const JOINT = /^(?:\/|\||=|or\b|-|to\b) ?/i;
const PLUS = /^(?:\+|plus\b|and\b) ?/i;

/** 1 cup plus 2 tbsp: the sum in the first unit, with the question whether that is meant; null where nothing of the kind is said. */
function added(spoken: SpokenAmount, style: LineStyle): SpokenAmount | null {
  const plus = PLUS.exec(spoken.rest);
  const other = plus && plainAmount(spoken.rest.slice(plus[0].length), style);
  const [one, two] = [unitNamed(spoken.unit, style.measures), other && unitNamed(other.unit, style.measures)];
  if (!other || !one || !two || one.base !== two.base || one.base === 'each') return null;
  const quantity = spoken.quantity + (other.quantity * two.size) / one.size;
  const question = lineQuestion('more-quantities', { other: `${other.quantity} ${other.unit}` });
  return { ...spoken, quantity, upTo: null, questions: [...spoken.questions, question], rest: other.rest };
}

/** Takes up what is said right after an amount: 30 g to 70 g is a range, 500 g / 1 lb the same in other words. */
export function joined(spoken: SpokenAmount, style: LineStyle): SpokenAmount {
  const sum = added(spoken, style);
  if (sum) return sum;
  const joint = JOINT.exec(spoken.rest);
  const other = joint && plainAmount(spoken.rest.slice(joint[0].length), style);
  if (!other) return spoken;
  if (/^(?:-|to)/i.test(joint[0]) && other.unit === spoken.unit) {
    const [from, to] = [Math.min(spoken.quantity, other.quantity), Math.max(spoken.quantity, other.quantity)];
    const questions = [...spoken.questions, lineQuestion('range', { from, to })];
    return { ...spoken, quantity: from, upTo: to, questions, rest: other.rest };
  }
  const { rest, ...stated } = other;
  return joined({ ...spoken, others: [...spoken.others, stated], rest }, style);
}
