import { breakEvenSalesChange } from '../model/break-even-sales';
import { priceHoldingMargin, priceHoldingShare } from '../model/holding-price';
import type { QuadrantClass } from '../model/mix/mix-model';
import { editedSales } from '../model/price-model/edited-prices';
import type { PriceEdit } from '../model/price-model/edits';
import type { PricedItem, PriceModel } from '../model/price-model/price-model';
import { type PricedFigures, type PricedMix, pricedMix } from '../model/price-model/priced-mix';

/** One item before and after. Money in venue currency per portion, net; menu prices as they stand on the menu. */
export interface ItemPriceChange {
  readonly item: PricedItem;
  readonly before: PricedFigures;
  readonly after: PricedFigures;
  /** What it leaves in the period after less before; null where it is not known. */
  readonly contributionChange: number | null;
  /** The menu price at which it leaves as much a portion as before; null where there is none or nothing is known. */
  readonly holdMarginPrice: number | null;
  /** The menu price at which its food-cost % is what it was. */
  readonly holdPctPrice: number | null;
  /** Change of portions that leaves its contribution where it was, as a fraction; null where none does. */
  readonly breakEvenSalesChange: number | null;
}

export interface PriceChange {
  readonly before: PricedMix;
  readonly after: PricedMix;
  /** The period's contribution, after less before; null where none is known. */
  readonly contributionChange: number | null;
  /** Of the items of the model, the largest change of contribution first. */
  readonly items: readonly ItemPriceChange[];
  /** Who changes class. */
  readonly turned: readonly { readonly item: string; readonly from: QuadrantClass; readonly to: QuadrantClass }[];
}

/**
 * What some changes of prices would have done to a period, all portions as they were sold. Costs are linear in prices, so this is exact:
 * the menu mix of the facts with those prices in them.
 */
export function priceChange(model: PriceModel, edits: readonly PriceEdit[]): PriceChange {
  const before = pricedMix(model);
  const after = pricedMix(model, edits);
  const items = after.items.flatMap((now, index): ItemPriceChange[] => {
    const was = before.items[index];
    return was ? [itemChange(model, was, now)] : [];
  });
  const size = ({ contributionChange }: ItemPriceChange): number => Math.abs(contributionChange ?? 0);
  return {
    before,
    after,
    contributionChange: difference(before.contribution, after.contribution),
    items: items.sort((a, b) => size(b) - size(a)),
    turned: items.flatMap(({ item, before: { class: from }, after: { class: to } }) =>
      from !== null && to !== null && from !== to ? [{ item: item.name, from, to }] : [],
    ),
  };
}

function itemChange({ venue }: PriceModel, before: PricedFigures, after: PricedFigures): ItemPriceChange {
  const { item } = after;
  const cost = difference(before.plateCost, after.plateCost);
  const price = difference(before.netPrice, after.netPrice);
  const { listedNet } = editedSales(item, []);
  const hold =
    item.menuPrice === null || listedNet === null || before.netPrice === null
      ? null
      : {
          menuPrice: item.menuPrice.price,
          grossed: item.menuPrice.grossed,
          ...{ listedNet, achieved: before.netPrice },
          ...{ commission: item.commission, priceStep: venue.priceStep },
        };
  return {
    item,
    before,
    after,
    contributionChange: difference(before.contribution, after.contribution),
    holdMarginPrice: hold === null || cost === null ? null : priceHoldingMargin(cost, hold),
    holdPctPrice:
      hold === null || before.food === null || after.food === null
        ? null
        : priceHoldingShare(before.food, after.food, hold),
    breakEvenSalesChange:
      before.margin === null || cost === null || price === null
        ? null
        : breakEvenSalesChange(before.margin, price, cost),
  };
}

function difference(before: number | null, after: number | null): number | null {
  return before === null || after === null ? null : after - before;
}
