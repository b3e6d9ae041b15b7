/** Degrees, north and east positive. */
export interface PlaceOnEarth {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
}

/** Mean radius of the Earth, km (IUGG; from memory). */
const EARTH_RADIUS_KM = 6371;

/**
 * The distance between two places over the ground, km, on a sphere: the haversine formula (Sinnott 1984, _Virtues of the Haversine_, from
 * memory), d = 2 r asin √(sin²(Δφ/2) + cos φ₁ cos φ₂ sin²(Δλ/2)). Within 0.6 % of the distance on the flattened Earth.
 */
export function greatCircleDistanceKm(one: PlaceOnEarth, other: PlaceOnEarth): number {
  const half = (from: number, to: number) => Math.sin(radians(to - from) / 2) ** 2;
  const across = Math.cos(radians(one.latitudeDeg)) * Math.cos(radians(other.latitudeDeg));
  const chord = half(one.latitudeDeg, other.latitudeDeg) + across * half(one.longitudeDeg, other.longitudeDeg);
  return 2 * EARTH_RADIUS_KM * Math.asin(Math.sqrt(Math.min(1, chord)));
}

const radians = (degrees: number): number => (degrees * Math.PI) / 180;
