import { isByProduct } from '../by-products';
import type { CostedPeriod } from '../costed-period';
import type { IngredientVersion } from '../facts';
import { inSegment, type SegmentRange, segmentsWithin } from '../segments';
import type { Thing } from '../things';

/** What something contains, as it was declared, down to what is bought. */
export interface Declared {
  /** Words with the names of the ingredients that declare them. */
  readonly contains: ReadonlyMap<string, readonly string[]>;
  readonly mayContain: ReadonlyMap<string, readonly string[]>;
  /** Ingredients and recipes of which it is not known what they contain, or may contain: nothing is free of anything because of them. */
  readonly unknownFrom: readonly string[];
  /** raw egg, alcohol, liquid nitrogen, dry ice, with the names of the recipes that say so. */
  readonly cautions: ReadonlyMap<string, readonly string[]>;
}

/**
 * What goes into a thing in a segment, in whichever channel it is sold and whatever a guest chooses. What it is packed in is not
 * eaten. A by-product is of what it was made beside; made and not used, it is in nothing.
 */
export function declaredIn(period: CostedPeriod, start: number, segment: number): Declared {
  const contains = new Map<string, string[]>();
  const mayContain = new Map<string, string[]>();
  const cautions = new Map<string, string[]>();
  const unknownFrom = new Set<string>();
  const note = (into: Map<string, string[]>, words: readonly string[], name: string): void => {
    for (const word of words) into.set(word, [...(into.get(word) ?? []), name]);
  };
  const reached = new Set([start]);
  for (const node of reached) {
    const thing = period.things[node] as Thing;
    const isMade = isByProduct(period.makings, node, segment);
    for (const { maker, from, to } of isMade ? (period.makings.get(node) ?? []) : []) {
      if (segment >= from && segment < to) reached.add(maker);
    }
    for (const packing of period.packings.get(node)?.values() ?? []) reached.add(packing);
    if (thing.kind === 'ingredient' && thing.part === null) {
      const version = versionIn(period, thing, segment);
      if (version?.department === 'packaging') continue;
      note(contains, version?.contains ?? [], thing.name);
      note(mayContain, version?.mayContain ?? [], thing.name);
      const isOpen = version === null || version.contains === null || version.mayContain === null;
      if (isOpen && !isMade) unknownFrom.add(thing.name);
      continue;
    }
    const piece = inSegment(period.recipes[node] ?? [], segment);
    if (
      thing.channel === null &&
      !isMade &&
      (piece === null || piece.lines.length === 0 || piece.version.refusedLines > 0)
    ) {
      unknownFrom.add(thing.name);
    }
    if (piece === null) continue;
    if (thing.channel === null) note(cautions, piece.version.cautions, thing.name);
    piece.lines.forEach((line, index) => {
      if (line.byProductCredit === null) reached.add(piece.children[index] as number);
    });
  }
  return { contains, mayContain, unknownFrom: [...unknownFrom].sort(), cautions };
}

function versionIn(period: CostedPeriod, thing: Thing, segment: number): IngredientVersion | null {
  const spans = thing.versions.map((span): SegmentRange & { readonly fact: IngredientVersion } => ({
    fact: span.fact,
    ...segmentsWithin(period.segments, span),
  }));
  return inSegment(spans, segment)?.fact ?? null;
}
