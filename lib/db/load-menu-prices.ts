import type { DayRange } from '../core/days';
import { byText } from '../core/grouped';
import type { ItemId, MenuPrice } from '../model/facts';
import { byStart, dayIn, numberIn, statedBefore } from './columns';
import type { VenueTx } from './in-venue';

/** The menu prices stated before the end of a range, by item, channel and start. */
export async function loadMenuPrices(
  tx: VenueTx,
  range: DayRange,
  byItem: (a: number, b: number) => number,
): Promise<MenuPrice[]> {
  const rows = await tx.prisma.menuPrice.findMany({
    where: { venueId: tx.venue, OR: statedBefore(range) },
    select: {
      itemId: true,
      channel: true,
      validFrom: true,
      price: true,
      tax: true,
      taxIncluded: true,
      commission: true,
    },
  });
  rows.sort((a, b) => byItem(a.itemId, b.itemId) || byText(a.channel, b.channel) || byStart(a, b));
  return rows.map(({ itemId, validFrom, price, tax, commission, ...same }) => ({
    ...same,
    item: itemId as ItemId,
    validFrom: dayIn(validFrom),
    price: numberIn(price),
    tax: numberIn(tax),
    commission: numberIn(commission),
  }));
}
