import type { OfferId } from '@/lib/model/facts';
import type { Receipt, StockFlow } from '@/lib/model/valuation/stock-flow';
import { day } from '../../books';

/** A delivery, a credit or a return: quantity and value, on a day of October 2026. */
export function receipt(quantity: number, value: number, stated: Partial<Receipt> = {}): Receipt {
  const kind = quantity > 0 ? 'purchase' : 'credit';
  return { day: day('2026-10-05'), kind, offer: 1 as OfferId, quantity, value, accrued: false, ...stated };
}

/** A flow of stock of which nothing else is known. */
export function flow(stated: Partial<StockFlow>): StockFlow {
  return {
    opening: [],
    receipts: [],
    transferredOut: 0,
    closing: null,
    priceInForce: null,
    lastInvoice: null,
    ...stated,
  };
}
