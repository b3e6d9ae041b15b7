import { describe, expect, test } from 'vitest';
import { faoMonthlyEffectiveRainMm } from '../../../src/engine/rain/fao-monthly.ts';

describe('FAO monthly effective rain', () => {
  test.each([
    [0, 0],
    [10, 0],
    [20, 2],
    [30, 8],
    [40, 14],
    [50, 20],
    [60, 26],
    [70, 32],
    [75, 35],
    [80, 39],
    [90, 47],
    [100, 55],
    [110, 63],
    [120, 71],
    [130, 79],
    [150, 95],
    [200, 135],
    [250, 175],
  ])('FAO Training Manual 3 (1986), Table 6: rain %d gives %d mm', (rainMm, expected) => {
    expect(faoMonthlyEffectiveRainMm(rainMm)).toBeCloseTo(expected, 10);
  });

  test('both branches meet at 75 mm', () => {
    expect(faoMonthlyEffectiveRainMm(75 + 1e-9)).toBeCloseTo(faoMonthlyEffectiveRainMm(75), 6);
  });
});
