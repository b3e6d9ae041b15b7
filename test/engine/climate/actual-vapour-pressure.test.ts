import { expect, it } from 'vitest';
import {
  vapourPressureFromDewPoint,
  vapourPressureFromHumidityExtremes,
  vapourPressureFromMaxHumidity,
  vapourPressureFromMeanHumidity,
  vapourPressureFromMinTemperature,
} from '../../../src/engine/climate/actual-vapour-pressure.ts';

// FAO-56 Example 5 (p. 39): 18 and 25 C, relative humidity 82 and 54 %.
const example5 = Object.freeze({
  minTemperatureC: 18,
  maxTemperatureC: 25,
  maxHumidityPercent: 82,
  minHumidityPercent: 54,
});

it('both humidities give 1.70 (FAO-56 Example 5, eq. 17)', () => {
  expect(Math.abs(vapourPressureFromHumidityExtremes(example5) - 1.7)).toBeLessThanOrEqual(0.005);
});

it('their mean gives 1.78 (FAO-56 Example 5, eq. 19)', () => {
  const day = Object.freeze({ minTemperatureC: 18, maxTemperatureC: 25, meanHumidityPercent: 68 });
  expect(Math.abs(vapourPressureFromMeanHumidity(day) - 1.78)).toBeLessThanOrEqual(0.005);
});

it('the highest alone is its share of the saturation at the lowest temperature, 2.064 x 0.82 (FAO-56 Example 5, eq. 18)', () => {
  expect(Math.abs(vapourPressureFromMaxHumidity(example5) - 2.064 * 0.82)).toBeLessThanOrEqual(0.0005);
});

it('Uccle on 6 July: 1.409 (FAO-56 Example 18, p. 72)', () => {
  const uccle = Object.freeze({
    minTemperatureC: 12.3,
    maxTemperatureC: 21.5,
    maxHumidityPercent: 84,
    minHumidityPercent: 63,
  });
  expect(Math.abs(vapourPressureFromHumidityExtremes(uccle) - 1.409)).toBeLessThanOrEqual(0.0005);
});

it('the lowest temperature as dew point: Lyon in July 1.68 (FAO-56 Example 20, p. 77, eq. 48)', () => {
  expect(Math.abs(vapourPressureFromMinTemperature(14.8) - 1.68)).toBeLessThanOrEqual(0.005);
});

it('a dew point of 15 C gives the saturation at 15 C, 1.705 (FAO-56 eq. 14, Table 2.3)', () => {
  expect(Math.abs(vapourPressureFromDewPoint(15) - 1.705)).toBeLessThanOrEqual(0.0005);
});
