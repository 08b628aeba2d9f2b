import type { RecipeSpan, Run } from './recipe-graph';
import { type Segments, segmentOf, segmentsWithin } from './segments';
import type { Thing } from './things';

/** 1 where a thing is itself on the menu or sold in a segment, or given to every guest: entry node * segments + segment. */
export function offeredSegments(things: readonly Thing[], segments: Segments): Uint8Array {
  const { count } = segments;
  const offered = new Uint8Array(things.length * count);
  things.forEach((thing, node) => {
    if (thing.kind === 'extra') {
      for (const span of thing.recipes) {
        const { from, to } = segmentsWithin(segments, span);
        offered.fill(1, node * count + from, node * count + to);
      }
    }
    for (const { day } of thing.sales) offered[node * count + segmentOf(segments, day)] = 1;
    for (const { prices } of thing.menu) {
      for (const span of prices) {
        if (span.fact.price === null) continue;
        const first = segmentOf(segments, span.from);
        const last = segmentOf(segments, (span.to - 1) as typeof span.to);
        offered.fill(1, node * count + first, node * count + last + 1);
      }
    }
  });
  return offered;
}

/**
 * 1 where a thing is needed for what the period offers: itself on the menu or sold, or used by a recipe in force that is needed.
 * Parents first, so that one walk reaches everything; the members of a knot need each other.
 */
export function neededSegments(
  offered: Uint8Array,
  runs: readonly Run[],
  spans: readonly (readonly RecipeSpan[])[],
  segments: number,
): Uint8Array {
  const needed = offered.slice();
  for (const run of runs) {
    const knotOf = new Map(run.knots.flatMap((knot) => knot.map((node) => [node, knot] as const)));
    const shareKnot = (node: number): void => {
      for (const member of knotOf.get(node) ?? []) spread(needed, member, node, run.from, run.to, segments);
    };
    for (const node of run.order.toReversed()) {
      shareKnot(node);
      for (const span of spans[node] ?? []) {
        const from = Math.max(span.from, run.from);
        const to = Math.min(span.to, run.to);
        for (const child of span.children) spread(needed, node, child, from, to, segments);
      }
    }
  }
  return needed;
}

function spread(needed: Uint8Array, above: number, below: number, from: number, to: number, segments: number): void {
  for (let segment = from; segment < to; segment++) {
    if (needed[above * segments + segment]) needed[below * segments + segment] = 1;
  }
}
