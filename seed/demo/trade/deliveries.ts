import { addDays, type Day, dayText, weekday } from '../../../lib/core/days';
import { INGREDIENTS } from '../ingredients/all-ingredients';
import { ingredientNamed } from '../kitchen/recipe-book';
import { STORE } from '../kitchen/split-goods';
import type { Offer, Supplier } from '../shapes';
import { SUPPLIERS } from '../suppliers/all-suppliers';
import { daysBetween, FIRST_DAY, LAST_DAY } from './calendar';
import { MISHAPS, type Mishap } from './mishaps';
import { chosenOn, packContent, packPriceOn, rateOn } from './price-in-force';

/** What came of one offer with one delivery. */
export interface DeliveredLine {
  readonly offer: Offer;
  /** Packs on the invoice. */
  readonly packs: number;
  /** What stayed, in base units of the ingredient. */
  readonly kept: number;
  readonly mishap: Mishap | null;
}

export interface Delivery {
  readonly day: Day;
  readonly supplier: Supplier;
  readonly lines: readonly DeliveredLine[];
}

const FRESH = new Set(['Dairy', 'Eggs', 'Fruit']);
const KEEPS_ALL_THE_SAME = new Set([
  'Skimmed milk powder',
  'Raspberry purée',
  'Passion fruit purée',
  'Sea buckthorn purée',
]);
/** Dry goods are bought for a month, from across the water for six weeks; fresh ones until the next delivery. */
const DAYS_BOUGHT = { dry: 28, foreign: 42 };
const OVER = 1.06;

function isFresh(ingredient: string): boolean {
  const group = ingredientNamed(ingredient)?.group ?? '';
  return ingredient === 'Dry ice pellets' || (FRESH.has(group) && !KEEPS_ALL_THE_SAME.has(ingredient));
}

/**
 * The most that will have gone out of the store at any close from `from` to `to`, both included: what was made ahead may come back in a
 * stocktake. Past the last day things go on like four weeks before.
 */
function goesOut(ingredient: string, from: Day, to: Day): number {
  let sum = 0;
  let most = 0;
  for (let day = from; day <= to; day = addDays(day, 1)) {
    const known = day > LAST_DAY ? addDays(day, -28) : day;
    sum += STORE.get(known)?.used.get(ingredient) ?? 0;
    most = Math.max(most, sum);
  }
  return most;
}

/** Fresh fruit whose season is over: what is left of it is thrown, and nobody writes that down. */
function isOver(ingredient: string, day: Day): boolean {
  const isFruit = ingredientNamed(ingredient)?.group === 'Fruit' && isFresh(ingredient);
  return isFruit && goesOut(ingredient, addDays(day, 1), addDays(day, 28)) < 1;
}

/** The next day after this one on which whoever is chosen for the ingredient then delivers. */
function nextDelivery(ingredient: string, after: Day): Day {
  for (let day = addDays(after, 1); ; day = addDays(day, 1)) {
    const chosen = chosenOn(ingredient, dayText(day));
    if (!chosen) throw new Error(`nobody offers ${ingredient}`);
    if (chosen.supplier.deliversOn.includes(weekday(day))) return day;
  }
}

/** Packs to order so that nothing runs out before the next delivery is unpacked. */
function packsToOrder(offer: Offer, supplier: Supplier, day: Day, stock: number): number {
  const { ingredient } = offer;
  const next = nextDelivery(ingredient, day);
  const needed = goesOut(ingredient, day, addDays(next, isFresh(ingredient) ? 0 : 3)) * OVER;
  if (stock >= needed) return 0;
  const days = supplier.currency === undefined ? DAYS_BOUGHT.dry : DAYS_BOUGHT.foreign;
  const wished = isFresh(ingredient) ? needed : Math.max(needed, goesOut(ingredient, day, addDays(day, days)));
  const packs = (wished - stock) / packContent(offer);
  return offer.catchWeight ? Math.ceil(packs * 10 + 3) / 10 : Math.ceil(packs);
}

