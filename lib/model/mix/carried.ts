import type { Day } from '../../core/days';
import type { Allergen, AllergenList } from '../allergens/allergen-lists';
import { whatsInIt } from '../allergens/whats-in-it';
import type { CostedPeriod } from '../costed-period';
import type { ItemId } from '../facts';
import { isOnMenu, menuDays } from '../menu-price';
import { labourPerPortion } from '../per-portion';
import { portionWeights } from '../portion-weights';
import { segmentOf } from '../segments';

/** What an item is to its menu beside its margin: what would go with it, or be won, if it went. */
export interface Carried {
  readonly onlyWithout: readonly Allergen[];
  readonly mostPlating: number | null;
}

/**
 * Of the items: which is the only one, among those on the menu on the last day of the period, in which nothing declares an allergen; and
 * which alone has the most plating minutes of those whose minutes are known. As for every allergen answer, only what was declared counts:
 * it says nothing of cross-contact, and defers to labels, law and qualified people.
 */
export function carriedBy(
  period: CostedPeriod,
  nodes: readonly number[],
  list: AllergenList,
): ReadonlyMap<ItemId, Carried> {
  const minutes = new Map(nodes.map((node) => [node, platingMinutes(period, node)]));
  const most = Math.max(...[...minutes.values()].map((each) => each ?? 0));
  const isAlone = [...minutes.values()].filter((each) => each === most).length === 1;
  const without = onlyWithout(period, nodes, list);
  return new Map(
    nodes.flatMap((node) => {
      const thing = period.things[node];
      if (!thing) return [];
      const own = minutes.get(node) ?? null;
      const isMost = nodes.length > 1 && isAlone && own === most && most > 0;
      return [[thing.id, { onlyWithout: without.get(node) ?? [], mostPlating: isMost ? own : null }] as const];
    }),
  );
}

function platingMinutes(period: CostedPeriod, node: number): number | null {
  const thing = period.things[node];
  if (!thing) return null;
  const channels = thing.menu.map(({ channel }) => channel);
  const weights = portionWeights(period, node, thing.sales, menuDays(thing.menu, period.range), channels);
  return labourPerPortion(period, node, weights).platingMinutes;
}

/** By item, the allergens that it alone has none of declared. Where there is no other item to choose, nothing is said. */
function onlyWithout(
  period: CostedPeriod,
  nodes: readonly number[],
  list: AllergenList,
): ReadonlyMap<number, readonly Allergen[]> {
  const last = (period.range.to - 1) as Day;
  const offered = nodes.filter((node) => isOnMenu(period.things[node]?.menu ?? [], last));
  const free = new Map<Allergen, number[]>();
  for (const node of offered) {
    for (const { allergen, state } of whatsInIt(period, node, segmentOf(period.segments, last), list).allergens) {
      if (state === 'none-declared') free.set(allergen, [...(free.get(allergen) ?? []), node]);
    }
  }
  const alone = new Map<number, Allergen[]>();
  for (const [allergen, [node, ...others]] of free) {
    if (node === undefined || others.length > 0 || offered.length < 2) continue;
    alone.set(node, [...(alone.get(node) ?? []), allergen]);
  }
  return alone;
}
