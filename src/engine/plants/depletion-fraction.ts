/**
 * Depletion fraction p: how much of the available water a crop may use before it suffers, on a day of this demand.
 * The table's p is for 5 mm/day; a hot day leaves less, a mild one more.
 *
 * p = p table + 0.04 (5 - ETc), kept within 0.1 and 0.8.
 *
 * Source: FAO-56 p. 162 and Table 22, footnote. Without unit.
 */
export function depletionFraction(tableFraction: number, etcMmPerDay: number): number {
  return Math.min(Math.max(tableFraction + 0.04 * (5 - etcMmPerDay), 0.1), 0.8);
}
