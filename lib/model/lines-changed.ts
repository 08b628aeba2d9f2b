import { grouped } from '../core/grouped';
import type { ItemId, RecipeLine } from './facts';

/** What became of one line of a recipe between two versions. Null before: added; null after: taken away. */
export interface LineChange {
  readonly item: ItemId;
  readonly before: RecipeLine | null;
  readonly after: RecipeLine | null;
}

/**
 * Lines of one recipe that differ from another's, in the order of the later one, then those that are gone. Lines answer each other where
 * they ask for the same thing (the same part, in the same channel), first for first; their places alone are no difference.
 */
export function linesChanged(before: readonly RecipeLine[], after: readonly RecipeLine[]): readonly LineChange[] {
  const left = grouped(before, asksFor);
  // the very same line first, so that of two lines to one thing the altered one is told
  const taken = after.map((line) => {
    const among = left.get(asksFor(line)) ?? [];
    const at = among.findIndex((each) => isSame(each, line));
    return at < 0 ? null : (among.splice(at, 1)[0] ?? null);
  });
  const changes = after.flatMap((line, place): LineChange[] => {
    if (taken[place]) return [];
    return [{ item: line.item, before: left.get(asksFor(line))?.shift() ?? null, after: line }];
  });
  const gone = new Set([...left.values()].flat());
  return [
    ...changes,
    ...before.filter((line) => gone.has(line)).map((line) => ({ item: line.item, before: line, after: null })),
  ];
}

const asksFor = ({ item, part, channel }: RecipeLine): string => `${item}|${part ?? ''}|${channel ?? ''}`;

function isSame({ position: _, ...a }: RecipeLine, { position: __, ...b }: RecipeLine): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
