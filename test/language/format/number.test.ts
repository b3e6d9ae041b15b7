import { expect, it } from 'vitest';
import { formatNumber, formatPercent, formatPlainNumber } from '../../../src/language/format/number.ts';

it.each([
  [1234.5678, 2, 0, '1,234.57'],
  [1, 2, 2, '1.00'],
  [-0.001, 2, 0, '0'],
  [Number.NaN, 2, 0, '–'],
])('writes %d with at most %d and at least %d decimals', (value, most, least, written) => {
  expect(formatNumber(value, 'en-US', most, least)).toBe(written);
});

it('writes a number as one would type it, without parting thousands', () => {
  expect(formatPlainNumber(1234.5, 'en-US', 2)).toBe('1234.5');
  expect(formatPlainNumber(1234.5, 'de-DE', 2)).toBe('1234,5');
});

it('writes a share as the locale does', () => {
  expect(formatPercent(0.186, 'en-US')).toBe('19%');
  expect(formatPercent(0.186, 'de-DE')).toBe('19\u00a0%');
});
