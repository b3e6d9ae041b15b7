import { describe, expect, it } from 'vitest';
import { dayOfYear, monthOf, yearOf } from '../../../src/engine/calendar.ts';
import { dailyReferenceEt, type ReferenceEt } from '../../../src/engine/climate/reference-et.ts';
import { SEATTLE_LATITUDE_DEG, seattleWeather } from './seattle-weather.ts';

const uccle = Object.freeze({ latitudeDeg: 50 + 48 / 60, elevationM: 100, windHeightM: 10 });
const uccleOn6July = Object.freeze({
  minTemperatureC: 12.3,
  maxTemperatureC: 21.5,
  maxHumidityPercent: 84,
  minHumidityPercent: 63,
  windMs: 10 / 3.6,
  sunshineHours: 9.25,
});
const july6 = 187;

/** Of a day of which enough is known. */
function knownEt(...given: Parameters<typeof dailyReferenceEt>): ReferenceEt {
  const known = dailyReferenceEt(...given);
  if (known === undefined) throw new Error('nothing is known of the day');
  return known;
}

describe("a day's reference ET comes from the best that is known", () => {
  it('observed ETo wins over everything', () => {
    expect(knownEt(Object.freeze({ ...uccleOn6July, etoMm: 3.2 }), uccle, july6)).toEqual({
      etoMm: 3.2,
      method: 'observed',
      estimated: [],
    });
  });

  it('an observed ETo of nothing is an observation', () => {
    expect(knownEt({ etoMm: 0 }, uccle, july6)).toMatchObject({ etoMm: 0, method: 'observed' });
  });

  it('full weather: Penman-Monteith, Uccle on 6 July 3.88 mm (FAO-56 Example 18, p. 72)', () => {
    const { etoMm, method, estimated } = knownEt(uccleOn6July, uccle, july6);
    expect(method).toBe('penman-monteith');
    expect(Math.abs(etoMm - 3.88)).toBeLessThanOrEqual(0.005);
    expect(estimated).toEqual(['wind-from-height', 'radiation-from-sunshine']);
  });

  it.each([
    ['humidity', { maxHumidityPercent: undefined }],
    ['wind', { windMs: undefined }],
    ['radiation and sunshine', { sunshineHours: undefined }],
  ] as const)('without %s: Hargreaves-Samani from the temperatures', (_name, missing) => {
    const { method, estimated } = knownEt({ ...uccleOn6July, ...missing }, uccle, july6);
    expect(method).toBe('hargreaves-samani');
    expect(estimated).toEqual([]);
  });

  it('temperatures alone: Hargreaves-Samani, Lyon in July 5.0 mm (FAO-56 Example 20, p. 77)', () => {
    const lyon = Object.freeze({ latitudeDeg: 45 + 43 / 60, elevationM: 200 });
    const weather = Object.freeze({ minTemperatureC: 14.8, maxTemperatureC: 26.6 });
    const { etoMm, method } = knownEt(weather, lyon, 196);
    expect(method).toBe('hargreaves-samani');
    expect(Math.abs(etoMm - 5)).toBeLessThanOrEqual(0.05);
  });

  it('temperatures alone, where the site asks for it: Penman-Monteith, Lyon 4.56 mm (FAO-56 Example 20, p. 77)', () => {
    const lyon = { latitudeDeg: 45 + 43 / 60, elevationM: 200, whenIncomplete: 'penman-monteith' } as const;
    const weather = { minTemperatureC: 14.8, maxTemperatureC: 26.6 };
    const { etoMm, method, estimated } = knownEt(weather, lyon, 196);
    expect(method).toBe('penman-monteith');
    expect(Math.abs(etoMm - 4.56)).toBeLessThanOrEqual(0.01);
    expect(estimated).toHaveLength(3);
  });

  it.each([
    ['nothing', {}],
    ['one temperature', { maxTemperatureC: 21 }],
    ['wind and sunshine', { windMs: 3, sunshineHours: 4 }],
    ['an ETo that is not a number', { etoMm: Number.NaN }],
  ] as const)('with %s: not known from the day', (_name, weather) => {
    expect(dailyReferenceEt(weather, uccle, july6)).toBeUndefined();
  });

  it('an observed ETo below nothing is refused', () => {
    expect(() => knownEt({ etoMm: -0.1 }, uccle, july6)).toThrow('observed ETo must be 0 mm or more, not -0.1');
  });

  it('exchanged temperatures are refused by either method, though radiation was measured', () => {
    const exchanged = { ...uccleOn6July, minTemperatureC: 21.5, maxTemperatureC: 12.3, radiationMj: 22 };
    expect(() => knownEt(exchanged, uccle, july6)).toThrow('exchange or correct them');
    expect(() => knownEt({ ...exchanged, windMs: undefined }, uccle, july6)).toThrow(RangeError);
  });
});

