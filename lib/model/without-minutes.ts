import { byText } from '../core/grouped';
import { nameKey } from '../core/name-key';
import type { CostedPeriod } from './costed-period';
import { isSilent } from './labour';
import { reachedFrom } from './reached';

/** Recipes in an item that state no minutes, by name: why its labour is not known. */
export function withoutMinutes(period: CostedPeriod, node: number): readonly string[] {
  const silent = [...reachedFrom(period, [node])].flatMap((each) => {
    const thing = period.things[each];
    const pieces = period.recipes[each] ?? [];
    const isItem = thing !== undefined && thing.part === null && thing.channel === null;
    return isItem && pieces.some((piece) => !piece.byProduct && isSilent(thing, piece)) ? [thing.name] : [];
  });
  return silent.sort((a, b) => byText(nameKey(a), nameKey(b)));
}
