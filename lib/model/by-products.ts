import { nameKey } from '../core/name-key';
import { isNear } from '../core/near';
import { batchOutput, ONE_PORTION } from './batch-output';
import type { RecipeLine, RecipeVersion } from './facts';
import type { Issue } from './issue';
import { type BatchOutputs, batchMeasure, inBase, type Measure, type UnitReader } from './measure';
import type { RecipeSpan } from './recipe-graph';
import type { RecipeReading } from './recipe-piece';
import type { SegmentRange } from './segments';
import type { Thing } from './things';

/** A line that makes a thing beside what the recipe is for, and the segments in which it does. */
export interface Making extends SegmentRange {
  readonly maker: number;
  readonly line: RecipeLine;
}

/** By the thing that is made. */
export type Makings = ReadonlyMap<number, readonly Making[]>;

/** What a by-product is worth in a segment: the price of one base unit of it, or why that cannot be said. */
export type Credit =
  | { readonly price: number; readonly issue: null }
  | { readonly price: null; readonly issue: Issue | null };

export function makingsOf(spans: readonly (readonly RecipeSpan[])[]): Makings {
  const makings = new Map<number, Making[]>();
  spans.forEach((versions, maker) => {
    for (const { from, to, lines, children } of versions) {
      lines.forEach((line, index) => {
        if (line.byProductCredit === null) return;
        const made = children[index] as number;
        makings.set(made, [...(makings.get(made) ?? []), { maker, line, from, to }]);
      });
    }
  });
  return makings;
}

/** Whether a thing is made as a by-product in a segment. */
export function isByProduct(makings: Makings, node: number, segment: number): boolean {
  return (makings.get(node) ?? []).some(({ from, to }) => segment >= from && segment < to);
}

/**
 * Spans in which a thing that is made as a by-product has no lines of its own: it is never exploded into a batch, since it is worth
 * its credit and nothing else.
 */
export function withoutLinesOfByProducts(
  spans: readonly (readonly RecipeSpan[])[],
  makings: Makings,
): readonly (readonly RecipeSpan[])[] {
  if (makings.size === 0) return spans;
  return spans.map((versions, node) => {
    const made = makings.get(node);
    if (!made) return versions;
    const cuts = made.flatMap(({ from, to }) => [from, to]);
    return versions.flatMap((span) => {
      const inside = cuts.filter((cut) => cut > span.from && cut < span.to);
      const starts = [...new Set([span.from, ...inside])].sort((a, b) => a - b);
      return starts.map((from, index) => {
        const piece = { ...span, from, to: starts[index + 1] ?? span.to };
        return isByProduct(makings, node, from) ? { ...piece, lines: [], children: [], byProduct: true } : piece;
      });
    });
  });
}

/**
 * What one base unit of a by-product is worth in a segment: its credit / the base units in one unit of the line that makes it.
 * A typed 0 is a by-product without credit. Recipes that say different things on one day leave it unknown.
 */
export function creditIn(
  things: readonly Thing[],
  node: number,
  makings: readonly Making[],
  measure: Measure | null,
  segment: number,
  units: UnitReader,
): Credit {
  const inForce = makings.filter(({ from, to }) => segment >= from && segment < to);
  const prices = inForce.map(({ line }) => {
    const content = measure === null ? Number.NaN : inBase(measure, 1, line.unit, units);
    return typeof content === 'number' ? (line.byProductCredit ?? Number.NaN) / content : Number.NaN;
  });
  const [first = Number.NaN] = prices;
  if (prices.some(Number.isNaN)) return { price: null, issue: null }; // the recipe that makes it says why
  if (prices.every((price) => isNear(price, first))) return { price: first, issue: null };
  const recipes = [...new Set(inForce.map(({ maker }) => (things[maker] as Thing).name))]; // in the order of names
  return { price: null, issue: { code: 'credits-differ', about: (things[node] as Thing).name, facts: { recipes } } };
}

/** A by-product that has a recipe of its own, as it is read while it is made beside something else: without lines. */
export function readByProduct(
  thing: Thing,
  version: RecipeVersion,
  makings: readonly Making[],
  units: UnitReader,
): RecipeReading {
  const { measure, usable, issues } = asMade(thing, version, makings, units);
  return { amounts: [], measure, usable, issues };
}

/** Measured as its recipe states, or, where that states nothing, in the dimension in which it is made. */
function asMade(
  thing: Thing,
  version: RecipeVersion,
  makings: readonly Making[],
  units: UnitReader,
): Omit<RecipeReading, 'amounts'> {
  if (thing.kind !== 'component') {
    return { measure: batchMeasure('each', ONE_PORTION, thing.own), usable: 1, issues: [] };
  }
  const line = makings[0]?.line;
  if (version.yieldQuantity === null && line) {
    const unit = units(thing.own.get(nameKey(line.unit))?.unit ?? line.unit);
    if (unit === null) return { measure: null, usable: Number.NaN, issues: [] }; // the recipe that makes it says why
    const outputs: BatchOutputs = { g: null, ml: null, each: null, [unit.base]: 1 };
    return { measure: batchMeasure(unit.base, outputs, thing.own), usable: Number.NaN, issues: [] };
  }
  const { base, outputs, issue } = batchOutput(thing.name, version, () => ({ missing: [] }), units);
  if (base === null) return { measure: null, usable: Number.NaN, issues: [issue] };
  return { measure: batchMeasure(base, outputs, thing.own), usable: outputs[base] ?? Number.NaN, issues: [] };
}
