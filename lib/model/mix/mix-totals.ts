import type { ItemFigures } from '../item-figures';

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
