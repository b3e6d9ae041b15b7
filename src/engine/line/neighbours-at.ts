/**
 * Two numbers next to each other (or the same twice, where it is one of the ends) between which a rising function passes 0. Halved is how
 * many numbers of double precision lie between the ends, so that small ones are told as finely as great ones: at most 64 steps.
 *
 * @param of at most 0 at `low`, at least 0 at `high`
 */
export function neighboursAt(of: (x: number) => number, low: number, high: number): readonly [number, number] {
  let below = rankOf(low);
  let above = rankOf(high);
  while (above - below > 1n) {
    const middle = (below + above) >> 1n;
    if (of(numberAt(middle)) < 0) below = middle;
    else above = middle;
  }
  return [numberAt(below), numberAt(above)];
}

const NUMBER = new Float64Array(1);
const BITS = new BigInt64Array(NUMBER.buffer);
/** What the bits of -0 say (IEEE 754-2019, binary64): below 0 they rise as the number falls. */
const LEAST = -(2n ** 63n);

/** Rank among all numbers of double precision: that of the next greater one is one more, that of 0 is 0. */
function rankOf(x: number): bigint {
  NUMBER[0] = x;
  const bits = BITS[0] as bigint;
  return bits < 0n ? LEAST - bits : bits;
}

function numberAt(rank: bigint): number {
  BITS[0] = rank < 0n ? LEAST - rank : rank;
  return NUMBER[0] as number;
}
