import type { Day } from '../../core/days';
import { byText, grouped } from '../../core/grouped';
import { nameKey } from '../../core/name-key';
import type { CostedPeriod } from '../costed-period';
import type { ItemId } from '../facts';
import { portionOf } from '../plate-cost';
import { segmentOf } from '../segments';
import { isGiven } from '../served';
import type { Thing } from '../things';
import { expectedPortions } from './expected';

/** What is served of an item in a channel on a day. */
export interface PrepItem {
  readonly node: number;
  readonly id: ItemId;
  readonly item: string;
  readonly channel: string;
  /** The mean of the days like it, and how many of them it was on sale on. */
  readonly expected: number;
  readonly days: number;
  /** What the sheet is made for: expected, unless somebody said otherwise. */
  readonly portions: number;
}

/** Portions that somebody said are shared out over the channels as they are expected, or evenly where nothing is. */
export function prepItems(
  period: CostedPeriod,
  day: Day,
  like: readonly Day[],
  said: ReadonlyMap<ItemId, number>,
): readonly PrepItem[] {
  const byNode = grouped(expectedPortions(period, day, like), ({ node }) => node);
  const items = [...byNode].flatMap(([node, channels]) => {
    const { id, name } = period.things[node] as Thing;
    const sum = channels.reduce((total, { portions }) => total + portions, 0);
    const whole = said.get(id) ?? sum;
    return channels.map(({ channel, portions, days }) => ({
      ...{ node, id, item: name, channel, expected: portions, days },
      portions: whole * (sum === 0 ? 1 / channels.length : portions / sum),
    }));
  });
  const known = new Set(items.map(({ id }) => id));
  const added = [...said].flatMap(([id, portions]): PrepItem[] => {
    const node = period.nodeOf.get(id);
    const thing = node === undefined ? undefined : period.things[node];
    if (known.has(id) || node === undefined || thing === undefined) return [];
    return [{ node, id, item: thing.name, channel: 'dine_in', expected: 0, days: 0, portions }];
  });
  return [...items, ...added].sort((a, b) => byText(nameKey(a.item), nameKey(b.item)) || byText(a.channel, b.channel));
}

/** What is served in base units: portions with their packing, and the extras of each cover. By node. */
export function prepWanted(period: CostedPeriod, day: Day, items: readonly PrepItem[], covers: number): Float64Array {
  const segment = segmentOf(period.segments, day);
  const wanted = new Float64Array(period.things.length);
  const serve = (node: number, portions: number, channel: string | null): void => {
    const packing = channel === null ? undefined : period.packings.get(node)?.get(channel);
    for (const each of packing === undefined ? [node] : [node, packing]) {
      wanted[each] = (wanted[each] as number) + portions * (portionOf(period, node, segment) ?? 0);
    }
  };
  for (const { node, portions, channel } of items) serve(node, portions, channel);
  period.things.forEach((thing, node) => {
    const isGivenToAll = thing.kind === 'extra' && thing.channel === null && thing.part === null;
    if (isGivenToAll && isGiven(period, node, day)) serve(node, covers, null);
  });
  return wanted;
}
