import type { Day } from '../core/days';
import type { CostedPeriod } from './costed-period';
import type { SalesDay } from './facts';
import { type LineCount, lineCount } from './half-known';
import { netPriceOn } from './menu-price';
import { plateCost } from './plate-cost';
import { segmentOf } from './segments';

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
  /** Revenue of the paid portions, as far as it is known. */
  readonly revenue: number;
  /** Portions that came without revenue: with a menu price that stands in, and without one. */
  readonly standIn: number;
  readonly unpriced: number;
  /** Achieved price: revenue / sold; the mean menu price where none was sold; null where neither is known. */
  readonly netPrice: number | null;
  /** Portion-weighted mean of f; the mean over the days on sale where none was sold; null where any of it is not known. */
  readonly plateCost: number | null;
  readonly halfKnown: HalfKnown | null;
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
  const revenue = sum((row) => rowRevenue(period, node, row) ?? row.net);
  const cost = meanCost(period, node, sold > 0 ? rows : [], daysOnSale);
  const netPrice =
    sold > 0 ? (unpriced === 0 ? revenue / sold : null) : meanMenuPrice(period, node, daysOnSale, channels);
  return {
    sold,
    comps: sum((row) => row.comps),
    revenue,
    standIn: sum((row) => row.soldWithoutRevenue) - unpriced,
    unpriced,
    netPrice,
    plateCost: cost.total,
    halfKnown: cost.halfKnown,
    estimated: cost.estimated,
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

/** The mean plate cost over segments, weighted by paid portions; by days on sale where there are none. */
function meanCost(period: CostedPeriod, node: number, rows: readonly SalesDay[], days: readonly Day[]): MeanCost {
  const weights = new Float64Array(period.segments.count);
  const add = (day: Day, weight: number): void => {
    const segment = segmentOf(period.segments, day);
    weights[segment] = (weights[segment] as number) + weight;
  };
  if (rows.length > 0) for (const row of rows) add(row.day, row.sold);
  else for (const day of days) add(day, 1);

  const weighed = [...weights.keys()].filter((segment) => weights[segment] !== 0);
  const whole = weighed.reduce((total, segment) => total + (weights[segment] as number), 0);
  const costs = weighed.map((segment) => ({ segment, ...plateCost(period, node, segment) }));
  const mean = (of: 'total' | 'food'): number =>
    costs.reduce((total, cost) => total + (weights[cost.segment] as number) * cost[of], 0) / whole;
  const estimated = costs.some((cost) => cost.estimated);
  const unknown = costs.filter((cost) => !cost.complete);
  if (costs.length > 0 && unknown.length === 0) {
    return { total: mean('total'), food: mean('food'), halfKnown: null, estimated };
  }
  const counts = unknown.map(({ segment }) => lineCount(period, node, segment));
  const worst = counts.reduce<LineCount | null>(
    (most, count) => (most && most.missing >= count.missing ? most : count),
    null,
  );
  if (worst === null || worst.lines === 0) return { total: null, food: null, halfKnown: null, estimated };
  const isPartKnown = unknown.length < costs.length || counts.some(({ lines, missing }) => missing < lines);
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
