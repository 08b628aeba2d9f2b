import type { Day } from '../core/days';
import { exchangeOf } from '../model/exchange';
import type { Facts, ItemId, Offer } from '../model/facts';
import { inForce, onDay } from '../model/in-force';
import { unitReader } from '../model/measure';
import { measureReader } from '../model/measure-reader';
import { type BasePrice, chosenOffer, priceOn } from '../model/price-book';
import { boughtGoods, invoicePoints } from '../model/purchases';

/** One offer of an ingredient with its price in force on a day, or what is missing. */
export interface IngredientOffer {
  readonly offer: Offer;
  /** Whether it is the one that is bought. */
  readonly chosen: boolean;
  readonly price: BasePrice;
}

/** All offers of an ingredient side by side, by supplier and code, each at its price of the day; none while no version is in force. */
export function ingredientOffers(facts: Facts, item: ItemId, day: Day): readonly IngredientOffer[] {
  const units = unitReader(facts.venue.kitchenMeasures);
  const exchange = exchangeOf(facts.exchangeRates, facts.venue.currency);
  const measure = measureReader(facts)(item, day);
  const points = [...facts.pricePoints, ...invoicePoints(boughtGoods(facts, units))];
  const offers = facts.offers.filter((offer) => offer.item === item);
  const choices = facts.offerChoices.filter((choice) => choice.item === item);
  const chosen = chosenOffer(offers, onDay(inForce(choices, { from: day, to: (day + 1) as Day }), day));
  const name = facts.items.find(({ id }) => id === item)?.name ?? '';
  if (measure === null) return [];
  return offers.map((offer) => {
    const pointsOf = ({ id }: Offer) => points.filter((point) => point.offer === id);
    const price = priceOn({ name, offers: [offer], pointsOf }, measure, null, day, exchange, units);
    return { offer, chosen: offer === chosen, price };
  });
}
