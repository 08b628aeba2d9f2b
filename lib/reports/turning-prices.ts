import { nameKey } from '../core/name-key';
import { rootsOf } from '../core/roots';
import { menuAverages } from '../model/mix/menu-averages';
import type { MixClass, MixFigures } from '../model/mix/mix-model';
import { MIX_MODELS } from '../model/mix/mix-models';
import { type FlatMix, flatMix, type PricedModelName } from '../model/price-model/class-axes';
import { costsAtFlatPrice } from '../model/price-model/flat-price';
import type { Goods, PricedItem, PriceModel } from '../model/price-model/price-model';
import { priceNow } from '../model/price-model/price-now';
import { type PricedFigures, pricedMix } from '../model/price-model/priced-mix';

/** Where a dish changes class if one ingredient had one price all period and nothing else moved. */
export interface TurningPrice {
  readonly item: PricedItem;
  /** Of a kilogram, litre or piece; null where no price of it turns the dish, or the dish has no class. */
  readonly turningPrice: number | null;
  readonly classNow: MixClass | null;
  /** On the other side of the turning price; null where there is none. */
  readonly classBeyond: MixClass | null;
}

export interface TurningPrices {
  readonly goods: Goods;
  /** Of a kilogram, litre or piece, as a mean over what was taken of it; null where it has no price. */
  readonly priceNow: number | null;
  /** By name of the dish. */
  readonly items: readonly TurningPrice[];
}

/**
 * The turning price of each dish for one ingredient, by one of the models. Null where nothing of that name is bought.
 *
 * With the ingredient at a price x all period, margins, food-cost % and their means are linear in x, so a class changes at the root of one
 * linear equation an axis (Kasavana & Smith: CM_i(x) = the average; Miller and Pavesic: food-cost %; Pavesic also CM_i(x) sold_i), for
 * goal values of a quadratic; of several the root nearest to the price now at which the class does change. Dishes that do not use it have
 * turning prices too, since the average moves. Popularity does not move with a price, nor do estimates. No turning price: the ingredient
 * or the dish is not costed, both sides move alike, or every root is below zero.
 */
export function turningPrices(
  model: PriceModel,
  ingredient: string,
  by: PricedModelName = 'kasavana-smith',
): TurningPrices | null {
  const goods = model.goods.find(({ name }) => nameKey(name) === nameKey(ingredient));
  if (!goods) return null;
  const now = priceNow(model, goods);
  const today = classesToday(model, by);
  const mix = flatMix(costsAtFlatPrice(model, goods.name), model.venue);
  return {
    goods,
    priceNow: now,
    items: model.items.map((item, index) => {
      const classNow = today[index] ?? null;
      const turn = now === null || classNow === null ? null : nearestTurn(mix, index, by, now, classNow);
      return { item, turningPrice: turn?.price ?? null, classNow, classBeyond: turn?.beyond ?? null };
    }),
  };
}

/** The classes at the prices of the days. */
function classesToday(model: PriceModel, by: PricedModelName): readonly (MixClass | null)[] {
  const { popularityFactor, variableCost } = model.venue;
  const looked = pricedMix(model).items.map(lookedAt);
  const menu = menuAverages(looked, popularityFactor, variableCost);
  return looked.map((figures, index) => {
    const isClassed = figures !== null && menu !== null && model.items[index]?.hasDays;
    return isClassed ? MIX_MODELS[by].classOf(figures, menu) : null;
  });
}

function lookedAt({ item, netPrice, margin, food }: PricedFigures): MixFigures | null {
  if (margin === null || netPrice === null || food === null) return null;
  return { sold: item.sold, expected: item.expected, margin, netPrice, food, labour: null };
}

/** The root nearest to the price now across which the class changes, and the class on its far side. */
function nearestTurn(
  mix: FlatMix,
  index: number,
  by: PricedModelName,
  now: number,
  classNow: MixClass,
): { readonly price: number; readonly beyond: MixClass } | null {
  const roots = mix
    .axesOf(index, by)
    .flatMap(rootsOf)
    .filter((root) => root >= 0)
    .sort((a, b) => a - b);
  const classAt = (x: number): MixClass | null => {
    const [figures, menu] = [mix.figuresAt(index, x), mix.menuAt(x)];
    return figures && menu && MIX_MODELS[by].classOf(figures, menu);
  };
  const sides = roots.flatMap((price, at) => {
    const below = classAt((price + (roots[at - 1] ?? 0)) / 2);
    const above = classAt((price + (roots[at + 1] ?? 2 * price + 1)) / 2);
    return below === null || above === null || below === above ? [] : [{ price: price + 0, below, above }];
  });
  const [turn] = sides.sort((a, b) => Math.abs(a.price - now) - Math.abs(b.price - now));
  if (!turn) return null;
  const [near, far] = turn.price >= now ? [turn.below, turn.above] : [turn.above, turn.below];
  // where it stands on the line today, prices of the days and one flat price may lie on two sides of it
  return { price: turn.price, beyond: far === classNow ? near : far };
}
