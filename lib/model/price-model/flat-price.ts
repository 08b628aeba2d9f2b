import type { UnitCosts } from '../costed-period';
import { upward } from '../passes';
import { editedPrices } from './edited-prices';
import { type EditTarget, type PriceEdit, spokenAmount, touchesGoods } from './edits';
import type { PricedItem, PriceModel } from './price-model';
import { tableAt } from './price-table';
import { portionCost, unitCosts } from './priced-mix';

/** A figure that is linear in what moves: at x it is at0 + slope * x. */
export interface Linear {
  readonly at0: number;
  readonly slope: number;
}

export const valueAt = ({ at0, slope }: Linear, x: number): number => at0 + slope * x;

/** What one more of what an edit is typed in (a share; an amount or a flat price of a kilogram, litre or piece) adds to each item. */
export interface CostSlope {
  /** Per portion, q included. */
  readonly total: number;
  readonly food: number;
}

/**
 * How fast the cost of each item moves with an edit of supplier prices, from one upward pass: where an edit of x costs f, one of x + d costs
 * f + slope * d. Null for an item without cost. Moving is then one multiplication an item.
 *
 * A share moves each day's price p by p; an amount and a flat price move it by one.
 */
export function costSlopes(
  model: PriceModel,
  target: EditTarget,
  how: PriceEdit['step']['how'],
): readonly (CostSlope | null)[] {
  const costs = direction(model, target, how);
  return model.items.map((item) => portionCost(model, item, costs));
}

/** What everything takes of one more of an edit; estimates do not move. */
function direction(model: PriceModel, target: EditTarget, how: PriceEdit['step']['how']): UnitCosts {
  const nothing = new Float64Array(model.prices.food.length);
  const moves = { food: nothing, packaging: nothing };
  const any = { target, step: { how: 'share', by: 0 } } as const;
  for (const goods of model.goods) {
    for (let segment = 0; segment < model.segments; segment++) {
      if (!touchesGoods(any, goods, segment)) continue;
      const table = tableAt(model, goods, segment);
      if (moves[table] === nothing) moves[table] = nothing.slice();
      const cell = goods.node * model.segments + segment;
      moves[table][cell] = how === 'share' ? (model.prices[table][cell] as number) : 1 / spokenAmount(goods);
    }
  }
  const pass = (of: Float64Array): Float64Array => (of === nothing ? nothing : upward(model.lines, of, model.segments));
  return { food: pass(moves.food), packaging: pass(moves.packaging), estimate: nothing };
}

/** The cost of an item while one ingredient has one price on every day, as a function of that price. */
export interface FlatCost {
  readonly item: PricedItem;
  /** f, and of it what food-cost % counts; null where the item is not costed. */
  readonly cost: { readonly total: Linear; readonly food: Linear } | null;
}

/** What every item costs with an ingredient at one price all period, for any such price (of a kilogram, litre or piece). */
export function costsAtFlatPrice(model: PriceModel, ingredient: string): readonly FlatCost[] {
  const target = { of: 'ingredient', name: ingredient } as const;
  const free = unitCosts(model, editedPrices(model, [{ target, step: { how: 'flat', to: 0 } }]));
  const slopes = costSlopes(model, target, 'flat');
  return model.items.map((item, index) => {
    const at0 = portionCost(model, item, free);
    const slope = slopes[index];
    if (at0 === null || !slope) return { item, cost: null };
    const linear = (of: 'total' | 'food'): Linear => ({ at0: at0[of], slope: slope[of] });
    return { item, cost: { total: linear('total'), food: linear('food') } };
  });
}
