import type { Day } from '../core/days';
import { byText } from '../core/grouped';
import { nameKey } from '../core/name-key';
import { isNear } from '../core/near';
import { type Declared, declaredIn } from '../model/allergens/declared';
import type { CostedPeriod } from '../model/costed-period';
import type { ItemId, ItemKind, RecipeLine, VenueSettings } from '../model/facts';
import type { Issue } from '../model/issue';
import { type ItemCost, itemCost } from '../model/item-cost';
import { linesChanged } from '../model/lines-changed';
import { inSegment, segmentOf } from '../model/segments';

/** What an item costs on the day, before a change and after it. Null: there was or is none; or a figure that is not known. */
export interface ItemCostChange {
  readonly id: ItemId;
  readonly item: string;
  readonly kind: ItemKind;
  readonly before: ItemCost | null;
  readonly after: ItemCost | null;
}

/** A declared word that some items contain, may contain, or no longer do; word null: what is in them is no longer, or now, known. */
export interface AllergenStep {
  readonly word: string | null;
  readonly state: 'contains' | 'may-contain' | 'unknown';
  readonly added: boolean;
  readonly items: readonly { readonly item: string; readonly kind: ItemKind }[];
}

export interface KitchenChange {
  readonly venue: VenueSettings;
  readonly day: Day;
  /** Of the recipe that was changed, between the versions in force on the day. */
  readonly lines: readonly {
    readonly item: string;
    readonly before: RecipeLine | null;
    readonly after: RecipeLine | null;
  }[];
  /** Everything whose cost or labour is another, by name: the item itself and all above it. */
  readonly items: readonly ItemCostChange[];
  readonly allergens: readonly AllergenStep[];
  readonly issuesAdded: readonly Issue[];
  readonly issuesGone: readonly Issue[];
}

/**
 * What a change in the kitchen does on a day: the two costings of the venue, before and after, held against each other. Both periods
 * have to hold the day and to be costed for everything.
 */
export function kitchenChange(before: CostedPeriod, after: CostedPeriod, day: Day, item: ItemId): KitchenChange {
  const ids = new Set([...before.nodeOf.keys(), ...after.nodeOf.keys()]);
  const views = [...ids].map((id) => ({ id, was: viewOf(before, id, day), is: viewOf(after, id, day) }));
  const items = views.flatMap(({ id, was, is }): ItemCostChange[] => {
    const thing = (is ?? was)?.thing;
    if (!thing || isSameCost(was?.cost ?? null, is?.cost ?? null)) return [];
    return [{ id, item: thing.name, kind: thing.kind, before: was?.cost ?? null, after: is?.cost ?? null }];
  });
  return {
    ...{ venue: after.venue, day },
    lines: linesOf(before, after, day, item),
    items: items.sort((a, b) => byText(nameKey(a.item), nameKey(b.item))),
    allergens: allergenSteps(before, after, day, ids),
    issuesAdded: beside(after.issues, before.issues),
    issuesGone: beside(before.issues, after.issues),
  };
}

function viewOf(period: CostedPeriod, id: ItemId, day: Day) {
  const node = period.nodeOf.get(id);
  const thing = node === undefined ? undefined : period.things[node];
  if (node === undefined || thing === undefined) return null;
  return { thing, cost: itemCost(period, node, segmentOf(period.segments, day)) };
}

function isSameCost(a: ItemCost | null, b: ItemCost | null): boolean {
  if (a === null || b === null) return a === b;
  const figures = (cost: ItemCost) => [
    cost.plateCost,
    cost.recipeLabour,
    cost.halfKnown?.floor ?? null,
    cost.per?.quantity ?? null,
  ];
  const others = figures(b);
  return (
    a.per?.unit === b.per?.unit && figures(a).every((figure, place) => isSameFigure(figure, others[place] ?? null))
  );
}

const isSameFigure = (a: number | null, b: number | null): boolean =>
  a === null || b === null ? a === b : isNear(a, b);

function linesOf(before: CostedPeriod, after: CostedPeriod, day: Day, item: ItemId): KitchenChange['lines'] {
  const inForce = (period: CostedPeriod): readonly RecipeLine[] => {
    const node = period.nodeOf.get(item);
    const pieces = node === undefined ? [] : (period.recipes[node] ?? []);
    return inSegment(pieces, segmentOf(period.segments, day))?.version.lines ?? [];
  };
  const nameOf = (id: ItemId): string =>
    [after, before].map((period) => period.things[period.nodeOf.get(id) ?? -1]?.name).find((name) => name) ?? '';
  return linesChanged(inForce(before), inForce(after)).map((change) => ({ ...change, item: nameOf(change.item) }));
}

/** What is declared of an item on the day; null where it is not there, or no recipe of it is in force: then nothing changes about it. */
function declared(period: CostedPeriod, id: ItemId, day: Day): Declared | null {
  const node = period.nodeOf.get(id);
  const thing = node === undefined ? undefined : period.things[node];
  if (node === undefined || thing === undefined) return null;
  const segment = segmentOf(period.segments, day);
  const isMade = thing.kind !== 'ingredient';
  return isMade && inSegment(period.recipes[node] ?? [], segment) === null ? null : declaredIn(period, node, segment);
}

function allergenSteps(
  before: CostedPeriod,
  after: CostedPeriod,
  day: Day,
  ids: ReadonlySet<ItemId>,
): readonly AllergenStep[] {
  const steps = new Map<string, { step: Omit<AllergenStep, 'items'>; items: { item: string; kind: ItemKind }[] }>();
  for (const id of ids) {
    const [was, is] = [declared(before, id, day), declared(after, id, day)];
    const thing = after.things[after.nodeOf.get(id) ?? -1];
    if (was === null || is === null || !thing) continue;
    for (const step of [...stepsFrom(was, is, true), ...stepsFrom(is, was, false)]) {
      const key = JSON.stringify(step);
      const found = steps.get(key) ?? { step, items: [] };
      found.items.push({ item: thing.name, kind: thing.kind });
      steps.set(key, found);
    }
  }
  return [...steps]
    .sort(([a], [b]) => byText(a, b))
    .map(([, { step, items }]) => ({
      ...step,
      items: items.sort((a, b) => byText(nameKey(a.item), nameKey(b.item))),
    }));
}

/** What the second holds and the first does not. What is contained is not said again as what may be. */
function stepsFrom(a: Declared, b: Declared, added: boolean): readonly Omit<AllergenStep, 'items'>[] {
  const contains = [...b.contains.keys()].filter((word) => !a.contains.has(word));
  const mayContain = [...b.mayContain.keys()].filter(
    (word) => !a.mayContain.has(word) && !a.contains.has(word) && !b.contains.has(word),
  );
  const isUnknown = b.unknownFrom.length > 0 && a.unknownFrom.length === 0;
  return [
    ...contains.map((word) => ({ word, state: 'contains' as const, added })),
    ...mayContain.map((word) => ({ word, state: 'may-contain' as const, added })),
    ...(isUnknown ? [{ word: null, state: 'unknown' as const, added }] : []),
  ];
}

/** The issues of one list that the other does not have. */
function beside(these: readonly Issue[], those: readonly Issue[]): readonly Issue[] {
  const known = new Set(those.map((issue) => JSON.stringify(issue)));
  return these.filter((issue) => !known.has(JSON.stringify(issue)));
}
