/**
 * Solar radiation Rs from hours of bright sunshine, MJ m-2 d-1 (Angstrom's formula with the paper's a = 0.25 and b = 0.50,
 * FAO-56 eq. 35). More sun than daylight counts as a full day; in the polar night there is none.
 */
export function solarRadiationFromSunshine(day: {
  readonly sunshineHours: number;
  readonly daylightHours: number;
  readonly extraterrestrialMj: number;
}): number {
  const share = day.daylightHours > 0 ? Math.min(1, day.sunshineHours / day.daylightHours) : 0;
  return (0.25 + 0.5 * share) * day.extraterrestrialMj;
}
