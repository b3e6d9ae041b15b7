import { expect, it } from 'vitest';
import { readHeading } from '../../../src/exchange/csv/read-heading.ts';

it.each([
  ['Rain', 'rain', undefined],
  ['Rain (mm)', 'rain', 'metric'],
  ['rain_in', 'rain', 'us'],
  ['Rainfall, inches', 'rainfall', 'us'],
  ['temp_max', 'tempmax', undefined],
  ['T min [°C]', 'tmin', 'metric'],
  ['Low, deg F', 'low', 'us'],
  // A unit ends a heading; a word like one that stands elsewhere is a word.
  ['Rain in garden', 'rainingarden', undefined],
  ['mm', 'mm', undefined],
  ['', '', undefined],
])('reads the heading %j', (text, word, units) => {
  expect(readHeading(text, 'en')).toEqual({ word, units });
});
