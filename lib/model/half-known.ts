import type { CostedPeriod } from './costed-period';
import { WHOLE } from './known';
import { inSegment } from './segments';

/** Lines that a recipe reaches, down to what is bought, and how many of them have no cost. */
export interface LineCount {
  readonly lines: number;
  readonly missing: number;
}

/**
 * Counts the lines in which a recipe ends: those of ingredients, those of things on estimate, and those that lead nowhere, since
 * nothing is known of what they ask for. Every recipe reached counts once, however many ways lead to it. Lines that could not be
 * taken are missing ones. In a channel, what it takes more there is counted too.
 */
export function lineCount(
  period: CostedPeriod,
  node: number,
  segment: number,
  channel: string | null = null,
): LineCount {
  const { complete, estimated, packings, recipes, segments, things } = period;
  const at = (table: Uint8Array, child: number): number => table[child * segments.count + segment] as number;
  const leadsOn = (child: number): boolean => {
    if ((things[child]?.channel ?? null) !== null) return true;
    const piece = inSegment(recipes[child] ?? [], segment);
    return piece !== null && piece.lines.length + piece.version.refusedLines > 0 && at(estimated, child) !== WHOLE;
  };
  const packing = channel === null ? undefined : packings.get(node)?.get(channel);
  const reached = new Set(packing === undefined ? [node] : [node, packing]);
  let lines = 0;
  let missing = 0;
  for (const recipe of reached) {
    const piece = inSegment(recipes[recipe] ?? [], segment);
    if (!piece) continue;
    lines += piece.version.refusedLines;
    missing += piece.version.refusedLines;
    piece.children.forEach((child, index) => {
      const isReadable = !Number.isNaN(piece.amounts[index]);
      if (isReadable && leadsOn(child)) {
        reached.add(child); // a set hands on what is added while it is walked, and each member once
        return;
      }
      lines += 1;
      if (!isReadable || at(complete, child) === 0) missing += 1;
    });
  }
  return { lines, missing };
}
