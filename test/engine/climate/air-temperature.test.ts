import { expect, it } from 'vitest';
import { meanTemperature, temperatureRange } from '../../../src/engine/climate/air-temperature.ts';

const lyonInJuly = Object.freeze({ minTemperatureC: 14.8, maxTemperatureC: 26.6 });

it('the mean is that of the extremes: Bangkok in April 30.2 (FAO-56 Example 17, eq. 9)', () => {
  expect(meanTemperature({ minTemperatureC: 25.6, maxTemperatureC: 34.8 })).toBeCloseTo(30.2, 12);
});

it('the range of Lyon in July is 11.8 (FAO-56 Example 15)', () => {
  expect(temperatureRange(lyonInJuly)).toBeCloseTo(11.8, 12);
});

it('a day that did not warm has no range', () => {
  expect(temperatureRange({ minTemperatureC: 4, maxTemperatureC: 4 })).toBe(0);
});

it('exchanged temperatures are refused in words', () => {
  const exchanged = (): number => temperatureRange({ minTemperatureC: 12, maxTemperatureC: 5 });
  expect(exchanged).toThrow(RangeError);
  expect(exchanged).toThrow('the highest temperature (5 °C) is below the lowest (12 °C): exchange or correct them');
});
