import { niceStep } from './nice-ticks';
import type { PlaneDomain } from './plane-domain';

/** A curve of equal contribution: every point on it leaves the same sum in the period. */
export interface Curve {
  readonly level: number;
  /** Points (share, margin) from the top of the plot to its right or lower edge. */
  readonly points: readonly (readonly [number, number])[];
}

const STEPS = 48;

/**
 * Curves at round sums, spaced evenly where they leave the plot at its top: margin = level / (sold x share).
 *
 * `count` is about how many there shall be. None where nothing was sold or no margin is positive.
 */
export function contributionCurves({ share, margin }: PlaneDomain, sold: number, count: number): readonly Curve[] {
  const widest = share[1];
  const [low, high] = margin;
  const most = sold * widest * high;
  if (!(most > 0)) return [];
  const step = niceStep(most, count);
  const levels = Array.from({ length: Math.floor(most / step) }, (_, index) => (index + 1) * step);
  const half = step / 2;
  const all = most / step > 2 ? [half, ...levels] : levels;
  return all.map((level) => ({ level, points: curve(level, sold, widest, Math.max(low, high / 1000), high) }));
}

function curve(level: number, sold: number, widest: number, low: number, high: number): [number, number][] {
  const from = level / (sold * high);
  const to = Math.min(widest, level / (sold * low));
  return Array.from({ length: STEPS + 1 }, (_, index): [number, number] => {
    const share = from * (to / from) ** (index / STEPS);
    return [share, level / (sold * share)];
  });
}
