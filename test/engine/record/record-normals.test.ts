import { describe, expect, it } from 'vitest';
import { monthOf } from '../../../src/engine/calendar.ts';
import type { DailyRecord } from '../../../src/engine/record/daily-record.ts';
import { monthsWithout, recordNormals } from '../../../src/engine/record/record-normals.ts';
import { type SeattleDay, seattleWeather } from '../climate/seattle-weather.ts';

// Monthly means over 2012 to 2015 of data/seattle-weather.csv, vega-datasets (NOAA origin), reckoned apart from this kit.
const TMAX = [8.23, 9.86, 12.39, 15.02, 19.3, 22.4, 26.0, 26.11, 21.92, 16.39, 11.02, 8.19];
const TMIN = [2.7, 4.05, 4.86, 6.36, 9.61, 12.24, 14.2, 14.77, 12.36, 9.35, 4.7, 3.32];
const RAIN = [116.5, 105.5, 151.6, 93.9, 51.9, 33.2, 12.1, 40.9, 58.9, 125.9, 160.6, 155.7];

const record = (days: readonly SeattleDay[]): DailyRecord => ({
  firstDay: (days[0] as SeattleDay).day,
  dayCount: days.length,
  columns: {
    rainMm: Float64Array.from(days, ({ rainMm }) => rainMm),
    minTemperatureC: Float64Array.from(days, ({ minTemperatureC }) => minTemperatureC),
    maxTemperatureC: Float64Array.from(days, ({ maxTemperatureC }) => maxTemperatureC),
  },
});

const normalsOf = (days: readonly SeattleDay[]) =>
  recordNormals(record(days), { etoMm: new Float64Array(days.length), rainDayThresholdMm: 0.25 });

const withoutRain = (day: SeattleDay): SeattleDay => ({ ...day, rainMm: Number.NaN });

describe('normals of a record', () => {
  const days = seattleWeather();
  const normals = normalsOf(days);

  it('give the monthly means of four years in Seattle', () => {
    for (const [month, highest] of TMAX.entries()) expect(normals.maxTemperatureC?.[month]).toBeCloseTo(highest, 1);
    for (const [month, lowest] of TMIN.entries()) expect(normals.minTemperatureC?.[month]).toBeCloseTo(lowest, 1);
  });

  it('give the mean monthly rain; a leap February counts 28 of its days', () => {
    for (const [month, rainMm] of RAIN.entries()) {
      const expected = month === 1 ? (rainMm * 4 * 28) / (28 * 4 + 1) : rainMm;
      expect(Math.abs((normals.rainMm?.[month] ?? Number.NaN) - expected)).toBeLessThan(0.06);
    }
  });

  it('take a missing reading for neither rain nor drought', () => {
    const gaps = days.map((day, index) => (index % 3 === 0 ? withoutRain(day) : day));
    const total = (values: readonly number[] | undefined) => (values ?? []).reduce((sum, value) => sum + value, 0);
    const full = total(normals.rainMm);
    expect(Math.abs(total(normalsOf(gaps).rainMm) - full) / full).toBeLessThan(0.1);
  });

  it('know no rain where a month was never read, and name the month', () => {
    const withoutMay = days.map((day) => (monthOf(day.day) === 4 ? withoutRain(day) : day));
    const { rainMm, maxTemperatureC } = normalsOf(withoutMay);
    expect(rainMm).toBeUndefined();
    expect(maxTemperatureC).toHaveLength(12);
    const { columns, firstDay } = record(withoutMay);
    expect(monthsWithout(columns.rainMm, firstDay)).toEqual([4]);
  });
});
