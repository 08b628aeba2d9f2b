import type { ItemId } from '../facts';
import type { Basket, BasketLine } from './basket';

/** The part that one thing bought has in the change of a plate cost. Venue currency per portion. */
export interface CostChangeLine {
  readonly id: ItemId;
  readonly item: string;
  readonly isEstimate: boolean;
  readonly before: number;
  readonly after: number;
  /** Of f01 - f00: the old recipe at the new prices less at the old ones. */
  readonly price: number;
  /** Of f11 - f01: the new recipe less the old one, both at the new prices. */
  readonly recipe: number;
}

/** How a plate cost came from one period's to the next one's. Venue currency per portion; above zero costs more. */
export interface CostChange {
  /** f00 */
  readonly before: number;
  /** f01: what the old recipe would have cost at the new prices. */
  readonly atNewPrices: number;
  /** f11 */
  readonly after: number;
  readonly price: number;
  readonly recipe: number;
  /** By what is bought, largest change first. Their parts sum to price and to recipe. */
  readonly lines: readonly CostChangeLine[];
}

/**
 * The change of a plate cost from period 0 to period 1 as price and recipe.
 *
 * f01 = sum over segments g of period 0 and h of period 1 of (s0g / s0) (s1h / s1) f(R_g, p_h). Costs are linear in prices, so it is
 * the sum over what is bought of its mean need in period 0 * its mean price in period 1; price = f01 - f00, recipe = f11 - f01.
 * What has no price in period 1 keeps that of period 0: its going is a change of recipe.
 */
export function costChange(
  before: Basket,
  after: Basket,
  priceAfter: (key: string, line: BasketLine) => number | null,
): CostChange {
  const keys = [...new Set([...before.keys(), ...after.keys()])];
  const lines = keys.flatMap((key): readonly CostChangeLine[] => {
    const [old, now] = [before.get(key), after.get(key)];
    const named = old ?? now;
    if (named === undefined) return [];
    const price = old === undefined ? null : priceAfter(key, old);
    const [from, to] = [old?.cost ?? 0, now?.cost ?? 0];
    const atNewPrices = old === undefined ? 0 : price === null ? from : old.need * price;
    const { id, item, isEstimate } = named;
    return [{ id, item, isEstimate, before: from, after: to, price: atNewPrices - from, recipe: to - atNewPrices }];
  });
  const sum = (of: (line: CostChangeLine) => number): number => lines.reduce((total, line) => total + of(line), 0);
  const [from, to, price] = [sum((line) => line.before), sum((line) => line.after), sum((line) => line.price)];
  return {
    ...{ before: from, atNewPrices: from + price, after: to, price, recipe: sum((line) => line.recipe) },
    lines: lines.sort((a, b) => moved(b) - moved(a)),
  };
}

const moved = ({ price, recipe }: CostChangeLine): number => Math.abs(price) + Math.abs(recipe);
