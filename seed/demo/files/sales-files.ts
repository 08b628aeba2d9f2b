import { dayText } from '../../../lib/core/days';
import { TAX_PCT } from '../menu';
import { money } from '../rounding';
import { TRADING_DAYS } from '../trade/calendar';
import { COVERS } from '../trade/covers';
import { SALES } from '../trade/sales';
import type { Table } from './csv-table';

function tillTotals(): ReadonlyMap<number, number> {
  const totals = new Map<number, number>();
  for (const { day, gross } of SALES) totals.set(day, (totals.get(day) ?? 0) + gross);
  return totals;
}

const TILL = tillTotals();

/** Day sums of the till, and the guests of each day beside the till's own total. */
export const SALES_FILES: readonly Table[] = [
  {
    file: 'sales.csv',
    columns: ['date', 'item', 'channel', 'sold', 'comps', 'gross_revenue', 'tax_pct', 'discount'],
    rows: SALES.map((sale) => [
      dayText(sale.day),
      sale.item,
      sale.channel,
      sale.sold,
      sale.comps,
      money(sale.gross),
      TAX_PCT,
      sale.discount === 0 ? undefined : money(sale.discount),
    ]),
  },
  {
    file: 'covers.csv',
    columns: ['date', 'covers', 'till_total'],
    rows: TRADING_DAYS.map((day) => [dayText(day), COVERS.get(day), money(TILL.get(day) ?? 0)]),
  },
];
