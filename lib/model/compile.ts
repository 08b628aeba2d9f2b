import type { Day } from '../core/days';
import { loopOf } from '../core/graph-order';
import { creditIn, isByProduct, type Makings, makingsOf, readByProduct, withoutLinesOfByProducts } from './by-products';
import { type FlatLines, lineList } from './flat-lines';
import { withoutPrice, withoutRecipe } from './gaps';
import type { Issue } from './issue';
import type { IssueList } from './issue-list';
import { type Known, nothingKnown, place } from './known';
import { ingredientMeasure, type Measure, type UnitReader } from './measure';
import { changesWithin, extend, type MeasureSpan } from './measure-spans';
import { neededSegments, offeredSegments } from './needed';
import { basePiece, packingPiece } from './packing-piece';
import { readPart } from './part-things';
import { type Packings, packingNodes, type RecipeSpan, recipeSpans, runsOf } from './recipe-graph';
import { type Child, type RecipePiece, type RecipeReading, readRecipe } from './recipe-piece';
import { inSegment, type Segments, segmentsWithin } from './segments';
import type { Scope, Thing } from './things';

/** The recipes of a period as one flat list, with what is and what is not known. */
export interface Compiled extends Known {
  readonly lines: FlatLines;
  /** By node. What holds only in one channel stands in the recipes of the packing for it. */
  readonly recipes: readonly (readonly RecipePiece[])[];
  readonly measures: readonly (readonly MeasureSpan[])[];
  readonly packings: Packings;
  readonly makings: Makings;
}

/** A recipe that leads back to itself: nothing of it can be worked out. */
function unread({ lines }: RecipeSpan): RecipeReading {
  return { amounts: lines.map(() => Number.NaN), measure: null, usable: Number.NaN, issues: [] };
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
  const written = recipeSpans(things, segments);
  const makings = makingsOf(written);
  const spans = withoutLinesOfByProducts(written, makings);
  const packings = packingNodes(things);
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

  /** What a by-product is worth in the segments in which it is made; nothing else has a say in its price then. */
  const credit = (node: number, measure: Measure | null, from: number, to: number): void => {
    for (let segment = from; segment < to; segment++) {
      if (!isByProduct(makings, node, segment)) continue;
      const { price, issue } = creditIn(things, node, makings.get(node) ?? [], measure, segment, units);
      if (issue) raise(issue, node, segment, segment + 1);
      const cell = node * segments.count + segment;
      known.complete[cell] = price === null ? 0 : 1;
      known.credits[cell] = price ?? 0;
    }
  };

  const buy = (thing: Thing, node: number): void => {
    for (const version of thing.versions) {
      const measure = ingredientMeasure(version.fact, thing.own);
      extend(measures[node] ?? [], { ...segmentsWithin(segments, version), measure });
    }
    for (const price of thing.prices) {
      const { from, to } = segmentsWithin(segments, price);
      if (price.fact.issue === null) known.complete.fill(1, node * segments.count + from, node * segments.count + to);
      else {
        const issue = withoutPrice(price.fact.issue, price, thing.prices, segments);
        for (const each of boughtIn(node, from, to)) raise(issue, node, each, each + 1);
      }
    }
    for (const { measure, from, to } of measures[node] ?? []) credit(node, measure, from, to);
  };

  const boughtIn = (node: number, from: number, to: number): readonly number[] =>
    Array.from({ length: to - from }, (_, index) => from + index).filter((each) => !isByProduct(makings, node, each));

  const childAt = (node: number, segment: number): Child => {
    const thing = things[node] as Thing;
    const measured = inSegment(measures[node] ?? [], segment);
    return { thing, measure: measured?.measure ?? null, inForce: measured !== null };
  };

  const read = (thing: Thing, node: number, span: RecipeSpan, from: number): RecipeReading => {
    const children = span.children.map((child) => childAt(child, from));
    const [whole] = children;
    if (span.byProduct) return readByProduct(thing, span.version, makings.get(node) ?? [], units);
    if (thing.part && whole) return readPart(thing, thing.part, whole, units);
    return readRecipe(thing, span, children, units);
  };

  const make = (thing: Thing, node: number, span: RecipeSpan, knotted: boolean): void => {
    const starts = changesWithin(span, measures);
    for (const [index, from] of starts.entries()) {
      const to = starts[index + 1] ?? span.to;
      const reading = knotted ? unread(span) : read(thing, node, span, from);
      for (const issue of reading.issues) raise(issue, node, from, to);
      const { amounts, measure, usable } = reading;
      const piece = { ...span, from, to, amounts, measure, usable };
      const base = basePiece(piece);
      recipes[node]?.push(base);
      extend(measures[node] ?? [], { from, to, measure });
      if (span.byProduct) credit(node, measure, from, to);
      else place(thing, node, base, known, list, segments.count);
      for (const [channel, packing] of packings.get(node) ?? []) {
        const more = packingPiece(piece, channel, packings);
        recipes[packing]?.push(more);
        place(things[packing] as Thing, packing, more, known, list, segments.count);
      }
    }
  };

  things.forEach((thing, node) => {
    if (thing.kind === 'ingredient' && thing.part === null) buy(thing, node);
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
      if (!inForce) raise(withoutRecipe(thing), node, segment, segment + 1, offered);
      else if (measure?.per.each === null) {
        raise({ code: 'no-portion', about, facts: { unit: measure.base } }, node, segment, segment + 1, offered);
      }
    }
  });
  return { lines: list.lines(), recipes, measures, packings, makings, ...known };
}
