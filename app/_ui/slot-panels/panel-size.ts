/** A width that the panels are drawn for; all in px. */
export interface PanelSize {
  readonly name: 'wide' | 'middle' | 'narrow';
  readonly width: number;
  readonly left: number;
  /** Height of one panel, and of its name over it. */
  readonly panel: number;
  readonly head: number;
  readonly slots: number;
  /** Every so many-th slot is named, counted from the last. */
  readonly named: number;
}

export const PANEL_SIZES: readonly PanelSize[] = [
  { name: 'wide', width: 972, left: 64, panel: 96, head: 38, slots: 18, named: 1 },
  { name: 'middle', width: 690, left: 60, panel: 80, head: 34, slots: 18, named: 1 },
  { name: 'narrow', width: 358, left: 52, panel: 78, head: 36, slots: 12, named: 2 },
];

/** Bars are no wider than this, however few slots there are. */
export const WIDEST_BAR = 44;
export const BAR_SHARE = 0.5;
/** Height of a row of words under the panels, and of the names of the slots. */
export const EVENT_ROW = 20;
export const SLOT_NAMES = 38;
