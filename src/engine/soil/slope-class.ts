/**
 * Which column of a table by slope to read: the first class whose upper end the slope does not pass.
 *
 * A negative slope, or one that is not a number, throws RangeError.
 */
export function slopeClass(slopePercent: number, upperEndsPercent: readonly number[]): number {
  if (!(slopePercent >= 0)) throw new RangeError(`The slope is ${slopePercent} %; it must be 0 or more.`);
  return upperEndsPercent.findIndex((upperEnd) => slopePercent <= upperEnd);
}
