import type { BaseUnit } from '../core/units';
import { floorOf, unitCost } from './cost-line';
import type { CostedPeriod } from './costed-period';
import { lineCount } from './half-known';
import type { HalfKnown } from './item-figures';
import { isOffered } from './offered';
import { labourPerPortion } from './per-portion';
import { plateCost, portionOf } from './plate-cost';
import { inSegment } from './segments';
import type { Thing } from './things';

/** What one thing costs on the days of a segment. Money is venue currency. */
export interface ItemCost {
  /** Nodes that one of it takes: itself, and its packing for the channel. */
  readonly nodes: readonly number[];
  /** Base units of a portion; null where it is not sold by the portion. */
  readonly portion: number | null;
  /** Base units that the cost is of: those of a portion or of a batch, or as many as are shown; NaN where that is not known. */
  readonly need: number;
  /** What the cost is of: one portion of what is plated or sold, one batch of a component; null where a batch is not measured. */
  readonly per: { readonly quantity: number; readonly unit: BaseUnit } | null;
  /** q included where it is sold; null where not costed. */
  readonly plateCost: number | null;
  readonly halfKnown: HalfKnown | null;
  /** An owner's estimate has a part in the cost; never where there is none. */
  readonly estimated: boolean;
  /** Beside the cost, never inside it. */
  readonly recipeLabour: number | null;
}

/** A bought thing that is not sold as it is, is shown by the kilogram, litre or piece. */
const SHOWN: Readonly<Record<BaseUnit, number>> = { g: 1000, ml: 1000, each: 1 };

/** Without a channel it is what is taken in every one. */
export function itemCost(period: CostedPeriod, node: number, segment: number, channel: string | null = null): ItemCost {
  const thing = period.things[node] as Thing;
  const piece = inSegment(period.recipes[node] ?? [], segment);
  const base = inSegment(period.measures[node] ?? [], segment)?.measure?.base ?? null;
  const portion = isSold(thing) ? portionOf(period, node, segment) : null;
  const need = portion ?? piece?.usable ?? (base === null ? Number.NaN : SHOWN[base]);
  const packing = channel === null || portion === null ? undefined : period.packings.get(node)?.get(channel);
  const nodes = [node, ...(packing === undefined ? [] : [packing])];
  const isMeasured = base !== null && !Number.isNaN(need);
  const at = { node, segment, channel, portion, need };
  const cost = whole(period, at);
  const stands = nodes.some((each) => period.estimated[each * period.segments.count + segment] !== 0);
  return {
    ...{ nodes, portion, need },
    per: portion !== null ? { quantity: 1, unit: 'each' } : isMeasured ? { quantity: need, unit: base } : null,
    ...cost,
    estimated: cost.plateCost !== null && stands,
    recipeLabour: labour(period, at),
  };
}

interface At {
  readonly node: number;
  readonly segment: number;
  readonly channel: string | null;
  readonly portion: number | null;
  readonly need: number;
}

/** What is plated is sold by the portion, whether it is on the menu or not; a component or an ingredient only where it is offered. */
function isSold(thing: Thing): boolean {
  return thing.kind === 'dish' || thing.kind === 'set_menu' || thing.kind === 'extra' || isOffered(thing);
}

/** The cost of a portion, or of so many base units of what is not sold; or how much of it is known. */
function whole(
  period: CostedPeriod,
  { node, segment, channel, portion, need }: At,
): Pick<ItemCost, 'plateCost' | 'halfKnown'> {
  const cell = node * period.segments.count + segment;
  const { complete, total } =
    portion === null
      ? { complete: period.complete[cell] === 1, total: need * unitCost(period, cell) }
      : plateCost(period, node, segment, channel);
  if (complete && !Number.isNaN(total)) return { plateCost: total, halfKnown: null };
  const count = lineCount(period, node, segment, channel);
  if (count.lines === 0) return { plateCost: null, halfKnown: null };
  return { plateCost: null, halfKnown: { floor: floorOf(count, total), ...count } };
}

/** Hands-on minutes of all that is in it, at the cost per hour of their grades; null where any of that is not known. */
function labour(period: CostedPeriod, { node, segment, channel, portion, need }: At): number | null {
  if (portion !== null) return labourPerPortion(period, node, [{ segment, channel, weight: 1 }]).recipeLabour;
  const cell = node * period.segments.count + segment;
  const cost = need * (period.labour.cost[cell] ?? Number.NaN);
  return period.labour.known[cell] === 1 && !Number.isNaN(cost) ? cost : null;
}
