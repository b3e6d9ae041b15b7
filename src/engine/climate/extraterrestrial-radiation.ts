import { numberOnly } from '../number-only.ts';
import {
  inverseRelativeDistance,
  type PlaceAndDay,
  radians,
  solarDeclination,
  sunsetHourAngle,
} from './solar-geometry.ts';

/** Solar constant Gsc, MJ m-2 min-1 (FAO-56 p. 46). */
const SOLAR_CONSTANT = 0.082;
const MINUTES_PER_DAY = 24 * 60;

/**
 * Extraterrestrial radiation Ra: what a level square metre would receive in a day with no air above it (FAO-56 eq. 21).
 *
 * MJ m-2 d-1, 0 (polar night) to about 48. For 20 degrees south on 3 September (J 246) the paper finds 32.2 (Example 8).
 * Throws a RangeError where a number is missing or none.
 */
export function extraterrestrialRadiation(placeAndDay: PlaceAndDay): number {
  const latitude = radians(placeAndDay.latitudeDeg);
  const declination = solarDeclination(placeAndDay.dayOfYear);
  const sunset = sunsetHourAngle(placeAndDay);
  const height =
    sunset * Math.sin(latitude) * Math.sin(declination) + Math.cos(latitude) * Math.cos(declination) * Math.sin(sunset);
  const radiation =
    (MINUTES_PER_DAY / Math.PI) * SOLAR_CONSTANT * inverseRelativeDistance(placeAndDay.dayOfYear) * height;
  // At the edge of the polar night rounding can leave a trace below zero.
  return Math.max(0, numberOnly(radiation));
}
