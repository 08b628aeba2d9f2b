import { addDays, type Day } from '../core/days';
import type { BaseUnit } from '../core/units';
import type { CostedPeriod } from '../model/costed-period';
import type { ItemId, StockCount, VenueSettings } from '../model/facts';
import { onDay } from '../model/in-force';
import type { Issue, IssueCode } from '../model/issue';
import { expectedCovers } from '../model/prep/expected';
import { type Held, heldStock } from '../model/prep/held-stock';
import { likeDays } from '../model/prep/like-days';
import { madeNeed } from '../model/prep/made-need';
import { type PrepItem, prepItems, prepWanted } from '../model/prep/prep-items';
import { type PrepWork, prepWork } from '../model/prep/prep-work';
import { issuesOf } from '../model/reached';
import { inSegment, segmentOf } from '../model/segments';
import { keptDays, smallestBatch } from '../model/small-batch/batch-terms';

export interface PrepOptions {
  /** The counts up to the day. */
  readonly counts: readonly StockCount[];
  /** Portions of an item that somebody expects instead of the mean, over all channels. */
  readonly portions?: ReadonlyMap<ItemId, number>;
  /** Guests that somebody expects instead of the mean. */
  readonly covers?: number | null;
}

/** One component to be made. Quantities in its base unit. */
export interface PrepComponent {
  readonly id: ItemId;
  readonly item: string;
  readonly unit: BaseUnit | null;
  /** What is used, its breakage with it: need / (1 - r). */
  readonly needed: number;
  readonly held: Held | null;
  /** max(needed - held, 0), and at least the smallest batch where anything is to be made. */
  readonly make: number;
  readonly smallest: number | null;
  /** What one batch by the recipe gives; how many of those are to be made; null where a batch is not measured. */
  readonly batch: number | null;
  readonly batches: number | null;
  /** Hours before the day's beginning from which it can be made: 24 * (L - 1); null where nobody said how long it keeps. */
  readonly leadHours: number | null;
  readonly earliest: Day | null;
  /** Hands-on minutes of a batch * batches; null where it states none. */
  readonly minutes: number | null;
  readonly grade: string | null;
  readonly cautions: readonly string[];
}

/** What is taken from the store, as it is bought; of a split ingredient, the part. */
export interface PrepIngredient {
  readonly id: ItemId;
  readonly item: string;
  readonly quantity: number;
  readonly unit: BaseUnit | null;
  readonly productGroup: string | null;
  /** Of a part: base units of the whole that give so much of it. */
  readonly wholes: number | null;
}

export interface PrepSheet {
  readonly venue: VenueSettings;
  readonly day: Day;
  /** The days that the expectations are means of, latest first. */
  readonly like: readonly Day[];
  readonly expectedCovers: number | null;
  readonly covers: number | null;
  readonly items: readonly PrepItem[];
  /** In an order in which they can be made: what goes into others before them. */
  readonly components: readonly PrepComponent[];
  readonly ingredients: readonly PrepIngredient[];
  readonly work: readonly PrepWork[];
  /** Recipes to be made that state no minutes: their work is in no sum. */
  readonly withoutMinutes: readonly string[];
  /** What is missing of the quantities: where there are any, the sheet is short. */
  readonly issues: readonly Issue[];
}

/**
 * What to make for a day: expected portions and covers -> downward pass -> batches of each component, less what is held, at least the
 * smallest batch -> what that takes of everything below it.
 *
 * use = need / (1 - r); make = max(use - held, smallest) where use > held, else 0; what it is made of is needed for make * (1 - r). The period
 * has to hold the day and the eight weeks before it, and to be costed for everything.
 */
export function prepSheet(period: CostedPeriod, day: Day, { counts, portions, covers }: PrepOptions): PrepSheet {
  const like = likeDays(period, day);
  const items = prepItems(period, day, like, portions ?? new Map());
  const mean = expectedCovers(period, like);
  const guests = covers ?? mean;
  const segment = segmentOf(period.segments, day);
  const held = heldStock(period, counts, day);
  const wanted = prepWanted(period, day, items, guests ?? 0);
  const say = (node: number, need: number): number => passOn(period, node, segment, need, held.get(node) ?? null);
  const { need, passed } = madeNeed(period, segment, wanted, say);
  const nodes = [...need.keys()].filter((node) => (need[node] as number) > 0);
  return {
    ...{ venue: period.venue, day, like, expectedCovers: mean, covers: guests },
    items,
    components: componentsOf(period, day, need, passed, held),
    ingredients: ingredientsOf(period, day, need),
    ...prepWork(period, segment, { need, passed }),
    issues: issuesOf(period, nodes).filter(({ code }) => SHORTENS.has(code)),
  };
}

