/** The bounds of a range as a person would say them: `0.1` and `1,000,000` for 0.1076 and 1,076,391. */

/** So far from the bound, as a share of it, a round number may lie. */
const MOST_OFF = { least: 0.25, most: 0.08 };

/**
 * The least value. `found`: what was typed; where that lies between the round number and the bound, the bound is said exactly, so that
 * nobody is refused what they were offered.
 */
export function saidLeast(least: number, found: unknown): number {
  const round = roundTo(least, 1, Math.round);
  if (!isNear(round, least, MOST_OFF.least)) return roundTo(least, 2, Math.ceil);
  return typeof found === 'number' && found >= round && found < least ? roundTo(least, 3, Math.ceil) : round;
}

/** The greatest value: never more than it is. */
export function saidMost(most: number): number {
  const round = roundTo(most, 1, Math.floor);
  return isNear(round, most, MOST_OFF.most) ? round : roundTo(most, 2, Math.floor);
}

const isNear = (round: number, bound: number, share: number): boolean =>
  Math.abs(round - bound) <= share * Math.abs(bound);

/** A whole number as it is, any other to so many digits. */
function roundTo(value: number, digits: number, round: (value: number) => number): number {
  if (Number.isInteger(value)) return value;
  const step = 10 ** (Math.floor(Math.log10(Math.abs(value))) - digits + 1);
  const exact = value / step;
  // What is that number already, but for the last bits of its conversion, is not rounded away from it.
  const near = Math.abs(exact - Math.round(exact)) <= 1e-9 * Math.abs(exact) ? Math.round(exact) : round(exact);
  return Number((near * step).toPrecision(digits));
}
