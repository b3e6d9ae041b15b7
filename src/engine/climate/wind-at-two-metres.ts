/** Height at which FAO-56 states wind, m. */
export const STANDARD_WIND_HEIGHT_M = 2;
const LEAST_HEIGHT_M = 0.5;

/**
 * Wind at 2 m above short grass from wind measured at another height, m/s (FAO-56 eq. 47); 3.2 at 10 m gives 2.4 (Example 14).
 * At 2 m the reading is kept as it is (the formula would add 0.02 %; Table 2.9 prints 1.000). Throws a RangeError below 0.5 m,
 * where the logarithmic profile no longer holds (the limit is ours).
 */
export function windAtTwoMetres(reading: { readonly windMs: number; readonly heightM: number }): number {
  if (!(reading.heightM >= LEAST_HEIGHT_M)) {
    throw new RangeError(
      `wind must be measured at least ${LEAST_HEIGHT_M} m above the ground, not at ${reading.heightM} m`,
    );
  }
  if (reading.heightM === STANDARD_WIND_HEIGHT_M) return reading.windMs;
  return (reading.windMs * 4.87) / Math.log(67.8 * reading.heightM - 5.42);
}
