import { addDays, type Day, type DayRange } from '../core/days';
import type { MenuPrice } from './facts';
import { type InForce, onDay } from './in-force';

/** The prices of one item in one channel, as the days on which each is in force. */
export interface ChannelMenu {
  readonly channel: string;
  readonly prices: readonly InForce<MenuPrice>[];
}

/** Price net of sales tax: gross / (1 + rate) where the tax is inside; null where the item is off the menu. */
export function netPrice(menuPrice: MenuPrice): number | null {
  const { price, tax, taxIncluded } = menuPrice;
  return price === null || !taxIncluded ? price : price / (1 + tax);
}

/** The net menu price in a channel on a day; null where there is none. */
export function netPriceOn(menu: readonly ChannelMenu[], channel: string, day: Day): number | null {
  const inChannel = menu.find((each) => each.channel === channel);
  const menuPrice = inChannel ? onDay(inChannel.prices, day) : null;
  return menuPrice === null ? null : netPrice(menuPrice);
}

/** Whether an item is on the menu on a day, in any channel. */
export function isOnMenu(menu: readonly ChannelMenu[], day: Day): boolean {
  return menu.some(({ channel }) => netPriceOn(menu, channel, day) !== null);
}

/** Days of a period on which an item is on the menu: what stands for days on sale where none was traded. */
export function menuDays(menu: readonly ChannelMenu[], { from, to }: DayRange): readonly Day[] {
  return Array.from({ length: Math.max(0, to - from) }, (_, index) => addDays(from, index)).filter((day) =>
    isOnMenu(menu, day),
  );
}
