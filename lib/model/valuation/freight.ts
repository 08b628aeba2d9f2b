import { grouped } from '../../core/grouped';
import type { PurchaseLine } from '../facts';

/**
 * Freight and surcharges of each invoice spread over its goods by line value: share = freight * amount / sum of amounts of goods.
 *
 * By line, in venue currency; the freight lines that were spread stand there too, with 0. Freight without an invoice, or on one without
 * goods of any value, is spread over nothing and is left out.
 */
export function freightShares(lines: readonly PurchaseLine[]): ReadonlyMap<PurchaseLine, number> {
  const shares = new Map<PurchaseLine, number>();
  const invoiced = lines.filter(({ invoice }) => invoice !== null);
  for (const ofInvoice of grouped(invoiced, ({ supplier, invoice }) => JSON.stringify([supplier, invoice])).values()) {
    const goods = ofInvoice.filter(
      ({ kind, amount, offer }) => kind === 'goods' && offer !== null && (amount ?? 0) > 0,
    );
    const value = goods.reduce((sum, { amount }) => sum + (amount ?? 0), 0);
    const freight = ofInvoice.filter(({ kind }) => kind === 'freight');
    if (value === 0 || freight.length === 0) continue;
    const whole = freight.reduce((sum, { amount }) => sum + (amount ?? 0), 0);
    for (const line of freight) shares.set(line, 0);
    for (const line of goods) shares.set(line, (whole * (line.amount ?? 0)) / value);
  }
  return shares;
}
