/** Heat into the soil over a day, MJ m-2 d-1: small beneath grass, and left out (FAO-56 eq. 42). */
export const DAILY_SOIL_HEAT_FLUX_MJ = 0;

/**
 * Heat into the soil over a month, MJ m-2 d-1, where the months before and after are known (FAO-56 eq. 43). Positive while the
 * soil warms. March 14.1, May 18.8 degrees C give 0.33 in April (Example 13).
 */
export function monthlySoilHeatFlux(months: { readonly previousMeanC: number; readonly nextMeanC: number }): number {
  return 0.07 * (months.nextMeanC - months.previousMeanC);
}
