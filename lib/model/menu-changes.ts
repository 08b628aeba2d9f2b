import { type Day, type DayRange, isWithin } from '../core/days';
import { byText, grouped } from '../core/grouped';
import { nameKey } from '../core/name-key';
import type { ItemId, MenuPrice } from './facts';
import { type MenuEvent, menuEvents } from './menu-events';

/** What happened to an item on the menu on a day, in one channel or alike in several. */
export interface MenuChange extends Omit<MenuEvent, 'channel'> {
  readonly item: string;
  readonly channels: readonly string[];
}

/**
 * What came to the menu, went from it or got another price on some days, by day, then name. Only the items named are looked at: those
 * that the figures beside it are of.
 */
export function menuChanges(
  prices: readonly MenuPrice[],
  nameOf: ReadonlyMap<ItemId, string>,
  range: DayRange,
): readonly MenuChange[] {
  const changes = [...grouped(prices, ({ item }) => item)].flatMap(([id, stated]) => {
    const item = nameOf.get(id);
    const events = item === undefined ? [] : menuEvents(stated).filter(({ day }) => isWithin(day, range));
    const alike = grouped(events, ({ day, kind, price, before }) => `${day} ${kind} ${price} ${before}`);
    return [...alike.values()].flatMap(([first, ...more]): readonly MenuChange[] => {
      if (item === undefined || first === undefined) return [];
      const { channel, ...same } = first;
      return [{ item, channels: [channel, ...more.map((each) => each.channel)], ...same }];
    });
  });
  const byName = (a: MenuChange, b: MenuChange) => byText(nameKey(a.item), nameKey(b.item));
  return changes.sort((a, b) => a.day - b.day || byName(a, b) || byText(a.channels.join(), b.channels.join()));
}

/** The first day on which anything was on some menu by a date; null where nothing is dated. */
export function firstMenuDay(prices: readonly MenuPrice[]): Day | null {
  const days = prices.flatMap(({ validFrom }) => validFrom ?? []);
  return days.length === 0 ? null : (Math.min(...days) as Day);
}
