/** A depletion this little beyond the readily available water is rounding. */
const ROUNDING_MM = 1e-9;

/** Whether a day that starts with this depletion is short of water (Ks below 1, FAO-56 eq. 84). */
export function isShort(depletionMm: number, rawMm: number): boolean {
  return depletionMm > rawMm + ROUNDING_MM;
}
