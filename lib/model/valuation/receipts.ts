import { grouped } from '../../core/grouped';
import { deliveryDay } from '../accruals';
import type { Facts, ItemId, Offer, PurchaseLine } from '../facts';
import type { Issue } from '../issue';
import { inBase, type UnitReader } from '../measure';
import { measureReader } from '../measure-reader';
import type { BoughtGoods } from '../purchases';
import { quantityReader } from '../purchases-quantity';
import { freightShares } from './freight';
import type { PriceReader } from './price-reader';
import type { Receipt } from './stock-flow';

export interface Received {
  /** By ingredient, by day. */
  readonly of: ReadonlyMap<ItemId, readonly Receipt[]>;
  /** Lines that enter no ingredient's value: freight that was not spread, deposits, rebates, non-food, credits for nothing that is named. */
  readonly ownLines: readonly PurchaseLine[];
  readonly issues: readonly (Issue & { readonly day: Receipt['day'] })[];
}

/**
 * What came into stock, with its value.
 *
 * Goods are worth their amount; accrued without an invoice or an amount, and where their price waits, at the agreed price (else the
 * list price, else the last invoice). A credit lowers value, whichever sign it is written with; with packs or a weight it takes goods
 * back. A transfer in is worth what was agreed, else the price in force.
 */
export function receivedBy(
  facts: Facts,
  bought: readonly BoughtGoods[],
  priceInForce: PriceReader,
  units: UnitReader,
  spreadFreight: boolean,
): Received {
  const issues: Received['issues'][number][] = [];
  const nameOf = new Map(facts.items.map(({ id, name }) => [id, name]));
  const offers = new Map(facts.offers.map((offer) => [offer.id, offer]));
  const freight = spreadFreight ? freightShares(facts.purchases) : new Map<PurchaseLine, number>();
  const spread = new Set(freight.keys());
  const found: { readonly item: ItemId; readonly receipt: Receipt }[] = [];

  for (const goods of bought) {
    const { line, offer, day, came, content, standing } = goods;
    const quantity = came === null || content === null ? null : came * content;
    const value = worth(goods);
    if (value === null && came !== null) {
      const about = nameOf.get(offer.item) ?? offer.code;
      issues.push({ code: 'goods-without-value', about, facts: { supplier: offer.supplier, code: offer.code }, day });
    }
    if (quantity === null || value === null) continue;
    const receipt = { day, kind: 'purchase', offer: offer.id, quantity, accrued: standing !== 'invoiced' } as const;
    found.push({ item: offer.item, receipt: { ...receipt, value: value + (freight.get(line) ?? 0) } });
  }

  const quantityOf = quantityReader(facts, units);
  const ownLines = facts.purchases.filter((line) => {
    const offer = line.offer === null ? undefined : offers.get(line.offer);
    if (line.kind === 'goods') return offer === undefined;
    if (line.kind === 'freight') return !spread.has(line);
    if (line.kind !== 'credit' || offer === undefined) return true;
    found.push({ item: offer.item, receipt: credited(line, offer, quantityOf) });
    return false;
  });

  const measureOn = measureReader(facts);
  for (const move of facts.moves) {
    if (move.reason !== 'transfer_in') continue;
    const measure = measureOn(move.item, move.day);
    const quantity = measure && inBase(measure, move.quantity, move.unit, units);
    const price = priceInForce(move.item, move.day);
    if (typeof quantity !== 'number') {
      const about = nameOf.get(move.item) ?? '';
      if (measure) issues.push({ code: 'unknown-count-unit', about, facts: { unit: move.unit }, day: move.day });
      continue;
    }
    const value = move.value ?? (price === null ? null : quantity * price);
    if (value === null) continue;
    const receipt = { day: move.day, kind: 'transfer_in', offer: null, quantity, value, accrued: false } as const;
    found.push({ item: move.item, receipt });
  }

  const byDay = found.sort((a, b) => a.receipt.day - b.receipt.day);
  const of = [...grouped(byDay, ({ item }) => item)].map(
    ([item, rows]) => [item, rows.map(({ receipt }) => receipt)] as const,
  );
  return { of: new Map(of), ownLines, issues };
}

/** What some goods are worth: as invoiced; else at the price that stands in; else what the line says, invoice or not. */
function worth({ line, came, standIn, standing }: BoughtGoods): number | null {
  if (standing === 'invoiced') return line.amount;
  if (standIn === null || came === null) return line.amount;
  return standIn * came;
}

function credited(line: PurchaseLine, offer: Offer, quantityOf: ReturnType<typeof quantityReader>): Receipt {
  const day = deliveryDay(line);
  const { came, content } = quantityOf(line, offer, day);
  const back = came === null || content === null || came === 0 ? 0 : -Math.abs(came * content);
  const value = -Math.abs(line.amount ?? 0);
  return { day, kind: 'credit', offer: offer.id, quantity: back, value, accrued: false };
}
