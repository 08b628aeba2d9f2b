import type { Day } from '../core/days';
import type { CostedPeriod } from './costed-period';
import type { SalesDay } from './facts';
import { type LineCount, lineCount } from './half-known';
import { netPriceOn } from './menu-price';
import { plateCost } from './plate-cost';
import { type PortionWeight, portionWeights, weightedMean } from './portion-weights';

/** How a missing cost stands: what is known of it is a floor, never the cost. */
export interface HalfKnown {
  /** Sum of the known part, per portion; null where nothing is known. */
  readonly floor: number | null;
  /** Ingredient lines reached by the recipe, and how many of them have no cost. */
  readonly lines: number;
  readonly missing: number;
}

/** What an item sold for, cost and left in a period. Money is venue currency net of sales tax, per portion except revenue. */
export interface ItemFigures {
  /** Paid portions. */
  readonly sold: number;
  readonly comps: number;
  /** Revenue of the paid portions, as far as it is known; null where it is known of none of them. */
  readonly revenue: number | null;
  /** Portions that came without revenue: with a menu price that stands in, and without one. */
  readonly standIn: number;
  readonly unpriced: number;
  /** Achieved price: revenue / sold; the mean menu price where none was sold; null where neither is known. */
  readonly netPrice: number | null;
  /** Portion-weighted mean of f; the mean over the days on sale where none was sold; null where any of it is not known. */
  readonly plateCost: number | null;
  readonly halfKnown: HalfKnown | null;
  /** An owner's estimate has a part in the plate cost. */
  readonly estimated: boolean;
  /** Of the plate cost, what food-cost % counts: packaging is left out. */
  readonly food: number | null;
  /** Food-cost %, as a fraction of the achieved price. */
  readonly foodCost: number | null;
  /** CM: achieved price - plate cost. */
  readonly margin: number | null;
}

/** Revenue of one row of sales with the day's menu price for portions that came without; null where there is none that day. */
export function rowRevenue(period: CostedPeriod, node: number, row: SalesDay): number | null {
  if (row.soldWithoutRevenue === 0) return row.net;
  const price = netPriceOn(period.things[node]?.menu ?? [], row.channel, row.day);
  return price === null ? null : row.net + row.soldWithoutRevenue * price;
}

/**
 * The figures of one item over some rows of its sales (all channels, or one).
 *
 * P = net revenue / sold; plate cost = sum over segments of portions * f / sold; CM = P - plate cost; food-cost % = food / P.
 * Where none was sold, P is the mean net menu price and the plate cost the mean f over the days on sale.
 */
export function itemFigures(
  period: CostedPeriod,
  node: number,
  rows: readonly SalesDay[],
  daysOnSale: readonly Day[],
  channels: readonly string[],
): ItemFigures {
  const sum = (of: (row: SalesDay) => number): number => rows.reduce((total, row) => total + of(row), 0);
  const sold = sum((row) => row.sold);
  const withoutPrice = rows.filter((row) => rowRevenue(period, node, row) === null);
  const unpriced = withoutPrice.reduce((total, row) => total + row.soldWithoutRevenue, 0);
  const known = sum((row) => rowRevenue(period, node, row) ?? row.net);
  const revenue = unpriced > 0 && unpriced === sold && known === 0 ? null : known;
  const weights = portionWeights(period, node, rows, daysOnSale, channels);
  const cost = meanCost(period, node, weights);
  const netPrice =
    sold > 0 ? (unpriced === 0 ? known / sold : null) : meanMenuPrice(period, node, daysOnSale, channels);
  return {
    sold,
    comps: sum((row) => row.comps),
    revenue,
    standIn: sum((row) => row.soldWithoutRevenue) - unpriced,
    unpriced,
    netPrice,
    plateCost: cost.total,
    halfKnown: cost.halfKnown,
    estimated: cost.total !== null && cost.estimated,
    food: cost.food,
    foodCost: cost.food === null || netPrice === null || netPrice <= 0 ? null : cost.food / netPrice,
    margin: cost.total === null || netPrice === null ? null : netPrice - cost.total,
  };
}

interface MeanCost {
  readonly total: number | null;
  readonly food: number | null;
  readonly halfKnown: HalfKnown | null;
  readonly estimated: boolean;
}

/**
 * The mean plate cost over segments and channels, weighted by portions. Where a recipe is half known, the mean of the known part is a
 * floor; where on some days there is no recipe at all, nothing is: a floor with days of nothing in it would say little and look like much.
 */
function meanCost(period: CostedPeriod, node: number, weights: readonly PortionWeight[]): MeanCost {
  const costs = new Map(weights.map((at) => [at, plateCost(period, node, at.segment, at.channel)]));
  const mean = (of: 'total' | 'food'): number | null => weightedMean(weights, (at) => costs.get(at)?.[of] ?? 0);
  const estimated = [...costs.values()].some((cost) => cost.estimated);
  const unknown = weights.filter((at) => costs.get(at)?.complete !== true);
  if (unknown.length === 0) {
    return { total: mean('total'), food: mean('food'), halfKnown: null, estimated };
  }
  const counts = unknown.map(({ segment, channel }) => lineCount(period, node, segment, channel));
  const worst = counts.reduce<LineCount | null>(
    (most, count) => (most && most.missing >= count.missing ? most : count),
    null,
  );
  if (worst === null || worst.lines === 0) return { total: null, food: null, halfKnown: null, estimated };
  const isPartKnown = unknown.length < weights.length || counts.some(({ lines, missing }) => missing < lines);
  return { total: null, food: null, halfKnown: { floor: isPartKnown ? mean('total') : null, ...worst }, estimated };
}

/** The mean net menu price over some days and channels; null where there is none. */
function meanMenuPrice(
  period: CostedPeriod,
  node: number,
  days: readonly Day[],
  channels: readonly string[],
): number | null {
  const menu = period.things[node]?.menu ?? [];
  const prices = days.flatMap((day) => channels.flatMap((channel) => netPriceOn(menu, channel, day) ?? []));
  return prices.length === 0 ? null : prices.reduce((sum, price) => sum + price, 0) / prices.length;
}