describe('four years of daily weather in Seattle', () => {
  const days = seattleWeather();
  const totalBy = (value: (day: (typeof days)[number]) => number): Map<number, number> => {
    const totals = new Map<number, number>();
    for (const day of days) totals.set(yearOf(day.day), (totals.get(yearOf(day.day)) ?? 0) + value(day));
    return totals;
  };
  const site = Object.freeze({ latitudeDeg: SEATTLE_LATITUDE_DEG });
  const eto = (day: (typeof days)[number]): number => knownEt(day, site, dayOfYear(day.day)).etoMm;
  const isSeason = (day: (typeof days)[number]): boolean => monthOf(day.day) >= 3 && monthOf(day.day) <= 8;

  it('holds 1,461 days without a gap and without exchanged temperatures', () => {
    expect(days).toHaveLength(1461);
    expect(days.every((day, index) => day.day === (days[0]?.day ?? 0) + index)).toBe(true);
    expect(days.filter((day) => day.maxTemperatureC < day.minTemperatureC)).toEqual([]);
  });

  // Sums of the published data.
  it.each([
    [2012, 1226.0],
    [2013, 828.0],
    [2014, 1232.8],
    [2015, 1139.2],
  ] as const)('rain of %i: %d mm', (year, rainMm) => {
    expect(totalBy((day) => day.rainMm).get(year)).toBeCloseTo(rainMm, 9);
  });

  // Not published: an independent computation of FAO-56 eq. 52 on the same file. 2012 counts its leap day.
  it.each([
    [2012, 799.1, 639.7],
    [2013, 832.0, 669.6],
    [2014, 866.2, 693.4],
    [2015, 898.8, 719.7],
  ] as const)('Hargreaves-Samani of %i: %d mm, April to September %d mm', (year, yearMm, seasonMm) => {
    expect(Math.abs((totalBy(eto).get(year) ?? 0) - yearMm)).toBeLessThanOrEqual(0.0501);
    const season = totalBy((day) => (isSeason(day) ? eto(day) : 0)).get(year) ?? 0;
    expect(Math.abs(season - seasonMm)).toBeLessThanOrEqual(0.0501);
  });
});

describe('the year at other latitudes', () => {
  const weather = Object.freeze({ minTemperatureC: 8, maxTemperatureC: 18 });
  const etoOn = (latitudeDeg: number, day: number): number => knownEt(weather, { latitudeDeg }, day).etoMm;

  it('southern summers are in January', () => {
    expect(etoOn(-35, 15)).toBeGreaterThan(2 * etoOn(-35, 196));
    expect(etoOn(35, 196)).toBeGreaterThan(2 * etoOn(35, 15));
  });

  it.each([70, -70])(
    'at %i degrees the polar night asks for nothing and the polar day for something',
    (latitudeDeg) => {
      const june = etoOn(latitudeDeg, 172);
      const december = etoOn(latitudeDeg, 355);
      expect(Math.min(june, december)).toBe(0);
      expect(Math.max(june, december)).toBeGreaterThan(3);
    },
  );

  it('the 366th day is as good as any', () => {
    expect(Math.abs(etoOn(45, 366) - etoOn(45, 1))).toBeLessThan(0.01);
  });
});

describe('speed', () => {
  it.each([
    ['Hargreaves-Samani', { minTemperatureC: 12.3, maxTemperatureC: 21.5 }, 'hargreaves-samani'],
    ['Penman-Monteith', uccleOn6July, 'penman-monteith'],
  ] as const)('a hundred days by %s take less than a millisecond', (_name, weather, method) => {
    let best = Number.POSITIVE_INFINITY;
    for (let round = 0; round < 100; round += 1) {
      const start = performance.now();
      for (let day = 1; day <= 100; day += 1) {
        if (knownEt(weather, uccle, day).method !== method) throw new Error('another method');
      }
      best = Math.min(best, performance.now() - start);
    }
    expect(best).toBeLessThan(1);
  });
});
