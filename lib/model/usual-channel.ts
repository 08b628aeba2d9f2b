import type { Day } from '../core/days';
import { byText } from '../core/grouped';
import { netPriceOn } from './menu-price';
import type { Thing } from './things';

/** The channel in which an item is looked at where none is named: dine_in, or the first of those on whose menu it is, or in which it was sold. */
export function usualChannel(thing: Thing, day: Day): string | null {
  const listed = thing.menu.filter(({ channel }) => netPriceOn(thing.menu, channel, day) !== null);
  const channels = [...listed, ...thing.sales.filter((row) => row.day === day)].map(({ channel }) => channel);
  return channels.includes('dine_in') ? 'dine_in' : (channels.sort(byText)[0] ?? null);
}
