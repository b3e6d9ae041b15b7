/** The season's span and the place: latitude, soil, monthly climate, how rain is credited. */
import * as v from 'valibot';
import { SETTINGS } from '../../engine/climate/solar-radiation-from-temperature.ts';
import { MISSING_WEATHER_RULES } from '../../engine/climate/weather-readings.ts';
import { RAIN_METHODS } from '../../engine/rain/effective-rain.ts';
import { TEXTURE_IDS } from '../../engine/soil/textures.data.ts';
import type { UnitSystem } from '../../engine/units.ts';
import { fields, withMore } from './fields.ts';
import { packedText } from './packed-text.ts';
import { quantity, range, whole } from './quantity.ts';
import { isoDay, name, note, timeZone } from './text.ts';

export const MOST_WEEKS = 104;

export const seasonSchema = fields({
  firstDay: isoDay,
  weeks: whole(1, MOST_WEEKS, 'weeks'),
});

export const soilTexture = v.picklist(TEXTURE_IDS);

/** Depth of water in a depth of soil. */
export const soilAvailableWater = range(0.02, 0.4);

export function siteSchema(system: UnitSystem) {
  return fields({
    place: v.optional(name),
    latitude: range(-90, 90, 'degrees'),
    longitude: v.optional(range(-180, 180, 'degrees')),
    timeZone: v.optional(timeZone),
    elevation: v.optional(quantity('elevation', system)),
    windHeight: v.optional(quantity('height', system)),
    setting: v.optional(v.picklist(SETTINGS)),
    missingWeather: v.optional(v.picklist(MISSING_WEATHER_RULES)),
    soil: soilTexture,
    availableWater: v.optional(soilAvailableWater),
    slopePercent: v.optional(range(0, 100, 'percent')),
    exposure: v.optional(note),
    climate: climateSchema(system),
    years: v.optional(yearsSchema),
    departures: v.optional(v.pipe(v.array(fields(departureFields)), v.maxLength(MOST_DEPARTURES))),
    rain: v.optional(
      fields({
        method: v.picklist(RAIN_METHODS),
        fraction: v.optional(range(0, 1)),
        runoff: v.optional(range(0, 1)),
      }),
    ),
  });
}

const MOST_DEPARTURES = 100;

/** Weeks from a day on, and how many times the usual reference ET and rain of each day is expected in them. */
export const departureFields = {
  from: isoDay,
  weeks: whole(1, MOST_WEEKS, 'weeks'),
  eto: v.optional(range(0, 3)),
  rain: v.optional(range(0, 10)),
};

function climateSchema(system: UnitSystem) {
  const year = (kind: 'depth' | 'temperature' | 'windSpeed') => twelve(quantity(kind, system));
  return v.pipe(
    fields({
      source: note,
      eto: v.optional(year('depth')),
      minTemperature: v.optional(year('temperature')),
      maxTemperature: v.optional(year('temperature')),
      dewPoint: v.optional(year('temperature')),
      wind: v.optional(year('windSpeed')),
      sunshineHours: v.optional(twelve(range(0, 24, 'hoursPerDay'))),
      rain: year('depth'),
      rainDays: v.optional(twelve(range(0, 31, 'days'))),
      rainDayThreshold: v.optional(rainDayThreshold(system)),
    }),
    // Checked with the other relations; here for those who read the JSON Schema alone.
    v.metadata({ anyOf: [{ required: ['eto'] }, { required: ['minTemperature', 'maxTemperature'] }] }),
  );
}

/** Stretches are few: a year each, or all in one. */
const MOST_STRETCHES = 200;

/** Real seasons by day. What is in the texts is checked with the other relations. */
const yearsSchema = fields({
  source: note,
  stretches: v.pipe(
    v.array(fields({ from: isoDay, rain: packedText, eto: packedText })),
    v.minLength(1),
    v.maxLength(MOST_STRETCHES),
  ),
});

/** Offices count days from a trace on, from 0.01 in, 0.1 in or 1 in, from 0.1, 0.2, 1 or 10 mm. */
const RAIN_DAY_THRESHOLDS = { us: [0.001, 1], metric: [0.0254, 25.4] } as const;

function rainDayThreshold(system: UnitSystem) {
  const [least, most] = RAIN_DAY_THRESHOLDS[system];
  return withMore(range(least, most), v.metadata({ quantity: 'depth', units: system }));
}

function twelve<Schema extends v.GenericSchema<unknown, number>>(schema: Schema) {
  return v.pipe(v.array(schema), v.length(12));
}
