import { isNear } from '../../core/near';
import type { Quadratic } from '../../core/roots';
import { goalValue } from '../mix/goal-value';
import { menuAverages } from '../mix/menu-averages';
import type { MenuAverages, MixFigures, ModelName } from '../mix/mix-model';
import { type FlatCost, type Linear, valueAt } from './flat-price';
import type { PricedVenue } from './price-model';

/** The models whose classes can move with a price; recipe labour does not, and a price model has none. */
export const PRICED_MODELS = ['kasavana-smith', 'miller', 'pavesic', 'goal-value'] as const;
export type PricedModelName = (typeof PRICED_MODELS)[number] & ModelName;

/** A section while one ingredient has one price x all period. */
export interface FlatMix {
  /** What a model looks at of an item at x; null where its margin is not known. */
  readonly figuresAt: (index: number, x: number) => MixFigures | null;
  /** What it is held against at x; null where nothing costed was sold. */
  readonly menuAt: (x: number) => MenuAverages | null;
  /**
   * What a model asks of an item less what it is held against, for each of its axes that moves with x: linear in x, for goal values quadratic.
   * The class of the item changes only where one of these is zero. None where the item has no class in the model.
   */
  readonly axesOf: (index: number, model: PricedModelName) => readonly Quadratic[];
}

/** Costs at any flat price, as the models look at them: margins and food costs are linear in it, and so are their means. */
export function flatMix(flat: readonly FlatCost[], venue: PricedVenue): FlatMix {
  const at0 = flat.map((each) => figures(each, ({ at0: value }) => value, 1));
  // the same means of slopes are the slopes of the means, the price of a portion being no part of either
  const slopes = flat.map((each) => figures(each, ({ slope }) => slope, 0));
  const menu0 = menuAverages(at0, venue.popularityFactor, venue.variableCost);
  const menuSlope = menuAverages(slopes, venue.popularityFactor, null);
  const size = sizeOf(at0);
  const mean = (of: 'meanMargin' | 'meanContribution' | 'foodCost'): Linear | null => {
    const [value, slope] = [menu0?.[of] ?? null, menuSlope?.[of] ?? null];
    return value === null || slope === null ? null : { at0: value, slope };
  };
  const [meanMargin, meanContribution, foodCost] = [mean('meanMargin'), mean('meanContribution'), mean('foodCost')];
  const goal = foodCost && goalAt(foodCost, size.sold, size.price, venue.variableCost);

  return {
    figuresAt(index, x) {
      const [start, slope] = [at0[index], slopes[index]];
      if (!start || !slope) return null;
      return { ...start, margin: start.margin + x * slope.margin, food: start.food + x * slope.food };
    },
    menuAt(x) {
      if (menu0 === null || meanMargin === null || meanContribution === null) return null;
      const share = foodCost && valueAt(foodCost, x);
      const { variableCost } = venue;
      return {
        ...menu0,
        meanMargin: valueAt(meanMargin, x),
        meanContribution: valueAt(meanContribution, x),
        foodCost: share,
        goalValue:
          share === null || variableCost === null ? null : goalValue(share, size.sold, size.price, variableCost),
      };
    },
    axesOf(index, model) {
      const [start, slope] = [at0[index], slopes[index]];
      if (!start || !slope || !meanMargin || !meanContribution) return [];
      const { netPrice, sold } = start;
      const linear = (of: 'margin' | 'food', times: number): Linear => {
        return { at0: start[of] * times, slope: slope[of] * times };
      };
      if (model === 'kasavana-smith') return [less(line(linear('margin', 1)), line(meanMargin))];
      if (foodCost === null || netPrice <= 0) return [];
      const own = linear('food', 1 / netPrice);
      const cost = less(line(foodCost), line(own));
      if (model === 'miller') return [cost];
      if (model === 'pavesic') return [cost, less(line(linear('margin', sold)), line(meanContribution))];
      const ownGoal = goalAt(own, sold, netPrice, venue.variableCost);
      return goal === null || ownGoal === null ? [] : [less(ownGoal, goal)];
    },
  };
}

function figures({ item, cost }: FlatCost, of: (figure: Linear) => number, prices: 0 | 1): MixFigures | null {
  if (cost === null || item.netPrice === null) return null;
  const { sold, expected, netPrice } = item;
  return {
    ...{ sold, expected, netPrice, labour: null },
    margin: netPrice * prices - of(cost.total),
    food: of(cost.food),
  };
}

/** Mean portions of a costed item, and the mean price of a portion. */
function sizeOf(items: readonly (MixFigures | null)[]): { readonly sold: number; readonly price: number } {
  const costed = items.flatMap((item) => item ?? []);
  const sold = costed.reduce((sum, item) => sum + item.sold, 0);
  const revenue = costed.reduce((sum, item) => sum + item.netPrice * item.sold, 0);
  return { sold: sold / costed.length, price: revenue / sold };
}

/** A * B * C * D with a food-cost % of u + f x: B C (1 - u - f x) (1 - v - u - f x). */
function goalAt({ at0: u, slope: f }: Linear, sold: number, price: number, variable: number | null): Quadratic | null {
  if (variable === null) return null;
  const [a, d, times] = [1 - u, 1 - variable - u, sold * price];
  return { at0: times * a * d, slope: -times * (a + d) * f, square: times * f * f };
}

const line = ({ at0, slope }: Linear): Quadratic => ({ at0, slope, square: 0 });

/** The difference of two figures; where they move alike but for rounding, it does not move. */
function less(one: Quadratic, other: Quadratic): Quadratic {
  const apart = (of: 'slope' | 'square'): number => (isNear(one[of], other[of]) ? 0 : one[of] - other[of]);
  return { at0: one.at0 - other.at0, slope: apart('slope'), square: apart('square') };
}
