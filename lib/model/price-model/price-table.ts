import type { Goods, PriceModel } from './price-model';

/**
 * In which table the price of some goods stands in a segment: what is packaging on some days only is so from the day that says it. A price of
 * nothing stands where the goods as a whole belong.
 */
export function tableAt({ prices, segments }: PriceModel, goods: Goods, segment: number): 'food' | 'packaging' {
  const cell = goods.node * segments + segment;
  if (prices.packaging[cell] !== 0) return 'packaging';
  return prices.food[cell] === 0 && goods.isPackaging ? 'packaging' : 'food';
}
