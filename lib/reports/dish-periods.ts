import type { DayRange } from '../core/days';
import { itemOverPeriod } from '../model/bridge/item-over-period';
import type { CostedPeriod } from '../model/costed-period';
import { extrasGiven } from '../model/extras';
import type { ItemId } from '../model/facts';

/** One item in one period. Money is venue currency net of sales tax, per portion. */
export interface DishInPeriod {
  readonly period: DayRange;
  /** Whether it was on the menu, sold, or (an extra) given; else all below is nothing and not known. */
  readonly onSale: boolean;
  /** Paid portions; guests that were given it, of an extra. */
  readonly sold: number;
  readonly comps: number;
  /** Of its section's paid portions; null where there were none. */
  readonly share: number | null;
  readonly listPrice: number | null;
  readonly netPrice: number | null;
  readonly plateCost: number | null;
  readonly estimated: boolean;
  readonly foodCost: number | null;
  readonly margin: number | null;
}

/** An item through some periods, in their order, with the figures that the mix of each period has. */
export function dishPeriods(
  periods: readonly CostedPeriod[],
  item: ItemId,
  section: string | null,
): readonly DishInPeriod[] {
  return periods.map((period) => inPeriod(period, item, section));
}

function inPeriod(period: CostedPeriod, item: ItemId, section: string | null): DishInPeriod {
  const node = period.nodeOf.get(item) ?? -1;
  const over = itemOverPeriod(period, node, section);
  const nothing = { netPrice: null, plateCost: null, estimated: false, foodCost: null, margin: null };
  const given = extrasGiven(period).find((each) => each.node === node);
  if (!over) {
    const { covers = 0, perCover = null } = given ?? {};
    const onSale = given !== undefined;
    return {
      ...{ period: period.range, onSale, sold: covers, comps: 0, share: null, listPrice: null, ...nothing },
      plateCost: perCover,
    };
  }
  const { sold, comps, netPrice, plateCost, estimated, foodCost, margin } = over.figures;
  return {
    ...{ period: period.range, onSale: true, sold, comps, share: over.share },
    ...{ listPrice: over.listPrice, netPrice, plateCost, estimated, foodCost, margin },
  };
}
