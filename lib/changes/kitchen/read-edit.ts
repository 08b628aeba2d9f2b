import type { z } from 'zod';
import { isFault, type Outcome } from '../../db/plan-keyed';
import { noSuchForm, notKept as notKeptWords } from '../../format/words/kitchen';
import { kitchenRefusalText } from '../../format/words/kitchen-refusals';
import { rowReader, shortened } from '../../intake/read-rows';
import type { Cells, RowKind } from '../../intake/rows/row-kind';
import type { RowFault } from '../../model/refusal';
import { type Kept, notKept, refusal, type WrongField } from './kept';

/** What an edit asks for, or why it is no edit: the fields that have another form than they should. */
export function askedFor<Shape extends z.ZodType>(
  shape: Shape,
  body: unknown,
): { readonly asked: z.output<Shape>; readonly wrong: null } | { readonly asked: null; readonly wrong: Kept } {
  const read = shape.safeParse(body);
  if (read.success) return { asked: read.data, wrong: null };
  const fields = read.error.issues.map(({ path, code, message }) => ({
    name: path.join('.'),
    value: null,
    text: code === 'custom' ? message : noSuchForm(path.join('.')),
  }));
  return { asked: null, wrong: { ok: false, refusal: refusal('wrong', notKeptWords, { fields }) } };
}

/** Cells of an edit with their place in it, to be read as a row of a file. */
export interface PlacedCells {
  /** version, lines.3, measures.1 ...: where its fields are found again. */
  readonly at: string;
  readonly cells: Cells;
}

/**
 * Reads cells as rows of a file are read, all or nothing; `names` holds what the edit says once for all of them. A column that is not among
 * the cells is blank: an edit is the whole of what it is about. Throws NotKept with every field that is wrong.
 */
export function readCells<Row>(
  kind: RowKind<Row>,
  style: { readonly decimalComma: boolean },
  names: Cells,
  rows: readonly PlacedCells[],
): readonly Row[] {
  const columns = [...kind.columns.needed, ...kind.columns.optional];
  const read = rowReader(kind, { style, clock: { timeZone: 'UTC', dayEnds: 0 } });
  const wrong: WrongField[] = [];
  const sound = rows.flatMap(({ at, cells }): Row[] => {
    for (const column of Object.keys(cells).filter((name) => !columns.includes(name))) {
      wrong.push(wrongField(at, { rule: 'unknown-setting', column, value: column, facts: {} }));
    }
    const blank = Object.fromEntries(columns.map((column) => [column, '']));
    const { row, fault } = read({ ...blank, ...cells, ...names });
    if (fault) wrong.push(wrongField(at, fault));
    return fault ? [] : [row];
  });
  if (wrong.length > 0) throw notKept('wrong', notKeptWords, { fields: wrong });
  return sound;
}

/** Goes on only where every row was saved; else nothing is kept, and each field says why. */
export function allSaved(outcomes: readonly Outcome[], rows: readonly PlacedCells[]): void {
  const wrong = outcomes.flatMap((outcome, place) =>
    isFault(outcome) ? [wrongField(rows[place]?.at ?? '', outcome)] : [],
  );
  if (wrong.length > 0) throw notKept('wrong', notKeptWords, { fields: wrong });
}

function wrongField(at: string, fault: RowFault): WrongField {
  const name = fault.column === null ? at : `${at}.${fault.column}`;
  return { name, value: fault.value === null ? null : shortened(fault.value), text: kitchenRefusalText(fault) };
}

export function placed(list: string, rows: readonly Cells[]): readonly PlacedCells[] {
  return rows.map((cells, index) => ({ at: `${list}.${index + 1}`, cells }));
}
