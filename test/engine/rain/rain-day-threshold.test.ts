import { describe, expect, test } from 'vitest';
import { gammaCumulative } from '../../../src/engine/rain/gamma-distribution.ts';
import { rainDaysAtLeast025Mm } from '../../../src/engine/rain/rain-day-threshold.ts';
import { rainDepths } from '../../../src/engine/rain/rain-days.ts';
import { cityRain, daysWithAtLeast } from './city-rain.ts';

const MONTH_DAYS = [31, 28.25, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

function daysReaching(mm: number, days: number, rainMm: number): number {
  const { shape, scaleMm } = rainDepths(rainMm / days);
  return days * (1 - gammaCumulative(mm / scaleMm, shape));
}

describe('rain days by another threshold', () => {
  test.each([
    [1, 12, 80],
    [1, 4.5, 30],
    [1, 25, 240],
    [2.54, 8, 60],
    [1, 14, 30],
  ])('from %d mm on, undoes the distribution: %d days of %d mm', (thresholdMm, days, rainMm) => {
    const given = daysReaching(thresholdMm, days, rainMm);
    expect(given).toBeLessThan(days);
    expect(rainDaysAtLeast025Mm(given, thresholdMm, rainMm, 30)).toBeCloseTo(days, 5);
  });

  test('more days over the threshold are more rain days', () => {
    const converted = [1, 2, 4, 6, 8, 10].map((days) => rainDaysAtLeast025Mm(days, 1, 90, 31));
    expect(converted).toEqual([...converted].sort((one, other) => one - other));
    expect(new Set(converted).size).toBe(6);
  });

  test.each(['Seattle', 'New York'] as const)(
    '%s, 2012 to 2015: from days of 1 mm to days of 0.25 mm, to 6 %% of a year',
    (city) => {
      const rain = cityRain(city);
      const given = daysWithAtLeast(rain, 0.95);
      const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
      const converted = given.map((days, month) =>
        rainDaysAtLeast025Mm(days, 1, rain.monthlyRainMm[month] as number, MONTH_DAYS[month] as number),
      );
      expect(Math.abs(sum(converted) / sum(rain.rainDays) - 1)).toBeLessThan(0.06);
      expect(Math.abs(sum(given) / sum(rain.rainDays) - 1)).toBeGreaterThan(0.15);
    },
  );

  test('a threshold of one reading, 0.25 or 0.3 mm, leaves the days as they are', () => {
    expect(rainDaysAtLeast025Mm(9, 0.25, 60, 30)).toBe(9);
    expect(rainDaysAtLeast025Mm(9, 0.3, 60, 30)).toBe(9);
  });

  test('a lower threshold has some days that do not reach 0.25 mm', () => {
    const days = rainDaysAtLeast025Mm(12, 0.1, 60, 30);
    expect(days).toBeLessThan(12);
    expect(days / 12).toBeCloseTo(daysReaching(0.25, 12, 60) / daysReaching(0.1, 12, 60), 10);
  });

  test('is bounded by the month and its rain, and gives the nearest where no number of days would do', () => {
    expect(rainDaysAtLeast025Mm(29, 1, 600, 30)).toBe(30);
    expect(rainDaysAtLeast025Mm(40, 1, 600, 30)).toBe(30);
    expect(rainDaysAtLeast025Mm(9, 1, 1.5, 30)).toBe(5);
    const nearest = rainDaysAtLeast025Mm(6, 10, 60, 30);
    expect(nearest).toBeGreaterThan(6);
    for (const other of [nearest - 1, nearest + 1]) {
      expect(daysReaching(10, nearest, 60)).toBeGreaterThan(daysReaching(10, other, 60));
    }
  });

  test('none given, or no rain, is none', () => {
    expect(rainDaysAtLeast025Mm(0, 1, 20, 30)).toBe(0);
    expect(rainDaysAtLeast025Mm(5, 1, 0, 30)).toBe(0);
  });
});
