/**
 * Effective rain of a month, mm, by the simplified USDA SCS relation: nearly all of a little rain, less of much.
 *
 * Pe = P (125 - 0.2 P) / 125 up to 250 mm a month, 125 + 0.1 P above; both give 150 mm at 250. Months only: a week's
 * rain would seem too effective.
 *
 * Source: USDA Soil Conservation Service, simplified form, as FAO method texts print it.
 */
export function scsSimplifiedMonthlyMm(rainMm: number): number {
  return rainMm <= 250 ? rainMm * ((125 - 0.2 * rainMm) / 125) : 125 + 0.1 * rainMm;
}
