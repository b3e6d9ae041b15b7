/** Records, their reference ET, normals, gaps and spans. */
import { describe, expect, it } from 'vitest';
import { dayNumber, dayNumberOf, dayOfYear, daysInMonth, monthOf } from '../../../src/engine/calendar.ts';
import { dailyReferenceEt } from '../../../src/engine/climate/reference-et.ts';
import type { DailyRecord } from '../../../src/engine/record/daily-record.ts';
import { partOf } from '../../../src/engine/record/daily-record.ts';
import { recordEto } from '../../../src/engine/record/record-eto.ts';
import { bridged, recordGaps } from '../../../src/engine/record/record-gaps.ts';
import { monthsWithout, recordNormals } from '../../../src/engine/record/record-normals.ts';
import { fullYears, normalsPart } from '../../../src/engine/record/record-span.ts';
import { CITIES, type City, type CityDay, dailyWeather, normalsOf } from '../../published/seasons/daily-weather.ts';

/** data/weather.csv of vega-datasets (BSD-3-Clause; NOAA origin), 2012 to 2015. */
function cityRecord(days: readonly CityDay[]): DailyRecord {
  return {
    firstDay: (days[0] as CityDay).day,
    dayCount: days.length,
    columns: {
      rainMm: Float64Array.from(days, ({ rainMm }) => rainMm),
      minTemperatureC: Float64Array.from(days, ({ minTemperatureC }) => minTemperatureC),
      maxTemperatureC: Float64Array.from(days, ({ maxTemperatureC }) => maxTemperatureC),
    },
  };
}

/** Mean rain days of each month, counted from the same days apart from this kit. */
const COUNTED: Readonly<Record<City['name'], readonly (readonly [number, readonly number[]])[]>> = {
  Seattle: [
    [0.25, [16.5, 18.2, 18.2, 14.8, 8.5, 9.2, 2.8, 5.5, 8.8, 15.2, 17.8, 20.2]],
    [1, [14.2, 14.5, 15.5, 12.8, 6.2, 6, 1.8, 4.2, 5.8, 12.5, 15, 18]],
  ],
  'New York': [
    [0.25, [10.8, 10.5, 10.2, 8, 11, 11.5, 10, 6.8, 8, 8.8, 7.2, 14.8]],
    [1, [9, 6.8, 8, 6.8, 7.8, 9, 7.5, 5.5, 6, 5.8, 5.8, 12.8]],
  ],
};

describe.each(CITIES)('normals of four years of $name', (city) => {
  const days = dailyWeather(city);
  const record = cityRecord(days);
  const eto = recordEto(record, city);
  const normals = recordNormals(record, { etoMm: eto.mm, rainDayThresholdMm: 0.25 });

  it('are the sums that are made by hand: of rain, reference ET and rain days, a leap February as 28 days', () => {
    const byHand = normalsOf(days);
    for (const [month, rainMm] of byHand.rainMm.entries()) {
      expect(normals.rainMm?.[month]).toBeCloseTo(rainMm, 9);
      expect(normals.etoMm?.[month]).toBeCloseTo(byHand.etoMm?.[month] ?? Number.NaN, 9);
      expect(normals.rainDays?.[month]).toBeCloseTo(byHand.rainDays?.[month] ?? Number.NaN, 9);
    }
  });

  it.each(COUNTED[city.name])(
    'have the rain days of %d mm or more that were counted: %j',
    (rainDayThresholdMm, counted) => {
      const { rainDays = [] } = recordNormals(record, { etoMm: eto.mm, rainDayThresholdMm });
      // Four years count in quarters, printed to a tenth; the leap February is brought to 28 days.
      for (const [month, count] of counted.entries()) {
        expect(Math.abs((rainDays[month] ?? Number.NaN) - count)).toBeLessThan(month === 1 ? 0.22 : 0.051);
      }
    },
  );

  it('are the means of highs and lows', () => {
    for (let month = 0; month < 12; month += 1) {
      const ofMonth = days.filter(({ day }) => monthOf(day) === month);
      const mean = (figure: (day: CityDay) => number) =>
        ofMonth.reduce((sum, day) => sum + figure(day), 0) / ofMonth.length;
      expect(normals.minTemperatureC?.[month]).toBeCloseTo(
        mean((day) => day.minTemperatureC),
        9,
      );
      expect(normals.maxTemperatureC?.[month]).toBeCloseTo(
        mean((day) => day.maxTemperatureC),
        9,
      );
    }
  });

  it('count rain days by the threshold that is asked for', () => {
    const fewer = recordNormals(record, { etoMm: eto.mm, rainDayThresholdMm: 5 });
    const wet = days.filter(({ day, rainMm }) => monthOf(day) === 10 && rainMm >= 5).length;
    expect(fewer.rainDays?.[10]).toBeCloseTo(wet / 4, 9);
  });

  it('say by which method reference ET was made', () => {
    expect(eto.days).toEqual({ observed: 0, 'penman-monteith': 0, 'hargreaves-samani': days.length });
  });
});

