import { priceEditText, readPriceEdit, readTarget, targetText } from '@/lib/format/price-edit-text';
import type { EditTarget, PriceEdit, PriceStep } from '@/lib/model/price-model/edits';

/** A price that is looked at: moved, or not yet. */
export interface Move {
  readonly target: EditTarget;
  readonly step: PriceStep | null;
}

/** The prices that are looked at, in the order in which they apply, and which of them the fields and the slider move. */
export interface Moves {
  readonly list: readonly Move[];
  readonly at: number;
}

export function chosenOf({ list, at }: Moves): Move {
  const chosen = list[at] ?? list.at(-1);
  if (!chosen) throw new RangeError('at least one price is looked at');
  return chosen;
}

export function editsOf({ list }: Moves): readonly PriceEdit[] {
  return list.flatMap(({ target, step }) => (step === null ? [] : [{ target, step }]));
}

/** What an address says: the changes as text, and which is chosen. Where it says nothing, `first` is looked at. */
export function movesOf(
  texts: readonly string[],
  at: string | null,
  first: EditTarget,
): { readonly moves: Moves; readonly refused: readonly string[] } {
  const read = texts.map((text) => ({ text, move: readMove(text) }));
  const list = read.flatMap(({ move }) => move ?? []);
  const refused = read.flatMap(({ text, move }) => (move === null ? [text] : []));
  if (list.length === 0) return { moves: { list: [{ target: first, step: null }], at: 0 }, refused };
  const asked = Number(at) - 1;
  return { moves: { list, at: Number.isInteger(asked) && list[asked] ? asked : list.length - 1 }, refused };
}

function readMove(text: string): Move | null {
  const edit = readPriceEdit(text);
  if (edit) return edit;
  // the name of what is looked at may hold a colon as long as what follows is no change
  const target = /:\s*[+\-\u2212]?\d*\.?\d*%?$/.test(text) ? null : readTarget(text);
  return target && { target, step: null };
}

/** The same as parts of a query, in their order. */
export function movesQuery(moves: Moves): readonly (readonly [name: string, value: string])[] {
  const prices = moves.list.map(
    ({ target, step }) => ['price', step === null ? targetText(target) : priceEditText({ target, step })] as const,
  );
  return moves.at === moves.list.length - 1 ? prices : [...prices, ['at', String(moves.at + 1)]];
}

/** A query as people can read it: what needs no escape in a query has none, and a space is a plus. */
export function readableQuery(parts: Iterable<readonly [name: string, value: string]>): string {
  return new URLSearchParams([...parts].map(([name, value]) => [name, value])).toString().replaceAll('%3A', ':');
}

/** The chosen price moved to a step; null puts it back. */
export function withStep(moves: Moves, step: PriceStep | null): Moves {
  return { ...moves, list: moves.list.map((move, index) => (index === moves.at ? { ...move, step } : move)) };
}

/** Another price to look at: in the place of one that was never moved, else after all others. */
export function withTarget(moves: Moves, target: EditTarget): Moves {
  const same = moves.list.findIndex((move) => move.target.of === target.of && move.target.name === target.name);
  if (same !== -1) return { ...moves, at: same };
  const kept = moves.list.filter(({ step }) => step !== null);
  return { list: [...kept, { target, step: null }], at: kept.length };
}

/** The prices without one of them; the last one that is left is put back instead. */
export function without(moves: Moves, index: number): Moves {
  if (moves.list.length === 1) return withStep(moves, null);
  const list = moves.list.filter((_, each) => each !== index);
  return { list, at: Math.min(moves.at > index ? moves.at - 1 : moves.at, list.length - 1) };
}

/** Everything put back: only what was chosen is still looked at. */
export function putBack(moves: Moves): Moves {
  return { list: [{ ...chosenOf(moves), step: null }], at: 0 };
}
