import type { Packer, Unpacker } from '../../core/byte-pack';
import type { FlatLines } from '../flat-lines';
import { type AmountSource, packAmounts, unpackAmounts } from './packed-amounts';

/** Flat lines as bytes: the lines of one parent stand together, so that parents are written once for all their lines. */
export function packLines(to: Packer, lines: FlatLines, source: AmountSource): void {
  const { parent, child, from, to: until, rows, starts } = lines;
  to.ints(steps(rows));
  to.ints(steps(starts));
  to.ints(low(child));
  to.ints(high(child));
  to.ints(from);
  to.ints(until.map((end, line) => end - (from[line] as number)));
  packAmounts(to, lines.amount, child, source);
  if (parent.length !== (starts.at(-1) ?? 0)) throw new RangeError('The groups of the lines do not hold all lines.');
}

export function unpackLines(from: Unpacker): FlatLines {
  const rows = summed(from.ints());
  const starts = summed(from.ints());
  const below = from.ints();
  const above = from.ints();
  const first = from.ints();
  const lengths = from.ints();
  const parent = new Int32Array(below.length);
  rows.forEach((row, group) => {
    parent.fill(row, starts[group], starts[group + 1]);
  });
  const child = below.map((byte, line) => (above[line] as number) * BYTE + byte);
  return {
    ...{ parent, child, rows, starts, from: first },
    to: lengths.map((length, line) => length + (first[line] as number)),
    amount: unpackAmounts(from, child),
  };
}

/** Children are written in two columns: what a compressor cannot foresee, and what it can. */
const BYTE = 64;
const low = (values: Int32Array): Int32Array => values.map((value) => value % BYTE);
const high = (values: Int32Array): Int32Array => values.map((value) => Math.floor(value / BYTE));

/** Each value less the one before it. */
function steps(values: Int32Array): Int32Array {
  return values.map((value, index) => value - (values[index - 1] ?? 0));
}

function summed(values: Int32Array): Int32Array {
  let sum = 0;
  return values.map((value) => {
    sum += value;
    return sum;
  });
}
