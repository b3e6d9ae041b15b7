/** A formula's result. NaN throws a RangeError: one of the numbers that went in is missing or is none. */
export function numberOnly(result: number): number {
  if (Number.isNaN(result)) throw new RangeError('A number is missing.');
  return result;
}
