import type { Day } from '../core/days';
import type { CostedPeriod } from './costed-period';
import type { FlatLines } from './flat-lines';
import { downward } from './passes';
import { portionOf } from './plate-cost';
import { inSegment, segmentOf } from './segments';

/**
 * What was served in the period, in base units of what was served: paid portions and comps, what each takes more in its channel, and
 * the extras of each cover. Entry node * segments + segment.
 */
export function served(period: CostedPeriod): Float64Array {
  return servedIn(period, period.segments.count, (day) => segmentOf(period.segments, day));
}

/** Need of everything for what was served: portions -> all that they are made of. Entry node * segments + segment. */
export function needOfServed(period: CostedPeriod): Float64Array {
  return downward(period.lines, served(period), period.segments.count);
}

/** As needOfServed, day by day. Entry node * days + day, the first day of the period being 0. */
export function needByDay(period: CostedPeriod): Float64Array {
  const { from, to } = period.range;
  const wanted = servedIn(period, to - from, (day) => day - from);
  return downward(dailyLines(period), wanted, to - from);
}

function servedIn(period: CostedPeriod, columns: number, columnOf: (day: Day) => number): Float64Array {
  const wanted = new Float64Array(period.things.length * columns);
  const serve = (node: number, day: Day, portions: number, channel: string | null): void => {
    const packing = channel === null ? undefined : period.packings.get(node)?.get(channel);
    const amount = portions * (portionOf(period, node, segmentOf(period.segments, day)) ?? 0);
    for (const each of packing === undefined ? [node] : [node, packing]) {
      const cell = each * columns + columnOf(day);
      wanted[cell] = (wanted[cell] as number) + amount;
    }
  };
  period.things.forEach((thing, node) => {
    for (const { day, channel, sold, comps } of thing.sales) serve(node, day, sold + comps, channel);
    if (thing.kind !== 'extra' || thing.channel !== null) return;
    for (const { day, covers } of period.covers) if (isGiven(period, node, day)) serve(node, day, covers, null);
  });
  return wanted;
}

/** Whether an extra has a recipe in force on a day: then every guest of that day is given one. */
export function isGiven({ recipes, segments }: CostedPeriod, node: number, day: Day): boolean {
  return inSegment(recipes[node] ?? [], segmentOf(segments, day)) !== null;
}

/** The lines with days instead of segments: a line that holds in some segments holds on the days that they are. */
function dailyLines({ lines, segments, range }: CostedPeriod): FlatLines {
  const firstDay = segments.cuts.map((day) => day - range.from);
  return {
    ...lines,
    from: lines.from.map((segment) => firstDay[segment] as number),
    to: lines.to.map((segment) => firstDay[segment] as number),
  };
}
