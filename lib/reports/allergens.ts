import type { Day, DayRange } from '../core/days';
import { byText } from '../core/grouped';
import { nameKey } from '../core/name-key';
import type { Allergen, AllergenList } from '../model/allergens/allergen-lists';
import { declaredIn } from '../model/allergens/declared';
import {
  type AllergenAnswer,
  type AllergenState,
  allergensAdded,
  type ItemAllergens,
  itemAllergens,
} from '../model/allergens/item-allergens';
import { type WhatsInIt, whatsInIt } from '../model/allergens/whats-in-it';
import type { CostedPeriod } from '../model/costed-period';
import type { ItemId, ItemKind, VenueSettings } from '../model/facts';
import type { Issue } from '../model/issue';
import { inOrder } from '../model/issue-list';
import { isOffered } from '../model/offered';
import { inSegment, segmentOf } from '../model/segments';
import type { Thing } from '../model/things';

/** What one item contains on the day. */
export interface AllergenRow extends WhatsInIt {
  readonly id: ItemId;
  readonly item: string;
  readonly kind: ItemKind;
}

/** From a day of the period on, an item has more of an allergen than before. */
export interface AllergenChange {
  readonly day: Day;
  readonly item: string;
  readonly allergen: Allergen;
  readonly state: AllergenState;
  readonly from: readonly string[];
}

export interface Allergens {
  readonly venue: VenueSettings;
  readonly period: DayRange;
  readonly list: AllergenList;
  readonly day: Day;
  readonly items: readonly AllergenRow[];
  readonly changes: readonly AllergenChange[];
  readonly issues: readonly Issue[];
}

export interface AllergensOptions {
  readonly list: AllergenList;
  /** A day of the period; its last one where none is named. */
  readonly day?: Day;
}

/**
 * Dish by allergen, by name: contains, may contain, unknown, none declared, and the cautions of all that goes in. Everything on the
 * menu or sold, and the extras. Only what was declared of ingredients: cross-contact in the kitchen is not in it, a supplier's new
 * specification voids it, and it defers to labels, local food law and qualified people.
 */
export function allergens(period: CostedPeriod, { list, day }: AllergensOptions): Allergens {
  const on = day ?? ((period.range.to - 1) as Day);
  const shown = period.things.flatMap((thing, node) => (isShown(thing) ? [{ thing, node }] : []));
  const rows = shown.map(({ thing, node }) => rowOf(period, thing, node, segmentOf(period.segments, on), list));
  return {
    ...{ venue: period.venue, period: period.range, list, day: on },
    items: [...rows].sort((a, b) => byText(nameKey(a.item), nameKey(b.item))),
    changes: shown.flatMap(({ thing, node }) => changesOf(period, thing, node, list)).sort((a, b) => a.day - b.day),
    issues: rows.flatMap(wordIssues).sort(inOrder),
  };
}

function isShown(thing: Thing): boolean {
  return isOffered(thing) || (thing.kind === 'extra' && thing.channel === null);
}

function rowOf(period: CostedPeriod, thing: Thing, node: number, segment: number, list: AllergenList): AllergenRow {
  return { id: thing.id, item: thing.name, kind: thing.kind, ...whatsInIt(period, node, segment, list) };
}

function changesOf(period: CostedPeriod, thing: Thing, node: number, list: AllergenList): readonly AllergenChange[] {
  const inForce = (segment: number): boolean =>
    thing.kind === 'ingredient' || inSegment(period.recipes[node] ?? [], segment) !== null;
  const of = (segment: number): ItemAllergens => itemAllergens(declaredIn(period, node, segment), list);
  return Array.from({ length: Math.max(0, period.segments.count - 1) }, (_, index) => index + 1).flatMap((segment) => {
    if (!inForce(segment - 1) || !inForce(segment)) return [];
    const day = period.segments.cuts[segment] as Day;
    return allergensAdded(of(segment - 1), of(segment)).map((added: AllergenAnswer) => ({
      ...{ day, item: thing.name, allergen: added.allergen, state: added.state, from: added.from },
    }));
  });
}

/** Words that no list knows: because of them nothing can be said of any allergen. */
function wordIssues({ item, otherWords }: AllergenRow): readonly Issue[] {
  return otherWords.map((word) => ({ code: 'unknown-allergen' as const, about: item, facts: { word } }));
}
