import fc from 'fast-check';
import { expect, test } from 'vitest';
import { packer, unpacker } from '@/lib/core/byte-pack';

/** Bits, so that NaN equals itself and zero is not minus zero. */
function bits(values: ArrayLike<number>): readonly bigint[] {
  return [...new BigUint64Array(Float64Array.from(values).buffer)];
}

const decimals = fc.array(
  fc
    .tuple(fc.integer({ min: -1e7, max: 1e7 }), fc.integer({ min: 0, max: 5 }))
    .map(([whole, digits]) => whole / 10 ** digits),
);

test('unpacker(packer().bytes()) gives texts, whole numbers and doubles back, bit for bit', () => {
  const doubles = fc.oneof(
    decimals,
    fc.array(fc.double()),
    fc.float64Array().map((array) => [...array]),
  );
  fc.assert(
    fc.property(
      fc.string({ unit: 'grapheme' }),
      fc.array(fc.integer()),
      doubles,
      decimals,
      (text, ints, first, second) => {
        const to = packer();
        to.doubles(first);
        to.text(text);
        to.ints(ints);
        to.doubles(second);
        const from = unpacker(to.bytes());
        expect(bits(from.doubles())).toEqual(bits(first));
        expect(from.text()).toBe(text);
        expect([...from.ints()]).toEqual(ints);
        expect(bits(from.doubles())).toEqual(bits(second));
      },
    ),
  );
});

test('packer().doubles(values) writes decimals of few digits in few bytes', () => {
  const to = packer();
  // 12.5 is 125 tenths, and 250 with the sign below it takes two bytes: 2 for the head, 2 x 1,000
  to.doubles(Array.from({ length: 1000 }, () => 12.5));
  expect(to.bytes()).toHaveLength(2 + 1 + 2000);
});

test('packer() takes more than its first room', () => {
  const values = Array.from({ length: 100_000 }, (_, index) => index / 3);
  const to = packer();
  to.doubles(values);
  expect([...unpacker(to.bytes()).doubles()]).toEqual(values);
});

test('unpacker(bytes) of bytes that end too soon throws', () => {
  const to = packer();
  to.doubles([1 / 3]);
  const bytes = to.bytes();
  expect(() => unpacker(bytes.slice(0, -1)).doubles()).toThrow(RangeError);
  expect(() => unpacker(new Uint8Array()).ints()).toThrow(RangeError);
});