describe('reference ET of a record', () => {
  const firstDay = dayNumber('2027-07-06');
  const of = (...values: readonly number[]) => Float64Array.from(values);
  const site = { latitudeDeg: 50.8, elevationM: 100, windHeightM: 10 };

  it('is Penman-Monteith where a day has all it needs (FAO-56 Example 18, Uccle, July 6: 3.9 mm), else Hargreaves-Samani', () => {
    const record: DailyRecord = {
      firstDay,
      dayCount: 3,
      columns: {
        minTemperatureC: of(12.3, 12.3, Number.NaN),
        maxTemperatureC: of(21.5, 21.5, 21.5),
        maxHumidityPercent: of(84, 84, 84),
        minHumidityPercent: of(63, 63, 63),
        windMs: of(2.078, 2.078, 2.078),
        radiationMj: of(22.07, Number.NaN, 22.07),
      },
    };
    const { mm, days } = recordEto(record, site);
    expect(mm[0]).toBeCloseTo(3.9, 1);
    const temperatures = { minTemperatureC: 12.3, maxTemperatureC: 21.5 };
    expect(mm[1]).toBe(dailyReferenceEt(temperatures, site, dayOfYear(firstDay + 1))?.etoMm);
    expect(mm[2]).toBeNaN();
    expect(days).toEqual({ observed: 0, 'penman-monteith': 1, 'hargreaves-samani': 1 });
  });

  it('is the record’s own where it has one, even where the extremes are the wrong way round', () => {
    const columns = { etoMm: of(4.2), minTemperatureC: of(20), maxTemperatureC: of(10) };
    expect(recordEto({ firstDay, dayCount: 1, columns }, site).mm[0]).toBe(4.2);
  });
});

const yearsFrom = (first: number, last: number): DailyRecord => {
  const firstDay = dayNumberOf({ year: first, month: 0, dayOfMonth: 1 });
  const dayCount = dayNumberOf({ year: last + 1, month: 0, dayOfMonth: 1 }) - firstDay;
  return { firstDay, dayCount, columns: { rainMm: new Float64Array(dayCount).fill(1) } };
};

describe('the years of a record', () => {
  it.each([
    [1985, 2024, 1991, 2020],
    [1995, 2027, 1998, 2027],
    [2012, 2015, 2012, 2015],
  ])('from %i to %i give normals of %i to %i', (first, last, from, to) => {
    const record = yearsFrom(first, last);
    const part = normalsPart(record, [record.columns.rainMm]);
    expect(part.firstDay).toBe(dayNumberOf({ year: from, month: 0, dayOfMonth: 1 }));
    expect(part.dayCount).toBe(dayNumberOf({ year: to + 1, month: 0, dayOfMonth: 1 }) - part.firstDay);
  });

  it('are full with a twentieth of their days missing, and not with more', () => {
    const record = yearsFrom(2021, 2023);
    record.columns.rainMm?.fill(Number.NaN, 100, 118);
    record.columns.rainMm?.fill(Number.NaN, 465, 484);
    expect(fullYears(record, [record.columns.rainMm])).toEqual([2021, 2023]);
    expect(fullYears(partOf(record, record.firstDay + 40, record.firstDay + 4000), [record.columns.rainMm])).toEqual([
      2023,
    ]);
  });
});

describe('gaps', () => {
  const record: DailyRecord = {
    firstDay: 100,
    dayCount: 12,
    columns: {
      rainMm: Float64Array.from([1, Number.NaN, 3, 0, 0, 0, 0, 0, 0, 0, 0, Number.NaN]),
      minTemperatureC: Float64Array.from([
        2,
        Number.NaN,
        Number.NaN,
        8,
        ...new Array<number>(6).fill(Number.NaN),
        5,
        5,
      ]),
    },
  };

  it('are named with their first day and length', () => {
    expect(recordGaps(record, 'rainMm')).toEqual([
      { firstDay: 101, days: 1 },
      { firstDay: 111, days: 1 },
    ]);
    expect(recordGaps(record, 'etoMm')).toEqual([]);
  });

  it('of temperatures are bridged by a straight line up to five days; longer ones and rain stay', () => {
    const { columns } = bridged(record);
    expect([...(columns.minTemperatureC ?? [])].slice(0, 4)).toEqual([2, 4, 6, 8]);
    expect(columns.minTemperatureC?.subarray(4, 10).every(Number.isNaN)).toBe(true);
    expect(columns.rainMm?.[1]).toBeNaN();
    expect(record.columns.minTemperatureC?.[1]).toBeNaN();
  });

  it('of a whole month leave no normals', () => {
    const whole = yearsFrom(2021, 2021);
    whole.columns.rainMm?.fill(Number.NaN, 31, 31 + daysInMonth(2021, 1));
    const { rainMm } = recordNormals(whole, { etoMm: new Float64Array(365).fill(2), rainDayThresholdMm: 0.25 });
    expect(rainMm).toBeUndefined();
    expect(monthsWithout(whole.columns.rainMm, whole.firstDay)).toEqual([1]);
  });
});
