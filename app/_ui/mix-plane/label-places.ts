import type { Box } from './region';

/** A label that wants a place beside its mark, in px. */
export interface Label {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /** Goes before others where there is not room for all. */
  readonly first: boolean;
  /** Half-axes of its own region where that should stay in sight; 0 where it need not. */
  readonly clearX: number;
  readonly clearY: number;
}

/** A place for a label: its box, and the leader to its mark where it stands off. */
export interface Place {
  readonly box: Box;
  readonly leader: Segment | null;
  /** How little this place is liked, before anything else is looked at. */
  readonly dislike: number;
}

export interface Segment {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

const CLOSE = 12;
const OFF = [22, 34, 48, 66, 90];
const CLEAR = 3;
const MARK = 7;

/** Direction out of the mark, and how little it is liked: right of the mark reads best. */
const WAYS: readonly (readonly [dx: number, dy: number, dislike: number])[] = [
  [1, 0, 0],
  [-1, 0, 1.2],
  [0, -1, 1],
  [0, 1, 1.4],
  [0.71, -0.71, 1.8],
  [0.71, 0.71, 2],
  [-0.71, -0.71, 2.2],
  [-0.71, 0.71, 2.4],
];

/** The label's box, when the point out from the mark is where it is pinned. */
function pinned(label: Label, dx: number, dy: number, out: number): Box {
  const x = label.x + dx * out;
  const y = label.y + dy * out;
  const left = dx > 0.1 ? x : dx < -0.1 ? x - label.width : x - label.width / 2;
  const top =
    dy < -0.1 ? y - label.height + (dx === 0 ? 4 : 3) : dy > 0.1 ? y - (dx === 0 ? 4 : 3) : y - label.height / 2;
  return { x: left, y: top, width: label.width, height: label.height };
}

function leaderTo(label: Label, box: Box): Segment | null {
  const x2 = Math.min(Math.max(label.x, box.x + 2), box.x + box.width - 2);
  const y2 = Math.min(Math.max(label.y, box.y + 2), box.y + box.height - 2);
  const far = Math.hypot(x2 - label.x, y2 - label.y);
  if (far <= MARK) return null;
  return { x1: label.x + ((x2 - label.x) * MARK) / far, y1: label.y + ((y2 - label.y) * MARK) / far, x2, y2 };
}

/** The places of a label that lie inside the bounds: eight round the mark, and the same further out with a leader. */
export function labelPlaces(label: Label, bounds: Box): readonly Place[] {
  const close = WAYS.map(([dx, dy, dislike]): Place => ({ box: pinned(label, dx, dy, CLOSE), leader: null, dislike }));
  const clear = clearOfRegion(label);
  const off = OFF.flatMap((out) =>
    WAYS.map(([dx, dy, dislike]): Place => {
      const box = pinned(label, dx, dy, out);
      return { box, leader: leaderTo(label, box), dislike: dislike + 5 + out / 4 };
    }),
  );
  return [...close, ...clear, ...off].filter(({ box }) => isInside(box, bounds));
}

/** The same eight ways, but outside the label's own region, as long as that is near enough to need no leader. */
function clearOfRegion(label: Label): readonly Place[] {
  if (label.clearY === 0) return [];
  return WAYS.flatMap(([dx, dy, dislike]): Place[] => {
    const out = (dy === 0 ? label.clearX : label.clearY) + CLEAR;
    if (out > (dy === 0 ? 60 : 22)) return [];
    const place: Place = { box: pinned(label, dx, dy, CLOSE), leader: null, dislike: dislike + out / 20 };
    const { x, y } = place.box;
    if (dy === 0) return [{ ...place, box: { ...place.box, x: dx > 0 ? label.x + out : label.x - out - label.width } }];
    return [
      {
        ...place,
        box: {
          ...place.box,
          x,
          y: dy < 0 ? Math.min(y, label.y - out - label.height + 3) : Math.max(y, label.y + out - 3),
        },
      },
    ];
  });
}

function isInside(box: Box, bounds: Box): boolean {
  return (
    box.x >= bounds.x &&
    box.y >= bounds.y &&
    box.x + box.width <= bounds.x + bounds.width &&
    box.y + box.height <= bounds.y + bounds.height
  );
}
