/** A width that the picture is drawn for; all in px. Above stands money, below what was sold. */
export interface PeriodsSize {
  readonly name: 'wide' | 'middle' | 'narrow';
  readonly width: number;
  readonly money: number;
  readonly sold: number;
  readonly left: number;
  readonly right: number;
  /** Every so many periods have a name. */
  readonly every: number;
}

// The heights stand in dish-periods.module.css too, so that the picture's place is kept before it is drawn.
export const WIDE: PeriodsSize = { name: 'wide', width: 1312, money: 220, sold: 130, left: 46, right: 150, every: 1 };
export const MIDDLE: PeriodsSize = { ...WIDE, name: 'middle', width: 690, right: 120 };
export const NARROW: PeriodsSize = { ...WIDE, name: 'narrow', width: 358, left: 36, right: 8, every: 3 };

/** The widest drawing that fits. */
export function periodsSizeFor(width: number): PeriodsSize {
  return width >= WIDE.width
    ? WIDE
    : width >= MIDDLE.width
      ? { ...MIDDLE, width: Math.min(WIDE.width, Math.floor(width)) }
      : NARROW;
}
