import { addDays, type Day, type DayRange } from '../core/days';
import { isNear } from '../core/near';
import type { CostedPeriod } from '../model/costed-period';
import type { ItemId } from '../model/facts';
import { itemFigures } from '../model/item-figures';
import { isOnMenu } from '../model/menu-price';
import { sectionNodes } from '../model/mix/section';
import { daysOnSale, sectionDays } from '../model/mix/section-days';
import { isOffered } from '../model/offered';
import type { Thing } from '../model/things';

/** Some days in a row on which a plate cost the same. */
export interface CostSpan extends DayRange {
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
  /** Only days that count in the mean begin and end a span. */
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
  const days = saleDays(period, thing, node, section);
  const channels = thing.menu.map(({ channel }) => channel);
  const { sold, plateCost: mean } = itemFigures(period, node, thing.sales, days, channels);
  const counted = sold > 0 ? thing.sales.filter((row) => row.sold !== 0).map(({ day }) => day) : days;
  const spans = spansOf(
    period,
    thing,
    node,
    [...new Set(counted)].sort((a, b) => a - b),
    channels,
  );
  const last = spans.at(-1);
  return last ? { sold, plateCost: mean, spans, lastDay: addDays(last.to, -1) } : null;
}

/** The days on which an item was on sale among its section's trading days; the days on the menu where there was none. */
function saleDays(period: CostedPeriod, thing: Thing, node: number, section: string | null): readonly Day[] {
  const inSection = sectionNodes(period, section);
  const offered = period.things.flatMap((each, at) => (isOffered(each) ? [at] : []));
  const nodes = inSection.includes(node) ? inSection : offered;
  const onSale = daysOnSale(sectionDays(period, nodes), nodes.indexOf(node));
  if (onSale.length > 0) return onSale;
  const { from, to } = period.range;
  const days = Array.from({ length: to - from }, (_, index) => addDays(from, index));
  return days.filter((day) => isOnMenu(thing.menu, day));
}

/** The days that count, in runs of one and the same cost; that of a day is the mean of its channels. */
function spansOf(
  period: CostedPeriod,
  thing: Thing,
  node: number,
  days: readonly Day[],
  channels: readonly string[],
): readonly CostSpan[] {
  const spans: CostSpan[] = [];
  for (const day of days) {
    const rows = thing.sales.filter((row) => row.day === day);
    const { sold, plateCost } = itemFigures(period, node, rows, [day], channels);
    const before = spans.at(-1);
    if (before && isSame(before.plateCost, plateCost)) {
      spans[spans.length - 1] = { ...before, to: addDays(day, 1), sold: before.sold + sold };
    } else spans.push({ from: day, to: addDays(day, 1), sold, plateCost });
  }
  return spans;
}

function isSame(a: number | null, b: number | null): boolean {
  return a === null || b === null ? a === b : isNear(a, b);
}
