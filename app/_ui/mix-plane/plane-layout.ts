import { type Curve, contributionCurves } from './contribution-curves';
import type { PlaneDomain } from './plane-domain';
import type { PlaneFacts, PlaneMark } from './plane-mark';
import { type Box, beyond, boxPath, type Ellipse, HALF_AXIS, meets } from './region';

/** How the chart turns a share and a margin into px. */
export interface Scales {
  readonly x: (share: number) => number;
  readonly y: (margin: number) => number;
}

export interface DrawnMark {
  readonly mark: PlaneMark;
  readonly x: number;
  readonly y: number;
  readonly region: Ellipse | null;
  /** What of the region is hatched: the path of all that is not the dish's own class; null where nothing is. */
  readonly doubtPath: string | null;
}

/** Where every mark stands, how far its region reaches, and which part of that lies beyond a line. */
export function drawnMarks({ marks, margin }: PlaneFacts, { x, y }: Scales, plot: Box): readonly DrawnMark[] {
  return marks.map((mark) => {
    const at = { x: x(mark.share), y: y(mark.margin) };
    const { spread } = mark;
    const region = spread && {
      ...at,
      rx: HALF_AXIS * Math.abs(x(mark.share + spread.share) - at.x),
      ry: HALF_AXIS * Math.abs(y(mark.margin + spread.margin) - at.y),
    };
    return { mark, ...at, region, doubtPath: region && doubtPath(mark, region, margin, { x, y }, plot) };
  });
}

function doubtPath(
  mark: PlaneMark,
  region: Ellipse,
  margin: PlaneFacts['margin'],
  { x, y }: Scales,
  plot: Box,
): string | null {
  if (!mark.doubtful || mark.class === null || mark.popularFrom === null || margin === null) return null;
  const lines = { x: x(mark.popularFrom), y: y(margin.value) };
  const parts = beyond(mark.class, lines, plot).filter((box) => meets(region, box));
  return parts.length === 0 ? null : parts.map(boxPath).join('');
}

export interface DrawnCurve {
  readonly level: number;
  readonly path: string;
  /** Where the curve leaves the plot at its top. */
  readonly x: number;
}

/** Curves of equal contribution as paths, with the place at the top of the plot where each is named. */
export function drawnCurves(domain: PlaneDomain, sold: number, { x, y }: Scales, count: number): readonly DrawnCurve[] {
  return contributionCurves(domain, sold, count).map(({ level, points }: Curve) => ({
    level,
    path: `M${points.map(([share, margin]) => `${x(share).toFixed(1)} ${y(margin).toFixed(1)}`).join('L')}`,
    x: x(points[0]?.[0] ?? 0),
  }));
}

/**
 * The curves whose names fit above the plot, from the right: where two names would touch, the lower sum goes without one. A name is
 * about `pxPerLetter` wide for each letter.
 */
export function namedCurves(
  curves: readonly DrawnCurve[],
  nameOf: (level: number) => string,
  plot: Box,
  pxPerLetter = 6.4,
): readonly (DrawnCurve & { readonly name: string })[] {
  let free = plot.x + plot.width + 4;
  return [...curves].reverse().flatMap((curve) => {
    const name = nameOf(curve.level);
    const half = (name.length * pxPerLetter) / 2;
    if (curve.x + half > free || curve.x - half < plot.x) return [];
    free = curve.x - half - 10;
    return [{ ...curve, name }];
  });
}
