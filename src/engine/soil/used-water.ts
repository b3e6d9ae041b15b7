/**
 * What plants use on a day, mm: Ks ETc with Ks from the depletion at the start of the day, but never more than is
 * there. The season's loops call it a million times, so it takes bare numbers; `rootZoneDay` says the same in words.
 *
 * All in mm: demand (ETc), depletion at the start, readily and totally available water, rain and irrigation of the day.
 *
 * Source: FAO-56 eq. 84 and 86.
 */
export function usedWaterMm(
  etcMm: number,
  depletionMm: number,
  rawMm: number,
  tawMm: number,
  broughtMm: number,
): number {
  let used = etcMm;
  if (depletionMm > rawMm) used = tawMm > depletionMm ? (etcMm * (tawMm - depletionMm)) / (tawMm - rawMm) : 0;
  const present = tawMm - depletionMm + broughtMm;
  return Math.min(used, present);
}
