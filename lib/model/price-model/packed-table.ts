import type { Packer, Unpacker } from '../../core/byte-pack';

/** A table of nodes and segments, of which a row is written only where it changes from one segment to the next; before the first stands 0. */
export function packTable(to: Packer, table: Float64Array, segments: number): void {
  const places: number[] = [];
  const values: number[] = [];
  let last = 0;
  table.forEach((value, cell) => {
    const before = cell % segments === 0 ? 0 : (table[cell - 1] as number);
    if (Object.is(value, before)) return;
    places.push(cell - last);
    values.push(value);
    last = cell;
  });
  to.ints(places);
  to.doubles(values);
}

export function unpackTable(from: Unpacker, segments: number, size: number): Float64Array {
  const places = from.ints();
  const values = from.doubles();
  const table = new Float64Array(size);
  let cell = 0;
  places.forEach((more, index) => {
    cell += more;
    table.fill(values[index] as number, cell, (Math.floor(cell / segments) + 1) * segments);
  });
  return table;
}
