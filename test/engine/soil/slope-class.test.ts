import { describe, expect, test } from 'vitest';
import { slopeClass } from '../../../src/engine/soil/slope-class.ts';

const upperEnds = Object.freeze([4, 8, Number.POSITIVE_INFINITY]);

describe('slope class', () => {
  test.each([
    [0, 0],
    [4, 0],
    [4.5, 1],
    [8, 1],
    [8.01, 2],
    [100, 2],
  ])('a slope of %d %% is in class %d', (slope, expected) => {
    expect(slopeClass(slope, upperEnds)).toBe(expected);
  });

  test.each([-1, Number.NaN])('refuses a slope of %d', (slope) => {
    expect(() => slopeClass(slope, upperEnds)).toThrow(RangeError);
  });
});
