import { addDays, type Day, dayText } from '../core/days';
import type { VenueTx } from '../db/in-venue';
import { loadFacts } from '../db/load-facts';
import { moneyText } from '../format/money-text';
import type { ItemId } from '../model/facts';
import { type IngredientOffer, ingredientOffers } from '../reports/ingredient-offers';
import type { Asker } from '../session/asker';
import { type KitchenAsked, kitchenOn } from './kitchen-on';
import type { IngredientAnswer } from './kitchen-shape';
import { type Answered, answered } from './problem';
import { writtenIssues } from './written-issues';
import { readItem, writtenParts } from './written-item';

export interface IngredientAsked extends KitchenAsked {
  /** Name or number. */
  readonly item: string;
}

/** One ingredient: its versions, measures, parts and yields as they are written, all its offers with the price of the day, what uses it. */
export async function ingredientAnswer(asker: Asker, asked: IngredientAsked): Promise<Answered<IngredientAnswer>> {
  const kitchen = await kitchenOn(asker, asked, async (tx, { venue, day }) => {
    const item = await readItem(tx, venue, asked.item, true);
    return { item, offers: item.ok ? await offersOf(tx, item.answer.written.id as ItemId, day) : [] };
  });
  if (!kitchen.ok) return kitchen;
  const { venue, day, costed, read } = kitchen.answer;
  if (!read.item.ok) return read.item;
  const { written } = read.item.answer;
  const { currency, locale } = costed.venue;
  return answered({
    ...{ venue, date: dayText(day), currency, locale },
    ...writtenParts(read.item.answer, day),
    measures: written.measures.map((cells) => ({ ...cells })),
    parts: written.parts.map((cells) => ({ ...cells })),
    yields: written.yields.map((cells) => ({ ...cells })),
    offers: read.offers.map((offer) => writtenOffer(offer, currency)),
    issues: writtenIssues(costed.issues.filter(({ about }) => about === written.item)),
  });
}

async function offersOf(tx: VenueTx, item: ItemId, day: Day): Promise<readonly IngredientOffer[]> {
  return ingredientOffers(await loadFacts(tx, { from: day, to: addDays(day, 1) }), item, day);
}

function writtenOffer({ offer, chosen, price }: IngredientOffer, currency: string): IngredientAnswer['offers'][number] {
  const { supplier, code, packCount, packSize, packUnit } = offer;
  const point = price.issue === null ? price.point : null;
  return {
    ...{ supplier, code, packCount, packSize, packUnit, chosen },
    price: point && moneyText(point.price, point.currency ?? currency),
    currency: point && (point.currency ?? currency),
    priceKind: point?.kind ?? null,
    priceFrom: point && dayText(point.validFrom),
    unitPrice: price.issue === null ? moneyText(price.price, currency) : null,
    issues: price.issue === null ? [] : writtenIssues([price.issue]),
  };
}
