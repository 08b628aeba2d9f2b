import type { DayRange } from '../core/days';
import { byText } from '../core/grouped';
import type { Facts, Item, ItemId } from '../model/facts';
import { byPlaceIn } from './columns';
import type { VenueTx } from './in-venue';
import { loadIngredients, loadNamedMeasures, loadParts, loadYieldUses } from './load-ingredients';
import { loadMenuPrices } from './load-menu-prices';
import { loadOfferChoices, loadOffers, loadPricePoints } from './load-offers';
import { loadExchangeRates, loadLabourRates } from './load-rates';
import { loadLaterRecipes, loadRecipes } from './load-recipes';
import { loadCovers, loadSales } from './load-sales';
import { loadCounts, loadMoves, loadPurchases } from './load-stock';
import { loadTrials } from './load-trials';
import { loadVenue } from './load-venue';
import { loadWaitingSales } from './load-waiting-sales';

/**
 * All that is needed to cost a range of business days: what was stated up to its end, what was sold inside it.
 * Every list has an order of its own (names, then dates, then positions), whenever and in whichever order things were brought in.
 */
export async function loadFacts(tx: VenueTx, range: DayRange): Promise<Facts> {
  const items = await loadItems(tx);
  const byItem = byPlaceIn(items);
  const offers = await loadOffers(tx, byItem);
  return {
    venue: await loadVenue(tx),
    items,
    ingredientVersions: await loadIngredients(tx, range, byItem),
    namedMeasures: await loadNamedMeasures(tx, byItem),
    offers,
    offerChoices: await loadOfferChoices(tx, range, byItem),
    pricePoints: await loadPricePoints(tx, range, byPlaceIn(offers)),
    recipeVersions: await loadRecipes(tx, range, items, byItem),
    laterRecipes: await loadLaterRecipes(tx, range),
    menuPrices: await loadMenuPrices(tx, range, byItem),
    sales: await loadSales(tx, range),
    waitingSales: await loadWaitingSales(tx, range),
    covers: await loadCovers(tx, range),
    yieldUses: await loadYieldUses(tx, byItem),
    parts: await loadParts(tx, byItem),
    labourRates: await loadLabourRates(tx, range),
    exchangeRates: await loadExchangeRates(tx, range),
    purchases: await loadPurchases(tx, range),
    counts: await loadCounts(tx, range),
    moves: await loadMoves(tx, range),
    trials: await loadTrials(tx, range, byItem),
  };
}

/** Everything that has a name, by name. */
async function loadItems(tx: VenueTx): Promise<Item[]> {
  const rows = await tx.prisma.item.findMany({
    where: { venueId: tx.venue },
    select: { id: true, kind: true, name: true, nameKey: true },
  });
  rows.sort((a, b) => byText(a.nameKey, b.nameKey));
  return rows.map(({ id, kind, name }) => ({ id: id as ItemId, kind, name }));
}
