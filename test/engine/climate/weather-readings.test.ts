import { describe, expect, it } from 'vitest';
import {
  hasTemperatures,
  isComplete,
  isRead,
  type WeatherReadings,
  windHeightOf,
} from '../../../src/engine/climate/weather-readings.ts';

const full: WeatherReadings = Object.freeze({
  minTemperatureC: 10,
  maxTemperatureC: 20,
  dewPointC: 8,
  windMs: 2,
  radiationMj: 20,
});

describe('readings that are there', () => {
  it.each([
    [0, true],
    [-3.5, true],
    [undefined, false],
    [Number.NaN, false],
    [Number.POSITIVE_INFINITY, false],
  ] as const)('%s: %s', (reading, there) => {
    expect(isRead(reading)).toBe(there);
  });

  it('temperatures count in pairs', () => {
    expect(hasTemperatures(full)).toBe(true);
    expect(hasTemperatures({ minTemperatureC: 10 })).toBe(false);
    expect(hasTemperatures({ maxTemperatureC: 20 })).toBe(false);
    expect(hasTemperatures({ minTemperatureC: Number.NaN, maxTemperatureC: 20 })).toBe(false);
  });

  it.each([
    ['dew point', { dewPointC: 8 }],
    ['vapour pressure', { dewPointC: undefined, vapourPressureKpa: 1.2 }],
    ['highest humidity', { dewPointC: undefined, maxHumidityPercent: 90 }],
    ['mean humidity', { dewPointC: undefined, meanHumidityPercent: 70 }],
    ['sunshine for radiation', { radiationMj: undefined, sunshineHours: 8 }],
  ] as const)('complete with %s', (_name, readings) => {
    expect(isComplete({ ...full, ...readings })).toBe(true);
  });

  it.each([
    ['humidity', { dewPointC: undefined }],
    ['humidity but for the lowest, which says nothing alone', { dewPointC: undefined, minHumidityPercent: 40 }],
    ['wind', { windMs: undefined }],
    ['radiation and sunshine', { radiationMj: Number.NaN }],
  ] as const)('not complete without %s', (_name, readings) => {
    expect(isComplete({ ...full, ...readings })).toBe(false);
  });

  it('wind is measured at 2 m unless the site says otherwise', () => {
    expect(windHeightOf({ latitudeDeg: 40 })).toBe(2);
    expect(windHeightOf({ latitudeDeg: 40, windHeightM: 10 })).toBe(10);
  });
});