/** What is missing of a quantity, as against a price, a wage or a menu price. */
const SHORTENS: ReadonlySet<IssueCode> = new Set<IssueCode>([
  ...(['unknown-unit', 'no-density', 'no-piece-weight', 'no-yield', 'no-output-unit', 'nothing-left'] as const),
  ...(['no-lines', 'refused-lines', 'no-version', 'unknown-use', 'unknown-part', 'part-unit', 'part-shares'] as const),
  ...(['choice-shares', 'no-mix-volume', 'cycle', 'no-recipe', 'begins-late', 'no-portion'] as const),
]);

/** What of a need goes on to what it is made of: of a component, what is made of it; parts end the pass, since they are listed themselves. */
function passOn(period: CostedPeriod, node: number, segment: number, need: number, held: Held | null): number {
  const thing = period.things[node];
  if (thing?.part) return 0;
  if (thing?.kind !== 'component' || thing.channel !== null) return need;
  const piece = inSegment(period.recipes[node] ?? [], segment);
  if (piece === null || need <= 0) return 0;
  const kept = 1 - piece.version.breakage;
  const left = need / kept - (held?.quantity ?? 0);
  // less than a thousand-millionth of a need is rounding, not a batch
  if (left <= 1e-9 * need) return 0;
  return Math.max(left, smallestBatch(piece) ?? 0) * kept;
}

function componentsOf(
  period: CostedPeriod,
  day: Day,
  need: Float64Array,
  passed: Float64Array,
  held: ReadonlyMap<number, Held>,
): readonly PrepComponent[] {
  const segment = segmentOf(period.segments, day);
  const order = new Map([...period.lines.rows].map((node, place) => [node, place]));
  const components = [...need.keys()].filter((node) => {
    const thing = period.things[node];
    return thing?.kind === 'component' && thing.channel === null && (need[node] as number) > 0;
  });
  return components
    .sort((a, b) => (order.get(a) ?? -1) - (order.get(b) ?? -1))
    .flatMap((node): PrepComponent[] => {
      const thing = period.things[node] as CostedPeriod['things'][number];
      const piece = inSegment(period.recipes[node] ?? [], segment);
      if (piece === null) return [];
      const { breakage, handsOnMinutes, grade, cautions } = piece.version;
      const make = (passed[node] as number) / (1 - breakage);
      const batch = Number.isNaN(piece.usable) ? null : piece.usable;
      const days = keptDays(piece);
      return [
        {
          ...{ id: thing.id, item: thing.name },
          unit: inSegment(period.measures[node] ?? [], segment)?.measure?.base ?? null,
          needed: (need[node] as number) / (1 - breakage),
          held: held.get(node) ?? null,
          ...{ make, smallest: smallestBatch(piece), batch, batches: batch === null ? null : make / batch },
          leadHours: days === null ? null : 24 * (days - 1),
          earliest: days === null ? null : addDays(day, 1 - days),
          minutes: handsOnMinutes === null || batch === null ? null : (handsOnMinutes * make) / batch,
          ...{ grade, cautions },
        },
      ];
    });
}

function ingredientsOf(period: CostedPeriod, day: Day, need: Float64Array): readonly PrepIngredient[] {
  const segment = segmentOf(period.segments, day);
  return period.things.flatMap((thing, node): PrepIngredient[] => {
    const quantity = need[node] as number;
    if (thing.kind !== 'ingredient' || thing.channel !== null || quantity <= 0) return [];
    const piece = thing.part === null ? null : inSegment(period.recipes[node] ?? [], segment);
    return [
      {
        ...{ id: thing.id, item: thing.name, quantity },
        unit: inSegment(period.measures[node] ?? [], segment)?.measure?.base ?? null,
        productGroup: onDay(thing.versions, day)?.productGroup ?? null,
        wholes: piece === null || Number.isNaN(piece.usable) ? null : quantity / piece.usable,
      },
    ];
  });
}
