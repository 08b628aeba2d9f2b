import { spokenAmount } from './edits';
import type { Goods, PriceModel } from './price-model';
import { tableAt } from './price-table';

/**
 * What a kilogram, litre or piece of an ingredient cost in the period: the mean over what everything served took of it, so that at this price
 * all period it would have cost the same. Where nothing was taken, the last price. Null where no day has a price.
 */
export function priceNow(model: PriceModel, goods: Goods): number | null {
  const { prices, segments } = model;
  let last: number | null = null;
  let spent = 0;
  let need = 0;
  for (let segment = 0; segment < segments; segment++) {
    if ((goods.suppliers[segment] ?? null) === null) continue;
    const price = prices[tableAt(model, goods, segment)][goods.node * segments + segment] as number;
    last = price;
    spent += price * (goods.need[segment] as number);
    need += goods.need[segment] as number;
  }
  if (last === null) return null;
  return (need > 0 ? spent / need : last) * spokenAmount(goods);
}
