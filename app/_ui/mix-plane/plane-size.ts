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
