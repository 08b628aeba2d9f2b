import type { Columns } from '@/lib/intake/file/header';
import type { RecordsState } from '@/lib/intake/file/records';
import { readRecords } from '@/lib/intake/file/records';
import { readRows } from '@/lib/intake/read-rows';
import type { RowKind } from '@/lib/intake/rows/row-kind';

/** A file's bytes in chunks of a size. */
export async function* inChunks(bytes: Uint8Array | string, size = 65_536): AsyncGenerator<Uint8Array> {
  const all = Buffer.from(bytes);
  for (let from = 0; from < all.length; from += size) yield all.subarray(from, from + size);
}

export const ABC: Columns = { needed: ['a', 'b'], optional: ['c'], later: [] };

/** All records of a file with columns a, b and c, or why it is refused. */
export async function recordsOf(bytes: Uint8Array | string, size?: number, columns: Columns = ABC) {
  const state: RecordsState = { refusal: null, header: null };
  const records: [line: number, ...cells: string[]][] = [];
  for await (const { line, cells } of readRecords(inChunks(bytes, size), columns, state))
    records.push([line, ...cells]);
  return { records, refusal: state.refusal, header: state.header };
}

/** All rows of a file of one kind. */
export async function rowsOf<Row>(kind: RowKind<Row>, text: string, clock = { timeZone: 'UTC', dayEnds: 240 }) {
  const state: RecordsState = { refusal: null, header: null };
  const rows = [];
  for await (const row of readRows(inChunks(text), kind, clock, state)) rows.push(row);
  return { rows, refusal: state.refusal };
}
