import { type Day, isWithin } from '../core/days';
import { isByProduct } from '../model/by-products';
import { boughtLine, type CostLine } from '../model/cost-line';
import { costLines } from '../model/cost-lines';
import type { CostedPeriod } from '../model/costed-period';
import type { ItemId, ItemKind, VenueSettings } from '../model/facts';
import type { Issue } from '../model/issue';
import { inOrder } from '../model/issue-list';
import { type ItemCost, itemCost } from '../model/item-cost';
import { labourIssues } from '../model/labour-issues';
import { issuesOf } from '../model/reached';
import { inSegment, segmentOf } from '../model/segments';
import type { Thing } from '../model/things';
import { type WorkedRecipe, workedRecipe } from '../model/worked-recipe';

/** What something costs on one day, with all the lines that make it up. Money is venue currency. */
export interface CostWorking extends Omit<ItemCost, 'nodes' | 'portion' | 'need'> {
  readonly venue: VenueSettings;
  readonly id: ItemId;
  readonly item: string;
  readonly kind: ItemKind;
  readonly day: Day;
  /** In which it is sold; null: what it costs in every one. */
  readonly channel: string | null;
  readonly recipe: WorkedRecipe | null;
  /** Their costs sum to the plate cost. */
  readonly lines: readonly CostLine[];
  readonly issues: readonly Issue[];
}

/** What is costed: the thing, in one segment and channel, and how much of it. */
interface At {
  readonly thing: Thing;
  readonly node: number;
  readonly segment: number;
  /** Nodes that one of it takes: itself, and its packing for the channel. */
  readonly nodes: readonly number[];
  /** Base units of a portion; null where it is not sold by the portion. */
  readonly portion: number | null;
  /** Base units in all: those of a portion or of a batch; NaN where that is not known. */
  readonly need: number;
}

/**
 * The working of one cost on one day of a period: its lines down to what is bought, each with quantity, usable yield, price and
 * offer, what it is packed in for the channel, and what is not measured as a line of its own.
 *
 * f = sum of the lines' food * (1 + q) + packaging + estimates, the same figure that plateCost gives. Without a channel it is what is
 * taken in every one. Null where the item is not among the things of the period; the day has to be one of its days.
 */
export function costWorking(
  period: CostedPeriod,
  item: ItemId,
  day: Day,
  channel: string | null = null,
): CostWorking | null {
  const node = period.nodeOf.get(item);
  const thing = node === undefined ? undefined : period.things[node];
  if (node === undefined || thing === undefined) return null;
  if (!isWithin(day, period.range)) throw new RangeError(`day ${day} is outside the period`);
  const segment = segmentOf(period.segments, day);
  const piece = inSegment(period.recipes[node] ?? [], segment);
  const { nodes, portion, need, ...cost } = itemCost(period, node, segment, channel);
  const at = { thing, node, segment, nodes, portion, need };
  return {
    venue: period.venue,
    id: item,
    item: thing.name,
    kind: thing.kind,
    day,
    channel,
    ...cost,
    recipe: piece === null ? null : workedRecipe(period, node, segment, piece),
    lines: [...linesOf(period, at), ...notMeasured(period, at)],
    issues: issuesFor(period, at, piece !== null),
  };
}

/** Of what is made, its lines and what it is packed in; what is bought, or worth its credit, is a single line. */
function linesOf(period: CostedPeriod, { thing, node, nodes, segment, need }: At): readonly CostLine[] {
  const isMade = thing.kind !== 'ingredient' && !isByProduct(period.makings, node, segment);
  if (!isMade) return [boughtLine(period, node, segment, need)];
  return nodes.flatMap((each) => costLines(period, each, segment, need));
}

/** q on the food and drink of one portion, as a line: its price is that of all of them together. */
function notMeasured(period: CostedPeriod, { thing, nodes, segment, portion }: At): readonly CostLine[] {
  const q = period.venue.qFactor;
  const cells = nodes.map((node) => node * period.segments.count + segment);
  const food = cells.reduce((sum, cell) => sum + (period.costs.food[cell] ?? 0), 0) * (portion ?? 0);
  if (q === 0 || food === 0) return [];
  const isKnown = cells.every((cell) => period.complete[cell] === 1);
  return [
    {
      ...{ item: thing.name, kind: 'not_measured', position: null, as: 'bought', usableYield: null },
      ...{ use: null, part: null, choice: null, share: null, byProduct: null },
      ...{ quantity: q, unit: null, bought: q, boughtUnit: null, unitPrice: isKnown ? food : null },
      ...{ cost: isKnown ? q * food : null, floor: isKnown ? null : q * food },
      ...{ department: null, estimated: false, price: null, recipe: null, issues: [], closed: false, lines: [] },
    },
  ];
}

/** What is missing of anything below; and that there is no recipe, which a period says only of what it offers. */
function issuesFor(period: CostedPeriod, { thing, nodes }: At, hasRecipe: boolean): readonly Issue[] {
  const found = [...issuesOf(period, nodes), ...labourIssues(period, nodes)];
  const isSaid = found.some(({ code, about }) => code === 'no-recipe' && about === thing.name);
  const isMissing = !hasRecipe && thing.kind !== 'ingredient' && !isSaid;
  const missing = isMissing ? [{ code: 'no-recipe' as const, about: thing.name, facts: {} }] : [];
  return [...found, ...missing].sort(inOrder);
}
