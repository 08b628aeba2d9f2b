import { pricesOver } from '../model/bridge/basket';
import { type CostChange, costChange } from '../model/bridge/cost-change';
import { type ItemBridge, itemBridge } from '../model/bridge/item-bridge';
import { basketOver, bridgeSide, type ItemOverPeriod, itemOverPeriod } from '../model/bridge/item-over-period';
import type { CostedPeriod } from '../model/costed-period';
import type { ItemId } from '../model/facts';
import { sectionNodes } from '../model/mix/section';

/** One figure of two periods. */
export interface Both<Value> {
  readonly before: Value;
  readonly after: Value;
}

/** What became of a dish since the period before, and why. Money is venue currency, net of sales tax, per portion unless it says so. */
export interface DishChange {
  readonly sold: Both<number>;
  /** Of the section's portions; null where it sold none. */
  readonly share: Both<number | null>;
  readonly netPrice: Both<number | null>;
  readonly listPrice: Both<number | null>;
  readonly margin: Both<number | null>;
  /** The plate cost as price and recipe, by what is bought; null where it is not costed in both periods. */
  readonly cost: CostChange | null;
  /** What it left in the period, and why that changed; null where it is not costed in both periods. */
  readonly contribution: (Both<number> & { readonly parts: ItemBridge }) | null;
}

/**
 * What changed about an item from one period to the next and why, as the bridge of the whole menu has it: price and recipe of the plate,
 * listed price and discounts, volume and mix among the section's items that are costed in both periods. Null where it was not on sale in
 * both. Both periods have to be costed for everything, so that what is no longer used still has its price.
 */
export function dishChange(
  before: CostedPeriod,
  after: CostedPeriod,
  item: ItemId,
  section: string | null,
): DishChange | null {
  const [was, is] = [before, after].map((period) => over(period, item, section));
  if (!was || !is) return null;
  const cost = changeOfCost(before, was, after, is);
  const [from, to] = [bridgeSide(was), bridgeSide(is)];
  const portions = portionsOfBoth(before, after, section);
  const { netPrice, margin, sold } = is.figures;
  return {
    sold: { before: was.figures.sold, after: sold },
    share: { before: was.share, after: is.share },
    netPrice: { before: was.figures.netPrice, after: netPrice },
    listPrice: { before: was.listPrice, after: is.listPrice },
    margin: { before: was.figures.margin, after: margin },
    cost,
    contribution:
      from === null || to === null
        ? null
        : {
            before: from.sold * (from.netPrice - from.plateCost),
            after: to.sold * (to.netPrice - to.plateCost),
            parts: itemBridge(...listedAlike(was, is, from, to), cost?.atNewPrices ?? null, portions),
          },
  };
}

function over(period: CostedPeriod, item: ItemId, section: string | null): ItemOverPeriod | null {
  const node = period.nodeOf.get(item);
  return node === undefined ? null : itemOverPeriod(period, node, section);
}

function changeOfCost(
  before: CostedPeriod,
  was: ItemOverPeriod,
  after: CostedPeriod,
  is: ItemOverPeriod,
): CostChange | null {
  if (was.figures.plateCost === null || is.figures.plateCost === null) return null;
  return costChange(basketOver(before, was), basketOver(after, is), pricesOver(after, is.weights));
}

/** Where one of the two has no listed price, neither counts: all that changed is the price. */
function listedAlike<Side extends { readonly netPrice: number; readonly listPrice: number }>(
  was: ItemOverPeriod,
  is: ItemOverPeriod,
  from: Side,
  to: Side,
): [Side, Side] {
  if (was.listPrice !== null && is.listPrice !== null) return [from, to];
  return [
    { ...from, listPrice: from.netPrice },
    { ...to, listPrice: to.netPrice },
  ];
}

/** Paid portions of the section's items, without those that were sold uncosted in one of the periods. */
function portionsOfBoth(before: CostedPeriod, after: CostedPeriod, section: string | null): Both<number> {
  const sides = [before, after].map((period) => {
    const items = sectionNodes(period, section).flatMap((node) => {
      const found = itemOverPeriod(period, node, section);
      const id = period.things[node]?.id;
      return found && id !== undefined ? [{ id, figures: found.figures }] : [];
    });
    return items.filter(({ figures }) => figures.sold > 0);
  });
  const isUncosted = new Set(sides.flat().flatMap(({ id, figures }) => (figures.margin === null ? [id] : [])));
  const [from = 0, to = 0] = sides.map((items) =>
    items.reduce((sum, { id, figures }) => (isUncosted.has(id) ? sum : sum + figures.sold), 0),
  );
  return { before: from, after: to };
}
