import { describe, expect, it } from 'vitest';
import {
  meanSaturationVapourPressure,
  saturationVapourPressure,
} from '../../../src/engine/climate/saturation-vapour-pressure.ts';

describe('saturation vapour pressure', () => {
  it.each([
    ['10 C', 10, 1.228],
    ['15 C', 15, 1.705],
    ['20 C', 20, 2.338],
    ['25 C', 25, 3.168],
    ['30 C', 30, 4.243],
    ['35 C', 35, 5.623],
    ['40 C', 40, 7.376],
    ['24.5 C (Example 3, p. 36)', 24.5, 3.075],
  ] as const)('FAO-56 Table 2.3: %s', (_name, temperatureC, published) => {
    expect(Math.abs(saturationVapourPressure(temperatureC) - published)).toBeLessThanOrEqual(0.0005);
  });

  it('of a day of 15 and 24.5 C is 2.39 (FAO-56 Example 3, p. 36)', () => {
    const day = Object.freeze({ minTemperatureC: 15, maxTemperatureC: 24.5 });
    expect(Math.abs(meanSaturationVapourPressure(day) - 2.39)).toBeLessThanOrEqual(0.005);
  });

  it('of Uccle on 6 July is 1.997 (FAO-56 Example 18, p. 72)', () => {
    const day = Object.freeze({ minTemperatureC: 12.3, maxTemperatureC: 21.5 });
    expect(Math.abs(meanSaturationVapourPressure(day) - 1.997)).toBeLessThanOrEqual(0.0005);
  });

  it('of a day is above the value at its mean temperature, as the paper warns', () => {
    const day = Object.freeze({ minTemperatureC: 10, maxTemperatureC: 30 });
    expect(meanSaturationVapourPressure(day)).toBeGreaterThan(saturationVapourPressure(20));
  });
});
