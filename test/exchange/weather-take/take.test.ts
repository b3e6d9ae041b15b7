import { describe, expect, it } from 'vitest';
import { dayNumber, dayNumberOf } from '../../../src/engine/calendar.ts';
import type { DailyRecord } from '../../../src/engine/record/daily-record.ts';
import { takeClimate } from '../../../src/exchange/weather-take/take-climate.ts';
import { takeForecast, takeReadings } from '../../../src/exchange/weather-take/take-readings.ts';
import { tryEdit } from '../../../src/plan/edits/apply-edit.ts';
import { convertUnits } from '../../../src/plan/edits/convert-units.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { oneBed } from '../../support/small-plans.ts';

const FIRST = '2027-05-03';
const first = dayNumber(FIRST);
const plan = oneBed({ season: { firstDay: FIRST, weeks: 4 } });

/** Invented: 0.1 in of rain and 0.2 in of reference ET a day, 50 to 68 °F. */
const record = (days: number, change: DailyRecord['columns'] = {}): DailyRecord => ({
  firstDay: first - 3,
  dayCount: days,
  columns: {
    rainMm: new Float64Array(days).fill(2.54),
    etoMm: new Float64Array(days).fill(5.08),
    minTemperatureC: new Float64Array(days).fill(10),
    maxTemperatureC: new Float64Array(days).fill(20),
    ...change,
  },
});

function applied(before: Plan, edit: ReturnType<typeof takeForecast>): Plan {
  const result = edit && tryEdit(before, edit);
  if (result?.ok !== true) throw new Error('the edit was refused');
  return result.plan;
}

describe('readings of the season', () => {
  it('fill the days before today, in the season, in the plan’s units', () => {
    const taken = takeReadings(record(40), plan, first + 5);
    expect(taken).toMatchObject({ filled: 5, typed: 0, missing: 0 });
    const { log } = applied(plan, taken.edit);
    expect(Object.keys(log?.days ?? {})).toEqual([
      '2027-05-03',
      '2027-05-04',
      '2027-05-05',
      '2027-05-06',
      '2027-05-07',
    ]);
    expect(log?.days?.['2027-05-03']).toEqual({ rain: 0.1, eto: 0.2 });
    expect(takeReadings(record(40), applied(plan, taken.edit), first + 5)).toMatchObject({ edit: undefined, typed: 5 });
  });

  it('leave what was typed: a day’s own, and a total as far as it was read', () => {
    const typed: Plan = {
      ...plan,
      log: {
        days: { '2027-05-03': { rain: 0.5 }, '2027-05-04': { minTemperature: 40, maxTemperature: 60 } },
        weeks: { '2027-05-10': { rain: 1, rainThrough: '2027-05-12' } },
      },
    };
    const { days } = applied(typed, takeReadings(record(40), typed, first + 14).edit).log ?? {};
    expect(days?.['2027-05-03']).toEqual({ rain: 0.5, eto: 0.2 });
    expect(days?.['2027-05-04']).toEqual({ minTemperature: 40, maxTemperature: 60, rain: 0.1 });
    expect(days?.['2027-05-12']).toEqual({ eto: 0.2 });
    expect(days?.['2027-05-13']).toEqual({ rain: 0.1, eto: 0.2 });
  });

  it('say which days lack rain, and take temperatures where there is no reference ET', () => {
    const rainMm = new Float64Array(40).fill(0);
    rainMm.fill(Number.NaN, 4, 6);
    const taken = takeReadings(record(40, { rainMm, etoMm: new Float64Array(40).fill(Number.NaN) }), plan, first + 4);
    expect(taken.missing).toBe(2);
    expect(applied(plan, taken.edit).log?.days?.['2027-05-04']).toEqual({ minTemperature: 50, maxTemperature: 68 });
  });

  it('of days to come are a forecast of today', () => {
    const { log } = applied(plan, takeForecast(record(12), plan, first + 7));
    expect(log?.forecasts).toEqual([
      { issued: '2027-05-10', days: { '2027-05-10': { rain: 0.1, eto: 0.2 }, '2027-05-11': { rain: 0.1, eto: 0.2 } } },
    ]);
    expect(takeForecast(record(12), plan, first + 60)).toBeUndefined();
  });
});

describe('the climate of a record', () => {
  const years = (from: number, to: number, columns: (days: number) => DailyRecord['columns']): DailyRecord => {
    const firstDay = dayNumberOf({ year: from, month: 0, dayOfMonth: 1 });
    const dayCount = dayNumberOf({ year: to + 1, month: 0, dayOfMonth: 1 }) - firstDay;
    return { firstDay, dayCount, columns: columns(dayCount) };
  };
  const fill = (days: number, value: number) => new Float64Array(days).fill(value);

  it('is in the plan’s units, with its rain days, and survives a change of units', () => {
    const four = years(2012, 2015, (days) => ({ rainMm: fill(days, 2.54), etoMm: fill(days, 5.08) }));
    const taken = takeClimate(four, plan, { source: 'a file' });
    expect(taken.climate).toMatchObject({
      source: 'a file',
      rainDays: [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31],
    });
    expect(taken.climate.rain[0]).toBe(3.1);
    expect(taken.climate.eto?.[1]).toBe(5.6);
    expect(taken.climate.rainDayThreshold).toBeUndefined();
    const there = convertUnits(applied(plan, taken.edit), 'metric');
    expect(there.site.climate.rain[0]).toBeCloseTo(78.74, 1);
    expect(takeClimate(four, plan, { source: '', rainDayThresholdMm: 1 }).climate.rainDayThreshold).toBeCloseTo(
      0.03937,
      5,
    );
  });

  it('keeps what the record has not: rain alone leaves reference ET, temperatures alone the rain', () => {
    const rainOnly = takeClimate(
      years(2014, 2015, (days) => ({ rainMm: fill(days, 1) })),
      plan,
      { source: '' },
    );
    expect(rainOnly.lacking).toEqual(['eto']);
    expect(rainOnly.climate.eto).toBe(plan.site.climate.eto);
    const warm = years(2014, 2015, (days) => ({ minTemperatureC: fill(days, 10), maxTemperatureC: fill(days, 20) }));
    const noRain = takeClimate(warm, plan, { source: '' });
    expect(noRain).toMatchObject({ lacking: ['rain'], years: 0 });
    expect(noRain.climate.rain).toBe(plan.site.climate.rain);
    expect(noRain.etoDays['hargreaves-samani']).toBe(730);
    expect(takeClimate(record(20), plan, { source: '' }).edit).toBeUndefined();
  });

  it('bridges gaps in temperatures only where that was agreed', () => {
    const gappy = years(2014, 2015, (days) => {
      const min = fill(days, 10);
      min.fill(Number.NaN, 100, 103);
      return { minTemperatureC: min, maxTemperatureC: fill(days, 20), rainMm: fill(days, 0) };
    });
    expect(takeClimate(gappy, plan, { source: '' }).etoDays['hargreaves-samani']).toBe(727);
    expect(takeClimate(gappy, plan, { source: '', bridge: true }).etoDays['hargreaves-samani']).toBe(730);
  });
});
