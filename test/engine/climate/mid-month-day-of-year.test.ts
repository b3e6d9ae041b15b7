import { expect, it } from 'vitest';
import { midMonthDayOfYear } from '../../../src/engine/climate/mid-month-day-of-year.ts';

it.each([
  ['January, 15', 0, 15],
  ['April, 105 (Example 17, p. 70)', 3, 105],
  ['July, 196 (Table 2.5; Example 20, p. 77)', 6, 196],
  ['December, 349', 11, 349],
] as const)('FAO-56 Table 2.5: %s', (_name, month, expected) => {
  expect(midMonthDayOfYear(month)).toBe(expected);
});

it("is within two days of the paper's shortcut INT(30.4 M - 15) (FAO-56 Table 2.5)", () => {
  for (let month = 0; month < 12; month += 1) {
    const shortcut = Math.trunc(30.4 * (month + 1) - 15);
    expect(Math.abs(midMonthDayOfYear(month) - shortcut)).toBeLessThanOrEqual(2);
  }
});