function offersOn(supplier: Supplier, day: Day): readonly Offer[] {
  return supplier.offers.filter((offer) => chosenOn(offer.ingredient, dayText(day))?.offer === offer);
}

function packPrice(offer: Offer, supplier: Supplier, day: Day): number {
  const price = packPriceOn(offer, dayText(day));
  if (price === null) throw new Error(`${supplier.name} ${offer.code} has no price on ${dayText(day)}`);
  return price * rateOn(supplier, dayText(day));
}

/** An order below the minimum is filled up with what keeps and is used most, by value. */
function filledUp(order: ReadonlyMap<Offer, number>, supplier: Supplier, day: Day): ReadonlyMap<Offer, number> {
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

function openingStock(): Map<string, number> {
  const stock = new Map<string, number>();
  for (const { name } of INGREDIENTS) {
    const chosen = chosenOn(name, dayText(FIRST_DAY));
    if (!chosen) continue;
    const until = isFresh(name) ? nextDelivery(name, FIRST_DAY) : addDays(FIRST_DAY, 20);
    const step = packContent(chosen.offer) / 20;
    stock.set(name, Math.ceil((goesOut(name, FIRST_DAY, until) * OVER) / step) * step);
  }
  return stock;
}

function delivered(offer: Offer, packs: number, mishap: Mishap | null): DeliveredLine {
  const lost = mishap?.what.kind === 'short' ? mishap.what.packs : 0;
  const back = mishap?.what.kind === 'returned' ? mishap.what.packs : 0;
  const billed = packs + lost + back;
  return { offer, packs: billed, kept: packs * packContent(offer), mishap };
}

export interface StoreRun {
  readonly deliveries: readonly Delivery[];
  /** What stood in the store at close of each day, from the evening before the first; by ingredient, in base units. */
  readonly stock: ReadonlyMap<Day, ReadonlyMap<string, number>>;
}

/** Orders day by day as a careful kitchen would, and keeps the store's book. Throws where something would have run out. */
export function runStore(): StoreRun {
  const stock = openingStock();
  const evenings = new Map<Day, ReadonlyMap<string, number>>([[addDays(FIRST_DAY, -1), new Map(stock)]]);
  const deliveries: Delivery[] = [];
  const waiting = [...MISHAPS];
  for (const day of daysBetween(FIRST_DAY, LAST_DAY)) {
    for (const supplier of SUPPLIERS.filter((each) => each.deliversOn.includes(weekday(day)))) {
      const order = new Map<Offer, number>();
      for (const offer of offersOn(supplier, day)) {
        const packs = packsToOrder(offer, supplier, day, stock.get(offer.ingredient) ?? 0);
        if (packs > 0) order.set(offer, packs);
      }
      if (order.size === 0) continue;
      const lines = [...filledUp(order, supplier, day)].map(([offer, packs]) => {
        const at = waiting.findIndex(
          (each) => each.supplier === supplier.name && each.code === offer.code && each.from <= dayText(day),
        );
        const [mishap = null] = at < 0 ? [] : waiting.splice(at, 1);
        return delivered(offer, packs, mishap);
      });
      for (const { offer, kept } of lines) stock.set(offer.ingredient, (stock.get(offer.ingredient) ?? 0) + kept);
      deliveries.push({ day, supplier, lines });
    }
    for (const [ingredient, used] of STORE.get(day)?.used ?? []) {
      const left = (stock.get(ingredient) ?? 0) - used;
      if (left < -1e-6 && chosenOn(ingredient, dayText(day)))
        throw new Error(`${ingredient} ran out on ${dayText(day)}`);
      stock.set(ingredient, left);
    }
    for (const ingredient of stock.keys()) if (isOver(ingredient, day)) stock.set(ingredient, 0);
    evenings.set(day, new Map(stock));
  }
  return { deliveries, stock: evenings };
}

export const STORE_RUN: StoreRun = runStore();
