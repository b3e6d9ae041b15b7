import { describe, expect, it } from 'vitest';
import { parseAmount } from '../../../src/sheet/entry/parse-amount.ts';

describe('parseAmount reads', () => {
  it.each([
    ['45', 45, undefined],
    ['45 min', 45, 'minute'],
    ['45min.', 45, 'minute'],
    ['1 h 20', 80, 'minute'],
    ['1h20m', 80, 'minute'],
    ['1.5 h', 90, 'minute'],
    ['2 hours', 120, 'minute'],
    ['1:20', 80, 'minute'],
    ['150 gal', 150, 'gallon'],
    ['150 Gallons', 150, 'gallon'],
    ['568 L', 568, 'litre'],
    ['0.4 in', 0.4, 'inch'],
    ['0.4"', 0.4, 'inch'],
    ['10 mm', 10, 'millimetre'],
    ['3 of 5', 3, 'day'],
    ['3/5', 3, 'day'],
    ['3 days', 3, 'day'],
  ])('%s', (text, value, unit) => {
    expect(parseAmount(text, 'en-US')).toEqual({ kind: 'amount', value, unit });
  });

  it('nothing as nothing', () => {
    expect(parseAmount('  ', 'en-US')).toEqual({ kind: 'empty' });
  });
});

it.each([
  ['45 foo', '“foo” is no unit that is known here'],
  ['abc', '“abc” is not a number'],
  ['min', '“min” is not a number'],
  ['45 50 min', '“45 50” is not a number'],
  ['1 h -20', 'Minutes behind hours are from 0 to 59'],
  ['1 h 75', 'Minutes behind hours are from 0 to 59'],
  ['475,962 min', '“475,962” could be 475962 or 475.962: write it one of these two ways'],
])('parseAmount says why it cannot read %s', (text, why) => {
  expect(parseAmount(text, 'en-US')).toEqual({ kind: 'unread', why });
});
