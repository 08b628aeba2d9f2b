import type { ItemFigures } from '../item-figures';

/** Below this share of portions with a known margin, what is said of all of them is provisional. */
export const PROVISIONAL_BELOW = 0.9;

/** What a section sold, cost and left together. The last five are of the items whose margin is known. */
export interface MixTotals {
  readonly sold: number;
  readonly comps: number;
  /** As far as it is known; null where it is known of no portion. */
  readonly revenue: number | null;
  readonly costedSold: number;
  readonly costedRevenue: number;
  /** Of the costed portions, those with an owner's estimate in their cost. */
  readonly estimatedSold: number;
  readonly plateCost: number | null;
  readonly foodCost: number | null;
  readonly margin: number | null;
}

/**
 * Sums over the items of a section: plate cost = sum(f sold), margin = revenue - plate cost, food-cost % = sum(food sold) / revenue.
 * An item whose price or cost is not known counts in sold, comps and revenue only.
 */
export function mixTotals(items: readonly ItemFigures[]): MixTotals {
  const costed = items.filter(({ margin }) => margin !== null);
  const total = (of: readonly ItemFigures[], figure: (item: ItemFigures) => number): number =>
    of.reduce((sum, item) => sum + figure(item), 0);
  const costedRevenue = total(costed, ({ revenue }) => revenue ?? 0);
  const plateCost = total(costed, ({ plateCost, sold }) => (plateCost ?? 0) * sold);
  const food = total(costed, ({ food, sold }) => (food ?? 0) * sold);
  const isKnown = costed.length > 0;
  const isUnpriced = items.some(({ revenue }) => revenue === null);
  const isPriced = items.some(({ sold, revenue }) => sold > 0 && revenue !== null);
  return {
    sold: total(items, ({ sold }) => sold),
    comps: total(items, ({ comps }) => comps),
    revenue: isUnpriced && !isPriced ? null : total(items, ({ revenue }) => revenue ?? 0),
    costedSold: total(costed, ({ sold }) => sold),
    costedRevenue,
    estimatedSold: total(costed, ({ sold, estimated }) => (estimated ? sold : 0)),
    plateCost: isKnown ? plateCost : null,
    foodCost: isKnown && costedRevenue > 0 ? food / costedRevenue : null,
    margin: isKnown ? costedRevenue - plateCost : null,
  };
}

/** Several periods together: sums, the food-cost % weighted by the costed revenue. What is known of none of them is null. */
export function sumOfTotals(totals: readonly MixTotals[]): MixTotals {
  const sum = (figure: (each: MixTotals) => number | null): number =>
    totals.reduce((all, each) => all + (figure(each) ?? 0), 0);
  const known = (figure: (each: MixTotals) => number | null): number | null =>
    totals.some((each) => figure(each) !== null) ? sum(figure) : null;
  const costedRevenue = sum((each) => each.costedRevenue);
  const food = sum(({ foodCost, costedRevenue: revenue }) => (foodCost ?? 0) * revenue);
  return {
    sold: sum((each) => each.sold),
    comps: sum((each) => each.comps),
    revenue: known((each) => each.revenue),
    costedSold: sum((each) => each.costedSold),
    costedRevenue,
    estimatedSold: sum((each) => each.estimatedSold),
    plateCost: known((each) => each.plateCost),
    foodCost: known((each) => each.foodCost) === null || costedRevenue <= 0 ? null : food / costedRevenue,
    margin: known((each) => each.margin),
  };
}

/** The mean of several periods: their sums over their number; the food-cost % is that of all together. */
export function meanOfTotals(totals: readonly MixTotals[]): MixTotals {
  const sums = sumOfTotals(totals);
  const count = Math.max(1, totals.length);
  const over = (sum: number | null): number | null => (sum === null ? null : sum / count);
  return {
    sold: sums.sold / count,
    comps: sums.comps / count,
    revenue: over(sums.revenue),
    costedSold: sums.costedSold / count,
    costedRevenue: sums.costedRevenue / count,
    estimatedSold: sums.estimatedSold / count,
    plateCost: over(sums.plateCost),
    foodCost: sums.foodCost,
    margin: over(sums.margin),
  };
}
