/** A width that the plane is drawn for, with the space around the plot; all in px. */
export interface PlaneSize {
  readonly name: 'wide' | 'middle' | 'narrow';
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly labelPx: number;
  /** Room at the right for the name of the margin line; otherwise its value stands at the axis. */
  readonly namesMargin: boolean;
  readonly ticks: { readonly share: number; readonly margin: number };
}

// The heights stand in mix-plane.module.css too, so that the picture's place is kept before it is drawn.
export const WIDE: PlaneSize = {
  name: 'wide',
  width: 972,
  height: 610,
  left: 54,
  right: 92,
  top: 34,
  bottom: 52,
  labelPx: 14,
  namesMargin: true,
  ticks: { share: 8, margin: 8 },
};

export const MIDDLE: PlaneSize = { ...WIDE, name: 'middle', width: 690, height: 500, ticks: { share: 7, margin: 7 } };

export const NARROW: PlaneSize = {
  name: 'narrow',
  width: 358,
  height: 430,
  left: 50,
  right: 6,
  top: 40,
  bottom: 50,
  labelPx: 13,
  namesMargin: false,
  ticks: { share: 4, margin: 8 },
};

/** The widest drawing that fits. */
export function planeSizeFor(width: number): PlaneSize {
  return width >= WIDE.width ? WIDE : width >= MIDDLE.width ? MIDDLE : NARROW;
}

/** Px of a figure at 13 px, and what stands between it and the plot. */
const PX_PER_LETTER = 7;
const BESIDE_AXIS = 16;
const BESIDE_LINE = 10;

/** The drawing with room at its sides for what has to stand there, where the currency has long figures. */
export function withRoomFor(size: PlaneSize, atLeft: readonly string[], atRight: readonly string[]): PlaneSize {
  const longest = (texts: readonly string[]) =>
    texts.reduce((most, text) => Math.max(most, text.length), 0) * PX_PER_LETTER;
  return {
    ...size,
    left: Math.max(size.left, longest(atLeft) + BESIDE_AXIS),
    right: size.namesMargin ? Math.max(size.right, longest(atRight) + BESIDE_LINE) : size.right,
  };
}
