import { describe, expect, it } from 'vitest';
import { dayNumberOf, dayOfYear } from '../../../src/engine/calendar.ts';
import { daylightHours } from '../../../src/engine/climate/daylight-hours.ts';

describe('daylight hours', () => {
  it.each([
    ['FAO-56 Example 9 (p. 49): 20 S, 3 September', -20, 246, 11.7, 0.05],
    ["FAO-56 Example 10 (p. 50): 22 deg 54' S, 15 May", -(22 + 54 / 60), 135, 10.9, 0.05],
    ["FAO-56 Example 17 (p. 70): 13 deg 44' N, April", 13 + 44 / 60, 105, 12.31, 0.005],
    ["FAO-56 Example 18 (p. 72): 50 deg 48' N, 6 July", 50 + 48 / 60, 187, 16.1, 0.05],
  ] as const)('%s', (_name, latitudeDeg, day, published, tolerance) => {
    const place = Object.freeze({ latitudeDeg, dayOfYear: day });
    expect(Math.abs(daylightHours(place) - published)).toBeLessThanOrEqual(tolerance);
  });

  // Independent computation of FAO-56 eq. 34 for the 15th of each month, beside Table 2.7 (not seen).
  it.each([
    ['40 N', 40, [9.5, 10.5, 11.7, 13.1, 14.2, 14.8, 14.6, 13.6, 12.2, 10.9, 9.7, 9.2]],
    ['50 N', 50, [8.3, 9.8, 11.6, 13.5, 15.2, 16.1, 15.7, 14.3, 12.3, 10.4, 8.7, 7.9]],
  ] as const)('by month at %s', (_name, latitudeDeg, row) => {
    for (const [month, expected] of row.entries()) {
      const day = dayOfYear(dayNumberOf({ year: 2025, month, dayOfMonth: 15 }));
      expect(Math.abs(daylightHours({ latitudeDeg, dayOfYear: day }) - expected)).toBeLessThanOrEqual(0.0501);
    }
  });

  it.each([
    ['70 N', 70],
    ['70 S', -70],
  ] as const)('at %s the year holds polar day, polar night and days between', (_name, latitudeDeg) => {
    const year = Array.from({ length: 365 }, (_, day) => daylightHours({ latitudeDeg, dayOfYear: day + 1 }));
    expect(Math.max(...year)).toBe(24);
    expect(Math.min(...year)).toBe(0);
    // Common knowledge of the polar circles: some two months of each at 70 degrees.
    expect(year.filter((hours) => hours === 24).length).toBeGreaterThan(55);
    expect(year.filter((hours) => hours === 0).length).toBeGreaterThan(50);
    expect(year.filter((hours) => hours > 0 && hours < 24).length).toBeGreaterThan(200);
  });

  it('north and south of the equator share out the day', () => {
    for (let day = 1; day <= 366; day += 1) {
      const north = daylightHours({ latitudeDeg: 52, dayOfYear: day });
      const south = daylightHours({ latitudeDeg: -52, dayOfYear: day });
      expect(north + south).toBeCloseTo(24, 12);
    }
  });
});
