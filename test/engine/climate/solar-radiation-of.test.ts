import { expect, it } from 'vitest';
import { solarRadiationOf } from '../../../src/engine/climate/solar-radiation-of.ts';
import type { WeatherEstimate } from '../../../src/engine/climate/weather-estimates.ts';

// FAO-56 Example 20 (Lyon, p. 77) for the sky and the temperatures; sunshine and radiation beside them are arithmetic.
const sky = Object.freeze({ extraterrestrialMj: 40.55, clearSkyMj: 30.58, daylightHours: 15 });
const everything = Object.freeze({
  minTemperatureC: 14.8,
  maxTemperatureC: 26.6,
  radiationMj: 21,
  sunshineHours: 7.5,
  setting: 'interior',
} as const);
const sunshine = Object.freeze({ ...everything, radiationMj: undefined });
const temperatures = Object.freeze({ ...sunshine, sunshineHours: Number.NaN });

it.each([
  ['as measured', everything, 21, []],
  ['half a day of sun: half of 40.55 (eq. 35)', sunshine, 20.275, ['radiation-from-sunshine']],
  ['temperatures: 22.29 (Example 20, eq. 50)', temperatures, 22.29, ['radiation-from-temperature']],
] as const)('solar radiation, %s', (_name, weather, published, expected) => {
  const estimated: WeatherEstimate[] = [];
  expect(Math.abs(solarRadiationOf(weather, sky, estimated) - published)).toBeLessThanOrEqual(0.005);
  expect(estimated).toEqual(expected);
});
