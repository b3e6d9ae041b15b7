/** Upper ends of a table's slope classes in percent, rising, the last without end; and the value of each class. */
export interface SlopeTable {
  readonly upperEndsPercent: readonly number[];
  readonly values: readonly number[];
}

/**
 * The value of a table by slope: that of the first class whose upper end the slope does not pass.
 *
 * A slope below 0, or one that is not a number, throws RangeError.
 */
export function bySlope(slopePercent: number, { upperEndsPercent, values }: SlopeTable): number {
  if (!(slopePercent >= 0)) throw new RangeError(`The slope is ${slopePercent} %; it must be 0 or more.`);
  return values[upperEndsPercent.findIndex((upperEnd) => slopePercent <= upperEnd)] as number;
}
