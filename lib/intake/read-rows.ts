import type { Day } from '../core/days';
import type { RowFault } from '../model/refusal';
import type { VenueClock } from './business-day';
import { CellFault } from './cells';
import { type FileRecord, type RecordsState, readRecords } from './file/records';
import type { Cells, RowKind, RowReading } from './rows/row-kind';

/** A row of a file: what it says, or the first thing that is wrong with it; and what it speaks for, where that can be read. */
export type FileRow<Row> = {
  readonly line: number;
  /** The row as it came, to be kept until it is mended. */
  readonly raw: Cells;
  readonly key: string | null;
  readonly day: Day | null;
} & ReadRow<Row>;

export type ReadRow<Row> =
  | { readonly row: Row; readonly fault: null }
  | { readonly row: null; readonly fault: RowFault };

/**
 * The rows of a file of one kind, in its order, with bounded memory. Bad rows are values among the good ones. Where the
 * file has to be refused whole, the stream ends and `state.refusal` says why; what came before then counts for nothing.
 */
export async function* readRows<Row>(
  bytes: AsyncIterable<Uint8Array>,
  kind: RowKind<Row>,
  clock: VenueClock,
  state: RecordsState,
): AsyncGenerator<FileRow<Row>> {
  let read: ((record: FileRecord) => FileRow<Row>) | null = null;
  for await (const record of readRecords(bytes, kind.columns, state)) {
    read ??= recordReader(kind, clock, state);
    yield read(record);
  }
}

function recordReader<Row>(
  kind: RowKind<Row>,
  clock: VenueClock,
  state: RecordsState,
): (record: FileRecord) => FileRow<Row> {
  const names = state.header?.names ?? [];
  const reading: RowReading = { style: { decimalComma: state.header?.separator !== ',' }, clock };
  const readCells = rowReader(kind, reading);
  return ({ line, cells }) => {
    const raw: Record<string, string> = {};
    for (const [place, cell] of cells.entries()) {
      const name = place < names.length ? names[place] : `+${place + 1 - names.length}`;
      if (name) raw[name] = cell;
    }
    const fields = cells.length - trailingBlanks(cells, names.length);
    const known = fields === names.length ? readCells(raw) : faulty('field-count', { fields, expected: names.length });
    return { line, raw, key: kind.key(raw, reading), day: kind.day?.(raw, reading) ?? null, ...known };
  };
}

/** How rows of a kind are read once they are cells by column: from a file, and again from what was kept of it. */
export function rowReader<Row>(kind: RowKind<Row>, reading: RowReading): (cells: Cells) => ReadRow<Row> {
  const schema = kind.schema(reading);
  return (cells) => {
    const read = schema.safeParse(cells);
    if (read.success) return { row: read.data, fault: null };
    const [issue] = read.error.issues;
    const fault: unknown = issue?.code === 'custom' ? issue.params?.fault : null;
    const column = String(issue?.path[0] ?? '');
    if (!(fault instanceof CellFault)) throw new Error(`${column} was refused without a rule: ${issue?.message}`);
    const value = shortened((cells[column] ?? '').trim());
    return { row: null, fault: { rule: fault.rule, column, value, facts: fault.facts } };
  };
}

function faulty(rule: RowFault['rule'], facts: RowFault['facts']): { row: null; fault: RowFault } {
  return { row: null, fault: { rule, column: null, value: null, facts } };
}

/** Spreadsheets put separators behind the last column. */
function trailingBlanks(cells: readonly string[], columns: number): number {
  let blanks = 0;
  while (cells.length - blanks > columns && cells[cells.length - 1 - blanks]?.trim() === '') blanks++;
  return blanks;
}

const SHOWN = 200;

/** A value as a sentence can show it; never half a character. */
export function shortened(value: string): string {
  return value.length <= SHOWN ? value : `${value.slice(0, SHOWN).replace(/[\ud800-\udbff]$/, '')}…`;
}
