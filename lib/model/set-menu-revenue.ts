import { allocated } from '../core/allocation';

/** A course of a set menu as the menu prices it alone. Money in the least unit of the venue's currency (cents). */
export interface SetMenuCourse {
  /** Portions of it in one set menu: the share of guests who choose it, where there is a choice. */
  readonly portions: number;
  /** Its price alone, net of sales tax; null: it is not sold alone. */
  readonly netPrice: number | null;
  /** Sales tax rate of its goods, as a fraction. */
  readonly tax: number;
  /** Null where not costed. */
  readonly plateCost: number | null;
}

export interface CourseRevenue {
  /** Its part of the revenue as that was stated, in whole least units. */
  readonly amount: number;
  /** Net of its own tax; not rounded. */
  readonly net: number;
  /** No price alone: taken at plate cost / target food-cost %. */
  readonly estimated: boolean;
}

/**
 * The revenue of a set menu shared over its courses by their stand-alone prices (IFRS 15), in whole least units that sum to it exactly.
 *
 * part = revenue * (portions * price alone) / sum of (portions * price alone). A course that is not sold alone is taken at plate cost /
 * target food-cost %. Revenue with tax inside is split by prices with tax, before any tax is taken out, so that goods of different
 * rates share it as their net prices do; then each part gives up its own: net = amount / (1 + rate).
 *
 * `revenue` is a whole number of least units; below zero it is a refund. Null where a course has neither a price nor a cost (or there
 * is no target), and where nothing has a price.
 */
export function setMenuRevenue(
  revenue: number,
  taxIncluded: boolean,
  courses: readonly SetMenuCourse[],
  targetFoodCost: number | null,
): readonly CourseRevenue[] | null {
  if (!Number.isInteger(revenue)) throw new RangeError(`${revenue} is no whole number of least units`);
  const alone = courses.map(({ netPrice, plateCost }) => netPrice ?? estimate(plateCost, targetFoodCost));
  const weights = courses.map(({ portions, tax }, at) => portions * (alone[at] ?? 0) * (taxIncluded ? 1 + tax : 1));
  const whole = weights.reduce((sum, weight) => sum + weight, 0);
  if (alone.includes(null) || whole <= 0) return null;
  const amounts = allocated(
    revenue,
    weights.map((weight) => (revenue * weight) / whole),
  );
  return courses.map(({ netPrice, tax }, at) => {
    const amount = amounts[at] ?? 0;
    return { amount, net: taxIncluded ? amount / (1 + tax) : amount, estimated: netPrice === null };
  });
}

function estimate(plateCost: number | null, targetFoodCost: number | null): number | null {
  return plateCost === null || targetFoodCost === null || targetFoodCost <= 0 ? null : plateCost / targetFoodCost;
}
