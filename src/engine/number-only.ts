/** A formula's result. NaN throws a RangeError: one of the numbers that went in is missing or is none. */
export function numberOnly(result: number): number {
  if (Number.isNaN(result)) throw new RangeError('A number is missing.');
  return result;
}

/** The value, or 0 where it is below. Without a branch: where signs come in no order, processors guess a branch wrong. */
export function positivePart(value: number): number {
  return (value + Math.abs(value)) / 2;
}
