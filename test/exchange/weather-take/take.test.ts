import { describe, expect, it } from 'vitest';
import { dayNumber, dayNumberOf } from '../../../src/engine/calendar.ts';
import type { DailyRecord } from '../../../src/engine/record/daily-record.ts';
import { takeClimate } from '../../../src/exchange/weather-take/take-climate.ts';
import { takeForecast, takeReadings } from '../../../src/exchange/weather-take/take-readings.ts';
import { takeSeason } from '../../../src/exchange/weather-take/take-season.ts';
import { tryEdit } from '../../../src/plan/edits/apply-edit.ts';
import { convertUnits } from '../../../src/plan/edits/convert-units.ts';
import { readPlan } from '../../../src/plan/reading/read-plan.ts';
import { writePlan } from '../../../src/plan/reading/write-plan.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { oneBed } from '../../support/small-plans.ts';

const SERVICE = { source: 'service' } as const;
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
    const taken = takeReadings(record(40), plan, first + 5, SERVICE);
    expect(taken).toMatchObject({ filled: 5, refreshed: 0, kept: 0, missing: 0 });
    const { log } = applied(plan, taken.edit);
    expect(Object.keys(log?.days ?? {})).toEqual([
      '2027-05-03',
      '2027-05-04',
      '2027-05-05',
      '2027-05-06',
      '2027-05-07',
    ]);
    expect(log?.days?.['2027-05-03']).toEqual({ rain: 0.1, eto: 0.2, source: 'service' });
    const again = takeReadings(record(40), applied(plan, taken.edit), first + 5, SERVICE);
    expect(again).toMatchObject({ edit: undefined, filled: 0, refreshed: 0, kept: 0 });
  });

  it('leave what was typed: a day’s own, and a total as far as it was read', () => {
    const typed: Plan = {
      ...plan,
      log: {
        days: { '2027-05-03': { rain: 0.5 }, '2027-05-04': { minTemperature: 40, maxTemperature: 60 } },
        weeks: { '2027-05-10': { rain: 1, rainThrough: '2027-05-12' } },
      },
    };
    const { days } = applied(typed, takeReadings(record(40), typed, first + 14, SERVICE).edit).log ?? {};
    expect(days?.['2027-05-03']).toEqual({ rain: 0.5, eto: 0.2, source: { eto: 'service' } });
    expect(days?.['2027-05-04']).toEqual({
      ...{ minTemperature: 40, maxTemperature: 60, rain: 0.1 },
      source: { rain: 'service' },
    });
    expect(days?.['2027-05-12']).toEqual({ eto: 0.2, source: 'service' });
    expect(days?.['2027-05-13']).toEqual({ rain: 0.1, eto: 0.2, source: 'service' });
  });

  it('say which days lack rain, and take temperatures where there is no reference ET', () => {
    const rainMm = new Float64Array(40).fill(0);
    rainMm.fill(Number.NaN, 4, 6);
    const taken = takeReadings(
      record(40, { rainMm, etoMm: new Float64Array(40).fill(Number.NaN) }),
      plan,
      first + 4,
      SERVICE,
    );
    expect(taken.missing).toBe(2);
    expect(applied(plan, taken.edit).log?.days?.['2027-05-04']).toEqual({
      ...{ minTemperature: 50, maxTemperature: 68 },
      source: 'service',
    });
  });

  it('of days to come are a forecast of today, and leave what was typed of it', () => {
    const day = { rain: 0.1, eto: 0.2, source: 'service' } as const;
    const { log } = applied(plan, takeForecast(record(12), plan, first + 7, SERVICE));
    expect(log?.forecasts).toEqual([{ issued: '2027-05-10', days: { '2027-05-10': day, '2027-05-11': day } }]);
    expect(takeForecast(record(12), plan, first + 60, SERVICE)).toBeUndefined();
    const typed: Plan = {
      ...plan,
      log: { forecasts: [{ issued: '2027-05-10', days: { '2027-05-11': { rain: 1 } } }] },
    };
    const both = applied(typed, takeForecast(record(12), typed, first + 7, SERVICE));
    expect(both.log?.forecasts?.[0]?.days).toEqual({ '2027-05-10': day, '2027-05-11': { rain: 1 } });
    expect(takeForecast(record(12), both, first + 7, SERVICE)).toBeUndefined();
  });
});

