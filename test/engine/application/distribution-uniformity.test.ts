import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lowestQuarterUniformity } from '../../../src/engine/application/distribution-uniformity.ts';

const uniformity = (catches: readonly number[]): number => lowestQuarterUniformity(Object.freeze([...catches]));

describe('distribution uniformity of the lowest quarter', () => {
  // The definition worked by hand (UC Davis, UC Cooperative Extension): mean of the lowest quarter over mean of all.
  test.each([
    ['8 catches: (6 + 8) / 2 over 80 / 8', [12, 8, 10, 11, 9, 13, 6, 11], 0.7],
    ['4 catches: 3 over 20 / 4', [7, 3, 5, 5], 0.6],
    ['6 catches: (2 + 4 / 2) / 1.5 over 30 / 6', [6, 2, 4, 6, 6, 6], 8 / 15],
    ['all alike', [4, 4, 4, 4, 4], 1],
    ['a quarter dry', [0, 5, 5, 5], 0],
  ])('%s', (_name, catches, expected) => {
    expect(uniformity(catches)).toBeCloseTo(expected, 12);
  });

  test.each([
    ['fewer than four catches', [1, 2, 3], 'There are 3 catches'],
    ['a catch below 0', [1, 2, -3, 4], 'One catch is -3'],
    ['a catch that is not a number', [1, 2, Number.NaN, 4], 'One catch is NaN'],
    ['catches that are all 0', [0, 0, 0, 0], 'Every catch is 0'],
  ])('refuses %s', (_name, catches, message) => {
    expect(() => uniformity(catches)).toThrow(RangeError);
    expect(() => uniformity(catches)).toThrow(message);
  });

  test('lies within 0 and 1, whatever the order and the unit', () => {
    const catches = fc.array(fc.double({ min: 0.1, max: 50, noNaN: true }), { minLength: 4, maxLength: 40 });
    fc.assert(
      fc.property(catches, (amounts) => {
        const value = uniformity(amounts);
        expect(value > 0 && value <= 1).toBe(true);
        expect(uniformity(amounts.toReversed())).toBeCloseTo(value, 10);
        expect(uniformity(amounts.map((amount) => amount * 3.785))).toBeCloseTo(value, 10);
      }),
    );
  });
});
