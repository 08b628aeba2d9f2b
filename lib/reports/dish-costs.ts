import type { Day, DayRange } from '../core/days';
import { byText } from '../core/grouped';
import { nameKey } from '../core/name-key';
import type { CostedPeriod } from '../model/costed-period';
import type { ItemId, ItemKind, VenueSettings } from '../model/facts';
import type { Issue } from '../model/issue';
import { inOrder } from '../model/issue-list';
import { type HalfKnown, itemFigures } from '../model/item-figures';
import { netPriceOn } from '../model/menu-price';
import { revenueIssues } from '../model/mix/mix-issues';
import { isOffered, itemSection } from '../model/offered';
import { issuesOf } from '../model/reached';
import type { Thing } from '../model/things';

/** One item in one channel. Money is venue currency net of sales tax, per portion. */
export interface DishCost {
  readonly id: ItemId;
  readonly item: string;
  readonly kind: ItemKind;
  readonly section: string | null;
  readonly channel: string;
  /** Paid portions. */
  readonly sold: number;
  /** Achieved net price; the mean net menu price where none was sold; null where neither is known. */
  readonly netPrice: number | null;
  /** Portion-weighted mean over the period, q included; null where not costed. */
  readonly plateCost: number | null;
  readonly halfKnown: HalfKnown | null;
  readonly estimated: boolean;
  /** Null while no hands-on minutes are known. */
  readonly recipeLabour: number | null;
  /** Null while no batch sizes and days of life are known. */
  readonly smallBatchLoss: number | null;
  /** Food-cost %, as a fraction of the net price. */
  readonly foodCost: number | null;
  readonly margin: number | null;
  /** Null while no plating minutes are known. */
  readonly marginPerPlatingMinute: number | null;
}

export interface DishCosts {
  readonly venue: VenueSettings;
  readonly period: DayRange;
  readonly items: readonly DishCost[];
  readonly issues: readonly Issue[];
}

/**
 * What each thing on the menu or sold in the period costs and leaves, one row an item and channel, by name and channel.
 * Whatever its department or section.
 */
export function dishCosts(period: CostedPeriod): DishCosts {
  const offered = period.things.flatMap((thing, node) => (isOffered(thing) ? [{ thing, node }] : []));
  const nodes = offered.map(({ node }) => node);
  const figures = offered.flatMap(({ thing, node }) =>
    channelsOf(thing).map((channel) => ({ thing, channel, ...channelFigures(period, thing, node, channel) })),
  );
  return {
    venue: period.venue,
    period: period.range,
    items: figures
      .map(
        ({ thing, channel, ...item }): DishCost => ({
          id: thing.id,
          item: thing.name,
          kind: thing.kind,
          section: itemSection(thing),
          channel,
          sold: item.sold,
          netPrice: item.netPrice,
          plateCost: item.plateCost,
          halfKnown: item.halfKnown,
          estimated: item.estimated,
          recipeLabour: null,
          smallBatchLoss: null,
          foodCost: item.foodCost,
          margin: item.margin,
          marginPerPlatingMinute: null,
        }),
      )
      .sort((a, b) => byText(nameKey(a.item), nameKey(b.item)) || byText(a.channel, b.channel)),
    issues: [...issuesOf(period, nodes), ...figures.flatMap((item) => revenueIssues(item.thing.name, item))].sort(
      inOrder,
    ),
  };
}

/** Channels in which an item is on the menu or sold in the period. */
function channelsOf({ menu, sales }: Thing): readonly string[] {
  const listed = menu.filter(({ prices }) => prices.some(({ fact }) => fact.price !== null));
  const sold = sales.filter((row) => row.sold !== 0 || row.comps !== 0);
  return [...new Set([...listed, ...sold].map(({ channel }) => channel))].sort(byText);
}

function channelFigures(
  period: CostedPeriod,
  thing: Thing,
  node: number,
  channel: string,
): ReturnType<typeof itemFigures> {
  const { from, to } = period.range;
  const rows = thing.sales.filter((row) => row.channel === channel);
  const days = Array.from({ length: to - from }, (_, index) => (from + index) as Day);
  const onMenu = days.filter((day) => netPriceOn(thing.menu, channel, day) !== null);
  return itemFigures(period, node, rows, onMenu, [channel]);
}
