import { pipeline, Readable } from 'node:stream';
import { CsvError, type InfoRecord, type Options, parse } from 'csv-parse';
import type { FileRefusal } from '../../model/refusal';
import { DamagedArchive } from '../archive/damaged-archive';
import { checkedBytes, type FileState, LONGEST_LINE } from './checked-bytes';
import { type Columns, type Header, readHeader } from './header';

/** One record below the header: where it begins, and its cells as they stand in the file. */
export interface FileRecord {
  readonly line: number;
  readonly cells: readonly string[];
}

/** What is known of a file while its records are read: its header once the first line is through, its refusal once there is one. */
export interface RecordsState extends FileState {
  header: Header | null;
}

/**
 * The records of a CSV file (RFC 4180, and what is met beside it: separators , ; and tab, line ends of any kind, blank
 * lines, quotes inside unquoted cells), in the order of the file, with bounded memory. Where the file turns out to be no
 * sound file of its kind, the stream ends and `state.refusal` says why: what was read before then counts for nothing.
 */
export async function* readRecords(
  bytes: AsyncIterable<Uint8Array>,
  columns: Columns,
  state: RecordsState,
): AsyncGenerator<FileRecord> {
  const source = checkedBytes(bytes, state);
  const first = await firstLine(source).catch((error: unknown) => {
    state.refusal = refusalOf(error, 1);
    return { chunks: [], line: null };
  });
  if (state.refusal) return;
  const header = first.line === null ? refusal('empty-file', null) : readHeader(first.line, columns);
  if ('rule' in header) {
    state.refusal = header;
    await source.return(undefined);
    return;
  }
  state.header = header;
  let lastByte = 0;
  async function* all(): AsyncGenerator<Buffer> {
    try {
      for (const chunk of first.chunks) yield chunk;
      lastByte = first.chunks.at(-1)?.at(-1) ?? 0;
      for await (const chunk of source) {
        lastByte = chunk.at(-1) ?? lastByte;
        yield chunk;
      }
    } finally {
      await source.return(undefined);
    }
  }
  const lines = new LineCount();
  // called as each record is parsed, so that the line is right also where a fault further on empties the stream
  const placed = (record: string[], { lines: counted }: InfoRecord): FileRecord => {
    const line = lines.beginningOf(record, counted);
    if (record.some(swallowed)) state.refusal ??= refusal('open-quote', line);
    return { line, cells: record };
  };
  const parser = parse({
    delimiter: header.separator,
    on_record: placed as unknown as NonNullable<Options['on_record']>, // its types know only arrays
    relax_quotes: true,
    relax_column_count: true,
    skip_empty_lines: true,
    record_delimiter: ['\r\n', '\n', '\r'],
    max_record_size: LONGEST_LINE,
  });
  pipeline(Readable.from(all()), parser, () => {}); // a failure reaches the loop below through the parser
  let begun = false;
  let last: FileRecord | null = null; // the last record is judged by how the file ends
  try {
    for await (const record of parser as AsyncIterable<FileRecord>) {
      if (state.refusal) return;
      if (last) yield last;
      const holdsSomething = record.cells.some((cell) => cell.trim() !== '');
      last = begun && holdsSomething ? record : null;
      begun ||= holdsSomething; // the first record that holds something is the header
    }
  } catch (error) {
    state.refusal ??= refusalOf(error, lines.last + 1);
  }
  if (state.refusal || !last) return;
  const expected = header.names.length;
  if (last.cells.length < expected && !isLineEnd(lastByte)) {
    state.refusal = refusal('cut-off', last.line, { fields: last.cells.length, expected });
    return;
  }
  yield last;
}

const isLineEnd = (byte: number): boolean => byte === 10 || byte === 13;

function refusal(rule: FileRefusal['rule'], line: number | null, facts: FileRefusal['facts'] = {}): FileRefusal {
  return { rule, line, column: null, value: null, facts };
}

/** A quoted cell over several lines that goes on behind its closing quote: the quote that opened it never closed. */
function swallowed(cell: string): boolean {
  return cell.startsWith('"') && /[\r\n]/.test(cell);
}

/** Everything up to the first line that holds something, and that line; null where there is none. */
async function firstLine(source: AsyncIterator<Buffer>): Promise<{ chunks: readonly Buffer[]; line: string | null }> {
  const chunks: Buffer[] = [];
  for (;;) {
    const next = await source.next();
    if (!next.done) chunks.push(next.value);
    const lines = Buffer.concat(chunks).toString().split(/\r|\n/);
    const whole = next.done ? lines : lines.slice(0, -1);
    const line = whole.find((text) => !/^[\s,;]*$/.test(text));
    if (line !== undefined || next.done) return { chunks, line: line ?? null };
  }
}

/** Where records begin: the parser says where they end, and counts a line end of two characters inside quotes twice. */
class LineCount {
  last = 0;
  private overcount = 0;

  beginningOf(record: readonly string[], counted: number): number {
    const end = counted - this.overcount;
    if (end === this.last + 1) {
      this.last = end;
      return end;
    }
    const pairs = record.reduce((sum, cell) => sum + cell.split('\r\n').length - 1, 0);
    const within = record.reduce((sum, cell) => sum + cell.split(/\r\n|\n|\r/).length - 1, 0);
    this.overcount += pairs;
    this.last = end - pairs;
    return this.last - within;
  }
}

function refusalOf(error: unknown, line: number): FileRefusal {
  if (error instanceof CsvError) return refusal('open-quote', line); // a quote that never closes, or closes a megabyte later
  if (error instanceof DamagedArchive) return refusal('damaged-archive', null, { reason: error.message });
  if (error instanceof Error && 'syscall' in error && 'code' in error) {
    return refusal('unreadable-file', null, { reason: String(error.code) });
  }
  throw error;
}
