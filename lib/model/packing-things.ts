import { byText, grouped } from '../core/grouped';
import type { ItemId } from './facts';
import type { Thing } from './things';

/**
 * What things take more where they are sold in one channel, as things: one for each item and channel for which a line of the item's
 * own, or of something it is made of, holds only in that channel. In the order of the items, then of the channels.
 *
 * A portion sold in a channel takes one of the item and one of its packing; a course inside a set menu brings its own.
 */
export function packingThings(items: readonly Thing[]): readonly Thing[] {
  const channels = channelsOf(items);
  return items.flatMap((item) =>
    [...(channels.get(item.id) ?? [])].sort(byText).map((channel) => ({
      ...{ id: item.id, kind: item.kind, name: `${item.name} (${channel})`, part: null, channel },
      ...{ recipes: [], versions: [], prices: [], own: new Map(), uses: new Map(), menu: [], sales: [] },
    })),
  );
}

/** Channels in which an item takes more than in others: those of its own lines and of all that it is made of. */
function channelsOf(items: readonly Thing[]): ReadonlyMap<ItemId, ReadonlySet<string>> {
  const lines = items.flatMap(({ id, recipes }) =>
    recipes.flatMap(({ fact }) => fact.lines.map(({ item, channel }) => ({ parent: id, child: item, channel }))),
  );
  const channels = new Map<ItemId, Set<string>>();
  const waiting: (readonly [ItemId, string])[] = [];
  const mark = (item: ItemId, channel: string): void => {
    const before = channels.get(item) ?? new Set();
    if (before.has(channel)) return;
    channels.set(item, before.add(channel));
    waiting.push([item, channel]);
  };
  for (const { parent, channel } of lines) if (channel !== null) mark(parent, channel);
  if (waiting.length === 0) return channels;
  const usersOf = grouped(lines, ({ child }) => child);
  for (const [item, channel] of waiting) {
    for (const user of usersOf.get(item) ?? []) {
      if (user.channel === null || user.channel === channel) mark(user.parent, channel);
    }
  }
  return channels;
}
