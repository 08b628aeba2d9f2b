export type Direction = 'left' | 'right' | 'up' | 'down';

export interface Spot {
  readonly x: number;
  readonly y: number;
}

const AHEAD: Readonly<Record<Direction, readonly [number, number]>> = {
  left: [-1, 0],
  right: [1, 0],
  up: [0, -1],
  down: [0, 1],
};

/** Going sideways counts double, so that an arrow goes where it points. */
const ASIDE = 2;

/**
 * The index of the nearest mark in a direction, or null where there is none. Marks within 45 degrees go before those further aside.
 * Marks that lie on one another are stepped through in their order: forward with right and down, back with left and up.
 */
export function nearestMark(spots: readonly Spot[], from: number, direction: Direction): number | null {
  const start = spots[from];
  if (!start) return null;
  const [ahead, below] = AHEAD[direction];
  const forward = direction === 'right' || direction === 'down';
  let nearest: number | null = null;
  let least = Number.POSITIVE_INFINITY;
  spots.forEach((spot, index) => {
    if (index === from) return;
    const along = (spot.x - start.x) * ahead + (spot.y - start.y) * below;
    const aside = Math.abs((spot.x - start.x) * below) + Math.abs((spot.y - start.y) * ahead);
    const onTop = along === 0 && aside === 0;
    if (onTop ? index > from !== forward : along <= 0) return;
    const behindAll = aside > along ? 1e6 : 0;
    const far = along + ASIDE * aside + behindAll + (onTop ? Math.abs(index - from) * 1e-6 : 0);
    if (far < least) {
      least = far;
      nearest = index;
    }
  });
  return nearest;
}

/** The index of the mark nearest to a point, or null where none is within `reach` px. */
export function markAt(spots: readonly Spot[], point: Spot, reach: number): number | null {
  let nearest: number | null = null;
  let least = reach;
  spots.forEach((spot, index) => {
    const far = Math.hypot(spot.x - point.x, spot.y - point.y);
    if (far < least) {
      least = far;
      nearest = index;
    }
  });
  return nearest;
}
