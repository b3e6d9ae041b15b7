import { describe, expect, it } from 'vitest';
import {
  inverseRelativeDistance,
  radians,
  solarDeclination,
  sunsetHourAngle,
} from '../../../src/engine/climate/solar-geometry.ts';

describe('sun and Earth, FAO-56 Example 8 (p. 47): 20 degrees south, 3 September', () => {
  it('inverse relative distance 0.985 (eq. 23)', () => {
    expect(Math.abs(inverseRelativeDistance(246) - 0.985)).toBeLessThanOrEqual(0.0005);
  });

  it('swings by 3.3 % either way, nearest at the turn of the year (eq. 23)', () => {
    expect(inverseRelativeDistance(365)).toBeCloseTo(1.033, 12);
    expect(inverseRelativeDistance(182.5)).toBeCloseTo(0.967, 12);
  });

  it('declination 0.120 rad (eq. 24)', () => {
    expect(Math.abs(solarDeclination(246) - 0.12)).toBeLessThanOrEqual(0.0005);
  });

  it('sunset hour angle 1.527 rad (eq. 25)', () => {
    const place = Object.freeze({ latitudeDeg: -20, dayOfYear: 246 });
    expect(Math.abs(sunsetHourAngle(place) - 1.527)).toBeLessThanOrEqual(0.0005);
  });
});

describe('sunset hour angle at the edges', () => {
  it('a quarter turn on the equator on every day', () => {
    for (let dayOfYear = 1; dayOfYear <= 366; dayOfYear += 1) {
      expect(sunsetHourAngle({ latitudeDeg: 0, dayOfYear })).toBeCloseTo(Math.PI / 2, 14);
    }
  });

  it.each([
    ['polar day at 70 north in June', 70, 172, Math.PI],
    ['polar night at 70 north in December', 70, 355, 0],
    ['polar night at 70 south in June', -70, 172, 0],
    ['polar day at 70 south in December', -70, 355, Math.PI],
    ['the north pole in June', 90, 172, Math.PI],
    ['the south pole in June', -90, 172, 0],
  ] as const)('%s', (_name, latitudeDeg, dayOfYear, expected) => {
    expect(sunsetHourAngle({ latitudeDeg, dayOfYear })).toBe(expected);
  });

  it('180 degrees are pi (eq. 22)', () => {
    expect(radians(180)).toBe(Math.PI);
  });
});
