import type { CostedPeriod } from '../costed-period';
import { type ItemFigures, itemFigures } from '../item-figures';
import { listedPrice } from '../listed-price';
import { sectionNodes } from '../mix/section';
import { isOffered } from '../offered';
import { type PortionWeight, portionWeights } from '../portion-weights';
import { saleDays } from '../sale-days';
import { type Basket, basketOf } from './basket';
import type { BridgeSide } from './item-bridge';
import { portionNeed } from './portion-need';

/** One item over a period: its figures as the mix has them, and by which portions its means are weighed. */
export interface ItemOverPeriod {
  readonly node: number;
  readonly figures: ItemFigures;
  readonly weights: readonly PortionWeight[];
  /** Listed net price of the paid portions; null where a portion had none. */
  readonly listPrice: number | null;
  readonly daysOnSale: number;
  /** Of the section's paid portions; null where there were none. */
  readonly share: number | null;
}

/** An item over all channels, among the items of a section (null: the whole menu); null where it was neither on the menu nor sold. */
export function itemOverPeriod(period: CostedPeriod, node: number, section: string | null): ItemOverPeriod | null {
  const thing = period.things[node];
  if (!thing || !isOffered(thing)) return null;
  const days = saleDays(period, node, section);
  const channels = thing.menu.map(({ channel }) => channel);
  const figures = itemFigures(period, node, thing.sales, days, channels);
  const whole = sectionNodes(period, section)
    .flatMap((each) => period.things[each]?.sales ?? [])
    .reduce((sum, row) => sum + row.sold, 0);
  return {
    node,
    figures,
    weights: portionWeights(period, node, thing.sales, days, channels),
    listPrice: listedPrice(period, node, thing.sales),
    daysOnSale: days.length,
    share: whole === 0 ? null : figures.sold / whole,
  };
}

/** What one portion of it takes of what is bought. */
export function basketOver(period: CostedPeriod, { node, weights }: ItemOverPeriod): Basket {
  return basketOf(period, portionNeed(period, node, weights));
}

/** As a side of a bridge; a portion without listed price was sold at its list price. Null where it is not costed. */
export function bridgeSide({ figures, listPrice }: ItemOverPeriod): BridgeSide | null {
  const { sold, netPrice, plateCost } = figures;
  if (netPrice === null || plateCost === null) return null;
  return { sold, netPrice, listPrice: listPrice ?? netPrice, plateCost };
}
