import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { penmanMonteithFromWeather } from '../../../src/engine/climate/penman-monteith-from-weather.ts';
import type { WeatherSite } from '../../../src/engine/climate/weather-readings.ts';

function expectSteps(actual: object, published: Readonly<Record<string, readonly [number, number]>>): void {
  const steps = new Map<string, unknown>(Object.entries(actual));
  for (const [step, [value, tolerance]] of Object.entries(published)) {
    const difference = Math.abs(Number(steps.get(step)) - value);
    expect(difference, `${step}: ${String(steps.get(step))} against ${value}`).toBeLessThanOrEqual(tolerance);
  }
}

describe('FAO Penman-Monteith step by step', () => {
  it('Bangkok in April (FAO-56 Example 17, p. 70)', () => {
    const steps = penmanMonteithFromWeather(
      Object.freeze({
        weather: Object.freeze({
          minTemperatureC: 25.6,
          maxTemperatureC: 34.8,
          vapourPressureKpa: 2.85,
          windMs: 2,
          sunshineHours: 8.5,
        }),
        site: Object.freeze({ latitudeDeg: 13 + 44 / 60, elevationM: 2 }),
        dayOfYear: 105,
        // March 29.2, April 30.2 C (eq. 44).
        soilHeatFluxMj: 0.14 * (30.2 - 29.2),
      }),
    );
    expectSteps(steps, {
      extraterrestrialMj: [38.06, 0.005],
      daylightHours: [12.31, 0.005],
      solarMj: [22.65, 0.005],
      clearSkyMj: [28.54, 0.0051],
      netSolarMj: [17.44, 0.005],
      netLongwaveMj: [3.11, 0.005],
      netRadiationMj: [14.33, 0.005],
      soilHeatFluxMj: [0.14, 0.005],
      etoMm: [5.72, 0.01],
    });
    expect(steps.estimated).toEqual(['radiation-from-sunshine']);
  });

  it('Uccle on 6 July (FAO-56 Example 18, p. 72)', () => {
    const steps = penmanMonteithFromWeather(
      Object.freeze({
        weather: Object.freeze({
          minTemperatureC: 12.3,
          maxTemperatureC: 21.5,
          maxHumidityPercent: 84,
          minHumidityPercent: 63,
          windMs: 10 / 3.6,
          sunshineHours: 9.25,
        }),
        site: Object.freeze({ latitudeDeg: 50 + 48 / 60, elevationM: 100, windHeightM: 10 }),
        dayOfYear: 187,
        soilHeatFluxMj: 0,
      }),
    );
    expectSteps(steps, {
      windMs: [2.078, 0.0005],
      extraterrestrialMj: [41.09, 0.005],
      daylightHours: [16.1, 0.05],
      vapourPressureKpa: [1.409, 0.0005],
      solarMj: [22.07, 0.005],
      clearSkyMj: [30.9, 0.005],
      netLongwaveMj: [3.71, 0.005],
      netRadiationMj: [13.28, 0.005],
      etoMm: [3.88, 0.005],
    });
    expect(steps.estimated).toEqual(['wind-from-height', 'radiation-from-sunshine']);
  });

  it('Lyon in July from temperatures alone (FAO-56 Example 20, p. 77)', () => {
    const steps = penmanMonteithFromWeather(
      Object.freeze({
        weather: Object.freeze({ minTemperatureC: 14.8, maxTemperatureC: 26.6 }),
        site: Object.freeze({ latitudeDeg: 45 + 43 / 60, elevationM: 200 }),
        dayOfYear: 196,
        soilHeatFluxMj: 0,
      }),
    );
    expectSteps(steps, {
      vapourPressureKpa: [1.68, 0.005],
      windMs: [2, 0],
      extraterrestrialMj: [40.55, 0.0051],
      solarMj: [22.29, 0.005],
      clearSkyMj: [30.58, 0.005],
      netRadiationMj: [13.48, 0.005],
      etoMm: [4.56, 0.01],
    });
    expect(steps.estimated).toEqual([
      'vapour-pressure-from-min-temperature',
      'wind-assumed',
      'radiation-from-temperature',
    ]);
  });

  it.each([
    [1, 4.2],
    [3, 4.8],
  ] as const)('Lyon in July with a wind of %i m/s: %d mm/d (FAO-56 Example 20, p. 77)', (windMs, published) => {
    const { etoMm } = penmanMonteithFromWeather({
      weather: { minTemperatureC: 14.8, maxTemperatureC: 26.6, windMs },
      site: { latitudeDeg: 45 + 43 / 60, elevationM: 200 },
      dayOfYear: 196,
      soilHeatFluxMj: 0,
    });
    expect(Math.abs(etoMm - published)).toBeLessThanOrEqual(0.05);
  });
});

