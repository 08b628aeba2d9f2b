/**
 * Columns of numbers and texts as bytes that compress well, and back without a loss. What is written is read in the same order.
 *
 * A whole number takes as many bytes as it is large (base 128, sign in the lowest bit). A column of decimals with few digits is written
 * as whole numbers; any other column of doubles as its eight bytes apart, first all the lowest ones, so that what is alike stands together.
 */
export interface Packer {
  text(value: string): void;
  /** Whole numbers that an Int32Array holds. */
  ints(values: ArrayLike<number>): void;
  doubles(values: ArrayLike<number>): void;
  bytes(): Uint8Array<ArrayBuffer>;
}

/** Reads what a packer wrote. Bytes that end too soon throw a RangeError. */
export interface Unpacker {
  text(): string;
  ints(): Int32Array;
  doubles(): Float64Array;
}

const MOST_DIGITS = 6;
/** Stands where a column is no column of decimals. */
const RAW = 15;

export function packer(): Packer {
  let bytes = new Uint8Array(1 << 16);
  let length = 0;
  const room = (more: number): void => {
    if (length + more <= bytes.length) return;
    const larger = new Uint8Array(Math.max(bytes.length * 2, length + more));
    larger.set(bytes.subarray(0, length));
    bytes = larger;
  };
  const int = (value: number): void => {
    room(8);
    let rest = value < 0 ? -value * 2 - 1 : value * 2;
    while (rest >= 128) {
      bytes[length++] = (rest % 128) + 128;
      rest = Math.floor(rest / 128);
    }
    bytes[length++] = rest;
  };
  const append = (more: Uint8Array): void => {
    room(more.length);
    bytes.set(more, length);
    length += more.length;
  };
  return {
    text(value) {
      const encoded = new TextEncoder().encode(value);
      int(encoded.length);
      append(encoded);
    },
    ints(values) {
      int(values.length);
      for (let index = 0; index < values.length; index++) int(values[index] as number);
    },
    doubles(values) {
      const digits = digitsOf(values);
      int(values.length);
      int(digits);
      if (digits === RAW) append(planes(new Uint8Array(Float64Array.from(values).buffer), 8));
      else
        for (let index = 0; index < values.length; index++) int(Math.round((values[index] as number) * 10 ** digits));
    },
    bytes: () => bytes.slice(0, length),
  };
}

/** Decimals that say every value exactly; RAW where so few do not, or a value is no plain number. */
function digitsOf(values: ArrayLike<number>): number {
  let digits = 0;
  for (let index = 0; index < values.length; index++) {
    const value = values[index] as number;
    while (!isWritten(value, digits)) if (++digits > MOST_DIGITS) return RAW;
  }
  return digits;
}

function isWritten(value: number, digits: number): boolean {
  const whole = Math.round(value * 10 ** digits);
  return Math.abs(whole) < 2 ** 52 && !Object.is(value, -0) && whole / 10 ** digits === value;
}

/** The first byte of every value, then the second of every value, and so on. */
function planes(bytes: Uint8Array, size: number): Uint8Array {
  const count = bytes.length / size;
  return Uint8Array.from(bytes, (_, index) => bytes[(index % count) * size + Math.floor(index / count)] as number);
}

export function unpacker(bytes: Uint8Array): Unpacker {
  let at = 0;
  const int = (): number => {
    let value = 0;
    for (let times = 1; ; times *= 128) {
      const byte = bytes[at++];
      if (byte === undefined) throw new RangeError('The bytes end inside a number.');
      value += (byte % 128) * times;
      if (byte < 128) return value % 2 === 1 ? -(value + 1) / 2 : value / 2;
    }
  };
  const taken = (count: number): Uint8Array => {
    if (at + count > bytes.length) throw new RangeError('The bytes end inside a column.');
    at += count;
    return bytes.subarray(at - count, at);
  };
  return {
    text: () => new TextDecoder().decode(taken(int())),
    ints() {
      const values = new Int32Array(int());
      for (let index = 0; index < values.length; index++) values[index] = int();
      return values;
    },
    doubles() {
      const count = int();
      const digits = int();
      const values = new Float64Array(count);
      if (digits === RAW) {
        const apart = taken(count * 8);
        const together = new Uint8Array(values.buffer);
        for (let index = 0; index < together.length; index++) {
          together[index] = apart[(index % 8) * count + Math.floor(index / 8)] as number;
        }
      } else for (let index = 0; index < count; index++) values[index] = int() / 10 ** digits;
      return values;
    },
  };
}
