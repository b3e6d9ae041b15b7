/**
 * Numbers in [0, 1) that look like chance and are the same for a seed everywhere: the same weather is made in every browser.
 *
 * A 32-bit counter in steps of 0x6D2B79F5, its bits mixed by two multiplications; whole-number arithmetic alone. It repeats after
 * 2^32 numbers. `seed` is taken as a 32-bit whole number.
 *
 * Source: mulberry32 (T. Ettinger 2017, public domain).
 */
export function uniformRandom(seed: number): () => number {
  let counter = seed | 0;
  return () => {
    counter = (counter + 0x6d2b79f5) | 0;
    let mixed = Math.imul(counter ^ (counter >>> 15), counter | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}
