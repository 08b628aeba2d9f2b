import { isUtf8 } from 'node:buffer';
import type { FileRefusal } from '../../model/refusal';
import { utf8Fault } from './utf8-fault';

/** The longest line, in bytes, that a file of rows can have: a longer one is no row. */
export const LONGEST_LINE = 1 << 20;

const NEWLINE = 10;
const RETURN = 13;

/** What was found wrong with a file while it was read; null while it is sound. */
export interface FileState {
  refusal: FileRefusal | null;
}

/**
 * The bytes of a file as they come, as long as they are sound text: UTF-8 (a BOM is left out), no zero byte, no endless line.
 * At the first fault it says so in `state` and stops; the rest of the file is not read.
 */
export async function* checkedBytes(bytes: AsyncIterable<Uint8Array>, state: FileState): AsyncGenerator<Buffer> {
  const place = { bytes: 0, line: 1, lineLength: 0 };
  let kept: Buffer = Buffer.alloc(0); // the beginning until it can be judged, later a character that is not finished
  let begun = false;
  for await (const chunk of bytes) {
    let joined: Buffer =
      kept.length === 0 ? Buffer.from(chunk.buffer, chunk.byteOffset, chunk.length) : Buffer.concat([kept, chunk]);
    kept = joined.subarray(0, 0);
    if (!begun) {
      if (joined.length < 4) {
        kept = joined;
        continue;
      }
      state.refusal = foreignBeginning(joined);
      if (state.refusal) return;
      joined = withoutBom(joined, place);
      begun = true;
    }
    const sound = soundPart(joined, place, state);
    if (state.refusal) return;
    kept = Buffer.from(joined.subarray(sound));
    if (sound > 0) yield joined.subarray(0, sound);
  }
  if (!begun) {
    state.refusal = foreignBeginning(kept);
    if (state.refusal) return;
    kept = withoutBom(kept, place);
    const sound = soundPart(kept, place, state);
    if (state.refusal) return;
    if (sound > 0) yield kept.subarray(0, sound);
    kept = kept.subarray(sound);
  }
  if (kept.length > 0) state.refusal = refusal('cut-off', place.line, { fields: null, expected: null });
}

function refusal(rule: FileRefusal['rule'], line: number | null, facts: FileRefusal['facts']): FileRefusal {
  return { rule, line, column: null, value: null, facts };
}

/** Workbooks and other encodings tell themselves by their first bytes. */
function foreignBeginning(bytes: Buffer): FileRefusal | null {
  const begins = (...first: readonly number[]) => first.every((byte, at) => bytes[at] === byte);
  if (begins(0x50, 0x4b, 3, 4) || begins(0xd0, 0xcf, 0x11, 0xe0)) return refusal('workbook', null, {});
  if (begins(0xff, 0xfe) || begins(0xfe, 0xff)) return refusal('not-utf8', 1, { byte: 1, utf16: 'yes' });
  return null;
}

function withoutBom(bytes: Buffer, place: { bytes: number }): Buffer {
  if (bytes[0] !== 0xef || bytes[1] !== 0xbb || bytes[2] !== 0xbf) return bytes;
  place.bytes = 3;
  return bytes.subarray(3);
}

/** How much of the bytes is whole characters of sound text, the place moved behind them; the rest is the beginning of one. */
function soundPart(
  bytes: Buffer,
  place: { bytes: number; line: number; lineLength: number },
  state: FileState,
): number {
  const zero = bytes.indexOf(0);
  let sound = bytes.length;
  if (!isUtf8(bytes)) {
    const { bad, unfinished } = utf8Fault(bytes);
    if (bad >= 0 && (zero < 0 || bad < zero)) {
      const line = place.line + newlines(bytes.subarray(0, bad));
      state.refusal = refusal('not-utf8', line, { byte: place.bytes + bad + 1, utf16: 'no' });
      return 0;
    }
    if (unfinished >= 0) sound = unfinished;
  }
  if (zero >= 0) {
    const line = place.line + newlines(bytes.subarray(0, zero));
    state.refusal = refusal('binary', line, { byte: place.bytes + zero + 1 });
    return 0;
  }
  measureLines(bytes.subarray(0, sound), place, state);
  place.bytes += sound;
  return sound;
}

function newlines(bytes: Buffer): number {
  let count = 0;
  for (let at = bytes.indexOf(NEWLINE); at >= 0; at = bytes.indexOf(NEWLINE, at + 1)) count++;
  return count;
}

/** Follows the lines; one that is too long is a fault. Lines may also end in a return alone. */
function measureLines(bytes: Buffer, place: { line: number; lineLength: number }, state: FileState): void {
  let from = 0;
  for (let at = bytes.indexOf(NEWLINE); at >= 0; at = bytes.indexOf(NEWLINE, from)) {
    if (tooLong(bytes.subarray(from, at), place)) break;
    place.lineLength = 0;
    place.line++;
    from = at + 1;
  }
  if (tooLong(bytes.subarray(from), place)) {
    state.refusal = refusal('record-too-long', place.line, { limit: LONGEST_LINE });
    return;
  }
  const last = bytes.subarray(from);
  const back = last.lastIndexOf(RETURN);
  place.lineLength = back < 0 ? place.lineLength + last.length : last.length - back - 1;
}

function tooLong(line: Buffer, place: { lineLength: number }): boolean {
  return place.lineLength + line.length > LONGEST_LINE && !line.includes(RETURN);
}
