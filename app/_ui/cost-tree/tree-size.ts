/** A width that the tree is drawn for; all in px. */
export interface TreeSize {
  readonly name: 'wide' | 'middle' | 'narrow';
  readonly width: number;
  readonly barWidth: number;
  /** Left edge of the bars: the plate, its parts, what is bought. */
  readonly bars: readonly [number, number, number];
  /** Where the figures of the parts and of what is bought end. */
  readonly figures: readonly [number, number];
  /** Least height of a label of a part, and of what is bought; null: what is bought stands under the name of the part. */
  readonly partLabel: number;
  readonly leafLabel: number | null;
  readonly least: number;
  readonly most: number;
  /** Px of a letter, by which names are cut: that of the serif's names, and of the sans's. */
  readonly partLetter: number;
  readonly leafLetter: number;
}

const WIDE: TreeSize = {
  name: 'wide',
  width: 972,
  barWidth: 10,
  bars: [0, 190, 560],
  figures: [490, 972],
  partLabel: 21,
  leafLabel: 18,
  least: 200,
  most: 540,
  partLetter: 7.9,
  leafLetter: 7,
};

const MIDDLE: TreeSize = { ...WIDE, name: 'middle', width: 690, bars: [0, 120, 400], figures: [356, 690], most: 500 };

const NARROW: TreeSize = {
  ...WIDE,
  name: 'narrow',
  width: 358,
  bars: [0, 0, 14],
  figures: [358, 358],
  partLabel: 22,
  leafLabel: null,
  least: 180,
  most: 440,
};

export const TREE_SIZES = [WIDE, MIDDLE, NARROW] as const;
