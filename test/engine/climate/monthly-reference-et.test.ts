import { describe, expect, it } from 'vitest';
import { dayNumber, dayNumberOf, dayOfYear, monthOf } from '../../../src/engine/calendar.ts';
import { monthlyReadings } from '../../../src/engine/climate/monthly-readings.ts';
import { monthlyReferenceEt } from '../../../src/engine/climate/monthly-reference-et.ts';
import { monthlyToDaily } from '../../../src/engine/climate/monthly-to-daily.ts';
import { dailyReferenceEt } from '../../../src/engine/climate/reference-et.ts';
import type { WeatherReadings } from '../../../src/engine/climate/weather-readings.ts';
import { toSi } from '../../../src/engine/units.ts';
import { SEATTLE_LATITUDE_DEG, seattleWeather } from './seattle-weather.ts';

const celsius = (fahrenheit: readonly number[]): readonly number[] =>
  Object.freeze(fahrenheit.map((value) => toSi(value, 'temperature', 'us')));
const total = (months: readonly { readonly etoMm: number }[]): number =>
  months.reduce((added, { etoMm }) => added + etoMm, 0);

describe('monthly ETo of San Francisco from temperature normals', () => {
  // Normals 1961-1990, degrees F: Western Regional Climate Center, cliNORMNCDC ca7772 (station name from memory). Latitude 37.77.
  const normals = monthlyReadings(
    Object.freeze({
      maxTemperatureC: celsius([56.3, 60.0, 60.8, 62.1, 62.7, 64.1, 64.6, 65.6, 68.7, 68.7, 62.7, 56.4]),
      minTemperatureC: celsius([45.8, 48.7, 49.0, 49.8, 50.5, 52.6, 53.5, 54.6, 55.9, 55.2, 51.6, 47.0]),
    }),
  );
  const months = monthlyReferenceEt(normals, Object.freeze({ latitudeDeg: 37.77 }));

  it('is by Hargreaves-Samani in every month', () => {
    expect(months.map(({ method }) => method)).toEqual(new Array(12).fill('hargreaves-samani'));
  });

  it('agrees with an independent computation of FAO-56 eq. 52 month by month', () => {
    const inches = [1.29, 1.69, 2.53, 3.18, 3.74, 3.8, 3.81, 3.5, 3.15, 2.55, 1.54, 1.13];
    for (const [month, expected] of inches.entries()) {
      expect(Math.abs((months[month]?.etoMm ?? 0) / 25.4 - expected)).toBeLessThanOrEqual(0.0051);
    }
    expect(Math.abs(total(months) / 25.4 - 31.9)).toBeLessThanOrEqual(0.05);
  });

  it('is a tenth below the 35.1 in of the state table, as temperatures alone are on a windy coast', () => {
    // California Code of Regulations, Title 23, Appendix A. The honest error of the method, not a tolerance to shrink.
    expect(total(months) / 25.4 / 35.1).toBeGreaterThan(0.88);
    expect(total(months) / 25.4 / 35.1).toBeLessThan(0.94);
  });
});

describe('monthly ETo by Penman-Monteith', () => {
  // FAO-56 Example 17 (p. 70) as April; the other months are set so that eq. 43 gives the example's soil heat flux of 0.14 by
  // warming 2 degrees from March to May.
  const bangkok = Object.freeze({ latitudeDeg: 13 + 44 / 60, elevationM: 2 });
  const april: WeatherReadings = Object.freeze({
    minTemperatureC: 25.6,
    maxTemperatureC: 34.8,
    vapourPressureKpa: 2.85,
    windMs: 2,
    sunshineHours: 8.5,
  });
  const year = Object.freeze(
    Array.from({ length: 12 }, (_, month) =>
      month === 4 ? Object.freeze({ ...april, minTemperatureC: 27.6, maxTemperatureC: 36.8 }) : april,
    ),
  );

  it('Bangkok in April: 5.72 mm/d (FAO-56 Example 17, p. 70)', () => {
    const inApril = monthlyReferenceEt(year, bangkok)[3];
    expect(inApril?.method).toBe('penman-monteith');
    expect(inApril?.estimated).toEqual(['radiation-from-sunshine']);
    expect(Math.abs((inApril?.etoMm ?? 0) / 30 - 5.72)).toBeLessThanOrEqual(0.01);
  });

  it('December is the month before January: a warm one sends heat from the soil', () => {
    const warmDecember = year.map((month, index) =>
      index === 11 ? { ...month, minTemperatureC: 35.6, maxTemperatureC: 44.8 } : month,
    );
    const january = (months: readonly WeatherReadings[]): number => monthlyReferenceEt(months, bangkok)[0]?.etoMm ?? 0;
    // 10 degrees more give 0.7 MJ more to evaporate with (eq. 43), 0.408 x 0.246 / 0.4 of it as water.
    const more = (january(warmDecember) - january(year)) / 31;
    expect(more).toBeGreaterThan(0.15);
    expect(more).toBeLessThan(0.25);
  });

  it('a month without wind falls back to Hargreaves-Samani, or not, as the site asks', () => {
    const calm = year.map((month, index) => (index === 6 ? { ...month, windMs: undefined } : month));
    const methods = monthlyReferenceEt(calm, bangkok).map(({ method }) => method);
    expect(methods.filter((method) => method === 'hargreaves-samani')).toHaveLength(1);
    expect(methods[6]).toBe('hargreaves-samani');
    const asked = monthlyReferenceEt(calm, { ...bangkok, whenIncomplete: 'penman-monteith' })[6];
    expect(asked?.method).toBe('penman-monteith');
    expect(asked?.estimated).toEqual(['wind-assumed', 'radiation-from-sunshine']);
  });

  it('Lyon in July from temperatures: 4.56 mm/d (FAO-56 Example 20, p. 77, where the soil takes nothing)', () => {
    const lyon = { latitudeDeg: 45 + 43 / 60, elevationM: 200, whenIncomplete: 'penman-monteith' } as const;
    const july = Object.freeze({ minTemperatureC: 14.8, maxTemperatureC: 26.6 });
    const inJuly = monthlyReferenceEt(new Array(12).fill(july), lyon)[6];
    expect(Math.abs((inJuly?.etoMm ?? 0) / 31 - 4.56)).toBeLessThanOrEqual(0.01);
  });
});

