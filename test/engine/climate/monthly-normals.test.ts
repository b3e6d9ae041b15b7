import { describe, expect, it } from 'vitest';
import { dayNumber } from '../../../src/engine/calendar.ts';
import { monthlyNormals, yearsOf } from '../../../src/engine/climate/monthly-normals.ts';
import { seattleWeather } from './seattle-weather.ts';

// Monthly means over 2012 to 2015 of data/seattle-weather.csv, vega-datasets (NOAA origin), reckoned apart from this kit.
const TMAX = [8.23, 9.86, 12.39, 15.02, 19.3, 22.4, 26.0, 26.11, 21.92, 16.39, 11.02, 8.19];
const TMIN = [2.7, 4.05, 4.86, 6.36, 9.61, 12.24, 14.2, 14.77, 12.36, 9.35, 4.7, 3.32];
const RAIN = [116.5, 105.5, 151.6, 93.9, 51.9, 33.2, 12.1, 40.9, 58.9, 125.9, 160.6, 155.7];

describe('monthlyNormals', () => {
  const days = seattleWeather();
  const normals = monthlyNormals(days);

  it('gives the monthly means of four years in Seattle', () => {
    normals.maxTemperatureC.forEach((value, month) => {
      expect(value).toBeCloseTo(TMAX[month] as number, 1);
    });
    normals.minTemperatureC.forEach((value, month) => {
      expect(value).toBeCloseTo(TMIN[month] as number, 1);
    });
  });

  it('gives the mean monthly rain; a leap February counts 28 of its days', () => {
    normals.rainMm.forEach((value, month) => {
      const expected = month === 1 ? ((RAIN[1] as number) * 4 * 28) / (28 * 4 + 1) : (RAIN[month] as number);
      expect(Math.abs(value - expected)).toBeLessThan(0.06);
    });
  });

  it('takes a missing reading for neither rain nor drought', () => {
    const gaps = days.map((day, index) => (index % 3 === 0 ? { ...day, rainMm: undefined } : day));
    const total = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0);
    const full = total(normals.rainMm);
    expect(Math.abs(total(monthlyNormals(gaps).rainMm) - full) / full).toBeLessThan(0.1);
  });

  it('names the month that has no reading', () => {
    const withoutMay = days.filter(({ day }) => new Date(day * 86_400_000).getUTCMonth() !== 4);
    expect(() => monthlyNormals(withoutMay)).toThrow('month 5');
  });

  it('lists the years', () => {
    expect(yearsOf(days)).toEqual([2012, 2013, 2014, 2015]);
    expect(yearsOf([{ day: dayNumber('2026-12-31') }, { day: dayNumber('2025-01-01') }])).toEqual([2025, 2026]);
  });
});
