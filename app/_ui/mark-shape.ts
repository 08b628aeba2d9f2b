import { byText } from '@/lib/core/grouped';

/** Shapes of marks, one a section of the menu, in the order in which they are given out. */
export const MARK_SHAPES = [
  'circle',
  'square',
  'triangle',
  'diamond',
  'pentagon',
  'cross',
  'bar',
  'wedge',
  'saltire',
  'post',
  'hourglass',
  'dome',
  'chevron',
  'bow',
] as const;

export type MarkShape = (typeof MARK_SHAPES)[number];

/** Corners on a circle around the middle, the first one at the top. */
function polygon(corners: number, radius: number): string {
  const points = Array.from({ length: corners }, (_, corner) => {
    const turn = (corner / corners) * 2 * Math.PI - Math.PI / 2;
    return `${(radius * Math.cos(turn)).toFixed(2)} ${(radius * Math.sin(turn)).toFixed(2)}`;
  });
  return `M${points.join('L')}Z`;
}

function box(halfWidth: number, halfHeight: number): string {
  return `M${-halfWidth} ${-halfHeight}H${halfWidth}V${halfHeight}H${-halfWidth}Z`;
}

const PATHS: Readonly<Record<MarkShape, string>> = {
  circle: 'M5.5 0A5.5 5.5 0 1 1 -5.5 0A5.5 5.5 0 1 1 5.5 0Z',
  square: box(5, 5),
  triangle: polygon(3, 6.8),
  diamond: polygon(4, 6.8),
  pentagon: polygon(5, 6.2),
  cross: 'M-2 -6H2V-2H6V2H2V6H-2V2H-6V-2H-2Z',
  bar: box(7, 2.6),
  wedge: 'M-5.9 -3.4H5.9L0 6.8Z',
  saltire: 'M-5.7 -2.8L-2.8 -5.7L0 -2.8L2.8 -5.7L5.7 -2.8L2.8 0L5.7 2.8L2.8 5.7L0 2.8L-2.8 5.7L-5.7 2.8L-2.8 0Z',
  post: box(2.6, 7),
  hourglass: 'M-5.5 -6.2H5.5L1 0L5.5 6.2H-5.5L-1 0Z',
  dome: 'M-6.8 3.6A6.8 6.8 0 0 1 6.8 3.6Z',
  chevron: 'M0 -5.8L6.6 0.8V6L0 -0.4L-6.6 6V0.8Z',
  bow: 'M-6.2 -5.5V5.5L0 1L6.2 5.5V-5.5L0 -1Z',
};

/** The outline of a mark about the point 0 0, about 11 px across: all shapes look equally heavy. */
export function markPath(shape: MarkShape): string {
  return PATHS[shape];
}

/**
 * Which shape stands for which section, by name, so that a section keeps its shape from month to month; dishes without one come last.
 * A fifteenth section starts over: its dishes still say in words where they belong.
 */
export function shapesOfSections(sections: Iterable<string | null>): ReadonlyMap<string | null, MarkShape> {
  const named = [...new Set(sections)].sort((a, b) =>
    a === null || b === null ? (a === b ? 0 : a === null ? 1 : -1) : byText(a, b),
  );
  return new Map(named.map((section, index) => [section, MARK_SHAPES[index % MARK_SHAPES.length] ?? 'circle']));
}
