import type { CostedPeriod } from './costed-period';
import type { SalesDay } from './facts';
import { netPriceOn } from './menu-price';

/**
 * L: what the paid portions were listed at, net of sales tax: sum over rows of portions * net menu price of the day and channel / sold.
 * Null where none was sold, or where some portion had no menu price that day.
 */
export function listedPrice(period: CostedPeriod, node: number, rows: readonly SalesDay[]): number | null {
  const menu = period.things[node]?.menu ?? [];
  let sold = 0;
  let listed = 0;
  for (const row of rows) {
    if (row.sold === 0) continue;
    const price = netPriceOn(menu, row.channel, row.day);
    if (price === null) return null;
    sold += row.sold;
    listed += row.sold * price;
  }
  return sold === 0 ? null : listed / sold;
}
