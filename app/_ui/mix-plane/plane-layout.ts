import { type Curve, contributionCurves } from './contribution-curves';
import { overlap, type Surroundings } from './label-clashes';
import type { Label, Place } from './label-places';
import { placeLabels } from './place-labels';
import type { PlaneDomain } from './plane-domain';
import type { PlaneFacts, PlaneMark } from './plane-mark';
import type { PlaneSize } from './plane-size';
import { type Box, beyond, boxPath, type Ellipse, HALF_AXIS, meets } from './region';

/** How the chart turns a share and a margin into px. */
export interface Scales {
  readonly x: (share: number) => number;
  readonly y: (margin: number) => number;
}

export type MeasuredText = (text: string, bold: boolean) => number;

export interface DrawnMark {
  readonly mark: PlaneMark;
  readonly x: number;
  readonly y: number;
  readonly region: Ellipse | null;
  /** What of the region is hatched: the path of all that is not the dish's own class; null where nothing is. */
  readonly doubtPath: string | null;
}

const LINE_HEIGHT = 16;

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

export interface DrawnWord {
  readonly key: string;
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly kind: 'class' | 'line';
}

const CLASS_PX = 17;

/** The words that stand in the plot: the classes in the corners, and the name of the upright line where it covers no mark. */
export function plotWords(
  { popularity, margin }: PlaneFacts,
  marks: readonly DrawnMark[],
  { x }: Scales,
  plot: Box,
  measured: MeasuredText,
): readonly DrawnWord[] {
  if (!popularity || !margin) return [];
  const right = plot.x + plot.width;
  const bottom = plot.y + plot.height;
  const corner = (text: string, at: number, y: number, anchor: 'start' | 'end'): DrawnWord => ({
    key: text,
    text,
    x: at,
    y,
    anchor,
    kind: 'class',
  });
  const corners = [
    corner('puzzle', plot.x + 4, plot.y + CLASS_PX, 'start'),
    corner('star', right, plot.y + CLASS_PX, 'end'),
    corner('dog', plot.x + 4, bottom - 6, 'start'),
    corner('plowhorse', right, bottom - 6, 'end'),
  ];
  const heights = [bottom - 6, bottom - 28, plot.y + 14, plot.y + 36, bottom - 50, plot.y + 58];
  const places = heights.flatMap((y): DrawnWord[] => [
    { key: 'popular', text: popularity.words, x: x(popularity.high) + 6, y, anchor: 'start', kind: 'line' },
    { key: 'popular', text: popularity.words, x: x(popularity.low) - 6, y, anchor: 'end', kind: 'line' },
  ]);
  const taken = [...corners.map((word) => wordBox(word, measured)), ...marks.map(markBox)];
  const isFree = (word: DrawnWord) => {
    const box = wordBox(word, measured);
    return box.x >= plot.x && box.x + box.width <= right && !taken.some((other) => overlap(box, other, 4));
  };
  const popular = places.find(isFree) ?? places[0];
  return popular ? [popular, ...corners] : corners;
}

function markBox({ x, y }: DrawnMark): Box {
  return { x: x - 8, y: y - 8, width: 16, height: 16 };
}

function wordBox(word: DrawnWord, measured: MeasuredText): Box {
  const width = word.kind === 'class' ? word.text.length * 8.4 : measured(word.text, false);
  const x = word.anchor === 'end' ? word.x - width : word.x;
  return { x, y: word.y - 14, width, height: 19 };
}

/** A place for each mark's label, or null where there is no room for it. */
export function placedLabels(
  drawn: readonly DrawnMark[],
  facts: PlaneFacts,
  { x, y }: Scales,
  plot: Box,
  words: readonly DrawnWord[],
  size: PlaneSize,
  measured: MeasuredText,
): readonly (Place | null)[] {
  const labels = drawn.map(
    ({ mark, x: markX, y: markY, region }): Label => ({
      x: markX,
      y: markY,
      width: measured(mark.label, mark.doubtful) + 2,
      height: LINE_HEIGHT,
      first: mark.doubtful,
      clearX: mark.doubtful && region ? region.rx : 0,
      clearY: mark.doubtful && region ? region.ry : 0,
    }),
  );
  const { popularity, margin } = facts;
  const marginWords: Box[] =
    margin && size.namesMargin
      ? [{ x: plot.x + plot.width + 6, y: y(margin.value) - 15, width: size.right, height: 34 }]
      : [];
  const around: Surroundings = {
    bounds: { ...plot, width: size.width - plot.x - 2 },
    marks: drawn,
    words: [...words.map((word) => wordBox(word, measured)), ...marginWords],
    uprights: popularity ? [...new Set([popularity.low, popularity.high])].map(x) : [],
    levels: margin ? [y(margin.value)] : [],
    regions: drawn.flatMap(({ mark, region }) => (mark.doubtful && region ? [region] : [])),
  };
  return placeLabels(labels, around);
}

export interface DrawnCurve {
  readonly level: number;
  readonly path: string;
  /** Where the curve leaves the plot at its top. */
  readonly x: number;
}

/** Curves of equal contribution as paths; those whose names would touch keep the curve and lose the name at the caller's choice. */
export function drawnCurves(domain: PlaneDomain, sold: number, { x, y }: Scales, count: number): readonly DrawnCurve[] {
  return contributionCurves(domain, sold, count).map(({ level, points }: Curve) => ({
    level,
    path: `M${points.map(([share, margin]) => `${x(share).toFixed(1)} ${y(margin).toFixed(1)}`).join('L')}`,
    x: x(points[0]?.[0] ?? 0),
  }));
}
