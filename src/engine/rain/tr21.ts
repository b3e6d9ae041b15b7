// Published for inches; turned once into millimetres with the exact 25.4. Printed in millimetres, rounded, as
// 1.25 P^0.824 - 2.93 and 10^(0.000955 ETc).
const MM_PER_INCH = 25.4;
const RAIN_EXPONENT = 0.82416;
const RAIN_FACTOR = 0.70917 * MM_PER_INCH ** (1 - RAIN_EXPONENT);
const RAIN_LOSS_MM = 0.11556 * MM_PER_INCH;
const ETC_EXPONENT_PER_MM = 0.02426 / MM_PER_INCH;

const LEAST_STORAGE_IN = 0.75;
const MOST_STORAGE_IN = 7;

/**
 * Storage factor SF of the TR-21 relation: a soil that can hold more keeps more of a month's rain.
 *
 * SF = 0.531747 + 0.295164 D - 0.057697 D^2 + 0.003804 D^3 with the usable storage D in inches (usually 40 to 60 % of
 * the available water in the root zone); 1 at 3 in, which is 76 mm. Published for 0.75 to 7 in: a storage outside is
 * taken at the nearer end, so a thin root zone has 0.722 and a deep one 1.076.
 *
 * Source: USDA SCS, TR-21 (1967, revised 1970); NEH Part 623 ch. 2, eq. 2-85 (the number from memory).
 */
export function tr21StorageFactor(usableStorageMm: number): number {
  const storage = Math.min(Math.max(usableStorageMm / MM_PER_INCH, LEAST_STORAGE_IN), MOST_STORAGE_IN);
  return 0.531747 + storage * (0.295164 - storage * (0.057697 - storage * 0.003804));
}

/** A month's totals, mm, and the water the root zone can take up between waterings, mm. */
export interface Tr21Month {
  readonly rainMm: number;
  readonly etcMm: number;
  readonly usableStorageMm: number;
}

/** The relation before its limits, mm: below 0 for a trace of rain, above rain or use where storage is ample. */
export function tr21UnlimitedRainMm({ rainMm, etcMm, usableStorageMm }: Tr21Month): number {
  const fromRainMm = RAIN_FACTOR * rainMm ** RAIN_EXPONENT - RAIN_LOSS_MM;
  return tr21StorageFactor(usableStorageMm) * fromRainMm * 10 ** (ETC_EXPONENT_PER_MM * etcMm);
}

/**
 * Effective rain of a month, mm, by the USDA SCS relation of TR-21: the share of the rain that the plants can use.
 *
 * Pe = SF (1.2525 P^0.82416 - 2.9352) 10^(0.00095512 ETc), never more than the rain, never more than the plants use,
 * never below 0. The power is of P alone, not of the product. Months only: for weeks, compute the month and share it.
 *
 * Source: USDA SCS, TR-21 (1967, revised 1970); NEH Part 623 ch. 2 (1993), s. 623.0207, eq. 2-84 (its number from
 * memory).
 */
export function tr21EffectiveRainMm(month: Tr21Month): number {
  return Math.max(0, Math.min(tr21UnlimitedRainMm(month), month.rainMm, month.etcMm));
}
