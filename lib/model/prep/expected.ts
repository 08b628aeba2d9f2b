import type { Day } from '../../core/days';
import { byText } from '../../core/grouped';
import type { CostedPeriod } from '../costed-period';
import { isOnMenu } from '../menu-price';
import type { Thing } from '../things';

/** Portions of an item that are expected in a channel. */
export interface Expected {
  readonly node: number;
  readonly channel: string;
  readonly portions: number;
  /** Of the days like it, those on which it was on sale: what the mean is over. */
  readonly days: number;
}

/**
 * What is expected to be served of each item on the menu of a day: sum over the days like it of portions, comps with them / the number of
 * those days on which it was on sale. What is off the menu that day is not expected; what was never on sale on such a day expects nothing.
 */
export function expectedPortions(period: CostedPeriod, day: Day, like: readonly Day[]): readonly Expected[] {
  return period.things.flatMap((thing, node): Expected[] => {
    if (thing.part !== null || thing.channel !== null || !isServed(thing, day)) return [];
    const rows = thing.sales.filter((row) => like.includes(row.day));
    const days = like.filter((each) => isOnMenu(thing.menu, each) || rows.some((row) => row.day === each)).length;
    const channels = [...new Set(rows.map(({ channel }) => channel))].sort(byText);
    const usual = channels.length > 0 ? channels : [thing.menu[0]?.channel ?? 'dine_in'];
    return usual.map((channel) => {
      const portions = rows.reduce((sum, row) => sum + (row.channel === channel ? row.sold + row.comps : 0), 0);
      return { node, channel, portions: days === 0 ? 0 : portions / days, days };
    });
  });
}

/** On the menu that day; or sold without ever having had a menu price. */
function isServed({ menu, sales }: Thing, day: Day): boolean {
  return isOnMenu(menu, day) || (menu.length === 0 && sales.length > 0);
}

/** The mean of the covers that are known of the days like it; null where none are. */
export function expectedCovers({ covers }: Pick<CostedPeriod, 'covers'>, like: readonly Day[]): number | null {
  const known = covers.filter(({ day }) => like.includes(day));
  return known.length === 0 ? null : known.reduce((sum, each) => sum + each.covers, 0) / known.length;
}