describe('where a reading comes from', () => {
  const rainy = (days: number, mm: number) => record(days, { rainMm: new Float64Array(days).fill(mm) });
  const day = '2027-05-04';
  const filled = applied(plan, takeReadings(record(40), plan, first + 5, SERVICE).edit);

  it('lets a service say it anew, and never touches what was typed since', () => {
    const typed = applied(filled, { type: 'change-day-weather', day, change: { rain: 0.7 } });
    expect(typed.log?.days?.[day]).toEqual({ rain: 0.7, eto: 0.2, source: { eto: 'service' } });
    const again = takeReadings(rainy(40, 5.08), typed, first + 5, SERVICE);
    expect(again).toMatchObject({ filled: 0, refreshed: 4, kept: 1 });
    const { days } = applied(typed, again.edit).log ?? {};
    expect(days?.[day]).toEqual({ rain: 0.7, eto: 0.2, source: { eto: 'service' } });
    expect(days?.['2027-05-05']).toEqual({ rain: 0.2, eto: 0.2, source: 'service' });
  });

  it('counts a figure that is typed as the service had it as typed, and one without a word as typed', () => {
    const same = applied(filled, { type: 'change-day-weather', day, change: { rain: 0.1, eto: 0.2 } });
    expect(same.log?.days?.[day]).toEqual({ rain: 0.1, eto: 0.2 });
    const older: Plan = { ...plan, log: { days: { [day]: { rain: 0.1, eto: 0.2 } } } };
    expect(takeReadings(rainy(40, 5.08), older, first + 2, SERVICE)).toMatchObject({
      filled: 1,
      refreshed: 0,
      kept: 1,
    });
  });

  it('lets a file take the place of a service, and not the other way round', () => {
    const fromFile = applied(filled, takeReadings(rainy(40, 5.08), filled, first + 5, { source: 'file' }).edit);
    expect(fromFile.log?.days?.[day]).toEqual({ rain: 0.2, eto: 0.2, source: 'file' });
    expect(takeReadings(record(40), fromFile, first + 5, SERVICE)).toMatchObject({ edit: undefined, kept: 5 });
  });

  it('is an estimate where a gap was bridged, which anything else replaces', () => {
    const hole = new Float64Array(40).fill(5.08);
    hole[5] = Number.NaN;
    const gap = { ...record(40, { etoMm: hole }) };
    const bridged = takeReadings(gap, plan, first + 5, { source: 'file', bridge: true });
    expect(bridged).toMatchObject({ filled: 5, estimated: 1 });
    const plain = takeReadings(gap, plan, first + 5, { source: 'file' });
    expect(plain).toMatchObject({ filled: 5, estimated: 0 });
    const after = applied(plan, bridged.edit);
    expect(after.log?.days?.['2027-05-05']).toEqual({ rain: 0.1, eto: 0.2, source: { rain: 'file', eto: 'estimate' } });
    const better = record(40, { etoMm: new Float64Array(40).fill(2.54) });
    const { days } = applied(after, takeReadings(better, after, first + 5, SERVICE).edit).log ?? {};
    expect(days?.['2027-05-05']).toEqual({ rain: 0.1, eto: 0.1, source: { rain: 'file', eto: 'service' } });
    expect(days?.['2027-05-04']).toEqual({ rain: 0.1, eto: 0.2, source: 'file' });
  });

  it('survives a change of units, saving and undo, and only known sources are read', () => {
    expect(convertUnits(filled, 'metric').log?.days?.[day]).toEqual({ rain: 2.54, eto: 5.08, source: 'service' });
    const read = readPlan(writePlan(filled));
    expect(read.ok && read.plan.log).toEqual(filled.log);
    const hostile = writePlan(filled).replace(
      '"source": "service"',
      '"source": { "__proto__": "service", "rain": "typed" }',
    );
    expect(readPlan(hostile).ok).toBe(false);
  });

  it('of a season’s beginning and its last days together is one step, and tells what neither has', () => {
    const early = { ...record(6), firstDay: first };
    const late = { ...record(3), firstDay: first + 7 };
    const taken = takeSeason([late, early], plan, first + 10, SERVICE);
    expect(taken).toMatchObject({ filled: 9, missing: 1, hasForecast: false });
    expect(Object.keys(applied(plan, taken.edit).log?.days ?? {})).toHaveLength(9);
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
