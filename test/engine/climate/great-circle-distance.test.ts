import { describe, expect, it } from 'vitest';
import { greatCircleDistanceKm, type PlaceOnEarth } from '../../../src/engine/climate/great-circle-distance.ts';

const at = (latitudeDeg: number, longitudeDeg: number): PlaceOnEarth => ({ latitudeDeg, longitudeDeg });

describe('greatCircleDistanceKm', () => {
  // The metre was made so that a quarter of the meridian has 10,000 km, the nautical mile so that a minute of latitude is one (1.852 km).
  it.each([
    ['from the equator to the pole', at(0, 20), at(90, -70), 10_000],
    ['along a minute of latitude', at(45, 7), at(45 + 1 / 60, 7), 1.852],
    ['half round the equator', at(0, -90), at(0, 90), 20_000],
    ['across the line of dates', at(0, 179.5), at(0, -179.5), 60 * 1.852],
  ])('%s is as long as its unit says', (_, one, other, km) => {
    expect(greatCircleDistanceKm(one, other) / km).toBeCloseTo(1, 2);
    expect(greatCircleDistanceKm(other, one)).toBeCloseTo(greatCircleDistanceKm(one, other), 9);
  });

  it('shrinks a degree of longitude by the cosine of the latitude', () => {
    const share = greatCircleDistanceKm(at(60, 10), at(60, 10.1)) / greatCircleDistanceKm(at(0, 10), at(0, 10.1));
    expect(share).toBeCloseTo(0.5, 4);
  });

  it('is nothing from a place to itself', () => {
    expect(greatCircleDistanceKm(at(47.6, -122.3), at(47.6, -122.3))).toBe(0);
  });
});
