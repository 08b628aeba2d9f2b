import type { LineList } from './flat-lines';
import { type RecipePiece, standIn } from './recipe-piece';
import type { Thing } from './things';

/** What is known of the costs of a period. Tables: entry node * segments + segment. */
export interface Known {
  /** 1 where everything that the cost takes is known. */
  readonly complete: Uint8Array;
  /** 0 where no owner's estimate has a part in the cost, PART where one of something below has, WHOLE where it stands in itself. */
  readonly estimated: Uint8Array;
  /** The estimate of a portion where it stands in for a recipe; else 0. */
  readonly estimates: Float64Array;
  /** What one base unit of a by-product is worth where it is made; else 0. */
  readonly credits: Float64Array;
}

export const PART = 1;
export const WHOLE = 2;

export function nothingKnown(things: number, segments: number): Known {
  const cells = things * segments;
  return {
    complete: new Uint8Array(cells),
    estimated: new Uint8Array(cells),
    estimates: new Float64Array(cells),
    credits: new Float64Array(cells),
  };
}

/**
 * Adds the lines of a recipe where it stands, or the owner's estimate where that stands in, and marks what is known now.
 * Its children are known already.
 *
 * An estimate stands in where a plate has no recipe, and where its recipe cannot be costed; a recipe that can be costed goes before
 * the estimate. A recipe that cannot be costed and has no estimate keeps its known lines: they make the floor.
 */
export function place(
  thing: Thing,
  node: number,
  piece: RecipePiece,
  known: Known,
  list: LineList,
  segments: number,
): void {
  const { version, children, amounts } = piece;
  const { complete, estimated, estimates } = known;
  const estimate = standIn(thing, version);
  // nothing to pack it in is known to cost nothing; a recipe without lines is not known
  const hasLines = amounts.length > 0 || thing.channel !== null;
  const whole = hasLines && version.refusedLines === 0 && !amounts.some(Number.isNaN);
  const isCosted = (segment: number): boolean =>
    whole && children.every((child) => complete[child * segments + segment] === 1);

  for (let start = piece.from; start < piece.to; ) {
    const costed = isCosted(start);
    let end = start + 1;
    while (end < piece.to && isCosted(end) === costed) end++;
    const first = node * segments + start;
    const last = node * segments + end;
    if (costed || estimate !== null) complete.fill(1, first, last);
    if (!costed && estimate !== null) {
      estimates.fill(estimate, first, last);
      estimated.fill(WHOLE, first, last);
    } else {
      children.forEach((child, index) => {
        const amount = amounts[index] as number;
        if (!Number.isNaN(amount)) list.add(node, child, amount, start, end);
        for (let cell = first; cell < last; cell++) {
          if (estimated[cell + (child - node) * segments]) estimated[cell] = PART;
        }
      });
    }
    start = end;
  }
}
