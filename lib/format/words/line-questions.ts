import type { LineQuestion, LineQuestionCode } from '../../model/line-question';

type Facts = LineQuestion['facts'];

const one = (facts: Facts, name: string): string => String(facts[name] ?? '');
const listed = (facts: Facts, name: string, joint: string): string => {
  const value = facts[name];
  const names = typeof value === 'object' ? value : [];
  return names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} ${joint} ${names.at(-1)}`;
};
const number = (facts: Facts, name: string): string => String(Number(Number(facts[name]).toFixed(4)));

/** What is asked about a line as it was typed: what was read, and what has to be said. */
const SENTENCES: Readonly<Record<LineQuestionCode, (facts: Facts) => string>> = {
  'line-too-long': (f) =>
    `This is longer than ${number(f, 'limit')} characters. Give each ingredient a line of its own.`,
  'nothing-read': () => 'There is nothing in this line. Write what goes in, such as 250 g double cream.',
  'no-name': () => 'How much is clear, but of what? Add the ingredient.',
  'no-quantity': () => 'How much of it? A line without a quantity costs nothing that is known.',
  'quantity-size': (f) => `“${one(f, 'written')}” is no quantity. Write a number above zero, of at most 12 digits.`,
  range: (f) =>
    `From ${number(f, 'from')} to ${number(f, 'to')}: which is it? ${number(f, 'from')} is taken until you say.`,
  approximate: (f) => `“${one(f, 'word')}” leaves it open. Is the quantity right as it stands?`,
  comma: (f) =>
    `“${one(f, 'written')}” is read as ${number(f, 'read')}. If it means ${number(f, 'otherwise')}, write that.`,
  'mixed-number': (f) =>
    `“${one(f, 'written')}” is read as ${number(f, 'read')}. If it means from one to the other, say which.`,
  'odd-fraction': (f) =>
    `“${one(f, 'written')}” is read as a fraction. If it means from one number to the next, say which.`,
  'named-measure': (f) =>
    `How much is one ${one(f, 'measure')}? Weigh one and add it to the ingredient’s measures, or write the weight here.`,
  'unit-spelling': (f) => `“${one(f, 'written')}” is read as ${one(f, 'read')}. Is that what was meant?`,
  'no-unit': (f) => `${number(f, 'quantity')} of what: pieces, grams, millilitres? Write the unit.`,
  'which-unit': (f) =>
    `“${one(f, 'unit')}” is read as ${one(f, 'read')}. If it is the larger or smaller one, write ${one(f, 'otherwise')}.`,
  'pack-size': (f) =>
    `${number(f, 'count')} of ${number(f, 'size')} ${one(f, 'unit')}: is that the weight to count with, all of it?`,
  'two-quantities': (f) => `It also says ${one(f, 'other')}. Which of the two holds?`,
  'more-quantities': (f) =>
    `There is a further quantity: ${one(f, 'other')}. Make it a line of its own, or leave it out.`,
  alternatives: (f) => `It may also be ${listed(f, 'names', 'or')}. Which one goes in?`,
  'two-things': (f) => `Is “${one(f, 'written')}” one thing? If it is two, give each a line.`,
  'two-uses': (f) =>
    `Both ${listed(f, 'uses', 'and')} are taken from it. Its cost belongs to one line; which use is this?`,
  optional: () => 'It may be left out. Does it go into this dish?',
  'per-portion': (f) =>
    `“${one(f, 'written')}”: how many or how much is that? Write the quantity for all of the recipe.`,
  'and-more': (f) => `“${one(f, 'written')}”: how much more? Make it a line of its own, or leave it out.`,
};

/** The question in words. */
export function lineQuestionWords({ code, facts }: Pick<LineQuestion, 'code' | 'facts'>): string {
  return SENTENCES[code](facts);
}
