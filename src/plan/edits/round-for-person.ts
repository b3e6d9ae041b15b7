/** A converted number as a person would write it. */

/**
 * The shortest decimal that differs from the value by at most `tolerance`, up to 15 digits. Two numbers of few digits never lie that
 * close, so a typed value of ordinary precision comes back from another unit as it was.
 */
export function roundForPerson(value: number, tolerance: number): number {
  for (let digits = 1; digits <= 15; digits++) {
    const short = Number(value.toPrecision(digits));
    if (Math.abs(short - value) <= tolerance) return short;
  }
  return value;
}
