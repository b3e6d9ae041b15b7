/** Solar radiation under a cloudless sky Rso, MJ m-2 d-1, at an elevation above the sea (FAO-56 eq. 37). */
export function clearSkyRadiation(sky: { readonly extraterrestrialMj: number; readonly elevationM: number }): number {
  return (0.75 + 2e-5 * sky.elevationM) * sky.extraterrestrialMj;
}
