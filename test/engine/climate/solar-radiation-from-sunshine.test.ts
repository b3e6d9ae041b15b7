import { describe, expect, it } from 'vitest';
import { solarRadiationFromSunshine } from '../../../src/engine/climate/solar-radiation-from-sunshine.ts';

describe('solar radiation from sunshine (FAO-56 eq. 35)', () => {
  it.each([
    ['Example 10 (p. 50): Rio in May, 220 hours in 31 days, before rounding', 220 / 31, 10.895, 25.111, 14.5, 0.05],
    ['Example 17 (p. 70): Bangkok in April', 8.5, 12.31, 38.06, 22.65, 0.01],
    ['Example 18 (p. 72): Uccle on 6 July', 9.25, 16.1, 41.09, 22.07, 0.01],
  ] as const)('%s', (_name, sunshineHours, daylightHours, extraterrestrialMj, published, tolerance) => {
    const day = Object.freeze({ sunshineHours, daylightHours, extraterrestrialMj });
    expect(Math.abs(solarRadiationFromSunshine(day) - published)).toBeLessThanOrEqual(tolerance);
  });

  it('a quarter comes through full cloud, three quarters under a cloudless sky', () => {
    expect(solarRadiationFromSunshine({ sunshineHours: 0, daylightHours: 12, extraterrestrialMj: 40 })).toBe(10);
    expect(solarRadiationFromSunshine({ sunshineHours: 12, daylightHours: 12, extraterrestrialMj: 40 })).toBe(30);
  });

  it('more sun than daylight is a full day', () => {
    expect(solarRadiationFromSunshine({ sunshineHours: 13, daylightHours: 12, extraterrestrialMj: 40 })).toBe(30);
  });

  it('a day of half an hour can be sunny throughout', () => {
    expect(solarRadiationFromSunshine({ sunshineHours: 0.5, daylightHours: 0.5, extraterrestrialMj: 0.4 })).toBeCloseTo(
      0.3,
      12,
    );
  });

  it('the polar night gives nothing', () => {
    expect(solarRadiationFromSunshine({ sunshineHours: 0, daylightHours: 0, extraterrestrialMj: 0 })).toBe(0);
  });
});
