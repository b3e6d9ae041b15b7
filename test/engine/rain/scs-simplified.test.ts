import { describe, expect, test } from 'vitest';
import { scsSimplifiedMonthlyMm } from '../../../src/engine/rain/scs-simplified.ts';

describe('simplified SCS effective rain', () => {
  test.each([
    [0, 0],
    [10, 9.84],
    [20, 19.36],
    [50, 46],
    [75, 66],
    [100, 84],
    [125, 100],
    [150, 114],
    [200, 136],
    [250, 150],
    [300, 155],
    [450, 170],
  ])(
    'USDA SCS simplified, month: rain %d gives %d mm (450 is the example of the CRAN package FAO56)',
    (rain, expected) => {
      expect(scsSimplifiedMonthlyMm(rain)).toBeCloseTo(expected, 10);
    },
  );

  test('both monthly branches meet at 250 mm', () => {
    expect(scsSimplifiedMonthlyMm(250 + 1e-9)).toBeCloseTo(150, 6);
  });
});
