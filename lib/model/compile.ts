import type { Day } from '../core/days';
import { loopOf } from '../core/graph-order';
import { type FlatLines, lineList } from './flat-lines';
import type { Issue } from './issue';
import type { IssueList } from './issue-list';
import { type Known, nothingKnown, place } from './known';
import { ingredientMeasure, type UnitReader } from './measure';
import { changesWithin, extend, type MeasureSpan } from './measure-spans';
import { neededSegments, offeredSegments } from './needed';
import { type RecipeSpan, recipeSpans, runsOf } from './recipe-graph';
import { type Child, type RecipePiece, readRecipe } from './recipe-piece';
import { inSegment, type SegmentRange, type Segments, segmentsWithin } from './segments';
import type { Scope, Thing } from './things';

/** The recipes of a period as one flat list, with what is and what is not known. */
export interface Compiled extends Known {
  readonly lines: FlatLines;
  /** By node. */
  readonly recipes: readonly (readonly RecipePiece[])[];
  readonly measures: readonly (readonly MeasureSpan[])[];
}

/**
 * Turns recipes into flat lines, children first, and says of every thing and segment whether its cost is known.
 * Issues are raised for what the menu and the sales of the period need, on the first day on which they need it; where the scope is
 * everything, for every recipe in force.
 */
export function compile(
  things: readonly Thing[],
  segments: Segments,
  units: UnitReader,
  found: IssueList,
  scope: Scope,
): Compiled {
  const spans = recipeSpans(things, segments);
  const runs = runsOf(spans, segments.count);
  const offered = offeredSegments(things, segments);
  const wanted = scope === 'everything' ? new Uint8Array(offered.length).fill(1) : offered;
  const needed = neededSegments(wanted, runs, spans, segments.count);
  const known = nothingKnown(things.length, segments.count);
  const list = lineList();
  const recipes = things.map((): RecipePiece[] => []);
  const measures = things.map((): MeasureSpan[] => []);

  const raise = (issue: Issue, node: number, from: number, to: number, where = needed): void => {
    const first = where.subarray(node * segments.count + from, node * segments.count + to).indexOf(1);
    if (first !== -1) found.add({ ...issue, day: segments.cuts[from + first] as Day });
  };

  const buy = (thing: Thing, node: number): void => {
    for (const version of thing.versions) {
      const measure = ingredientMeasure(version.fact, thing.own);
      extend(measures[node] ?? [], { ...segmentsWithin(segments, version), measure });
    }
    for (const price of thing.prices) {
      const { from, to } = segmentsWithin(segments, price);
      if (price.fact.issue) raise(price.fact.issue, node, from, to);
      else known.complete.fill(1, node * segments.count + from, node * segments.count + to);
    }
  };

  const childAt = (node: number, segment: number): Child => {
    const thing = things[node] as Thing;
    const stated = thing.kind === 'ingredient' ? measures[node] : spans[node];
    return {
      thing,
      measure: inSegment(measures[node] ?? [], segment)?.measure ?? null,
      inForce: inSegment<SegmentRange>(stated ?? [], segment) !== null,
    };
  };

  const make = (thing: Thing, node: number, span: RecipeSpan, knotted: boolean): void => {
    const starts = changesWithin(span, measures);
    for (const [index, from] of starts.entries()) {
      const to = starts[index + 1] ?? span.to;
      const children = span.children.map((child) => childAt(child, from));
      const reading = readRecipe(thing, span, children, units);
      const nothing = { amounts: span.lines.map(() => Number.NaN), measure: null, usable: Number.NaN };
      const { amounts, measure, usable } = knotted ? nothing : reading;
      if (!knotted) for (const issue of reading.issues) raise(issue, node, from, to);
      const piece = { ...span, from, to, amounts, measure, usable };
      recipes[node]?.push(piece);
      extend(measures[node] ?? [], { from, to, measure });
      place(thing, node, piece, known, list, segments.count);
    }
  };

  things.forEach((thing, node) => {
    if (thing.kind === 'ingredient') buy(thing, node);
  });
  for (const run of runs) {
    for (const knot of run.knots) {
      const loop = loopOf(run.graph, knot).map((node) => (things[node] as Thing).name);
      raise({ code: 'cycle', about: loop[0] ?? '', facts: { loop } }, knot[0] as number, run.from, run.to);
    }
    const knotted = new Set(run.knots.flat());
    for (const node of run.order) {
      for (const span of spans[node] ?? []) {
        const from = Math.max(span.from, run.from);
        const to = Math.min(span.to, run.to);
        if (from < to) make(things[node] as Thing, node, { ...span, from, to }, knotted.has(node));
      }
    }
  }
  things.forEach((thing, node) => {
    for (let segment = 0; segment < segments.count; segment++) {
      if (!offered[node * segments.count + segment]) continue;
      const { measure, inForce } = childAt(node, segment);
      const about = thing.name;
      if (!inForce) raise({ code: 'no-recipe', about, facts: {} }, node, segment, segment + 1, offered);
      else if (measure?.per.each === null) {
        raise({ code: 'no-portion', about, facts: { unit: measure.base } }, node, segment, segment + 1, offered);
      }
    }
  });
  return { lines: list.lines(), recipes, measures, ...known };
}
