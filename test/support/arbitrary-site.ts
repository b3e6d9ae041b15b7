/** Random sites: every texture and rain method, climates of ETo or of temperatures, both halves of the earth. */
import fc from 'fast-check';
import { SETTINGS } from '../../src/engine/climate/solar-radiation-from-temperature.ts';
import { MISSING_WEATHER_RULES } from '../../src/engine/climate/weather-readings.ts';
import { RAIN_METHODS } from '../../src/engine/rain/effective-rain.ts';
import { TEXTURE_IDS } from '../../src/engine/soil/textures.data.ts';
import type { PlanClimate, PlanSite } from '../../src/plan/schema/plan-schema.ts';
import { amount, type Frame, share, wordy } from './arbitrary-parts.ts';

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
      slopePercent: fc.integer({ min: 0, max: 30 }),
      exposure: wordy,
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
  return fc.oneof(
    fc.record({ source, rain, eto }),
    fc.record({ source, rain, ...temperatures }),
    fc.record({ source, rain, eto, ...temperatures }),
    fc.record(
      { source, rain, ...temperatures, ...more },
      { requiredKeys: ['source', 'rain', 'minTemperature', 'maxTemperature'] },
    ),
  );
}
