import { expect, it } from 'vitest';
import { monthlyReadings } from '../../../src/engine/climate/monthly-readings.ts';

const COLUMNS = [
  'minTemperatureC',
  'maxTemperatureC',
  'vapourPressureKpa',
  'dewPointC',
  'maxHumidityPercent',
  'minHumidityPercent',
  'meanHumidityPercent',
  'windMs',
  'radiationMj',
  'sunshineHours',
] as const;

it.each(COLUMNS)('the column %s runs down the months, the others stay empty', (name) => {
  const column = Object.freeze([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
  const months = monthlyReadings(Object.freeze({ [name]: column }));
  expect(months.map((month) => month[name])).toEqual(column);
  const others = COLUMNS.filter((other) => other !== name);
  expect(months.flatMap((month) => others.map((other) => month[other])).every((value) => value === undefined)).toBe(
    true,
  );
});
