import { type Curve, contributionCurves } from './contribution-curves';
import type { PlaneDomain } from './plane-domain';
import { hasOwnLines, type PlaneFacts, type PlaneMark } from './plane-mark';
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
  /** Its own line of popularity, as an upright stroke at the mark's height; null where all dishes share one line. */
  readonly ownLine: OwnLine | null;
}

export interface OwnLine {
  readonly x: number;
  readonly top: number;
  readonly bottom: number;
  /** It runs through the region of a dish on the line, so that the hatching beyond it would not be understood without it. */
  readonly isNeeded: boolean;
}

const STROKE = { least: 12, over: 4 } as const;

/** Where every mark stands, how far its region reaches, and which part of that lies beyond a line. */
export function drawnMarks(facts: PlaneFacts, { x, y }: Scales, plot: Box): readonly DrawnMark[] {
  const { marks, margin } = facts;
  const isOwn = hasOwnLines(facts);
  return marks.map((mark) => {
    const at = { x: x(mark.share), y: y(mark.margin) };
    const { spread } = mark;
    const region = spread && {
      ...at,
      rx: HALF_AXIS * Math.abs(x(mark.share + spread.share) - at.x),
      ry: HALF_AXIS * Math.abs(y(mark.margin + spread.margin) - at.y),
    };
    return {
      mark,
      ...at,
      region,
      doubtPath: region && doubtPath(mark, region, margin, { x, y }, plot),
      ownLine: isOwn && mark.popularFrom !== null ? ownLine(mark, x(mark.popularFrom), at, region) : null,
    };
  });
}

function ownLine({ doubtful }: PlaneMark, x: number, at: { x: number; y: number }, region: Ellipse | null): OwnLine {
  const half = Math.max(STROKE.least, (region?.ry ?? 0) + STROKE.over);
  const isNeeded = doubtful && region !== null && Math.abs(x - at.x) < region.rx;
  return { x, top: at.y - half, bottom: at.y + half, isNeeded };
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
