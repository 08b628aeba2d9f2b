import { isByProduct } from '../by-products';
import type { CostedPeriod } from '../costed-period';
import type { ItemId } from '../facts';
import { WHOLE } from '../known';
import type { PortionWeight } from '../portion-weights';

/** What one portion takes of one thing that has a price of its own, and what that costs. */
export interface BasketLine {
  readonly id: ItemId;
  readonly item: string;
  /** It is the owner's estimate that stands in for a recipe. */
  readonly isEstimate: boolean;
  /** Base units; of an estimate the portions of it; below zero of what is made as a by-product. */
  readonly need: number;
  /** need * price, q included where it is taken; venue currency. */
  readonly cost: number;
}

/** By what is bought, credited or estimated; the costs of complete portions sum to the plate cost. */
export type Basket = ReadonlyMap<string, BasketLine>;

/** What has a price of its own in a segment: its key in a basket, and that price; null where it is not known. */
interface Priced {
  readonly key: string;
  readonly isEstimate: boolean;
  readonly price: number | null;
}

const bought = (id: ItemId): string => `bought ${id}`;
const estimated = (id: ItemId): string => `estimate ${id}`;

/**
 * The basket of one portion from what it takes of everything (portionNeed): f = sum over the basket of cost.
 *
 * R(k) = sum over segments of need(k, g); cost(k) = sum over segments of need(k, g) p(k, g), with p = food (1 + q) + packaging.
 */
export function basketOf(period: CostedPeriod, need: Float64Array): Basket {
  const { count } = period.segments;
  const basket = new Map<string, BasketLine>();
  period.things.forEach((thing, node) => {
    for (let segment = 0; segment < count; segment++) {
      const amount = need[node * count + segment] as number;
      const priced = amount === 0 ? null : pricedIn(period, node, segment);
      if (priced === null) continue;
      const { key, isEstimate } = priced;
      const before = basket.get(key) ?? { id: thing.id, item: thing.name, isEstimate, need: 0, cost: 0 };
      const cost = before.cost + amount * (priced.price ?? 0);
      basket.set(key, { ...before, need: before.need + amount, cost });
    }
  });
  return basket;
}

/**
 * The mean price over portions of a period of what stands in a basket of another one: sum over segments h of (s_h / s) p(k, h).
 * Segments without a price are left out of the mean; null where no segment has one.
 */
export function pricesOver(
  period: CostedPeriod,
  weights: readonly PortionWeight[],
): (key: string, line: BasketLine) => number | null {
  return (key, { id }) => {
    const node = period.nodeOf.get(id);
    if (node === undefined) return null;
    const known = weights.flatMap(({ segment, weight }) => {
      const priced = pricedIn(period, node, segment);
      return priced?.key === key && priced.price !== null ? [{ weight, price: priced.price }] : [];
    });
    const whole = known.reduce((sum, { weight }) => sum + weight, 0);
    return whole === 0 ? null : known.reduce((sum, { weight, price }) => sum + (weight / whole) * price, 0);
  };
}

/** Null for what is made of other things: its cost is theirs. */
function pricedIn(period: CostedPeriod, node: number, segment: number): Priced | null {
  const thing = period.things[node];
  const cell = node * period.segments.count + segment;
  if (!thing || thing.part !== null || thing.channel !== null) return null;
  if (period.estimated[cell] === WHOLE) {
    return { key: estimated(thing.id), isEstimate: true, price: period.prices.estimate[cell] as number };
  }
  if (thing.kind !== 'ingredient' && !isByProduct(period.makings, node, segment)) return null;
  const { food, packaging } = period.prices;
  const price = (food[cell] as number) * (1 + period.venue.qFactor) + (packaging[cell] as number);
  return { key: bought(thing.id), isEstimate: false, price: period.complete[cell] === 1 ? price : null };
}
