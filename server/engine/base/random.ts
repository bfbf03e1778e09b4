/** The four 32-bit words of a generator's state; not all zero. */
export type RandomState = readonly [number, number, number, number];

/**
 * A generator from its state: each call gives the next whole number from 0 to 2³² − 1.
 * The algorithm is xoshiro128++ (source `blackman-vigna`).
 */
export function randomFrom(state: RandomState): () => number {
  let [s0, s1, s2, s3] = state;
  return () => {
    const result = (rotateLeft((s0 + s3) | 0, 7) + s0) >>> 0;
    const t = s1 << 9;
    s2 ^= s0;
    s3 ^= s1;
    s1 ^= s2;
    s0 ^= s3;
    s2 ^= t;
    s3 = rotateLeft(s3, 11);
    return result;
  };
}

/**
 * A seeded generator: the same seed gives the same numbers on every machine, so a share of builds reads the
 * same for two people. The seed is spread over the state as SplitMix does (source `steele-splitmix`): a
 * counter that moves by the golden ratio, each value mixed by a 32-bit finaliser.
 */
export function randomFromSeed(seed: number): () => number {
  let counter = seed | 0;
  const mixed = (): number => {
    counter = (counter + 0x9e3779b9) | 0;
    let z = counter;
    z = Math.imul(z ^ (z >>> 16), 0x85ebca6b);
    z = Math.imul(z ^ (z >>> 13), 0xc2b2ae35);
    return z ^ (z >>> 16);
  };
  return randomFrom([mixed(), mixed(), mixed(), mixed()]);
}

/**
 * `count` standard normal numbers (mean 0, standard deviation 1) that depend on `seed` alone.
 * Polar method (source `marsaglia-polar`): a point drawn evenly in the unit disc gives two of them.
 */
export function standardNormals(count: number, seed: number): Float64Array {
  const next = randomFromSeed(seed);
  const values = new Float64Array(count);
  let i = 0;
  while (i < count) {
    const u = 2 * unit(next()) - 1;
    const v = 2 * unit(next()) - 1;
    const s = u * u + v * v;
    if (s >= 1 || s === 0) continue;
    const factor = Math.sqrt((-2 * Math.log(s)) / s);
    values[i++] = u * factor;
    if (i < count) values[i++] = v * factor;
  }
  return values;
}

/** A whole number from 0 to 2³² − 1 as a fraction strictly between 0 and 1. */
function unit(word: number): number {
  return (word + 0.5) / 4294967296;
}

function rotateLeft(word: number, bits: number): number {
  return (word << bits) | (word >>> (32 - bits));
}
