import type { Day, DayRange } from '../core/days';
import { byText, grouped } from '../core/grouped';
import { isNear } from '../core/near';
import { deliveryDay, withoutInvoicedAccruals } from './accruals';
import { type Exchange, exchangeOf } from './exchange';
import type { Facts, Offer, PriceKind, PricePoint, PurchaseLine } from './facts';
import type { Issue } from './issue';
import type { UnitReader } from './measure';
import { priceFor, rateDay } from './price-book';
import { type QuantityReader, quantityReader } from './purchases-quantity';

/** An invoice price further from what was known than this share of it waits for a yes. */
const FAR = 0.2;

/**
 * How the price of some goods stands: `invoiced` is taken; `waits` is more than 20 % off the last and enters no cost until somebody
 * says yes to it; `not-come`: without an invoice or an amount.
 */
export type PriceStanding = 'invoiced' | 'waits' | 'not-come';

/** A line of goods of a known offer, with its price. Money in venue currency. */
export interface BoughtGoods {
  readonly line: PurchaseLine;
  readonly offer: Offer;
  /** The day of delivery; the invoice's where none is stated. */
  readonly day: Day;
  /** Packs that came; below zero: gone back. Null: nobody said. */
  readonly came: number | null;
  /** Packs that the amount is for: more than came where some were short. */
  readonly charged: number | null;
  readonly content: number | null;
  /** Of one pack, as invoiced. */
  readonly price: number | null;
  /** Of one pack on that day for an order of that size. */
  readonly agreed: number | null;
  /** What is taken for the price of a pack where the invoice does not say it or waits: agreed, before list, before the last invoice. */
  readonly standIn: number | null;
  readonly standing: PriceStanding;
  readonly issue: Issue | null;
}

/** The goods bought of each known offer, by day of delivery, then as they were written, each judged by what was known before it. */
export function boughtGoods(facts: Facts, units: UnitReader): readonly BoughtGoods[] {
  const quantityOf = quantityReader(facts, units);
  const exchange = exchangeOf(facts.exchangeRates, facts.venue.currency);
  const offers = new Map(facts.offers.map((offer) => [offer.id, offer]));
  const pointsOf = grouped(facts.pricePoints, ({ offer }) => offer);
  const nameOf = new Map(facts.items.map(({ id, name }) => [id, name]));
  const goods = withoutInvoicedAccruals(facts.purchases).filter(
    ({ kind, offer }) => kind === 'goods' && offer !== null,
  );
  return [...grouped(goods, ({ offer }) => offer)].flatMap(([id, lines]) => {
    const offer = id === null ? undefined : offers.get(id);
    if (!offer) return [];
    const about = nameOf.get(offer.item) ?? offer.code;
    return judged(lines, offer, about, pointsOf.get(offer.id) ?? [], exchange, quantityOf);
  });
}

function judged(
  lines: readonly PurchaseLine[],
  offer: Offer,
  about: string,
  points: readonly PricePoint[],
  exchange: Exchange,
  quantityOf: QuantityReader,
): readonly BoughtGoods[] {
  let last: { readonly day: Day; readonly price: number } | null = null;
  const ordered = lines.map((line) => ({ line, day: deliveryDay(line) })).sort((a, b) => a.day - b.day);
  return ordered.map(({ line, day }) => {
    const { came, charged, content, issue } = quantityOf(line, offer, day);
    const inForce = (kind: PriceKind): number | null => {
      const point = priceFor(points, kind, day, Math.abs(charged ?? 1));
      const rate = point && exchange.rateOn(point.currency, rateDay(point, day));
      return point === null || rate === null ? null : point.price * rate;
    };
    const typed = priceFor(points, 'invoice', day, Math.abs(charged ?? 1));
    const lastInvoice =
      typed && (last === null || typed.validFrom >= last.day) ? inForce('invoice') : (last?.price ?? null);
    const agreed = inForce('agreed');
    const known = [lastInvoice, agreed, inForce('list')].filter((price) => price !== null);
    const isInvoiced = line.invoice !== null && line.amount !== null;
    const price = isInvoiced && charged !== null && charged > 0 ? (line.amount ?? 0) / charged : null;
    const isFar = price !== null && known.length > 0 && known.every((other) => isFarOff(price, other));
    const standing: PriceStanding = isInvoiced ? (isFar ? 'waits' : 'invoiced') : 'not-come';
    if (price !== null && !isFar) last = { day, price };
    return {
      ...{ line, offer, day, came, charged, content, price, agreed, standing },
      standIn: agreed ?? inForce('list') ?? lastInvoice,
      issue: issue ?? (isFar ? waits(about, line, offer, price, known[0] ?? price) : null),
    };
  });
}

