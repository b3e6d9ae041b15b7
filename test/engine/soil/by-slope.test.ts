import { describe, expect, test } from 'vitest';
import { bySlope } from '../../../src/engine/soil/by-slope.ts';

const table = Object.freeze({
  upperEndsPercent: Object.freeze([4, 8, Number.POSITIVE_INFINITY]),
  values: Object.freeze([30, 20, 10]),
});

describe('the value of a table by slope', () => {
  test.each([
    [0, 30],
    [4, 30],
    [4.5, 20],
    [8, 20],
    [8.01, 10],
    [100, 10],
  ])('a slope of %d %% reads %d', (slope, expected) => {
    expect(bySlope(slope, table)).toBe(expected);
  });

  test.each([-1, Number.NaN])('refuses a slope of %d', (slope) => {
    expect(() => bySlope(slope, table)).toThrow(new RangeError(`The slope is ${slope} %; it must be 0 or more.`));
  });
});
