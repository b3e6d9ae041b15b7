/** The season's span and the place: latitude, soil, monthly climate, how rain is credited. */
import * as v from 'valibot';
import { TEXTURE_IDS } from '../../engine/soil/textures.data.ts';
import type { UnitSystem } from '../../engine/units.ts';
import { quantity, range, whole } from './quantity.ts';
import { isoDay, note } from './text.ts';

export const MOST_WEEKS = 104;

export const seasonSchema = v.strictObject({
  firstDay: isoDay,
  weeks: whole(1, MOST_WEEKS, 'weeks'),
});

export const soilTexture = v.picklist(TEXTURE_IDS, `a soil texture: ${TEXTURE_IDS.join(', ')}`);

const RAIN_METHODS = ['tr21', 'fao', 'scs-simplified', 'fraction', 'balance'] as const;

export function siteSchema(system: UnitSystem) {
  return v.strictObject({
    latitude: range(-90, 90, 'degrees'),
    elevation: v.optional(quantity('elevation', system)),
    soil: soilTexture,
    slopePercent: v.optional(range(0, 100, '%')),
    exposure: v.optional(note),
    climate: climateSchema(system),
    rain: v.optional(
      v.strictObject({
        method: v.picklist(RAIN_METHODS, `a rain method: ${RAIN_METHODS.join(', ')}`),
        fraction: v.optional(range(0, 1)),
        runoff: v.optional(range(0, 1)),
      }),
    ),
  });
}

function climateSchema(system: UnitSystem) {
  const year = (kind: 'depth' | 'temperature' | 'windSpeed') => twelve(quantity(kind, system));
  return v.pipe(
    v.strictObject({
      source: note,
      eto: v.optional(year('depth')),
      minTemperature: v.optional(year('temperature')),
      maxTemperature: v.optional(year('temperature')),
      dewPoint: v.optional(year('temperature')),
      wind: v.optional(year('windSpeed')),
      sunshineHours: v.optional(twelve(range(0, 24, 'hours a day'))),
      rain: year('depth'),
    }),
    v.check(
      (climate) => climate.eto !== undefined || (climate.minTemperature && climate.maxTemperature) !== undefined,
      'reference ET (eto) by month, or both minTemperature and maxTemperature by month',
    ),
    v.check(
      ({ minTemperature, maxTemperature }) =>
        !minTemperature || !maxTemperature || minTemperature.every((low, month) => low <= (maxTemperature[month] ?? low)),
      'a minTemperature that is not above the maxTemperature of its month',
    ),
  );
}

function twelve<S extends v.GenericSchema<unknown, number>>(schema: S) {
  return v.pipe(v.array(schema, 'twelve numbers, January first'), v.length(12, 'twelve numbers, January first'));
}
