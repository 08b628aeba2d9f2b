import { addDays, type Day, type DayRange } from '../core/days';
import { ascending, grouped } from '../core/grouped';
import { isNear } from '../core/near';
import type { CostedPeriod } from '../model/costed-period';
import type { ItemId, SalesDay } from '../model/facts';
import { itemFigures } from '../model/item-figures';
import { netPriceOn } from '../model/menu-price';
import { isOffered } from '../model/offered';
import { plateCost } from '../model/plate-cost';
import { saleDays } from '../model/sale-days';
import { segmentOf } from '../model/segments';
import type { Thing } from '../model/things';

/** Days on which a plate cost the same in a channel, with none between them on which it cost something else. */
export interface CostSpan extends DayRange {
  /** Null: in whichever; so where it is packed in nothing that another channel does not take. */
  readonly channel: string | null;
  /** Paid portions. */
  readonly sold: number;
  /** Null where not costed. */
  readonly plateCost: number | null;
}

/** What a plate cost over a period, and what that mean is a mean of. */
export interface CostOverPeriod {
  /** Paid portions. */
  readonly sold: number;
  /** Portion-weighted mean, as in the mix; over the days on sale where none was sold; null where any of it is not known. */
  readonly plateCost: number | null;
  /** Channel by channel, that with most portions first. Only days that count in the mean begin and end a span. */
  readonly spans: readonly CostSpan[];
  /** The last of those days. */
  readonly lastDay: Day;
}

/**
 * The plate cost of an item over a period, all channels together, as menuMix has it for a section (null: the whole menu), with the
 * spans of days that it is the mean of. Null where the item was neither on the menu nor sold.
 */
export function costOverPeriod(period: CostedPeriod, item: ItemId, section: string | null): CostOverPeriod | null {
  const node = period.nodeOf.get(item);
  const thing = node === undefined ? undefined : period.things[node];
  if (node === undefined || thing === undefined || !isOffered(thing)) return null;
  const days = saleDays(period, node, section);
  const channels = thing.menu.map(({ channel }) => channel);
  const { sold, plateCost: mean } = itemFigures(period, node, thing.sales, days, channels);
  const counted = sold > 0 ? thing.sales.filter((row) => row.sold !== 0) : daysOnMenu(thing, days);
  const isPacked = (period.packings.get(node)?.size ?? 0) > 0;
  const byChannel = [...grouped(counted, ({ channel }) => (isPacked ? channel : null))];
  const portionsOf = (rows: readonly Counted[]): number => rows.reduce((sum, row) => sum + row.sold, 0);
  const spans = byChannel
    .sort(([, a], [, b]) => portionsOf(b) - portionsOf(a))
    .flatMap(([channel, rows]) => spansOf(period, node, channel, rows));
  if (spans.length === 0) return null;
  const lastDay = addDays(Math.max(...spans.map(({ to }) => to)) as Day, -1);
  return { sold, plateCost: mean, spans, lastDay };
}

/** What counts in the mean: portions of a day in a channel. */
type Counted = Pick<SalesDay, 'day' | 'channel' | 'sold'>;

/** Days on sale without a portion, each in the channels on whose menu the item is. */
function daysOnMenu({ menu }: Thing, days: readonly Day[]): readonly Counted[] {
  return days.flatMap((day) =>
    menu.flatMap(({ channel }) => (netPriceOn(menu, channel, day) === null ? [] : [{ day, channel, sold: 0 }])),
  );
}

/** The days that count, in runs of one and the same cost. */
function spansOf(
  period: CostedPeriod,
  node: number,
  channel: string | null,
  rows: readonly Counted[],
): readonly CostSpan[] {
  const spans: CostSpan[] = [];
  for (const { day, sold } of ascending(rows, (a, b) => a.day - b.day)) {
    const { complete, total } = plateCost(period, node, segmentOf(period.segments, day), channel);
    const cost = complete ? total : null;
    const before = spans.at(-1);
    if (before && isSame(before.plateCost, cost)) {
      spans[spans.length - 1] = { ...before, to: addDays(day, 1), sold: before.sold + sold };
    } else spans.push({ channel, from: day, to: addDays(day, 1), sold, plateCost: cost });
  }
  return spans;
}

function isSame(a: number | null, b: number | null): boolean {
  return a === null || b === null ? a === b : isNear(a, b);
}
