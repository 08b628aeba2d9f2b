import { byText } from '@/lib/core/grouped';

/** Shapes of marks, one a section of the menu, in the order in which they are given out. */
export const MARK_SHAPES = ['circle', 'square', 'triangle', 'diamond', 'pentagon', 'cross', 'bar'] as const;

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
};

/** The outline of a mark about the point 0 0, about 11 px across: all shapes look equally heavy. */
export function markPath(shape: MarkShape): string {
  return PATHS[shape];
}

/**
 * Which shape stands for which section, by name, so that a section keeps its shape from month to month; dishes without one come last.
 * An eighth section starts over: its dishes still say in words where they belong.
 */
export function shapesOfSections(sections: Iterable<string | null>): ReadonlyMap<string | null, MarkShape> {
  const named = [...new Set(sections)].sort((a, b) =>
    a === null || b === null ? (a === b ? 0 : a === null ? 1 : -1) : byText(a, b),
  );
  return new Map(named.map((section, index) => [section, MARK_SHAPES[index % MARK_SHAPES.length] ?? 'circle']));
}
