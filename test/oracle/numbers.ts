/** Where a rising function passes 0. */
const BITS = new DataView(new ArrayBuffer(8));
const SIGN = 1n << 63n;

/** Numbers in their order, counted: the next number is one more. */
function rankOf(value: number): bigint {
  BITS.setFloat64(0, value);
  const bits = BITS.getBigUint64(0);
  return (bits & SIGN) === 0n ? bits : -(bits - SIGN);
}

function ofRank(rank: bigint): number {
  BITS.setBigUint64(0, rank < 0n ? -rank + SIGN : rank);
  return BITS.getFloat64(0);
}

/** Two numbers with so few between them are neighbours. */
const NEIGHBOURS = 4n;
/** Every so many steps halve, whatever the chords say. */
const HALVED_EVERY = 3;

/**
 * Two neighbours between which it passes 0, both `high` where it is below 0 all the way. Halved is how many numbers lie between: small ones are
 * told as finely as great ones.
 */
export function rootBetween(low: number, high: number, rising: Rising): readonly [number, number] {
  return narrowed(low, high, rising, {
    halfOf: (one, other) => ofRank((rankOf(one) + rankOf(other)) / 2n),
    isDone: (one, other) => rankOf(other) - rankOf(one) <= NEIGHBOURS,
  });
}

/** Where it passes 0, to 1e-13 of `high`; `high` where it is below 0 all the way. */
export function rootNear(low: number, high: number, rising: Rising): number {
  return narrowed(low, high, rising, {
    halfOf: (one, other) => (one + other) / 2,
    isDone: (one, other) => other - one <= 1e-13 * high,
  })[0];
}

type Rising = (value: number) => number;

interface Narrowing {
  readonly halfOf: (below: number, above: number) => number;
  readonly isDone: (below: number, above: number) => boolean;
}

/** By chords where the two are of one size, of which the end that stands loses half its weight (the Illinois rule), else by halves. */
function narrowed(low: number, high: number, rising: Rising, { halfOf, isDone }: Narrowing): readonly [number, number] {
  let [below, above] = [low, high];
  let [ofBelow, ofAbove] = [rising(low), rising(high)];
  if (ofBelow >= 0) return [low, low];
  if (ofAbove < 0) return [high, high];
  let stood: 'below' | 'above' | undefined;
  for (let step = 1; !isDone(below, above); step++) {
    const chord = (below * ofAbove - above * ofBelow) / (ofAbove - ofBelow);
    const isUsed = step % HALVED_EVERY !== 0 && isOneSize(below, above) && chord > below && chord < above;
    const middle = isUsed ? chord : halfOf(below, above);
    const found = rising(middle);
    if (found < 0) {
      [below, ofBelow] = [middle, found];
      if (stood === 'above') ofAbove /= 2;
      stood = 'above';
    } else {
      [above, ofAbove] = [middle, found];
      if (stood === 'below') ofBelow /= 2;
      stood = 'below';
    }
  }
  return [below, above];
}

function isOneSize(one: number, other: number): boolean {
  const ratio = one / other;
  return ratio > 0.25 && ratio < 4;
}
