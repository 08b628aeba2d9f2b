import type { UnitCosts } from '../costed-period';
import { goodsTouchedBy, type PriceEdit, spokenAmount, stepped, touchesItem } from './edits';
import type { Listing, PricedItem, PriceModel } from './price-model';
import { tableAt } from './price-table';

/** The prices of what is bought, with some edits made. A table in which nothing changed is the model's own. */
export function editedPrices(model: PriceModel, edits: readonly PriceEdit[]): UnitCosts {
  const { segments, goods: all, prices } = model;
  const edited = { food: prices.food, packaging: prices.packaging };
  for (const edit of edits) {
    const touchedBy = goodsTouchedBy(edit);
    for (const goods of all) {
      const touches = touchedBy(goods);
      if (touches === null) continue;
      for (let segment = 0; segment < segments; segment++) {
        if (!touches(segment)) continue;
        const which = tableAt(model, goods, segment);
        if (edited[which] === prices[which]) edited[which] = prices[which].slice();
        const table = edited[which];
        const cell = goods.node * segments + segment;
        table[cell] = stepped(table[cell] as number, edit.step, spokenAmount(goods));
      }
    }
  }
  return { ...edited, estimate: prices.estimate };
}

/**
 * Revenue and price of an item with some edits of menu prices made: each portion's revenue moves with what it was listed at, so that
 * discounts stay the share that they were. What no menu price stood behind stays as it is.
 */
export function editedSales(
  item: PricedItem,
  edits: readonly PriceEdit[],
): { readonly revenue: number | null; readonly netPrice: number | null; readonly listedNet: number | null } {
  const own = edits.filter((edit) => touchesItem(edit, item));
  const listings = item.listings.map((listing) => relisted(listing, own));
  const listedNet = meanOf(listings, ({ price, grossed }) => (price === null ? null : price / grossed));
  if (own.length === 0 || item.netPrice === null) {
    return { revenue: item.revenue, netPrice: item.netPrice, listedNet };
  }
  const revenue = listings.reduce((sum, each) => sum + each.revenue, 0);
  if (item.sold === 0) return { revenue: item.revenue, netPrice: meanRevenue(listings), listedNet };
  return { revenue, netPrice: revenue / item.sold, listedNet };
}

function relisted(listing: Listing, edits: readonly PriceEdit[]): Listing {
  const { price, revenue } = listing;
  if (price === null || edits.length === 0) return listing;
  const after = edits.reduce((now, { step }) => stepped(now, step), price);
  return { ...listing, price: after, revenue: price === 0 ? revenue : (revenue * after) / price };
}

function meanRevenue(listings: readonly Listing[]): number | null {
  const whole = listings.reduce((sum, { weight }) => sum + weight, 0);
  return whole === 0 ? null : listings.reduce((sum, { revenue }) => sum + revenue, 0) / whole;
}

/** The mean over portions of what is known of each listing; null where it is not known of one. */
function meanOf(listings: readonly Listing[], of: (listing: Listing) => number | null): number | null {
  let sum = 0;
  let whole = 0;
  for (const listing of listings) {
    const value = of(listing);
    if (listing.weight === 0) continue;
    if (value === null) return null;
    sum += listing.weight * value;
    whole += listing.weight;
  }
  return whole === 0 ? null : sum / whole;
}
