import type { Place, Segment } from './label-places';
import { type Box, type Ellipse, meets } from './region';

/** What labels must keep clear of, in px. */
export interface Surroundings {
  readonly bounds: Box;
  /** Radius about each mark that should stay free. */
  readonly marks: readonly { readonly x: number; readonly y: number }[];
  /** Other words in the picture. */
  readonly words: readonly Box[];
  readonly uprights: readonly number[];
  readonly levels: readonly number[];
  /** Regions of dishes on the line, whose hatching must be seen. */
  readonly regions: readonly Ellipse[];
}

const MARK_RADIUS = 8;
const COST = { mark: 90, word: 120, line: 12, region: 12, leaderOverMark: 45 };

/** How bad a place is by itself: what it covers of marks, words, lines and regions. */
export function coverCost(place: Place, own: number, around: Surroundings): number {
  const { box, leader } = place;
  let cost = place.dislike;
  around.marks.forEach((mark, index) => {
    if (index !== own && nearBox(mark, box) < MARK_RADIUS) cost += COST.mark;
    if (leader && index !== own && nearSegment(mark, leader) < MARK_RADIUS) cost += COST.leaderOverMark;
  });
  for (const word of around.words) if (overlap(box, word, 1)) cost += COST.word;
  for (const x of around.uprights) if (x > box.x - 1 && x < box.x + box.width + 1) cost += COST.line;
  for (const y of around.levels) if (y > box.y + 1 && y < box.y + box.height - 1) cost += COST.line;
  for (const region of around.regions) if (meets(region, box)) cost += COST.region;
  return cost;
}

/** How bad two places are together: labels over one another never stand, leaders over labels or leaders hardly. */
export function clashCost(a: Place, b: Place): number {
  let cost = overlap(a.box, b.box, 2) ? 400 : overlap(a.box, b.box, 6) ? 3 : 0;
  if (a.leader && crossesBox(a.leader, b.box)) cost += 60;
  if (b.leader && crossesBox(b.leader, a.box)) cost += 60;
  if (a.leader && b.leader && crosses(a.leader, b.leader)) cost += 40;
  return cost;
}

export function overlap(a: Box, b: Box, gap: number): boolean {
  return (
    a.x < b.x + b.width + gap &&
    b.x < a.x + a.width + gap &&
    a.y < b.y + b.height + gap / 2 &&
    b.y < a.y + a.height + gap / 2
  );
}

function nearBox(point: { x: number; y: number }, box: Box): number {
  const x = Math.min(Math.max(point.x, box.x), box.x + box.width);
  const y = Math.min(Math.max(point.y, box.y), box.y + box.height);
  return Math.hypot(point.x - x, point.y - y);
}

function nearSegment(point: { x: number; y: number }, { x1, y1, x2, y2 }: Segment): number {
  const length = (x2 - x1) ** 2 + (y2 - y1) ** 2;
  const along = length === 0 ? 0 : ((point.x - x1) * (x2 - x1) + (point.y - y1) * (y2 - y1)) / length;
  const t = Math.min(Math.max(along, 0), 1);
  return Math.hypot(point.x - x1 - t * (x2 - x1), point.y - y1 - t * (y2 - y1));
}

function turn(ax: number, ay: number, bx: number, by: number, cx: number, cy: number): number {
  return (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
}

/** Whether two segments cross, their ends included. */
export function crosses(a: Segment, b: Segment): boolean {
  const first = turn(a.x1, a.y1, a.x2, a.y2, b.x1, b.y1) * turn(a.x1, a.y1, a.x2, a.y2, b.x2, b.y2);
  const second = turn(b.x1, b.y1, b.x2, b.y2, a.x1, a.y1) * turn(b.x1, b.y1, b.x2, b.y2, a.x2, a.y2);
  return first <= 0 && second <= 0 && !(first === 0 && second === 0);
}

/** Whether a segment touches a box. */
export function crossesBox(segment: Segment, box: Box): boolean {
  const right = box.x + box.width;
  const bottom = box.y + box.height;
  const within = (x: number, y: number) => x >= box.x && x <= right && y >= box.y && y <= bottom;
  if (within(segment.x1, segment.y1) || within(segment.x2, segment.y2)) return true;
  const corners: readonly Segment[] = [
    { x1: box.x, y1: box.y, x2: right, y2: bottom },
    { x1: box.x, y1: bottom, x2: right, y2: box.y },
  ];
  return corners.some((diagonal) => crosses(segment, diagonal));
}
