import { expect, it } from 'vitest';
import {
  formatDuration,
  formatMinuteCount,
  formatMinutes,
  formatSpelledMinutes,
} from '../../../src/language/format/minutes.ts';
import { readerFor } from '../../../src/language/reader.ts';

it.each([
  [45, '45'],
  [7.5, '7.5'],
  [9.96, '10'],
  [12.4, '12'],
  [0, '0'],
  [1440, '1,440'],
])('writes %d minutes as %s', (minutes, written) => {
  expect(formatMinuteCount(minutes, 'en')).toBe(written);
});

it('binds the unit to its number', () => {
  expect(formatMinutes(45, readerFor('en', 'us'))).toBe('45\u00a0min');
});

it.each([
  [119.4, '119 min'],
  [119.6, '2 h'],
  [120, '2 h'],
  [304, '5 h 4 min'],
  [1439.7, '24 h'],
  [1485, '25 h'],
  [80_730, '1,346 h'],
  [7.5, '7.5 min'],
  [Number.NaN, '–'],
])('says that %d minutes take %s', (minutes, written) => {
  expect(formatDuration(minutes, readerFor('en', 'us'))).toBe(written.replaceAll(' ', '\u00a0'));
});

it('spells the unit out in the form that the number asks for', () => {
  expect([1, 7.5, 45].map((minutes) => formatSpelledMinutes(minutes, 'en'))).toEqual([
    '1\u00a0minute',
    '7.5\u00a0minutes',
    '45\u00a0minutes',
  ]);
});
