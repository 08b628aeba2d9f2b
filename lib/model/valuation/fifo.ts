import type { OfferId } from '../facts';
import { available, type Layer, type Receipt, type StockFlow, sumOf, type Valued } from './stock-flow';

interface OpenLayer {
  quantity: number;
  value: number;
  readonly offer: OfferId | null;
}

/**
 * First in, first out, by periods (IAS 2): what was counted at the end is what came last, and the oldest was used. Each delivery is a
 * layer; the layers left are those of the next opening.
 *
 * Price = value of what left / quantity of it, the same for what was used and what was transferred out; null where it was not counted
 * at both ends. Returned goods leave the newest layer of their offer, a price credit lowers it, and none goes below zero: what a credit
 * has left over lowers what was used. What was counted beyond all that is known to have come is valued as the newest layer.
 */
export function atFifo(flow: StockFlow): Valued {
  const name = 'fifo';
  const layers = layersOf(flow);
  const newest = layers.findLast(({ quantity }) => quantity > 0);
  const unitPrice = newest ? newest.value / newest.quantity : flow.priceInForce;
  const closing = flow.closing === null ? null : newestOf(layers, flow.closing, unitPrice);
  if (flow.opening === null || closing === null) {
    return { name, price: null, closing, used: null, transferredOut: flow.transferredOut === 0 ? NOTHING : null };
  }
  const whole = available(flow);
  const left = sumOf(closing);
  const gone = { quantity: whole.quantity - left.quantity, value: whole.value - left.value };
  const price = gone.quantity > 0 ? gone.value / gone.quantity : null;
  const outPrice = price ?? unitPrice ?? 0;
  const out = { quantity: flow.transferredOut, value: flow.transferredOut * outPrice };
  const used = { quantity: gone.quantity - out.quantity, value: gone.value - out.value };
  return { name, price, closing, used, transferredOut: out };
}

const NOTHING: Layer = { quantity: 0, value: 0 };

/** The layers that stand after all receipts, before anything is used; oldest first. */
function layersOf({ opening, receipts }: StockFlow): readonly OpenLayer[] {
  const layers: OpenLayer[] = (opening ?? []).map((layer) => ({ ...layer, offer: null }));
  for (const receipt of receipts) {
    if (receipt.quantity > 0) layers.push({ quantity: receipt.quantity, value: receipt.value, offer: receipt.offer });
    else takeBack(layers, receipt);
  }
  return layers;
}

function takeBack(layers: readonly OpenLayer[], { quantity, value, offer }: Receipt): void {
  const newestFirst = layers.toReversed();
  const ownFirst = [
    ...newestFirst.filter((layer) => layer.offer === offer),
    ...newestFirst.filter((layer) => layer.offer !== offer),
  ];
  let toTake = -quantity;
  let credit = -value;
  for (const layer of ownFirst) {
    const taken = Math.min(toTake, layer.quantity);
    const worth = taken === 0 ? 0 : taken === layer.quantity ? layer.value : (layer.value * taken) / layer.quantity;
    layer.quantity -= taken;
    layer.value -= worth;
    toTake -= taken;
    credit -= worth;
  }
  // what the supplier gave beyond or below the cost of what went back changes the price of what stays
  for (const layer of ownFirst) {
    if (layer.quantity === 0) continue;
    const lowered = Math.min(credit, layer.value);
    layer.value -= lowered;
    credit -= lowered;
  }
}

/** The newest of some layers that make up a quantity, oldest first; null where some of it has no price. */
function newestOf(layers: readonly OpenLayer[], quantity: number, unitPrice: number | null): readonly Layer[] | null {
  const kept: Layer[] = [];
  let missing = quantity;
  for (const layer of layers.toReversed()) {
    if (missing <= 0) break;
    if (layer.quantity <= 0) continue;
    const taken = Math.min(missing, layer.quantity);
    const value = taken === layer.quantity ? layer.value : (layer.value * taken) / layer.quantity;
    kept.unshift({ quantity: taken, value });
    missing -= taken;
  }
  if (missing <= 0) return kept;
  return unitPrice === null ? null : [...kept, { quantity: missing, value: missing * unitPrice }];
}
