import type { Day } from '../../core/days';
import type { OfferId } from '../facts';

/** Some stock with its value: base units, and venue currency for all of them. */
export interface Layer {
  readonly quantity: number;
  readonly value: number;
}

/** What came into stock or was taken back: a price credit has value and no quantity, returned goods have both, below zero. */
export interface Receipt extends Layer {
  readonly day: Day;
  readonly kind: 'purchase' | 'credit' | 'transfer_in';
  readonly offer: OfferId | null;
  /** Its value is not what an invoice says: no invoice yet, or a price that waits. */
  readonly accrued: boolean;
}

/** What one ingredient did between two counts. */
export interface StockFlow {
  /** What was counted at the start, as it was valued then, oldest first; null: never counted before. */
  readonly opening: readonly Layer[] | null;
  /** By day. */
  readonly receipts: readonly Receipt[];
  /** Base units handed to another venue. */
  readonly transferredOut: number;
  /** Base units counted at the end; null: not counted. */
  readonly closing: number | null;
  /** Of one base unit on the last day; null where there is none. */
  readonly priceInForce: number | null;
  /** Of one base unit by the last invoice up to the last day; null where there is none. */
  readonly lastInvoice: number | null;
}

export type ValuationName = 'price-in-force' | 'last-invoice' | 'weighted-average' | 'fifo';

/** The same stock by one valuation. Where it was counted at both ends, opening + receipts = used + transferred out + closing. */
export interface Valued {
  readonly name: ValuationName;
  /** What a base unit costs by this valuation; null where it cannot be said. */
  readonly price: number | null;
  /** What is left, oldest first; null where it was not counted or has no price. */
  readonly closing: readonly Layer[] | null;
  readonly used: Layer | null;
  readonly transferredOut: Layer | null;
}

export type Valuation = (flow: StockFlow) => Valued;

export function sumOf(layers: readonly Layer[]): Layer {
  return layers.reduce(
    (sum, { quantity, value }) => ({ quantity: sum.quantity + quantity, value: sum.value + value }),
    {
      quantity: 0,
      value: 0,
    },
  );
}

/** Opening and receipts together. */
export function available({ opening, receipts }: StockFlow): Layer {
  return sumOf([...(opening ?? []), ...receipts]);
}
