import { describe, expect, test } from 'vitest';
import { type DayNumber, dayNumber, monthOf } from '../../../src/engine/calendar.ts';
import { monthlyToDaily } from '../../../src/engine/climate/monthly-to-daily.ts';
import { gammaCumulative } from '../../../src/engine/rain/gamma-distribution.ts';
import { madeYears } from '../../../src/engine/rain/made-years.ts';
import { rainChain, rainDepths } from '../../../src/engine/rain/rain-days.ts';
import type { SeasonYears } from '../../../src/engine/rain/season-years.ts';
import { ofYear } from '../../support/of-year.ts';
import { byMonth, cityRain } from './city-rain.ts';

const NEW_YEAR = dayNumber('2026-01-01');
const APRIL = dayNumber('2026-04-01');
const MONTH_DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const CITIES = ['Seattle', 'New York'] as const;

const rainOfYear = (made: SeasonYears, year: number): Float64Array => ofYear(made.rainMm, made, year);

/** Twelve sums over the months' days of all years, January first. */
function sumByMonth(
  firstDay: DayNumber,
  made: SeasonYears,
  values: Float64Array,
  of = (value: number): number => value,
) {
  const sums = new Array<number>(12).fill(0);
  for (let year = 0; year < made.years; year += 1) {
    const days = ofYear(values, made, year);
    for (const [month, sum] of byMonth(firstDay, days, of).entries()) sums[month] = (sums[month] as number) + sum;
  }
  return sums;
}

const isRain = (mm: number): number => (mm > 0 ? 1 : 0);

