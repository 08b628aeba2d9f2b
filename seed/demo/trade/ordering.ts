import { addDays, type Day, dayText, weekday } from '../../../lib/core/days';
import { ingredientNamed } from '../kitchen/recipe-book';
import { STORE } from '../kitchen/split-goods';
import { rounded } from '../rounding';
import type { Offer, Supplier } from '../shapes';
import { LAST_DAY } from './calendar';
import { chosenOn, packContent, packPriceOn, rateOn } from './price-in-force';

const DRY_ICE = 'Dry ice pellets';
const FRESH = new Set(['Dairy', 'Eggs', 'Fruit']);
const KEEPS_ALL_THE_SAME = new Set([
  'Skimmed milk powder',
  'Raspberry purée',
  'Passion fruit purée',
  'Sea buckthorn purée',
]);
/** Dry goods are bought for a month, from across the water for six weeks; fresh ones until the next delivery. */
const DAYS_BOUGHT = { dry: 28, foreign: 42 };
/** A cook orders a little more than is needed. */
export const OVER = 1.06;

/** Bought for a few days only. */
export function isFresh(ingredient: string): boolean {
  const group = ingredientNamed(ingredient)?.group ?? '';
  return ingredient === DRY_ICE || (FRESH.has(group) && !KEEPS_ALL_THE_SAME.has(ingredient));
}

/**
 * The most that will have gone out of the store at any close from `from` to `to`, both included: what was made ahead may come back in a
 * stocktake. Past the last day things go on like four weeks before.
 */
export function goesOut(ingredient: string, from: Day, to: Day): number {
  let sum = 0;
  let most = 0;
  for (let day = from; day <= to; day = addDays(day, 1)) {
    const known = day > LAST_DAY ? addDays(day, -28) : day;
    sum += STORE.get(known)?.used.get(ingredient) ?? 0;
    most = Math.max(most, sum);
  }
  return most;
}

/**
 * What has had its day: fresh goods that no plate asks for any more are thrown, and nobody writes that down; dry ice of one week is gone
 * before the next box comes.
 */
export function isOver(ingredient: string, day: Day): boolean {
  if (ingredient === DRY_ICE) return addDays(day, 1) === nextDelivery(ingredient, day);
  return isFresh(ingredient) && goesOut(ingredient, addDays(day, 1), addDays(day, 28)) < 1;
}

/** The next day after this one on which whoever is chosen for the ingredient then delivers. */
export function nextDelivery(ingredient: string, after: Day): Day {
  for (let day = addDays(after, 1); ; day = addDays(day, 1)) {
    const chosen = chosenOn(ingredient, dayText(day));
    if (!chosen) throw new Error(`nobody offers ${ingredient}`);
    if (chosen.supplier.deliversOn.includes(weekday(day))) return day;
  }
}

/** Packs to order so that nothing runs out before the next delivery is unpacked. */
export function packsToOrder(offer: Offer, supplier: Supplier, day: Day, stock: number): number {
  const { ingredient } = offer;
  const next = nextDelivery(ingredient, day);
  const needed = goesOut(ingredient, day, addDays(next, isFresh(ingredient) ? 0 : 3)) * OVER;
  if (stock >= needed) return 0;
  const days = supplier.currency === undefined ? DAYS_BOUGHT.dry : DAYS_BOUGHT.foreign;
  const wished = isFresh(ingredient) ? needed : Math.max(needed, goesOut(ingredient, day, addDays(day, days)));
  const packs = (wished - stock) / packContent(offer);
  return offer.catchWeight ? weighed(offer, packs, day) : Math.ceil(packs);
}

/** Whole fruit only, and no two weigh the same: up to 8 % over the usual weight. */
function weighed(offer: Offer, packs: number, day: Day): number {
  const usual = (ingredientNamed(offer.ingredient)?.gramsEach ?? 0) / packContent(offer);
  if (usual === 0) throw new Error(`${offer.code}: nobody has said what one weighs`);
  return rounded(Math.ceil(packs / usual) * usual * (1 + (day % 5) / 50), 2);
}

/** What a supplier is asked for on a day. */
export function offersOn(supplier: Supplier, day: Day): readonly Offer[] {
  return supplier.offers.filter((offer) => chosenOn(offer.ingredient, dayText(day))?.offer === offer);
}

function packPrice(offer: Offer, supplier: Supplier, day: Day): number {
  const price = packPriceOn(offer, dayText(day));
  if (price === null) throw new Error(`${supplier.name} ${offer.code} has no price on ${dayText(day)}`);
  return price * rateOn(supplier, dayText(day));
}

/** An order below the minimum is filled up with what keeps and is used most, by value. */
export function filledUp(order: ReadonlyMap<Offer, number>, supplier: Supplier, day: Day): ReadonlyMap<Offer, number> {
  const filled = new Map(order);
  const value = (): number =>
    [...filled].reduce((sum, [offer, packs]) => sum + packs * packPrice(offer, supplier, day), 0);
  const month = (offer: Offer): number =>
    (goesOut(offer.ingredient, day, addDays(day, 28)) / packContent(offer)) * packPrice(offer, supplier, day);
  const keeping = offersOn(supplier, day).filter(
    (offer) => !isFresh(offer.ingredient) || offer.ingredient === 'Unsalted butter',
  );
  const filler = [...keeping].sort((a, b) => month(b) - month(a))[0];
  while (filler && value() < supplier.minimumOrder) filled.set(filler, (filled.get(filler) ?? 0) + 1);
  return filled;
}
