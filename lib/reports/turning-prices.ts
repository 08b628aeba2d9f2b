import { nameKey } from '../core/name-key';
import { isNear } from '../core/near';
import { meanMargin } from '../model/mix/mean-margin';
import type { QuadrantClass } from '../model/mix/mix-model';
import { costsAtFlatPrice, type FlatCost, type Linear } from '../model/price-model/flat-price';
import type { Goods, PricedItem, PriceModel } from '../model/price-model/price-model';
import { priceNow } from '../model/price-model/price-now';
import { pricedMix } from '../model/price-model/priced-mix';

/** Where a dish changes class if one ingredient had one price all period and nothing else moved. */
export interface TurningPrice {
  readonly item: PricedItem;
  /** Of a kilogram, litre or piece; null where no price of it turns the dish, or the dish has no class. */
  readonly turningPrice: number | null;
  readonly classNow: QuadrantClass | null;
  /** On the other side of the turning price; null where there is none. */
  readonly classBeyond: QuadrantClass | null;
}

export interface TurningPrices {
  readonly goods: Goods;
  /** Of a kilogram, litre or piece, as a mean over what was taken of it; null where it has no price. */
  readonly priceNow: number | null;
  /** By name of the dish. */
  readonly items: readonly TurningPrice[];
}

/**
 * The turning price of each dish for one ingredient, by Kasavana & Smith. Null where nothing of that name is bought.
 *
 * With the ingredient at a price x all period, CM_i(x) and the average A(x) are both linear in x, so the class changes at the root of one
 * linear equation CM_i(x) = A(x). Dishes that do not use it have turning prices too, since the average moves. Popularity does not move
 * with a price, nor do estimates. No turning price: the ingredient or the dish is not costed, both move alike, or the root is below zero.
 */
export function turningPrices(model: PriceModel, ingredient: string): TurningPrices | null {
  const goods = model.goods.find(({ name }) => nameKey(name) === nameKey(ingredient));
  if (!goods) return null;
  const now = priceNow(model, goods);
  const today = pricedMix(model).items;
  const flat = costsAtFlatPrice(model, goods.name);
  const margins = flat.map(marginAt);
  const average = averageOf(flat, margins);
  return {
    goods,
    priceNow: now,
    items: flat.map(({ item }, index) => {
      const classNow = today[index]?.class ?? null;
      const margin = margins[index] ?? null;
      const root = now === null || classNow === null || !margin || !average ? null : crossing(margin, average);
      return {
        item,
        turningPrice: root,
        classNow,
        classBeyond: root === null || classNow === null ? null : ACROSS[classNow],
      };
    }),
  };
}

/** CM(x) = P - f(x). */
function marginAt({ item, cost }: FlatCost): Linear | null {
  if (cost === null || item.netPrice === null) return null;
  return { at0: item.netPrice - cost.total.at0, slope: -cost.total.slope };
}

/** A(x): both of its coefficients are portion-weighted means, as the mean margin is one. */
function averageOf(flat: readonly FlatCost[], margins: readonly (Linear | null)[]): Linear | null {
  const mean = (of: keyof Linear): number | null =>
    meanMargin(flat.map(({ item }, index) => ({ sold: item.sold, margin: margins[index]?.[of] ?? null })));
  const [at0, slope] = [mean('at0'), mean('slope')];
  return at0 === null || slope === null ? null : { at0, slope };
}

/** The price at which two linear figures meet; null where they move alike, or only meet below zero. */
function crossing(one: Linear, other: Linear): number | null {
  if (isNear(one.slope, other.slope)) return null;
  const root = (one.at0 - other.at0) / (other.slope - one.slope);
  return root >= 0 ? root + 0 : null;
}

/** The class as popular as now, on the other side of the average. */
const ACROSS: Readonly<Record<QuadrantClass, QuadrantClass>> = {
  ...{ star: 'plowhorse', plowhorse: 'star' },
  ...{ puzzle: 'dog', dog: 'puzzle' },
};
