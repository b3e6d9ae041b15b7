import { expect, it } from 'vitest';
import { readHeading } from '../../../src/exchange/csv/read-heading.ts';

it.each([
  ['Rain', 'rain', undefined],
  ['Rain (mm)', 'rain', 'mm'],
  ['rain_in', 'rain', 'in'],
  ['Rainfall, inches', 'rainfall', 'in'],
  ['temp_max', 'tempmax', undefined],
  ['T min [°C]', 'tmin', '°C'],
  ['Low, deg F', 'low', '°F'],
  // A unit ends a heading; a word like one that stands elsewhere is a word.
  ['Rain in garden', 'rainingarden', undefined],
  ['mm', 'mm', undefined],
  ['', '', undefined],
])('reads the heading %j', (text, word, unit) => {
  expect(readHeading(text, 'en')).toEqual({ word, unit, beforeBrackets: undefined });
});

it('keeps the word before brackets that hold no unit', () => {
  expect(readHeading('Rain (cm)', 'en')).toEqual({ word: 'raincm', unit: undefined, beforeBrackets: 'rain' });
});