describe.each(CITIES)('years made from the months of %s', (city) => {
  const { monthlyRainMm, rainDays } = cityRain(city);
  const input = Object.freeze({ firstDay: NEW_YEAR, days: 365, monthlyRainMm, rainDays });
  const made = madeYears(input);
  const wetDays = sumByMonth(NEW_YEAR, made, made.rainMm, isRain);

  test('are sixty, of every day', () => {
    expect(made).toMatchObject({ basis: 'made', years: 60, days: 365 });
    expect([made.rainMm.length, made.etoShare.length]).toEqual([60 * 365, 60 * 365]);
  });

  test('have the rain of every month in the mean, to 0.05 mm of rounding', () => {
    for (const [month, sum] of sumByMonth(NEW_YEAR, made, made.rainMm).entries()) {
      expect(Math.abs(sum / 60 - (monthlyRainMm[month] as number))).toBeLessThan(0.05);
    }
  });

  // The spread of a count of n days in such a chain is sqrt(n f (1 - f) (1 + 0.25) / (1 - 0.25)) when nothing is evened out.
  test('have the rain days of every month, within three times the spread of a count', () => {
    for (const [month, count] of wetDays.entries()) {
      const days = 60 * (MONTH_DAYS[month] as number);
      const share = (rainDays[month] as number) / (MONTH_DAYS[month] as number);
      expect(Math.abs(count - days * share)).toBeLessThan(3 * Math.sqrt((days * share * (1 - share) * 1.25) / 0.75));
    }
    const total = wetDays.reduce((sum, count) => sum + count, 0) / 60;
    expect(Math.abs(total / rainDays.reduce((sum, days) => sum + days, 0) - 1)).toBeLessThan(0.02);
  });

  test('have rain after rain as often as the chain says', () => {
    let afterRain = 0;
    let expected = 0;
    let both = 0;
    for (let year = 0; year < 60; year += 1) {
      const rain = rainOfYear(made, year);
      for (let day = 1; day < 365; day += 1) {
        if (rain[day - 1] === 0) continue;
        const month = monthOf(NEW_YEAR + day);
        afterRain += 1;
        expected += rainChain((rainDays[month] as number) / (MONTH_DAYS[month] as number)).afterWet;
        both += isRain(rain[day] as number);
      }
    }
    // Three times the spread of a count; days that do not hang on each other would be 0.25 off.
    expect(Math.abs(both - expected) / afterRain).toBeLessThan(3 * Math.sqrt(0.25 / afterRain));
    expect(afterRain).toBeGreaterThan(6000);
  });

  test('have depths of the distribution, to tenths of a millimetre and never below 0.3', () => {
    for (const mm of [1, 5, 10, 25]) {
      const reaching = sumByMonth(NEW_YEAR, made, made.rainMm, (depth) => (depth >= mm - 0.05 ? 1 : 0));
      for (const [month, count] of reaching.entries()) {
        const { shape, scaleMm } = rainDepths((monthlyRainMm[month] as number) / (rainDays[month] as number));
        const share = count / (wetDays[month] as number);
        expect(Math.abs(share - 1 + gammaCumulative(mm / scaleMm, shape))).toBeLessThan(0.04);
      }
    }
    const isDepth = (mm: number): boolean => mm === 0 || (mm >= 0.3 && Math.abs(mm * 10 - Math.round(mm * 10)) < 1e-9);
    expect(made.rainMm.filter((mm) => !isDepth(mm))).toHaveLength(0);
  });

  test('have reference ET of a month that is its normal in the mean, on rain days 0.8 of that on dry days', () => {
    for (const [month, sum] of sumByMonth(NEW_YEAR, made, made.etoShare).entries()) {
      expect(sum / (60 * (MONTH_DAYS[month] as number))).toBeCloseTo(1, 12);
    }
    const shares = Array.from({ length: 12 }, () => ({ wet: new Set<number>(), dry: new Set<number>() }));
    for (const [at, share] of made.etoShare.entries()) {
      shares[monthOf(NEW_YEAR + Math.floor(at / 60))]?.[(made.rainMm[at] as number) > 0 ? 'wet' : 'dry'].add(share);
    }
    for (const { wet, dry } of shares) {
      expect([wet.size, dry.size]).toEqual([1, 1]);
      expect(([...wet][0] as number) / ([...dry][0] as number)).toBeCloseTo(0.8, 12);
    }
  });

  test('are the same every time', () => {
    const again = madeYears(input);
    expect(again.rainMm.join()).toBe(made.rainMm.join());
    expect(again.etoShare.join()).toBe(made.etoShare.join());
  });

  test('keep the rain of the other months when the normals of July change, but for the first days of August', () => {
    const change = (values: readonly number[], july: number) =>
      values.map((value, month) => (month === 6 ? july : value));
    const other = madeYears({ ...input, monthlyRainMm: change(monthlyRainMm, 120), rainDays: change(rainDays, 14) });
    let differing = 0;
    for (let year = 0; year < 60; year += 1) {
      const [one, two] = [rainOfYear(made, year), rainOfYear(other, year)];
      // The curve of daily normals moves within June, not its sum: whole months stay.
      expect(two.subarray(0, 181)).toEqual(one.subarray(0, 181));
      expect(two.subarray(243)).toEqual(one.subarray(243));
      expect(two.subarray(181, 212)).not.toEqual(one.subarray(181, 212));
      differing += [...two.subarray(217, 243)].filter(
        (mm, day) => isRain(mm) !== isRain(one[217 + day] as number),
      ).length;
    }
    expect(differing).toBeLessThan(5);
  });

  test('have the same rain days when the season starts earlier in its month or runs longer', () => {
    const short = madeYears({ ...input, firstDay: APRIL + 9, days: 100 });
    const long = madeYears({ ...input, firstDay: APRIL, days: 230 });
    for (let year = 0; year < 60; year += 1) {
      const shared = rainOfYear(long, year).subarray(9, 109).map(isRain);
      expect(rainOfYear(short, year).map(isRain)).toEqual(shared);
    }
  });
});

