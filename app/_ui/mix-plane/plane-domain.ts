import type { PlaneFacts } from './plane-mark';
import { HALF_AXIS } from './region';

/** What the axes span: shares from zero, margins as they lie. */
export interface PlaneDomain {
  readonly share: readonly [number, number];
  readonly margin: readonly [number, number];
}

const EDGE = 0.07;

/**
 * Spans that hold every mark with its region and both lines, with a little air. Where all margins are alike the span is opened to a
 * tenth of them, so that the marks stand in the middle and not on an edge.
 */
export function planeDomain({ marks, popularity, margin }: PlaneFacts): PlaneDomain {
  const shares = marks.map((mark) => mark.share + HALF_AXIS * (mark.spread?.share ?? 0));
  const margins = marks.flatMap((mark) => {
    const reach = HALF_AXIS * (mark.spread?.margin ?? 0);
    return [mark.margin - reach, mark.margin + reach];
  });
  if (popularity) shares.push(popularity.high);
  if (margin) margins.push(margin.value);
  const widest = shares.reduce((most, share) => Math.max(most, share), 0) || 1;
  const low = margins.reduce((least, value) => Math.min(least, value), Number.POSITIVE_INFINITY);
  const high = margins.reduce((most, value) => Math.max(most, value), Number.NEGATIVE_INFINITY);
  if (!Number.isFinite(low)) return { share: [0, widest], margin: [0, 1] };
  const leastSpan = 0.1 * Math.max(Math.abs(low), Math.abs(high)) || 1;
  const span = Math.max(high - low, leastSpan);
  const middle = (low + high) / 2;
  const reach = span * (0.5 + EDGE);
  return { share: [0, widest * (1 + EDGE)], margin: [middle - reach, middle + reach] };
}
