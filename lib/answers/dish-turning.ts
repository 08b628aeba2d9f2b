import type { BaseUnit } from '../core/units';
import { moneyText } from '../format/money-text';
import type { PriceModel } from '../model/price-model/price-model';
import type { DishIngredient } from '../reports/dish';
import { turningPrices } from '../reports/turning-prices';
import type { DishAnswer } from './dish-shape';

/** So many of a dish's ingredients are asked for their turning price, the dearest first. */
const ASKED = 5;

const SAID_BY: Readonly<Record<BaseUnit, DishAnswer['turning'][number]['unit']>> = { g: 'kg', ml: 'l', each: 'each' };

/** The turning prices of one dish for what costs most in it. */
export function dishTurning(
  model: PriceModel,
  item: string,
  bought: readonly DishIngredient[],
  currency: string,
): DishAnswer['turning'] {
  const money = (amount: number | null) => (amount === null ? null : moneyText(amount, currency));
  const goods = bought.filter(({ isEstimate, cost }) => !isEstimate && cost > 0).slice(0, ASKED);
  return goods.flatMap(({ item: ingredient }) => {
    const found = turningPrices(model, ingredient);
    const row = found?.items.find((each) => each.item.name === item);
    if (!found || !row || row.classNow === null) return [];
    return [
      {
        ...{ ingredient, unit: SAID_BY[found.goods.unit], priceNow: money(found.priceNow) },
        ...{ turningPrice: money(row.turningPrice), classBeyond: row.classBeyond },
      },
    ];
  });
}
