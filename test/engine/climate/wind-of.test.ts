import { expect, it } from 'vitest';
import type { WeatherEstimate } from '../../../src/engine/climate/weather-estimates.ts';
import { windOf } from '../../../src/engine/climate/wind-of.ts';

const atTwo = Object.freeze({ latitudeDeg: 40 });
const atTen = Object.freeze({ latitudeDeg: 40, windHeightM: 10 });

it.each([
  ['as measured at 2 m', { windMs: 3 }, atTwo, 3, []],
  ['3.2 m/s at 10 m: 2.4 (Example 14)', { windMs: 3.2 }, atTen, 2.4, ['wind-from-height']],
  ['none: 2 m/s (p. 63)', {}, atTen, 2, ['wind-assumed']],
  ['not a number: 2 m/s (p. 63)', { windMs: Number.NaN }, atTwo, 2, ['wind-assumed']],
  ['calm: at least 0.5 m/s (p. 63)', { windMs: 0 }, atTwo, 0.5, ['wind-raised']],
  ['0.5 m/s is enough', { windMs: 0.5 }, atTwo, 0.5, []],
  ['0.6 m/s at 10 m is 0.45 at 2 m', { windMs: 0.6 }, atTen, 0.5, ['wind-from-height', 'wind-raised']],
] as const)('FAO-56 wind, %s', (_name, readings, site, published, expected) => {
  const estimated: WeatherEstimate[] = [];
  expect(Math.abs(windOf(readings, site, estimated) - published)).toBeLessThanOrEqual(0.05);
  expect(estimated).toEqual(expected);
});
