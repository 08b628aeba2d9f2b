import type { Day, DayRange } from '../core/days';
import { byText } from '../core/grouped';
import { nameKey } from '../core/name-key';
import { commissionPerPortion } from '../model/commission';
import type { CostedPeriod } from '../model/costed-period';
import { coversIssues, extrasGiven } from '../model/extras';
import type { ItemId, ItemKind, VenueSettings } from '../model/facts';
import { portionsAboveCovers } from '../model/guest-orders';
import type { Issue } from '../model/issue';
import { type HalfKnown, type ItemFigures, itemFigures } from '../model/item-figures';
import { labourIssues } from '../model/labour-issues';
import { netPriceOn } from '../model/menu-price';
import { revenueIssues } from '../model/mix/mix-issues';
import { isOffered, itemSection } from '../model/offered';
import { labourPerPortion, lossPerPortion } from '../model/per-portion';
import { portionWeights } from '../model/portion-weights';
import { issuesOf } from '../model/reached';
import { type LossPerUnit, lossPerUnit, smallBatchLosses } from '../model/small-batch/small-batch-loss';
import type { Thing } from '../model/things';
import { mostTouchedFirst } from '../model/touched';
import { portionsSold, waitingIssues } from '../model/waiting-sales';

/** One item in one channel. Money is venue currency net of sales tax, per portion. */
export interface DishCost {
  readonly id: ItemId;
  readonly item: string;
  readonly kind: ItemKind;
  readonly section: string | null;
  readonly channel: string;
  /** Paid portions. */
  readonly sold: number;
  /** Achieved net price; the mean net menu price where none was sold; null where neither is known. */
  readonly netPrice: number | null;
  /** Portion-weighted mean over the period, q included; null where not costed. */
  readonly plateCost: number | null;
  readonly halfKnown: HalfKnown | null;
  readonly estimated: boolean;
  /** Hands-on minutes of all that is in it, at the cost per hour of their grades; null where any of that is not known. */
  readonly recipeLabour: number | null;
  /** Food plus recipe labour: plate cost + recipe labour; null where either is not known. Energy is not included. */
  readonly foodPlusLabour: number | null;
  /**
   * Its share, by use, of what small batches of its components lose; beside the plate cost, never inside it. Null where a component
   * has no loss that is known: unused, or without smallest batch or days of life.
   */
  readonly smallBatchLoss: number | null;
  /** Food-cost %, as a fraction of the net price. */
  readonly foodCost: number | null;
  /** What the channel keeps of the net price; null where that is not known. */
  readonly commission: number | null;
  /** CM by channel: net price - plate cost - commission. */
  readonly margin: number | null;
  /** Minutes of finishing one portion; of a set menu those of its courses. Null where they are not known. */
  readonly platingMinutes: number | null;
  /** For the hour in which plating is the bottleneck; null where the minutes are not known, or none. */
  readonly marginPerPlatingMinute: number | null;
}

/** What every guest is given: in no dish's plate cost. Money is venue currency, q included. */
export interface ExtraCost {
  readonly id: ItemId;
  readonly item: string;
  readonly covers: number;
  readonly perCover: number | null;
  readonly cost: number | null;
}

export interface DishCosts {
  readonly venue: VenueSettings;
  readonly period: DayRange;
  readonly items: readonly DishCost[];
  readonly extras: readonly ExtraCost[];
  readonly issues: readonly Issue[];
}

/**
 * What each thing on the menu or sold in the period costs and leaves, one row an item and channel, by name and channel.
 * Whatever its department or section. Beside it what every guest was given.
 */
export function dishCosts(period: CostedPeriod): DishCosts {
  const offered = period.things.flatMap((thing, node) => (isOffered(thing) ? [{ thing, node }] : []));
  const nodes = offered.map(({ node }) => node);
  const losses = lossPerUnit(period, smallBatchLosses(period));
  const figures = offered.flatMap(({ thing, node }) =>
    channelsOf(thing).map((channel) => channelFigures(period, losses, thing, node, channel)),
  );
  const extras = extrasGiven(period);
  const reached = [...nodes, ...extras.map(({ node }) => node)];
  return {
    venue: period.venue,
    period: period.range,
    items: figures
      .map(({ row }) => row)
      .sort((a, b) => byText(nameKey(a.item), nameKey(b.item)) || byText(a.channel, b.channel)),
    extras: extras.map(({ thing, covers, perCover, cost }) => ({
      ...{ id: thing.id, item: thing.name, covers, perCover, cost },
    })),
    issues: mostTouchedFirst(
      period,
      figures.map(({ row, node }) => ({ ...row, node })),
      issuesOf(period, reached),
      [
        ...waitingIssues(period.venue.name, period.waiting, portionsSold(period.things)),
        ...labourIssues(period, reached),
        ...coversIssues(extras),
        ...portionsAboveCovers(period),
        ...figures.flatMap(({ row, revenue }) => revenueIssues(row.item, revenue)),
      ],
    ),
  };
}

/** Channels in which an item is on the menu or sold in the period. */
function channelsOf({ menu, sales }: Thing): readonly string[] {
  const listed = menu.filter(({ prices }) => prices.some(({ fact }) => fact.price !== null));
  const sold = sales.filter((row) => row.sold !== 0 || row.comps !== 0);
  return [...new Set([...listed, ...sold].map(({ channel }) => channel))].sort(byText);
}

function channelFigures(
  period: CostedPeriod,
  losses: LossPerUnit,
  thing: Thing,
  node: number,
  channel: string,
): { readonly row: DishCost; readonly node: number; readonly revenue: ItemFigures } {
  const { from, to } = period.range;
  const rows = thing.sales.filter((row) => row.channel === channel);
  const days = Array.from({ length: to - from }, (_, index) => (from + index) as Day);
  const onMenu = days.filter((day) => netPriceOn(thing.menu, channel, day) !== null);
  const item = itemFigures(period, node, rows, onMenu, [channel]);
  const commission = commissionPerPortion(period, node, rows, onMenu, [channel]);
  const margin = item.margin === null || commission === null ? null : item.margin - commission;
  const weights = portionWeights(period, node, rows, onMenu, [channel]);
  const { platingMinutes, recipeLabour } = labourPerPortion(period, node, weights);
  const row = {
    ...{ id: thing.id, item: thing.name, kind: thing.kind, section: itemSection(thing), channel, sold: item.sold },
    ...{ netPrice: item.netPrice, plateCost: item.plateCost, halfKnown: item.halfKnown, estimated: item.estimated },
    ...{ recipeLabour, foodPlusLabour: plusLabour(item.plateCost, recipeLabour) },
    ...{ smallBatchLoss: lossPerPortion(period, losses, node, weights), foodCost: item.foodCost },
    ...{ commission, margin, platingMinutes },
    marginPerPlatingMinute: margin === null || !platingMinutes ? null : margin / platingMinutes,
  };
  return { row, node, revenue: item };
}

function plusLabour(plateCost: number | null, recipeLabour: number | null): number | null {
  return plateCost === null || recipeLabour === null ? null : plateCost + recipeLabour;
}