describe('monthly ETo at the edges', () => {
  const mild: WeatherReadings = Object.freeze({ minTemperatureC: 8, maxTemperatureC: 18 });
  const year: readonly WeatherReadings[] = Object.freeze(new Array(12).fill(mild));

  it('southern summers are in January', () => {
    const south = monthlyReferenceEt(year, { latitudeDeg: -35 });
    const north = monthlyReferenceEt(year, { latitudeDeg: 35 });
    expect(south[0]?.etoMm).toBeGreaterThan(2 * (south[6]?.etoMm ?? 0));
    expect(north[6]?.etoMm).toBeGreaterThan(2 * (north[0]?.etoMm ?? 0));
  });

  it('months at 70 degrees are numbers, and nothing in the polar night', () => {
    for (const latitudeDeg of [70, -70]) {
      const months = monthlyReferenceEt(year, { latitudeDeg }).map(({ etoMm }) => etoMm);
      expect(months.every((etoMm) => Number.isFinite(etoMm) && etoMm >= 0)).toBe(true);
      expect(months[latitudeDeg > 0 ? 11 : 5]).toBe(0);
      expect(Math.max(...months)).toBeGreaterThan(90);
    }
  });

  it.each([
    ['eleven months', year.slice(1), 'months must be twelve, January first, not 11'],
    ['a month without a lowest temperature', year.with(2, { maxTemperatureC: 18 }), 'month 3 needs its mean lowest'],
    ['exchanged temperatures', year.with(5, { minTemperatureC: 18, maxTemperatureC: 8 }), 'exchange or correct them'],
  ] as const)('%s: refused', (_name, months, words) => {
    expect(() => monthlyReferenceEt(months, { latitudeDeg: 40 })).toThrow(RangeError);
    expect(() => monthlyReferenceEt(months, { latitudeDeg: 40 })).toThrow(words);
  });
});

describe('four years of Seattle as normals', () => {
  const days = seattleWeather();
  const site = Object.freeze({ latitudeDeg: SEATTLE_LATITUDE_DEG });
  const meanOf = (reading: 'minTemperatureC' | 'maxTemperatureC', month: number): number => {
    const inMonth = days.filter(({ day }) => monthOf(day) === month);
    return inMonth.reduce((added, day) => added + day[reading], 0) / inMonth.length;
  };
  const columns = {
    minTemperatureC: Array.from({ length: 12 }, (_, month) => meanOf('minTemperatureC', month)),
    maxTemperatureC: Array.from({ length: 12 }, (_, month) => meanOf('maxTemperatureC', month)),
  };

  it('has the monthly mean temperatures of the data', () => {
    // Added up independently from the published file.
    const warmest = [8.23, 9.86, 12.39, 15.02, 19.3, 22.4, 26.0, 26.11, 21.92, 16.39, 11.02, 8.19];
    const coldest = [2.7, 4.05, 4.86, 6.36, 9.61, 12.24, 14.2, 14.77, 12.36, 9.35, 4.7, 3.32];
    for (let month = 0; month < 12; month += 1) {
      expect(Math.abs((columns.maxTemperatureC[month] ?? 0) - (warmest[month] ?? 0))).toBeLessThanOrEqual(0.0051);
      expect(Math.abs((columns.minTemperatureC[month] ?? 0) - (coldest[month] ?? 0))).toBeLessThanOrEqual(0.0051);
    }
  });

  it('April to September from the normals is within 3 % of the mean of the days themselves', () => {
    const monthlyTotals = monthlyReferenceEt(monthlyReadings(columns), site).map(({ etoMm }) => etoMm);
    const firstDay = dayNumber('2025-04-01');
    const dayCount = dayNumber('2025-10-01') - firstDay;
    const fromNormals = monthlyToDaily({ monthlyTotals, firstDay, dayCount }).reduce(
      (added, value) => added + value,
      0,
    );
    const inSeason = days.filter(({ day }) => monthOf(day) >= 3 && monthOf(day) <= 8);
    const fromDays = inSeason.reduce(
      (added, day) => added + (dailyReferenceEt(day, site, dayOfYear(day.day))?.etoMm ?? Number.NaN),
      0,
    );
    expect(Math.abs(fromNormals / (fromDays / 4) - 1)).toBeLessThanOrEqual(0.03);
  });

  it('a month is its 15th times its days, February 28', () => {
    const weather = Object.freeze({ minTemperatureC: 8, maxTemperatureC: 18 });
    const months = monthlyReferenceEt(new Array(12).fill(weather), site);
    const days15 = months.map(({ etoMm }, month) => {
      const day = dayNumberOf({ year: 2025, month, dayOfMonth: 15 });
      return etoMm / (dailyReferenceEt(weather, site, dayOfYear(day))?.etoMm ?? Number.NaN);
    });
    for (const [month, length] of [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31].entries()) {
      expect(days15[month]).toBeCloseTo(length, 10);
    }
  });
});