function isFarOff(price: number, known: number): boolean {
  const apart = Math.abs(price - known);
  return apart > FAR * known && !isNear(apart, FAR * known);
}

function waits(about: string, line: PurchaseLine, { supplier, code }: Offer, price: number, last: number): Issue {
  return { code: 'price-waits', about, facts: { supplier, code, invoice: line.invoice, price, last } };
}

/** The prices that invoices say: one a day and offer, the last line of the day. What waits is not among them. */
export function invoicePoints(bought: readonly BoughtGoods[]): readonly PricePoint[] {
  const points = new Map<string, PricePoint>();
  for (const { offer, day, price, standing } of bought) {
    if (price === null || standing !== 'invoiced') continue;
    const same = { validTo: null, minimumPacks: null, currency: null };
    points.set(`${offer.id} ${day}`, { offer: offer.id, kind: 'invoice', validFrom: day, price, ...same });
  }
  return [...points.values()];
}

/** What the deliveries of a period leave open; what still waits from before it is said again while no later invoice of the offer was taken. */
export function purchaseIssues(bought: readonly BoughtGoods[], range: DayRange): readonly Issue[] {
  const taken = new Map<Offer, Day>();
  for (const { offer, day, price, standing } of bought) {
    if (price !== null && standing === 'invoiced' && day < range.to) taken.set(offer, day);
  }
  return bought.flatMap(({ offer, day, issue, standing }) => {
    const isOpen = standing === 'waits' && day >= (taken.get(offer) ?? day);
    if (issue === null || day >= range.to || (day < range.from && !isOpen)) return [];
    return [{ ...issue, day: Math.max(day, range.from) as Day }];
  });
}

/** A line that costs more than was agreed, or is for more than came. */
export interface Claim {
  readonly kind: 'price' | 'short';
  readonly goods: BoughtGoods;
  /** Packs that came too dear; packs that did not come. */
  readonly packs: number;
  /** Of one pack: invoiced less agreed; the whole price of what did not come. */
  readonly difference: number;
  /** packs * difference */
  readonly money: number;
}

/**
 * What suppliers may be asked for. A difference within half of `leastUnit`, the least unit that the amounts are rounded to, is none.
 * What was credited since is not taken off.
 */
export function claimsOf(bought: readonly BoughtGoods[], leastUnit: number): readonly Claim[] {
  const claims = bought.flatMap((goods): Claim[] => {
    const { came, charged, price, agreed } = goods;
    if (price === null || came === null || charged === null) return [];
    const short = charged - came;
    const dear = agreed === null ? 0 : price - agreed;
    const overcharge = dear * came;
    const isDear = overcharge > leastUnit / 2 && !isNear(overcharge, leastUnit / 2);
    return [
      ...(isDear ? [{ kind: 'price' as const, goods, packs: came, difference: dear, money: overcharge }] : []),
      ...(short > 0 ? [{ kind: 'short' as const, goods, packs: short, difference: price, money: short * price }] : []),
    ];
  });
  return claims.sort((a, b) => a.goods.day - b.goods.day || byText(a.goods.offer.supplier, b.goods.offer.supplier));
}
