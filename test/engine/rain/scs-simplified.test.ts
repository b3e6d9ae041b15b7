import { describe, expect, test } from 'vitest';
import { scsSimplifiedMonthlyMm, scsSimplifiedTenDayMm } from '../../../src/engine/rain/scs-simplified.ts';

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

  // Form from memory: P (125 - 0.6 P) / 125 up to 250/3 mm, then 125/3 + 0.1 P.
  test.each([
    [10, 9.52],
    [50, 38],
    [250 / 3, 50],
    [100, 51.6667],
  ])('USDA SCS simplified, ten days: rain %d gives %d mm (from memory)', (rain, expected) => {
    expect(scsSimplifiedTenDayMm(rain)).toBeCloseTo(expected, 3);
  });

  test('three alike decades count as the month does', () => {
    for (const month of [30, 90, 240, 300]) {
      expect(3 * scsSimplifiedTenDayMm(month / 3)).toBeCloseTo(scsSimplifiedMonthlyMm(month), 9);
    }
  });

  test('ten days fed to the monthly form would count too much', () => {
    expect(scsSimplifiedMonthlyMm(50)).toBeGreaterThan(scsSimplifiedTenDayMm(50) + 5);
  });
});
