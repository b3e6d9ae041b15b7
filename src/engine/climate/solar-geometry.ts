const RADIANS_PER_DEGREE = Math.PI / 180;
const RADIANS_PER_DAY = (2 * Math.PI) / 365;

/** A place on Earth and a day of its year. */
export interface PlaceAndDay {
  /** Degrees, north positive, -90 to 90. */
  readonly latitudeDeg: number;
  /** J, 1 to 366. */
  readonly dayOfYear: number;
}

/** Degrees to radians (FAO-56 eq. 22). */
export function radians(degrees: number): number {
  return degrees * RADIANS_PER_DEGREE;
}

/** Inverse relative distance from Earth to Sun, about 0.967 to 1.033 without unit (FAO-56 eq. 23). */
export function inverseRelativeDistance(dayOfYear: number): number {
  return 1 + 0.033 * Math.cos(RADIANS_PER_DAY * dayOfYear);
}

/** Angle of the sun above the equator's plane at noon, radians, north positive (FAO-56 eq. 24). */
export function solarDeclination(dayOfYear: number): number {
  return 0.409 * Math.sin(RADIANS_PER_DAY * dayOfYear - 1.39);
}

/**
 * Half the arc that the sun crosses above the horizon in a day, radians (FAO-56 eq. 25).
 *
 * Beyond the polar circles the sun may not set, or not rise: the cosine would pass 1 and is held there, so that the polar
 * day gives pi and the polar night 0. The paper calls winter values beyond 55 degrees of limited validity (p. 47).
 */
export function sunsetHourAngle({ latitudeDeg, dayOfYear }: PlaceAndDay): number {
  const cosine = -Math.tan(radians(latitudeDeg)) * Math.tan(solarDeclination(dayOfYear));
  return Math.acos(Math.min(1, Math.max(-1, cosine)));
}
