import type { ClassName } from '@/lib/format/words/classes';

/**
 * Half-axes of a region in standard deviations over the resamples: the normal quantile of 0.9. So a region crosses a line just when
 * one resample in ten lands beyond it.
 */
export const HALF_AXIS = 1.2816;

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** An upright ellipse, in px. */
export interface Ellipse {
  readonly x: number;
  readonly y: number;
  readonly rx: number;
  readonly ry: number;
}

/** Where the two lines stand in the picture, in px: the upright one at x, the level one at y. */
export interface Crossing {
  readonly x: number;
  readonly y: number;
}

/** Whether a class lies on the popular side of the upright line and on the high side of the level one. */
export function sideOf(name: ClassName): { readonly popular: boolean; readonly high: boolean } {
  return { popular: name === 'star' || name === 'plowhorse', high: name === 'star' || name === 'puzzle' };
}

/**
 * The parts of the plot that are not the class's own quarter, as at most two boxes: everything beyond the upright line, and what is
 * beyond the level line on the class's own side of the upright one. y grows downward, so the high side is above.
 */
export function beyond(name: ClassName, lines: Crossing, plot: Box): readonly Box[] {
  const { popular, high } = sideOf(name);
  const right = plot.x + plot.width;
  const bottom = plot.y + plot.height;
  const upright = popular
    ? { x: plot.x, y: plot.y, width: lines.x - plot.x, height: plot.height }
    : { x: lines.x, y: plot.y, width: right - lines.x, height: plot.height };
  const own = popular ? { x: lines.x, width: right - lines.x } : { x: plot.x, width: lines.x - plot.x };
  const level = high
    ? { ...own, y: lines.y, height: bottom - lines.y }
    : { ...own, y: plot.y, height: lines.y - plot.y };
  return [upright, level].filter((box) => box.width > 0 && box.height > 0);
}

/** Whether any part of the ellipse lies in the box. */
export function meets(ellipse: Ellipse, box: Box): boolean {
  if (ellipse.rx <= 0 || ellipse.ry <= 0) return false;
  const x = Math.min(Math.max(ellipse.x, box.x), box.x + box.width) - ellipse.x;
  const y = Math.min(Math.max(ellipse.y, box.y), box.y + box.height) - ellipse.y;
  return (x / ellipse.rx) ** 2 + (y / ellipse.ry) ** 2 < 1;
}

/** A box as a path, so that several can clip one region. */
export function boxPath({ x, y, width, height }: Box): string {
  return `M${x} ${y}h${width}v${height}h${-width}Z`;
}
