/**
 * Comparisons that decide something, with a record of those that came so near that rounding may decide them otherwise:
 * there two calculations can part with both being right.
 */

/** A depletion this little beyond a limit is rounding, mm; and so are minutes. */
export const TOLERANCE = 1e-9;

/** What rounding may make of figures of a garden's size; well below the tolerance, so that equal figures are no tie. */
const NEAR = 1e-10;

export class NearTies {
  count = 0;

  /** Whether a value is above a limit. */
  isAbove(value: number, limit: number): boolean {
    if (value !== limit && Math.abs(value - limit) < NEAR) this.count += 1;
    return value > limit;
  }

  /** Whether a value is above a limit by more than rounding. */
  isClearlyAbove(value: number, limit: number): boolean {
    return this.isAbove(value, limit + TOLERANCE);
  }
}
