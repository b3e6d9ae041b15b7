import { describe, expect, test } from 'vitest';
import { fixedFractionEffectiveRainMm } from '../../../src/engine/rain/fixed-fraction.ts';

describe('a fixed fraction of the rain', () => {
  test.each([
    [80, 0.25, 20],
    [80, 0, 0],
    [80, 1, 80],
  ])('%d mm at %d counts %d mm (arithmetic)', (rainMm, fraction, expected) => {
    expect(fixedFractionEffectiveRainMm(rainMm, fraction)).toBe(expected);
  });

  test.each([-0.1, 1.1, Number.NaN])('refuses a fraction of %d, in words', (fraction) => {
    expect(() => fixedFractionEffectiveRainMm(80, fraction)).toThrow(
      new RangeError(`The fraction of rain that counts is ${fraction}; it must be 0 to 1.`),
    );
  });
});
