import type { Day } from '../core/days';
import type { CostedPeriod } from './costed-period';
import type { SalesDay } from './facts';
import { onDay } from './in-force';
import { rowRevenue } from './item-figures';
import { netPriceOn } from './menu-price';

/**
 * What the channel keeps of each paid portion, in venue currency: sum over rows of revenue * rate on the day / sold. Where none was
 * sold, the mean over the days and channels on the menu of net price * rate; null where no price is known. No rate stated is none.
 */
export function commissionPerPortion(
  period: CostedPeriod,
  node: number,
  rows: readonly SalesDay[],
  daysOnSale: readonly Day[],
  channels: readonly string[],
): number | null {
  const menu = period.things[node]?.menu ?? [];
  const rateOn = (channel: string, day: Day): number => {
    const prices = menu.find((each) => each.channel === channel)?.prices ?? [];
    return onDay(prices, day)?.commission ?? 0;
  };
  const sold = rows.reduce((sum, row) => sum + row.sold, 0);
  if (sold > 0) {
    let kept = 0;
    for (const row of rows) {
      const revenue = rowRevenue(period, node, row);
      if (revenue === null) return null;
      kept += revenue * rateOn(row.channel, row.day);
    }
    return kept / sold;
  }
  const each = daysOnSale.flatMap((day) =>
    channels.flatMap((channel) => {
      const price = netPriceOn(menu, channel, day);
      return price === null ? [] : [price * rateOn(channel, day)];
    }),
  );
  return each.length === 0 ? null : each.reduce((sum, kept) => sum + kept, 0) / each.length;
}
