import { expect, it } from 'vitest';
import { formatMinuteCount, formatMinutes } from '../../../src/language/format/minutes.ts';

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
  expect(formatMinutes(45, 'en')).toBe('45\u00a0min');
});
