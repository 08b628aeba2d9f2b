import type { CostedPeriod } from './costed-period';
import type { Issue } from './issue';
import { inOrder } from './issue-list';
import { reachedFrom } from './reached';

/** What an item sold, and whether its cost is known. */
export interface CostedPortions {
  readonly node: number;
  readonly sold: number;
  readonly plateCost: number | null;
}

/** Issues that say for themselves of how many portions they speak, where these are in no figure or have no price. */
const SAYS_PORTIONS: ReadonlySet<Issue['code']> = new Set(['sales-waiting', 'no-menu-price']);

/**
 * Issues in the order in which mending them tells most: first what keeps the most portions without cost or price (an issue of an
 * ingredient touches every item without cost whose recipe reaches it), then the others by rule; settings that nobody stated last.
 *
 * `missing` are issues of what recipes reach, `others` those of sales and of the period as a whole.
 */
export function mostTouchedFirst(
  period: CostedPeriod,
  items: readonly CostedPortions[],
  missing: readonly Issue[],
  others: readonly Issue[],
): readonly Issue[] {
  const byName = portionsByName(period, items, missing);
  const weighed = [
    ...missing.map((issue) => ({ issue, portions: byName.get(issue.about) ?? 0 })),
    ...others.map((issue) => ({ issue, portions: SAYS_PORTIONS.has(issue.code) ? Number(issue.facts.portions) : 0 })),
  ];
  return weighed.sort((a, b) => b.portions - a.portions || inOrder(a.issue, b.issue)).map(({ issue }) => issue);
}

/** Portions without cost by the name of everything that their recipes reach. */
function portionsByName(
  period: CostedPeriod,
  items: readonly CostedPortions[],
  missing: readonly Issue[],
): ReadonlyMap<string, number> {
  const byName = new Map<string, number>();
  if (missing.length === 0) return byName;
  for (const { node, sold, plateCost } of items) {
    if (plateCost !== null || sold <= 0) continue;
    const names = new Set([...reachedFrom(period, [node])].map((each) => period.things[each]?.name ?? ''));
    for (const name of names) byName.set(name, (byName.get(name) ?? 0) + sold);
  }
  return byName;
}
