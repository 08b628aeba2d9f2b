import type { Day } from '../../core/days';
import { grouped } from '../../core/grouped';
import { exchangeOf } from '../exchange';
import type { Facts, ItemId, Offer, OfferChoice, PricePoint } from '../facts';
import { inBase, type UnitReader } from '../measure';
import { measureReader } from '../measure-reader';
import { priceOn, rateDay } from '../price-book';

/** The price of one base unit of an ingredient on a day, in venue currency; null where there is none. */
export type PriceReader = (item: ItemId, day: Day) => number | null;

export interface PriceReaders {
  readonly inForce: PriceReader;
  /** By the last invoice on or before the day, whichever offer it was for. */
  readonly lastInvoice: PriceReader;
}

/** Reads prices day by day: `points` are the stated prices with those that invoices say. */
export function priceReaders(facts: Facts, points: readonly PricePoint[], units: UnitReader): PriceReaders {
  const measureOn = measureReader(facts);
  const exchange = exchangeOf(facts.exchangeRates, facts.venue.currency);
  const offersOf = grouped(facts.offers, ({ item }) => item);
  const choicesOf = grouped(facts.offerChoices, ({ item }) => item);
  const pointsOf = grouped(points, ({ offer }) => offer);
  const of = (offer: Offer): readonly PricePoint[] => pointsOf.get(offer.id) ?? [];

  const inForce: PriceReader = (item, day) => {
    const measure = measureOn(item, day);
    if (measure === null) return null;
    const buying = { name: '', offers: offersOf.get(item) ?? [], pointsOf: of };
    return priceOn(buying, measure, choiceOn(choicesOf.get(item) ?? [], day), day, exchange, units).price;
  };

  const lastInvoice: PriceReader = (item, day) => {
    let last: { readonly offer: Offer; readonly point: PricePoint } | null = null;
    for (const offer of offersOf.get(item) ?? []) {
      for (const point of of(offer)) {
        if (point.kind !== 'invoice' || point.validFrom > day) continue;
        if (last === null || point.validFrom >= last.point.validFrom) last = { offer, point };
      }
    }
    if (last === null) return null;
    const { offer, point } = last;
    const measure = measureOn(item, point.validFrom);
    const content = measure && inBase(measure, offer.packCount * offer.packSize, offer.packUnit, units);
    const rate = exchange.rateOn(point.currency, rateDay(point, day));
    return typeof content === 'number' && rate !== null ? (point.price * rate) / content : null;
  };
  return { inForce, lastInvoice };
}

function choiceOn(choices: readonly OfferChoice[], day: Day): OfferChoice | null {
  const start = ({ validFrom }: OfferChoice): number => validFrom ?? Number.NEGATIVE_INFINITY;
  let latest: OfferChoice | null = null;
  for (const choice of choices) {
    if (start(choice) <= day && (latest === null || start(choice) >= start(latest))) latest = choice;
  }
  return latest;
}
