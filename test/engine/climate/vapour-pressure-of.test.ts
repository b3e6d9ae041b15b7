import { expect, it } from 'vitest';
import { vapourPressureOf } from '../../../src/engine/climate/vapour-pressure-of.ts';
import type { WeatherEstimate } from '../../../src/engine/climate/weather-estimates.ts';

// FAO-56 Example 5 (p. 39) with further readings, taken away one after the other.
const everything = Object.freeze({
  minTemperatureC: 18,
  maxTemperatureC: 25,
  vapourPressureKpa: 1.65,
  dewPointC: 15,
  maxHumidityPercent: 82,
  minHumidityPercent: 54,
  meanHumidityPercent: 68,
});
const noPressure = Object.freeze({ ...everything, vapourPressureKpa: undefined });
const noDewPoint = Object.freeze({ ...noPressure, dewPointC: undefined });
const noLowest = Object.freeze({ ...noDewPoint, minHumidityPercent: undefined });
const meanOnly = Object.freeze({ ...noLowest, maxHumidityPercent: Number.NaN });
const nothing = Object.freeze({ ...meanOnly, meanHumidityPercent: undefined });

it.each([
  ['as measured', everything, 1.65, []],
  ['dew point 15 C: 1.705 (Table 2.3)', noPressure, 1.705, []],
  ['both humidities: 1.70 (Example 5, eq. 17)', noDewPoint, 1.7, []],
  ['the highest alone: 2.064 x 0.82 = 1.692 (eq. 18)', noLowest, 1.692, ['vapour-pressure-from-max-humidity']],
  ['the mean: 1.78 (Example 5, eq. 19)', meanOnly, 1.78, ['vapour-pressure-from-mean-humidity']],
  ['lowest temperature 18 C: 2.064 (Table 2.3, eq. 48)', nothing, 2.064, ['vapour-pressure-from-min-temperature']],
] as const)('FAO-56 %s', (_name, weather, published, expected) => {
  const estimated: WeatherEstimate[] = [];
  expect(Math.abs(vapourPressureOf(weather, estimated) - published)).toBeLessThanOrEqual(0.005);
  expect(estimated).toEqual(expected);
});
