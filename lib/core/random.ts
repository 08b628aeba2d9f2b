/** A stream of random numbers in [0, 1) with 32 bits each; the same seed gives the same stream on every machine. */
export type Random = () => number;

/**
 * xoshiro128** 1.1 (Blackman & Vigna 2018, "Scrambled linear pseudorandom number generators"; public domain reference code),
 * as 32-bit unsigned integers. The state must not be all zero.
 */
export function xoshiro128(state: readonly [number, number, number, number]): () => number {
  let [a, b, c, d] = state;
  return () => {
    const product = Math.imul(b, 5);
    const result = Math.imul((product << 7) | (product >>> 25), 9) >>> 0;
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = (d << 11) | (d >>> 21);
    return result;
  };
}

/** Spreads a seed over a state: SplitMix with the 32-bit finalizer of MurmurHash3 (Appleby, public domain). */
function splitMix(seed: number): () => number {
  let counter = seed | 0;
  return () => {
    counter = (counter + 0x9e3779b9) | 0;
    let mixed = counter ^ (counter >>> 16);
    mixed = Math.imul(mixed, 0x85ebca6b);
    mixed ^= mixed >>> 13;
    mixed = Math.imul(mixed, 0xc2b2ae35);
    return (mixed ^ (mixed >>> 16)) >>> 0;
  };
}

/** Random numbers from an integer seed. */
export function seededRandom(seed: number): Random {
  const spread = splitMix(seed);
  const next = xoshiro128([spread(), spread(), spread(), spread()]);
  return () => next() / 4_294_967_296;
}
