/** A converted number as a person would write it. */

/**
 * The shortest decimal that differs from the value by at most `tolerance`, up to 15 digits. Two numbers of few digits never lie that
 * close, so a typed value of ordinary precision comes back from another unit as it was.
 */
export function roundForPerson(value: number, tolerance: number): number {
  return shortest(value, (short) => Math.abs(short - value) <= tolerance);
}

/**
 * The same by a share of the value, measured as a ratio: what is near on the way to another unit is as near on the way
 * back, so that no value is lost between the two.
 */
export function roundByShare(value: number, share: number): number {
  return shortest(value, (short) => Math.max(short / value, value / short) <= 1 + share);
}

function shortest(value: number, isNear: (short: number) => boolean): number {
  for (let digits = 1; digits <= 15; digits++) {
    const short = Number(value.toPrecision(digits));
    if (short === value || isNear(short)) return short;
  }
  return value;
}
