import { addDays, type Day, dayText, weekday } from '../../../lib/core/days';
import { INGREDIENTS } from '../ingredients/all-ingredients';
import { STORE } from '../kitchen/split-goods';
import type { Offer, Supplier } from '../shapes';
import { SUPPLIERS } from '../suppliers/all-suppliers';
import { daysBetween, FIRST_DAY, LAST_DAY } from './calendar';
import { MISHAPS, type Mishap } from './mishaps';
import { filledUp, goesOut, isFresh, isOver, nextDelivery, OVER, offersOn, packsToOrder } from './ordering';
import { chosenOn, packContent } from './price-in-force';

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
