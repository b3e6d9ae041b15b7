/**
 * Effective rain as a plain share of the rain, mm, for any length of time: common practice, no source. California
 * Title 23 lets at most 0.25 of a year's rain count towards an allowance.
 *
 * A fraction outside 0 to 1 throws RangeError.
 */
export function fixedFractionEffectiveRainMm(rainMm: number, fraction: number): number {
  if (!(fraction >= 0 && fraction <= 1)) {
    throw new RangeError(`The fraction of rain that counts is ${fraction}; it must be 0 to 1.`);
  }
  return fraction * rainMm;
}