describe('made years', () => {
  const { monthlyRainMm, rainDays } = cityRain('Seattle');
  const seattle = Object.freeze({ monthlyRainMm, rainDays });

  // Figures of this code, kept so that a change of weather in every plan is seen.
  test('of Seattle from April 1 start as they always did', () => {
    const made = madeYears({ firstDay: APRIL, days: 210, ...seattle });
    expect([...rainOfYear(made, 0).subarray(0, 14)]).toEqual([0.3, 5.3, 6.5, 0, 0, 0, 0, 0, 0, 0, 15.3, 0.3, 1, 2.1]);
    const byYear = Array.from({ length: 60 }, (_, year) => [...rainOfYear(made, year)]).flat();
    expect(byYear.reduce((sum, mm, at) => sum + mm * (1 + (at % 97)), 0)).toBeCloseTo(1_182_919.1, 1);
  });

  test('of part of a month have the rain of these days in the daily normals', () => {
    const firstDay = APRIL + 20;
    const made = madeYears({ firstDay, days: 22, ...seattle });
    const normals = monthlyToDaily({ monthlyTotals: seattle.monthlyRainMm, firstDay, dayCount: 22 });
    const wanted = byMonth(firstDay, normals, (mm) => mm);
    const sums = sumByMonth(firstDay, made, made.rainMm);
    for (const month of [3, 4]) expect((sums[month] as number) / 60).toBeCloseTo(wanted[month] as number, 1);
  });

  test('of two years are not one year twice', () => {
    const made = madeYears({ firstDay: APRIL, days: 728, ...seattle });
    let alike = 0;
    for (let year = 0; year < 60; year += 1) {
      const rain = rainOfYear(made, year);
      alike += rain.subarray(365).filter((mm, day) => isRain(mm) === isRain(rain[day] as number)).length;
    }
    // Days of independent years are alike as often as f^2 + (1 - f)^2, which is 0.58 on average of these months.
    const chance = rainDays.map((days, month) => days / (MONTH_DAYS[month] as number));
    const expected = chance.reduce((sum, share) => sum + (share * share + (1 - share) ** 2) / 12, 0);
    expect(alike / (60 * 363)).toBeCloseTo(expected, 1);
    expect(sumByMonth(APRIL, made, made.etoShare)[4]).toBeCloseTo(60 * 62, 8);
  });

  test('have a leap day, whose number moves no later month', () => {
    const leap = madeYears({ firstDay: dayNumber('2028-01-01'), days: 366, ...seattle });
    const common = madeYears({ firstDay: NEW_YEAR, days: 365, ...seattle });
    const sums = sumByMonth(dayNumber('2028-01-01'), leap, leap.rainMm);
    // A 29th day at the month's rate.
    expect((sums[1] as number) / 60).toBeCloseTo(((seattle.monthlyRainMm[1] as number) * 29) / 28, 1);
    for (let year = 0; year < 60; year += 1) {
      expect(rainOfYear(leap, year).subarray(121)).toEqual(rainOfYear(common, year).subarray(120));
    }
  });

  test('where rain days are not known have those that are assumed', () => {
    const made = madeYears({ firstDay: NEW_YEAR, days: 365, monthlyRainMm: new Array<number>(12).fill(80) });
    expect(made.rainMm.filter((mm) => mm > 0).length / 60 / 120).toBeCloseTo(1, 1);
  });

  test('have no rain in a month without, nor a rain day left over from the month before', () => {
    const dryJuly = monthlyRainMm.map((mm, month) => (month === 6 ? 0 : mm));
    const made = madeYears({ firstDay: NEW_YEAR, days: 365, ...seattle, monthlyRainMm: dryJuly });
    expect(sumByMonth(NEW_YEAR, made, made.rainMm, isRain)[6]).toBe(0);
    expect(sumByMonth(NEW_YEAR, made, made.etoShare)[6]).toBe(60 * 31);
  });

  test.each([
    ['a trace of rain on a few days', 0.4, 1],
    ['a trace of rain on days that it is not enough for', 0.4, 12],
    ['drizzle', 9, 25],
    ['a storm', 60, 1],
    ['rain on every day', 300, 31],
  ])('of months of %s keep its sum', (_name, rainMm, rainDay) => {
    const months = { monthlyRainMm: new Array<number>(12).fill(rainMm), rainDays: new Array<number>(12).fill(rainDay) };
    const made = madeYears({ firstDay: NEW_YEAR, days: 365, ...months });
    for (const sum of sumByMonth(NEW_YEAR, made, made.rainMm)) {
      expect(Math.abs(sum / 60 - rainMm)).toBeLessThan(0.1 + 0.002 * rainMm);
    }
  });

  test('of a day on which rain is rare may have none, and are numbers all the same', () => {
    const made = madeYears({ firstDay: APRIL, days: 1, monthlyRainMm: new Array<number>(12).fill(0.01), years: 3 });
    expect([...made.rainMm]).toEqual([0, 0, 0]);
    expect([...made.etoShare]).toEqual([1, 1, 1]);
  });

  test('refuse rain that is no amount', () => {
    expect(() => madeYears({ firstDay: APRIL, days: 7, monthlyRainMm: new Array<number>(12).fill(-1) })).toThrow(
      RangeError,
    );
  });
});
