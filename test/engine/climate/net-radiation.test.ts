import { describe, expect, it } from 'vitest';
import {
  blackBodyRadiation,
  netLongwaveRadiation,
  netRadiation,
  netSolarRadiation,
} from '../../../src/engine/climate/net-radiation.ts';

const bangkokInApril = Object.freeze({
  minTemperatureC: 25.6,
  maxTemperatureC: 34.8,
  vapourPressureKpa: 2.85,
  solarMj: 22.65,
  clearSkyMj: 28.54,
});

describe('net radiation', () => {
  it.each([
    [10, 31.52],
    [20, 36.21],
    [30, 41.41],
  ] as const)('black body at %i C: %d (FAO-56 Table 2.8)', (temperatureC, published) => {
    expect(Math.abs(blackBodyRadiation(temperatureC) - published)).toBeLessThanOrEqual(0.005);
  });

  it('Bangkok in April keeps 17.44 of 22.65 (FAO-56 Example 17, eq. 38)', () => {
    expect(Math.abs(netSolarRadiation(22.65) - 17.44)).toBeLessThanOrEqual(0.005);
  });

  it('Bangkok in April loses 3.11 to the sky (FAO-56 Example 17, eq. 39)', () => {
    expect(Math.abs(netLongwaveRadiation(bangkokInApril) - 3.11)).toBeLessThanOrEqual(0.005);
  });

  it('Bangkok in April is left with 14.33 (FAO-56 Example 17, eq. 40)', () => {
    expect(netRadiation({ netSolarMj: 17.44, netLongwaveMj: 3.11 })).toBeCloseTo(14.33, 12);
  });

  it('Uccle on 6 July loses 3.71 (FAO-56 Example 18, eq. 39)', () => {
    const uccle = Object.freeze({
      minTemperatureC: 12.3,
      maxTemperatureC: 21.5,
      vapourPressureKpa: 1.409,
      solarMj: 22.07,
      clearSkyMj: 30.9,
    });
    expect(Math.abs(netLongwaveRadiation(uccle) - 3.71)).toBeLessThanOrEqual(0.005);
  });

  it('more radiation than a clear sky sends counts as a clear sky (FAO-56 under eq. 39)', () => {
    const clear = netLongwaveRadiation({ ...bangkokInApril, solarMj: 28.54 });
    expect(netLongwaveRadiation({ ...bangkokInApril, solarMj: 40 })).toBe(clear);
  });

  it('the least daylight tells the cloud: a clear sky loses more than half a cloudy one', () => {
    const winter = { ...bangkokInApril, minTemperatureC: -30, maxTemperatureC: -20, vapourPressureKpa: 0.05 };
    const clear = netLongwaveRadiation({ ...winter, solarMj: 0.2, clearSkyMj: 0.2 });
    expect(clear).toBe(netLongwaveRadiation({ ...winter, solarMj: 20, clearSkyMj: 20 }));
    expect(clear).toBeGreaterThan(netLongwaveRadiation({ ...winter, solarMj: 0.1, clearSkyMj: 0.2 }));
  });

  it('the polar night, with no daylight to tell the cloud, is half clouded', () => {
    const night = { ...bangkokInApril, minTemperatureC: -30, maxTemperatureC: -20, vapourPressureKpa: 0.05 };
    const dark = netLongwaveRadiation({ ...night, solarMj: 0, clearSkyMj: 0 });
    expect(dark).toBe(netLongwaveRadiation({ ...night, solarMj: 1, clearSkyMj: 2 }));
    expect(dark).toBeGreaterThan(0);
  });
});
