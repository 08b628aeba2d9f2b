/** A flag before it is placed: where its pole stands (0 to 1), and how many letters its longer line has. */
export interface Flag {
  readonly at: number;
  readonly letters: number;
}

/** Where the text of a flag stands: to which side of its pole, and how many rows above the axis. */
export interface FlagPlace {
  readonly side: 'left' | 'right';
  readonly row: number;
}

/** The text of a flag next to its pole, and a letter of it: the words are set in 13 px, of which a letter is half as wide at the most. */
const GAP_PX = 6;
const LETTER_PX = 6.6;
/** The axis starts half a thumb inside the drawing. */
const INSET_PX = 12;

/**
 * Places flags so that no text lies over another, nor over the pole of a flag in a higher row, nor outside the drawing. First come,
 * first placed: what stands nearest to the axis is tried first, to the right and then to the left. Null: no room in so many rows.
 */
export function flagPlaces(flags: readonly Flag[], width: number, rows: number): readonly (FlagPlace | null)[] {
  const taken: { readonly row: number; readonly from: number; readonly to: number }[] = [];
  const poles: { readonly row: number; readonly at: number }[] = [];
  return flags.map(({ at, letters }) => {
    const pole = INSET_PX + at * (width - 2 * INSET_PX);
    const text = letters * LETTER_PX + GAP_PX;
    for (let row = 0; row < rows; row++) {
      for (const side of ['right', 'left'] as const) {
        const [from, to] = side === 'right' ? [pole, pole + text] : [pole - text, pole];
        const isFree =
          from >= 0 &&
          to <= width &&
          taken.every((other) => other.row !== row || other.to + GAP_PX < from || other.from - GAP_PX > to) &&
          taken.every((other) => other.row >= row || pole < other.from - 1 || pole > other.to + 1) &&
          poles.every((other) => other.row <= row || other.at < from || other.at > to);
        if (!isFree) continue;
        taken.push({ row, from, to });
        poles.push({ row, at: pole });
        return { side, row };
      }
    }
    return null;
  });
}
