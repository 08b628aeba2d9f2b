import type { PurchaseLine } from './facts';

/** The day on which a line's goods came; the line's own where none is stated. */
export function deliveryDay({ day, deliveredOn }: PurchaseLine): PurchaseLine['day'] {
  return deliveredOn ?? day;
}

/**
 * The lines of goods that count: an accrual, goods that came without an invoice, stands until one names the delivery. Goods of the same
 * offer and day of delivery that stand on an invoice take its place, whatever was written down when they came.
 */
export function withoutInvoicedAccruals(lines: readonly PurchaseLine[]): readonly PurchaseLine[] {
  const delivery = (line: PurchaseLine): string => `${line.offer} ${deliveryDay(line)}`;
  const invoiced = new Set(lines.filter((line) => line.kind === 'goods' && line.invoice !== null).map(delivery));
  return lines.filter((line) => line.kind !== 'goods' || line.invoice !== null || !invoiced.has(delivery(line)));
}
