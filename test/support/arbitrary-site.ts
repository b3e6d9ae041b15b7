/** Random sites: every texture and rain method, climates of ETo or of temperatures, both halves of the earth. */
import fc from 'fast-check';
import { SETTINGS } from '../../src/engine/climate/solar-radiation-from-temperature.ts';
import { MISSING_WEATHER_RULES } from '../../src/engine/climate/weather-readings.ts';
import { RAIN_METHODS } from '../../src/engine/rain/effective-rain.ts';
import { TEXTURE_IDS } from '../../src/engine/soil/textures.data.ts';
import type { PlanClimate, PlanSite, PlanYears } from '../../src/plan/schema/plan-schema.ts';
import { amount, type Frame, hundredths, share, wordy } from './arbitrary-parts.ts';

export function arbitrarySite(frame: Frame): fc.Arbitrary<PlanSite> {
  return fc.record(
    {
      latitude: fc.integer({ min: -60, max: 62 }),
      soil: fc.constantFrom(...TEXTURE_IDS),
      climate: arbitraryClimate(frame),
      elevation: amount('elevation', frame, 0, 2000),
      windHeight: amount('height', frame, 1, 12),
      setting: fc.constantFrom(...SETTINGS),
      missingWeather: fc.constantFrom(...MISSING_WEATHER_RULES),
      availableWater: hundredths(2, 40),
      slopePercent: fc.integer({ min: 0, max: 30 }),
      timeZone: fc.constantFrom('America/New_York', 'Europe/London', 'Asia/Kolkata', 'Australia/Lord_Howe'),
      exposure: wordy,
      years: arbitraryYears(frame),
      rain: fc.record(
        { method: fc.constantFrom(...RAIN_METHODS), fraction: share, runoff: share },
        { requiredKeys: ['method'] },
      ),
    },
    { requiredKeys: ['latitude', 'soil', 'climate'] },
  );
}

const twelve = (value: fc.Arbitrary<number>) => fc.array(value, { minLength: 12, maxLength: 12 });

/** ETo by month, or temperatures by month, or both, or temperatures with all that Penman-Monteith can use. */
function arbitraryClimate(frame: Frame): fc.Arbitrary<PlanClimate> {
  const rain = fc.oneof(twelve(amount('depth', frame, 0, 250)), twelve(fc.constant(0)));
  const eto = twelve(amount('depth', frame, 0, 260));
  const temperatures = {
    minTemperature: twelve(amount('temperature', frame, -25, 12)),
    maxTemperature: twelve(amount('temperature', frame, 13, 42)),
  };
  const more = {
    dewPoint: twelve(amount('temperature', frame, -25, 12)),
    wind: twelve(amount('windSpeed', frame, 0, 8)),
    sunshineHours: twelve(fc.integer({ min: 0, max: 12 })),
  };
  const source = wordy;
  const rainDays = twelve(fc.integer({ min: 0, max: 28 }));
  return fc.oneof(
    fc.record({ source, rain, eto }),
    fc.record({ source, rain, rainDays, eto }),
    fc.record({ source, rain, rainDays, rainDayThreshold: amount('depth', frame, 0.1, 10), eto }),
    fc.record({ source, rain, ...temperatures }),
    fc.record({ source, rain, eto, ...temperatures }),
    fc.record(
      { source, rain, rainDays, ...temperatures, ...more },
      { requiredKeys: ['source', 'rain', 'minTemperature', 'maxTemperature'] },
    ),
  );
}

/** A few days of one or two years, some of them missing: as offices print them, in hundredths of an inch or of a millimetre. */
function arbitraryYears({ units }: Frame): fc.Arbitrary<PlanYears> {
  const printed = units === 'us' ? 100 : 1;
  const figures = (most: number) =>
    fc.oneof(
      fc.constant('-'),
      fc.constant('0'),
      fc.integer({ min: 0, max: most / printed }).map((n) => `${n * printed}`),
    );
  const stretch = (from: string) =>
    fc.array(fc.tuple(figures(6000), figures(1000)), { minLength: 1, maxLength: 20 }).map((days) => ({
      from,
      rain: days.map(([rain]) => rain).join(' '),
      eto: days.map(([, eto]) => eto).join(' '),
    }));
  return fc.record({
    source: wordy,
    stretches: fc.tuple(stretch('2012-05-20'), stretch('2013-01-01')).map((both) => [...both]),
  });
}
