/** The season's span and the place: latitude, soil, monthly climate, how rain is credited. */
import * as v from 'valibot';
import { SETTINGS } from '../../engine/climate/solar-radiation-from-temperature.ts';
import { MISSING_WEATHER_RULES } from '../../engine/climate/weather-readings.ts';
import { RAIN_METHODS } from '../../engine/rain/effective-rain.ts';
import { TEXTURE_IDS } from '../../engine/soil/textures.data.ts';
import type { UnitSystem } from '../../engine/units.ts';
import { field, fields, maybe } from './fields.ts';
import { quantity, range, whole } from './quantity.ts';
import { isoDay, note } from './text.ts';

export const MOST_WEEKS = 104;

export const seasonSchema = fields('a season', {
  firstDay: field(isoDay, 'First day of the first week; every week starts on this weekday.'),
  weeks: field(whole(1, MOST_WEEKS, 'weeks'), 'Number of weeks.'),
});

export const soilTexture = v.picklist(TEXTURE_IDS, `a soil texture: ${TEXTURE_IDS.join(', ')}`);

export function siteSchema(system: UnitSystem) {
  return fields('a site', {
    latitude: field(range(-90, 90, 'degrees'), 'North of the equator; negative lies south.'),
    elevation: maybe(quantity('elevation', system), 'Above sea level. Left out: 0.'),
    windHeight: maybe(quantity('height', system), 'Height above the ground at which wind was measured. Left out: 2 m.'),
    setting: maybe(
      v.picklist(SETTINGS, `where the place lies: ${SETTINGS.join(' or ')}`),
      'On the coast of a large water, or not: for radiation from temperatures (FAO-56 eq. 50). Left out: interior.',
    ),
    missingWeather: maybe(
      v.picklist(MISSING_WEATHER_RULES, `a way with missing weather: ${MISSING_WEATHER_RULES.join(' or ')}`),
      'Reference ET where temperatures are known, and humidity, wind or sun is not: hargreaves-samani from the ' +
        'temperatures alone, or penman-monteith with estimates for what is missing. Left out: hargreaves-samani.',
    ),
    soil: field(soilTexture, 'Texture of the soil.'),
    slopePercent: maybe(range(0, 100, 'percent'), 'Slope of the ground. Left out: 0.'),
    exposure: maybe(note, 'Sun, shade and wind in words.'),
    climate: climateSchema(system),
    rain: maybe(
      fields('a way of crediting rain', {
        method: v.picklist(RAIN_METHODS, `a rain method: ${RAIN_METHODS.join(', ')}`),
        fraction: maybe(range(0, 1), 'Share of the rain that counts, for the method fraction.'),
        runoff: maybe(range(0, 1), 'Share of an observed day’s rain that runs off. Left out: 0.'),
      }),
      'How a month’s rain is credited. Left out: tr21.',
    ),
  });
}

function climateSchema(system: UnitSystem) {
  const year = (kind: 'depth' | 'temperature' | 'windSpeed') => twelve(quantity(kind, system));
  return v.pipe(
    fields('a climate', {
      source: field(note, 'Where the figures come from.'),
      eto: maybe(year('depth'), 'Reference evapotranspiration of each whole month.'),
      minTemperature: maybe(year('temperature'), 'Mean of the daily lowest temperatures.'),
      maxTemperature: maybe(year('temperature'), 'Mean of the daily highest temperatures.'),
      dewPoint: maybe(year('temperature'), 'Mean dew point.'),
      wind: maybe(year('windSpeed'), 'Mean wind speed, at the site’s wind height.'),
      sunshineHours: maybe(twelve(range(0, 24, 'hoursPerDay')), 'Mean hours of bright sunshine a day.'),
      rain: field(year('depth'), 'Rain of each whole month.'),
    }),
    v.description('Monthly normals, January first: ETo, or lowest and highest temperature, and rain.'),
    // Checked with the other relations; here for those who read the JSON Schema alone.
    v.metadata({ anyOf: [{ required: ['eto'] }, { required: ['minTemperature', 'maxTemperature'] }] }),
  );
}

function twelve<Schema extends v.GenericSchema<unknown, number>>(schema: Schema) {
  return v.pipe(v.array(schema, 'twelve numbers, January first'), v.length(12, 'twelve numbers, January first'));
}