describe('FAO Penman-Monteith at the edges', () => {
  const weather = Object.freeze({ minTemperatureC: 10, maxTemperatureC: 20, dewPointC: 8, windMs: 2, radiationMj: 20 });

  it('an unknown elevation is taken as the sea and said so', () => {
    const given = { weather, dayOfYear: 180, soilHeatFluxMj: 0 };
    const unknown = penmanMonteithFromWeather({ ...given, site: { latitudeDeg: 40 } });
    const sea = penmanMonteithFromWeather({ ...given, site: { latitudeDeg: 40, elevationM: 0 } });
    expect(unknown.etoMm).toBe(sea.etoMm);
    expect(unknown.estimated).toEqual(['elevation-assumed']);
    expect(sea.estimated).toEqual([]);
  });

  it('a coast reads more sun from the same temperatures', () => {
    const given = { weather: { minTemperatureC: 12, maxTemperatureC: 18 }, dayOfYear: 180, soilHeatFluxMj: 0 };
    const interior = penmanMonteithFromWeather({ ...given, site: { latitudeDeg: 40, elevationM: 0 } });
    const coast = penmanMonteithFromWeather({
      ...given,
      site: { latitudeDeg: 40, elevationM: 0, setting: 'coastal' },
    });
    expect(coast.solarMj / interior.solarMj).toBeCloseTo(0.19 / 0.16, 12);
  });

  it('is a number and never negative, from pole to pole, whatever is missing', () => {
    const maybe = (min: number, max: number): fc.Arbitrary<number | undefined> =>
      fc.option(fc.double({ min, max, noNaN: true }), { nil: undefined });
    fc.assert(
      fc.property(
        fc.record({
          minTemperatureC: fc.double({ min: -60, max: 35, noNaN: true }),
          range: fc.double({ min: 0, max: 25, noNaN: true }),
          maxHumidityPercent: maybe(0, 100),
          minHumidityPercent: maybe(0, 100),
          windMs: maybe(0, 30),
          radiationMj: maybe(0, 40),
          sunshineHours: maybe(0, 24),
        }),
        fc.record({
          latitudeDeg: fc.double({ min: -90, max: 90, noNaN: true }),
          elevationM: fc.double({ min: -400, max: 5000, noNaN: true }),
          windHeightM: fc.constantFrom(2, 10),
          setting: fc.constantFrom('interior' as const, 'coastal' as const),
        }),
        fc.integer({ min: 1, max: 366 }),
        ({ range, ...readings }, site: WeatherSite, dayOfYear) => {
          const day = { ...readings, maxTemperatureC: readings.minTemperatureC + range };
          const steps = penmanMonteithFromWeather({ weather: day, site, dayOfYear, soilHeatFluxMj: 0 });
          expect(steps.etoMm).toBeGreaterThanOrEqual(0);
          const numbers = Object.values(steps).filter((step) => typeof step === 'number');
          expect(numbers.every(Number.isFinite)).toBe(true);
        },
      ),
      { numRuns: 2000 },
    );
  });
});
