/**
 * Water that a day's energy can evaporate, mm (FAO-56 eq. 20): 1 mm takes 2.45 MJ m-2, and the paper prints the inverse as
 * 0.408, which its equations 6 and 52 use.
 */
export const MM_PER_MJ = 0.408;

/** Radiation of MJ m-2 d-1 as evaporation, mm/d (FAO-56 eq. 20). */
export function evaporationEquivalent(radiationMj: number): number {
  return radiationMj * MM_PER_MJ;
}
