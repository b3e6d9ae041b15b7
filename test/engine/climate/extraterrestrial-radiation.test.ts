import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dayNumberOf, dayOfYear } from '../../../src/engine/calendar.ts';
import { extraterrestrialRadiation } from '../../../src/engine/climate/extraterrestrial-radiation.ts';

describe('extraterrestrial radiation in the worked examples of FAO-56', () => {
  it.each([
    ['Example 8 (p. 47): 20 S, 3 September', -20, 246, 32.2, 0.05],
    ["Example 10 (p. 50): Rio de Janeiro, 22 deg 54' S, 15 May", -(22 + 54 / 60), 135, 25.1, 0.05],
    ["Example 15 (p. 61): Lyon, 45 deg 43' N, July", 45 + 43 / 60, 196, 40.6, 0.05],
    ["Example 17 (p. 70): Bangkok, 13 deg 44' N, April", 13 + 44 / 60, 105, 38.06, 0.005],
    ["Example 18 (p. 72): Uccle, 50 deg 48' N, 6 July", 50 + 48 / 60, 187, 41.09, 0.005],
    ["Example 20 (p. 77): Lyon, 45 deg 43' N, July", 45 + 43 / 60, 196, 40.55, 0.0051],
  ] as const)('%s', (_name, latitudeDeg, day, published, tolerance) => {
    const place = Object.freeze({ latitudeDeg, dayOfYear: day });
    expect(Math.abs(extraterrestrialRadiation(place) - published)).toBeLessThanOrEqual(tolerance);
  });
});

// FAO-56 Table 2.6 from memory, not seen; an independent computation of eq. 21 agrees to 0.1. 15th of each month.
describe('extraterrestrial radiation by latitude, FAO-56 Table 2.6 (memory)', () => {
  it.each([
    ['equator', 0, [36.2, 37.4, 37.9, 36.8, 34.8, 33.4, 33.9, 35.6, 37.2, 37.3, 36.3, 35.6]],
    ['20 N', 20, [26.8, 30.6, 34.7, 37.9, 39.3, 39.5, 39.3, 38.3, 35.7, 31.7, 27.6, 25.6]],
    ['30 N', 30, [21.1, 25.8, 31.4, 36.8, 40.0, 41.2, 40.5, 38.0, 33.3, 27.5, 22.2, 19.7]],
    ['40 N', 40, [15.0, 20.4, 27.2, 34.7, 39.7, 41.8, 40.8, 36.7, 29.9, 22.5, 16.3, 13.6]],
    ['40 N as recalled from print', 40, [15.0, 20.4, 27.2, 34.7, 39.7, 41.9, 40.8, 36.7, 30.0, 22.5, 16.3, 13.6]],
    ['50 N', 50, [8.9, 14.4, 22.2, 31.5, 38.5, 41.7, 40.2, 34.3, 25.6, 16.8, 10.2, 7.5]],
    ['60 N', 60, [3.3, 8.3, 16.6, 27.5, 36.7, 41.2, 39.1, 31.3, 20.5, 10.8, 4.4, 2.2]],
    ['20 S', -20, [41.9, 40.0, 36.6, 31.3, 26.6, 24.1, 25.0, 29.0, 34.2, 38.6, 41.2, 42.1]],
  ] as const)('%s', (_name, latitudeDeg, row) => {
    for (const [month, published] of row.entries()) {
      const day = dayOfYear(dayNumberOf({ year: 2025, month, dayOfMonth: 15 }));
      expect(Math.abs(extraterrestrialRadiation({ latitudeDeg, dayOfYear: day }) - published)).toBeLessThanOrEqual(
        0.15,
      );
    }
  });
});

describe('extraterrestrial radiation at the edges', () => {
  // The same day summed minute by minute from the sun's height, without a sunset angle: valid at every latitude.
  function summedByMinute(latitudeDeg: number, day: number): number {
    const latitude = (latitudeDeg * Math.PI) / 180;
    const declination = 0.409 * Math.sin((2 * Math.PI * day) / 365 - 1.39);
    let sum = 0;
    for (let minute = 0.5; minute < 1440; minute += 1) {
      const hourAngle = (minute / 720 - 1) * Math.PI;
      const height =
        Math.sin(latitude) * Math.sin(declination) + Math.cos(latitude) * Math.cos(declination) * Math.cos(hourAngle);
      sum += Math.max(0, height);
    }
    return 0.082 * (1 + 0.033 * Math.cos((2 * Math.PI * day) / 365)) * sum;
  }

  it('is what the sun gives minute by minute, from pole to pole, on any day', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -90, max: 90, noNaN: true }),
        fc.integer({ min: 1, max: 366 }),
        (latitudeDeg, day) => {
          const radiation = extraterrestrialRadiation({ latitudeDeg, dayOfYear: day });
          expect(Math.abs(radiation - summedByMinute(latitudeDeg, day))).toBeLessThanOrEqual(1e-3);
        },
      ),
      { numRuns: 300 },
    );
  });

  it.each([
    ['70 N in December', 70, 355],
    ['70 S in June', -70, 172],
    ['the north pole in December', 90, 355],
    ['the south pole in June', -90, 172],
  ] as const)('polar night gives exactly nothing: %s', (_name, latitudeDeg, day) => {
    expect(extraterrestrialRadiation({ latitudeDeg, dayOfYear: day })).toBe(0);
  });

  it('the polar day at 70 degrees is bright on both sides, brighter in the south, whose summer lies nearer the sun', () => {
    const north = extraterrestrialRadiation({ latitudeDeg: 70, dayOfYear: 172 });
    const south = extraterrestrialRadiation({ latitudeDeg: -70, dayOfYear: 355 });
    expect(north).toBeGreaterThan(40);
    expect(south).toBeGreaterThan(north);
    expect(south).toBeLessThan(49);
  });

  it('is never negative', () => {
    let least = Number.POSITIVE_INFINITY;
    for (let latitudeDeg = -90; latitudeDeg <= 90; latitudeDeg += 0.25) {
      for (let day = 1; day <= 366; day += 1) {
        least = Math.min(least, extraterrestrialRadiation({ latitudeDeg, dayOfYear: day }));
      }
    }
    expect(least).toBe(0);
  });

  it('the leap day has its own number and lies between its neighbours', () => {
    const at = (day: number): number => extraterrestrialRadiation({ latitudeDeg: 40, dayOfYear: day });
    expect(dayOfYear(dayNumberOf({ year: 2024, month: 1, dayOfMonth: 29 }))).toBe(60);
    expect(at(60)).toBeGreaterThan(at(59));
    expect(at(60)).toBeLessThan(at(61));
  });
});
