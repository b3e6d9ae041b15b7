import { describe, expect, test } from 'vitest';
import { dailyRainCountedMm } from '../../../src/engine/rain/daily-threshold.ts';

describe('the daily threshold', () => {
  test.each([
    [0.9, 5, 0],
    [1, 5, 1],
    [1.1, 5, 1.1],
    [12, 5, 12],
    [0, 5, 0],
    [0.5, 0, 0.5],
  ])('FAO-56 p. 170: %d mm on a day of ETo %d mm counts %d mm', (rainMm, etoMm, expected) => {
    expect(dailyRainCountedMm(rainMm, etoMm)).toBe(expected);
  });
});
