import { type PlaceAndDay, sunsetHourAngle } from './solar-geometry.ts';

/** Longest possible sunshine N, hours, 0 (polar night) to 24 (polar day) (FAO-56 eq. 34). */
export function daylightHours(placeAndDay: PlaceAndDay): number {
  return (24 / Math.PI) * sunsetHourAngle(placeAndDay);
}
