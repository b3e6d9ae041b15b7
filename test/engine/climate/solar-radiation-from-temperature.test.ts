import { describe, expect, it } from 'vitest';
import { solarRadiationFromTemperature } from '../../../src/engine/climate/solar-radiation-from-temperature.ts';

const lyonInJuly = Object.freeze({
  minTemperatureC: 14.8,
  maxTemperatureC: 26.6,
  extraterrestrialMj: 40.55,
  clearSkyMj: 30.58,
  setting: 'interior',
} as const);

describe('solar radiation from temperatures (FAO-56 eq. 50)', () => {
  it('Lyon in July: 22.3 (FAO-56 Example 15, p. 61; Example 20 prints 22.29)', () => {
    expect(Math.abs(solarRadiationFromTemperature(lyonInJuly) - 22.29)).toBeLessThanOrEqual(0.005);
  });

  it('a coast takes 0.19 for 0.16 (FAO-56 p. 60)', () => {
    const coast = solarRadiationFromTemperature({ ...lyonInJuly, setting: 'coastal' });
    expect(coast / solarRadiationFromTemperature(lyonInJuly)).toBeCloseTo(0.19 / 0.16, 12);
  });

  it('never above the clear sky (FAO-56 p. 61)', () => {
    expect(solarRadiationFromTemperature({ ...lyonInJuly, maxTemperatureC: 44 })).toBe(30.58);
  });

  it('exchanged temperatures are refused', () => {
    expect(() => solarRadiationFromTemperature({ ...lyonInJuly, maxTemperatureC: 10 })).toThrow(RangeError);
  });
});
