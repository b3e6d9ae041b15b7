/**
 * Effective rain of a month, mm, by the FAO relation for slopes up to 4 or 5 %.
 *
 * Pe = 0.8 P - 25 above 75 mm a month, 0.6 P - 10 below, never below 0; both give 35 mm at 75.
 *
 * Source: Brouwer and Heibloem (1986), FAO Training Manual 3, Irrigation water needs, ch. 3, Table 6 (attribution from
 * memory).
 */
export function faoMonthlyEffectiveRainMm(rainMm: number): number {
  return Math.max(0, rainMm > 75 ? 0.8 * rainMm - 25 : 0.6 * rainMm - 10);
}
