import { createReadStream } from 'node:fs';
import { type FileRow, readRows } from '@/lib/intake/read-rows';
import type { RowKind } from '@/lib/intake/rows/row-kind';

const MARRAM_CLOCK = { timeZone: 'Europe/Dublin', dayEnds: 240 };

/** Every row of a file as the loader reads it. Fails where the file is refused whole. */
export async function rowsIn<Row>(path: string, kind: RowKind<Row>): Promise<readonly FileRow<Row>[]> {
  const state = { header: null, refusal: null };
  const rows: FileRow<Row>[] = [];
  for await (const row of readRows(createReadStream(path), kind, MARRAM_CLOCK, state)) rows.push(row);
  if (state.refusal !== null) throw new Error(`${path} was refused: ${JSON.stringify(state.refusal)}`);
  return rows;
}
