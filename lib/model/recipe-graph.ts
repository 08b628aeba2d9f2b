import { childrenFirst, type Graph, type GraphOrder } from '../core/graph-order';
import { ascending } from '../core/grouped';
import type { ItemId, RecipeLine, RecipeVersion } from './facts';
import { partKey } from './part-things';
import { type SegmentRange, type Segments, segmentsWithin } from './segments';
import type { Thing } from './things';

/** A version of a recipe and the segments in which it is in force. */
export interface RecipeSpan extends SegmentRange {
  readonly version: RecipeVersion;
  /** Its lines in the order in which they were written, and the node that each one uses. */
  readonly lines: readonly RecipeLine[];
  readonly children: readonly number[];
  /** Made as a by-product in these segments: worth its credit, so that it has no lines. */
  readonly byProduct: boolean;
}

/** Some segments on which the recipes can be sorted children first, and that order. */
export interface Run extends GraphOrder, SegmentRange {
  readonly graph: Graph;
}

export function recipeSpans(things: readonly Thing[], segments: Segments): readonly (readonly RecipeSpan[])[] {
  const nodeOf = itemNodes(things);
  const partOf = new Map(things.flatMap(({ id, part }, node) => (part ? [[partKey(id, part.name), node]] : [])));
  return things.map(({ recipes }) =>
    recipes.map((span) => {
      const lines = ascending(span.fact.lines, (a, b) => a.position - b.position);
      const children = lines.map((line) => {
        const node = nodeOf.get(line.item);
        if (node === undefined) throw new RangeError(`a line asks for item ${line.item}, which is not among the facts`);
        // a part that nobody has stated leads to the whole, where reading the line says so
        return line.part === null ? node : (partOf.get(partKey(line.item, line.part)) ?? node);
      });
      return { version: span.fact, lines, children, byProduct: false, ...segmentsWithin(segments, span) };
    }),
  );
}

/** The node of each item; parts and packings are found by what they belong to. */
export function itemNodes(things: readonly Thing[]): ReadonlyMap<ItemId, number> {
  const nodes = new Map<ItemId, number>();
  things.forEach(({ id, part, channel }, node) => {
    if (part === null && channel === null) nodes.set(id, node);
  });
  return nodes;
}

/** The nodes of what things take more in a channel: by node of the thing, then by channel. */
export type Packings = ReadonlyMap<number, ReadonlyMap<string, number>>;

export function packingNodes(things: readonly Thing[]): Packings {
  const nodeOf = itemNodes(things);
  const packings = new Map<number, Map<string, number>>();
  things.forEach(({ id, channel }, node) => {
    const item = nodeOf.get(id);
    if (channel === null || item === undefined) return;
    packings.set(item, (packings.get(item) ?? new Map<string, number>()).set(channel, node));
  });
  return packings;
}

/**
 * The segments as runs that can each be sorted. One run as a rule: the recipes of all days together have no cycle. Where they have
 * one (a used b in spring, b uses a in autumn), each run of segments without a change of recipe is sorted by itself; a knot that
 * is left then is a cycle on a single day.
 */
export function runsOf(spans: readonly (readonly RecipeSpan[])[], segments: number): readonly Run[] {
  const whole = runOf(spans, 0, segments);
  if (whole.knots.length === 0) return [whole];
  const changes = new Set(spans.flatMap((each) => each.flatMap(({ from, to }) => [from, to])));
  const starts = [...changes].filter((start) => start > 0 && start < segments).sort((a, b) => a - b);
  return [0, ...starts].map((from, index) => runOf(spans, from, starts[index] ?? segments));
}

function runOf(spans: readonly (readonly RecipeSpan[])[], from: number, to: number): Run {
  const starts = new Int32Array(spans.length + 1);
  const children: number[] = [];
  spans.forEach((versions, node) => {
    for (const span of versions) {
      if (span.from >= to || span.to <= from) continue;
      children.push(...span.children);
    }
    starts[node + 1] = children.length;
  });
  const graph: Graph = { starts, children: Int32Array.from(children) };
  return { from, to, graph, ...childrenFirst(graph) };
}
