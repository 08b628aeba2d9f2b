import { available, type Layer, type StockFlow, type ValuationName, type Valued } from './stock-flow';

/**
 * Stock at one price for every base unit: closing = counted * price, transferred out = quantity * price, used = opening + receipts -
 * transferred out - closing, so that no value is lost.
 */
function atOnePrice(name: ValuationName, flow: StockFlow, price: number | null): Valued {
  const { closing, transferredOut } = flow;
  const at = (quantity: number): Layer | null => (price === null ? null : { quantity, value: quantity * price });
  const out = transferredOut === 0 ? { quantity: 0, value: 0 } : at(transferredOut);
  const left = closing === null ? null : closing === 0 ? { quantity: 0, value: 0 } : at(closing);
  const whole = available(flow);
  const used =
    flow.opening === null || left === null || out === null
      ? null
      : {
          quantity: whole.quantity - out.quantity - left.quantity,
          value: whole.value - out.value - left.value,
        };
  return { name, price, closing: left === null ? null : left.quantity === 0 ? [] : [left], used, transferredOut: out };
}

/** At the price in force on the last day: for decisions and standards. What prices did meanwhile falls on what was used. */
export function atPriceInForce(flow: StockFlow): Valued {
  return atOnePrice('price-in-force', flow, flow.priceInForce);
}

/** At the price of the last invoice: for decisions. What prices did meanwhile falls on what was used. */
export function atLastInvoice(flow: StockFlow): Valued {
  return atOnePrice('last-invoice', flow, flow.lastInvoice);
}

/**
 * Weighted average of the period: price = value / quantity of (opening + purchases net of credits + transfers in). IAS 2.
 *
 * Null where nothing was there, or what came back is worth more than all that came. A first count without purchases starts at the
 * price in force.
 */
export function atWeightedAverage(flow: StockFlow): Valued {
  const { quantity, value } = available(flow);
  const startsHere = flow.opening === null && flow.receipts.length === 0 && flow.closing !== null;
  const price = quantity > 0 && value >= 0 ? value / quantity : startsHere ? flow.priceInForce : null;
  return atOnePrice('weighted-average', flow, price);
}
