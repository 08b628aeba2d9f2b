import { type Day, type DayRange, dayText } from '../core/days';
import type { InForce } from './in-force';
import type { Issue } from './issue';
import type { BasePrice } from './price-book';
import type { Segments } from './segments';
import type { Thing } from './things';

/** That there is no price, with its days where there is one on other days of the period. Other issues stay as they are. */
export function withoutPrice(
  issue: Issue,
  gap: DayRange,
  prices: readonly InForce<BasePrice>[],
  { cuts, count }: Segments,
): Issue {
  if (issue.code !== 'no-price') return issue;
  const priced = prices.filter(({ fact }) => fact.issue === null);
  if (priced.length === 0) return issue;
  const from = gap.from > (cuts[0] as Day) ? dayText(gap.from) : null;
  const until = gap.to < (cuts[count] as Day) ? dayText(gap.to) : null;
  return { ...issue, facts: { ...issue.facts, from, until } };
}

/** That something on sale has no recipe (an ingredient: no version), or none before a day, in the period or after it. */
export function withoutRecipe(thing: Thing): Issue {
  const [first] = thing.kind === 'ingredient' ? thing.versions : thing.recipes;
  const begins = first?.from ?? thing.begins;
  if (begins === null) return { code: 'no-recipe', about: thing.name, facts: {} };
  const days = { from: dayText(firstOnSale(thing) ?? begins), begins: dayText(begins) };
  return { code: 'begins-late', about: thing.name, facts: { ...days, kind: thing.kind } };
}

/** The first day of the period on which something is sold or on the menu. */
function firstOnSale({ menu, sales }: Thing): Day | null {
  const listed = menu.flatMap(({ prices }) => prices.flatMap(({ fact, from }) => (fact.price === null ? [] : [from])));
  const days = [...listed, ...sales.map(({ day }) => day)];
  return days.length === 0 ? null : (Math.min(...days) as Day);
}
