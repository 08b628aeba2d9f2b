import type { Packings } from './recipe-graph';
import type { RecipePiece } from './recipe-piece';

/** What a recipe takes wherever it is sold: its lines without those of a channel. */
export function basePiece(piece: RecipePiece): RecipePiece {
  if (piece.lines.every(({ channel }) => channel === null)) return piece;
  return picked(
    piece,
    piece.lines.flatMap(({ channel }, index) => (channel === null ? [{ index, child: piece.children[index] }] : [])),
  );
}

/** What a recipe takes more in a channel: its lines of that channel, and the packings of what it is made of. */
export function packingPiece(piece: RecipePiece, channel: string, packings: Packings): RecipePiece {
  const own = piece.lines.flatMap((line, index) =>
    line.channel === channel ? [{ index, child: piece.children[index] }] : [],
  );
  const below = piece.lines.flatMap((line, index) => {
    const child = packings.get(piece.children[index] as number)?.get(channel);
    return child !== undefined && (line.channel === null || line.channel === channel) ? [{ index, child }] : [];
  });
  return { ...picked(piece, [...own, ...below]), measure: null };
}

function picked(
  piece: RecipePiece,
  lines: readonly { readonly index: number; readonly child: number | undefined }[],
): RecipePiece {
  return {
    ...piece,
    lines: lines.flatMap(({ index }) => piece.lines[index] ?? []),
    children: lines.map(({ child }) => child as number),
    amounts: lines.map(({ index }) => piece.amounts[index] as number),
  };
}
