import { type Day, isWithin } from '../core/days';
import type { BaseUnit } from '../core/units';
import { boughtLine, type CostLine, floorOf, unitCost } from '../model/cost-line';
import { costLines } from '../model/cost-lines';
import type { CostedPeriod } from '../model/costed-period';
import type { ItemId, ItemKind, VenueSettings } from '../model/facts';
import { lineCount } from '../model/half-known';
import type { Issue } from '../model/issue';
import { inOrder } from '../model/issue-list';
import type { HalfKnown } from '../model/item-figures';
import { isOffered } from '../model/offered';
import { plateCost, portionOf } from '../model/plate-cost';
import { issuesOf } from '../model/reached';
import { inSegment, segmentOf } from '../model/segments';
import type { Thing } from '../model/things';
import { type WorkedRecipe, workedRecipe } from '../model/worked-recipe';

/** What something costs on one day, with all the lines that make it up. Money is venue currency. */
export interface CostWorking {
  readonly venue: VenueSettings;
  readonly id: ItemId;
  readonly item: string;
  readonly kind: ItemKind;
  readonly day: Day;
  /** What the cost is of: one portion of what is plated or sold, one batch of a component; null where a batch is not measured. */
  readonly per: { readonly quantity: number; readonly unit: BaseUnit } | null;
  /** q included where it is sold; null where not costed. */
  readonly plateCost: number | null;
  readonly halfKnown: HalfKnown | null;
  readonly estimated: boolean;
  readonly recipe: WorkedRecipe | null;
  /** Their costs sum to the plate cost. */
  readonly lines: readonly CostLine[];
  readonly issues: readonly Issue[];
}

/** A bought thing that is not sold as it is, is shown by the kilogram, litre or piece. */
const SHOWN: Readonly<Record<BaseUnit, number>> = { g: 1000, ml: 1000, each: 1 };

/**
 * The working of one cost on one day of a period: its lines down to what is bought, each with quantity, usable yield, price and
 * offer, and what is not measured as a line of its own.
 *
 * f = sum of the lines' food * (1 + q) + packaging + estimates, the same figure that plateCost gives. Null where the item is not
 * among the things of the period; the day has to be one of its days.
 */
export function costWorking(period: CostedPeriod, item: ItemId, day: Day): CostWorking | null {
  const node = period.nodeOf.get(item);
  const thing = node === undefined ? undefined : period.things[node];
  if (node === undefined || thing === undefined) return null;
  if (!isWithin(day, period.range)) throw new RangeError(`day ${day} is outside the period`);
  const segment = segmentOf(period.segments, day);
  const piece = inSegment(period.recipes[node] ?? [], segment);
  const base = inSegment(period.measures[node] ?? [], segment)?.measure?.base ?? null;
  const portion = isSold(thing) ? portionOf(period, node, segment) : null;
  const need = portion ?? piece?.usable ?? (base === null ? Number.NaN : SHOWN[base]);
  const isMeasured = base !== null && !Number.isNaN(need);
  const lines =
    thing.kind === 'ingredient' ? [boughtLine(period, node, segment, need)] : costLines(period, node, segment, need);
  return {
    venue: period.venue,
    id: item,
    item: thing.name,
    kind: thing.kind,
    day,
    per: portion !== null ? { quantity: 1, unit: 'each' } : isMeasured ? { quantity: need, unit: base } : null,
    ...whole(period, node, segment, portion, need),
    estimated: period.estimated[node * period.segments.count + segment] !== 0,
    recipe: piece === null ? null : workedRecipe(period, node, segment, piece),
    lines: portion === null ? lines : [...lines, ...notMeasured(period, thing.name, node, segment, portion)],
    issues: issuesFor(period, thing, node, piece !== null),
  };
}

/** What is plated is sold by the portion, whether it is on the menu or not; a component or an ingredient only where it is offered. */
function isSold(thing: Thing): boolean {
  return thing.kind === 'dish' || thing.kind === 'set_menu' || thing.kind === 'extra' || isOffered(thing);
}

/** The cost of a portion, or of so many base units of what is not sold; or how much of it is known. */
function whole(
  period: CostedPeriod,
  node: number,
  segment: number,
  portion: number | null,
  need: number,
): Pick<CostWorking, 'plateCost' | 'halfKnown'> {
  const cell = node * period.segments.count + segment;
  const total = portion === null ? need * unitCost(period, cell) : plateCost(period, node, segment).total;
  if (period.complete[cell] === 1 && !Number.isNaN(total)) return { plateCost: total, halfKnown: null };
  const count = lineCount(period, node, segment);
  if (count.lines === 0) return { plateCost: null, halfKnown: null };
  return { plateCost: null, halfKnown: { floor: floorOf(count, total), ...count } };
}

/** q on the food and drink of one portion, as a line: its price is that of all of them together. */
function notMeasured(
  period: CostedPeriod,
  item: string,
  node: number,
  segment: number,
  portion: number,
): readonly CostLine[] {
  const q = period.venue.qFactor;
  const cell = node * period.segments.count + segment;
  const food = (period.costs.food[cell] ?? 0) * portion;
  if (q === 0 || food === 0) return [];
  const isKnown = period.complete[cell] === 1;
  return [
    {
      ...{ item, kind: 'not_measured', position: null, as: 'bought', usableYield: null },
      ...{ quantity: q, unit: null, bought: q, boughtUnit: null, unitPrice: isKnown ? food : null },
      ...{ cost: isKnown ? q * food : null, floor: isKnown ? null : q * food },
      ...{ department: null, estimated: false, price: null, recipe: null, issues: [], closed: false, lines: [] },
    },
  ];
}

/** What is missing of anything below; and that there is no recipe, which a period says only of what it offers. */
function issuesFor(period: CostedPeriod, thing: Thing, node: number, hasRecipe: boolean): readonly Issue[] {
  const found = issuesOf(period, [node]);
  const isSaid = found.some(({ code, about }) => code === 'no-recipe' && about === thing.name);
  if (hasRecipe || thing.kind === 'ingredient' || isSaid) return found;
  return [...found, { code: 'no-recipe' as const, about: thing.name, facts: {} }].sort(inOrder);
}
