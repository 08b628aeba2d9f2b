import { byText } from '../core/grouped';
import type { ItemId, RecipeLine } from './facts';
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
      ...{ recipes: [], begins: null, versions: [], prices: [], own: new Map(), uses: new Map(), menu: [], sales: [] },
    })),
  );
}

/** Channels in which an item takes more than in others: those of its own lines and of all that it is made of. */
function channelsOf(items: readonly Thing[]): ReadonlyMap<ItemId, ReadonlySet<string>> {
  const channels = new Map<ItemId, Set<string>>();
  const waiting: (readonly [ItemId, string])[] = [];
  const mark = (item: ItemId, channel: string): void => {
    const before = channels.get(item) ?? new Set();
    if (before.has(channel)) return;
    channels.set(item, before.add(channel));
    waiting.push([item, channel]);
  };
  eachLine(items, (parent, { channel }) => {
    if (channel !== null) mark(parent, channel);
  });
  if (waiting.length === 0) return channels; // as a rule: nothing more has to be walked
  const usersOf = new Map<ItemId, (readonly [ItemId, string | null])[]>();
  eachLine(items, (parent, { item, channel }) => {
    const users = usersOf.get(item);
    if (users) users.push([parent, channel]);
    else usersOf.set(item, [[parent, channel]]);
  });
  for (const [item, channel] of waiting) {
    for (const [user, only] of usersOf.get(item) ?? []) if (only === null || only === channel) mark(user, channel);
  }
  return channels;
}

function eachLine(items: readonly Thing[], use: (parent: ItemId, line: RecipeLine) => void): void {
  for (const { id, recipes } of items) {
    for (const { fact } of recipes) for (const line of fact.lines) use(id, line);
  }
}
