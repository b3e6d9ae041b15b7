import { describe, expect, test } from 'vitest';
import { type DayNumber, dayNumber, isoDate } from '../../../src/engine/calendar.ts';
import type { WeatherStretch, WeatherYears } from '../../../src/engine/garden.ts';
import { recordedYears } from '../../../src/engine/rain/recorded-years.ts';
import { ofYear } from '../../support/of-year.ts';
import { cityRain } from './city-rain.ts';

/** Days whose rain says which day they are: day number over 1000, and whose reference ET is 3 mm. */
function stretch(
  from: string,
  to: string,
  change: (date: string) => Partial<{ rain: number; eto: number }> = () => ({}),
) {
  const firstDay = dayNumber(from);
  const days = Array.from({ length: dayNumber(to) - firstDay + 1 }, (_, index) => firstDay + index);
  return {
    firstDay,
    rainMm: Float64Array.from(days, (day) => change(isoDate(day)).rain ?? day / 1000),
    etoMm: Float64Array.from(days, (day) => change(isoDate(day)).eto ?? 3),
  };
}

function record(...stretches: readonly WeatherStretch[]): WeatherYears {
  return Object.freeze({ source: 'made up for the test', stretches });
}

function season(firstDate: string, days: number, etoMm = 4): { firstDay: DayNumber; etoMm: Float64Array } {
  return { firstDay: dayNumber(firstDate), etoMm: new Float64Array(days).fill(etoMm) };
}

/** The days that each year's rain was taken from. */
function datesOf(years: ReturnType<typeof recordedYears>): readonly (readonly string[])[] {
  if (years === undefined) return [];
  return Array.from({ length: years.years }, (_, year) =>
    [...ofYear(years.rainMm, years, year)].map((mm) => isoDate(Math.round(mm * 1000))),
  );
}

describe('recorded years', () => {
  test('are those that a stretch has all days of, from the season’s own month and day on', () => {
    const years = recordedYears(record(stretch('2011-04-02', '2014-04-03')), season('2026-04-01', 3));
    expect(datesOf(years)).toEqual([
      ['2012-04-01', '2012-04-02', '2012-04-03'],
      ['2013-04-01', '2013-04-02', '2013-04-03'],
      ['2014-04-01', '2014-04-02', '2014-04-03'],
    ]);
    expect(years).toMatchObject({ basis: 'record', years: 3, days: 3 });
    expect([...(years?.etoShare ?? [])]).toEqual(new Array(9).fill(0.75));
  });

  test('of Seattle and New York are four from April to October, with all rain of these days', () => {
    for (const city of ['Seattle', 'New York'] as const) {
      const { firstDay, rainMm } = cityRain(city);
      const days = Float64Array.from(rainMm);
      const years = recordedYears(record({ firstDay, rainMm: days, etoMm: days }), season('2026-04-01', 214));
      const from = dayNumber('2013-04-01') - firstDay;
      expect(years?.years).toBe(4);
      expect(years && ofYear(years.rainMm, years, 1)).toEqual(days.subarray(from, from + 214));
    }
  });

  test('take February 28 a second time where a year has no leap day', () => {
    const years = recordedYears(record(stretch('2015-01-01', '2016-12-31')), season('2028-02-28', 3));
    expect(datesOf(years)).toEqual([
      ['2015-02-28', '2015-02-28', '2015-03-01'],
      ['2016-02-28', '2016-02-29', '2016-03-01'],
    ]);
  });

  test('leave out a leap day that the season has not', () => {
    const years = recordedYears(record(stretch('2016-01-01', '2016-12-31')), season('2026-02-27', 4));
    expect(datesOf(years)).toEqual([['2016-02-27', '2016-02-28', '2016-03-01', '2016-03-02']]);
  });

  test('start on February 28 where the season starts on a leap day', () => {
    const years = recordedYears(record(stretch('2015-02-28', '2015-03-02')), season('2028-02-29', 2));
    expect(datesOf(years)).toEqual([['2015-02-28', '2015-03-01']]);
  });

  test('of a season over the new year, and of one of two years, run on in the record', () => {
    const kept = record(stretch('2010-01-01', '2013-12-31'));
    expect(datesOf(recordedYears(kept, season('2026-12-31', 2)))).toEqual([
      ['2010-12-31', '2011-01-01'],
      ['2011-12-31', '2012-01-01'],
      ['2012-12-31', '2013-01-01'],
    ]);
    const long = datesOf(recordedYears(kept, season('2026-03-01', 728)));
    expect(long.map((dates) => [dates[0], dates[727]])).toEqual([
      ['2010-03-01', '2012-02-26'],
      ['2011-03-01', '2013-02-26'],
    ]);
  });

  test('may lie in several stretches, in any order; of one that lies in two the first that will do counts', () => {
    const missing = stretch('2012-04-01', '2012-04-30', () => ({ rain: Number.NaN }));
    const kept = record(stretch('2014-01-01', '2014-12-31'), missing, stretch('2012-01-01', '2012-12-31'));
    expect(datesOf(recordedYears(kept, season('2026-04-01', 1)))).toEqual([['2012-04-01'], ['2014-04-01']]);
    const twice = record(
      stretch('2014-01-01', '2014-12-31'),
      stretch('2014-01-01', '2014-12-31', () => ({ rain: 0 })),
    );
    expect(datesOf(recordedYears(twice, season('2026-04-01', 1)))).toEqual([['2014-04-01']]);
  });

  test.each([
    [5, 1],
    [6, 0],
  ])('with rain missing on %d of a hundred days are %d', (missing, expected) => {
    const gaps = Array.from({ length: missing }, (_, index) => isoDate(dayNumber('2014-05-01') + index));
    const kept = record(
      stretch('2014-04-01', '2014-12-31', (date) => (gaps.includes(date) ? { rain: Number.NaN } : {})),
    );
    const years = recordedYears(kept, season('2026-04-01', 100));
    expect(years?.years ?? 0).toBe(expected);
    if (years !== undefined) {
      expect([years.rainMm[29], years.rainMm[30], years.rainMm[35]]).toEqual([16.19, 0, 16.196]);
      expect([years.etoShare[29], years.etoShare[30], years.etoShare[35]]).toEqual([0.75, 1, 0.75]);
    }
  });

  test('take the normals where reference ET is missing, or where the normal is 0', () => {
    const kept = record(
      stretch('2014-04-01', '2014-04-03', (date) => (date === '2014-04-02' ? { eto: Number.NaN } : {})),
    );
    const normals = { firstDay: dayNumber('2026-04-01'), etoMm: Float64Array.of(2, 2, 0) };
    expect([...(recordedYears(kept, normals)?.etoShare ?? [])]).toEqual([1.5, 1, 1]);
  });

  test('are not there where no stretch is long enough', () => {
    expect(recordedYears(record(), season('2026-04-01', 7))).toBeUndefined();
    expect(recordedYears(record(stretch('2014-04-01', '2014-04-06')), season('2026-04-01', 7))).toBeUndefined();
    expect(recordedYears(record(stretch('2014-04-02', '2014-04-20')), season('2026-04-01', 7))).toBeUndefined();
  });
});
