import { type Measure, sameMeasure } from './measure';
import type { RecipeSpan } from './recipe-graph';
import type { SegmentRange } from './segments';

/** A measure and the segments in which it holds; null where a batch is not measured. */
export interface MeasureSpan extends SegmentRange {
  readonly measure: Measure | null;
}

/** Adds a span to those before it, as part of the last one where nothing changes between them. */
export function extend(spans: MeasureSpan[], span: MeasureSpan): void {
  const last = spans.at(-1);
  if (last?.to === span.from && sameMeasure(last.measure, span.measure))
    spans[spans.length - 1] = { ...last, to: span.to };
  else spans.push(span);
}

/** The segments at which a recipe has to be read anew: its own first, and each in which a child begins to be measured otherwise. */
export function changesWithin(
  { from, to, children }: RecipeSpan,
  measures: readonly (readonly MeasureSpan[])[],
): readonly number[] {
  const starts = new Set([from]);
  for (const child of children) {
    for (const span of measures[child] ?? []) {
      if (span.from > from && span.from < to) starts.add(span.from);
      if (span.to > from && span.to < to) starts.add(span.to);
    }
  }
  return [...starts].sort((a, b) => a - b);
}
