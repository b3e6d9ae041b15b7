/** What was observed and forecast (log) and what was decided for one zone and week (choices), by ISO day. */
import * as v from 'valibot';
import type { UnitSystem } from '../../engine/units.ts';
import { fields } from './fields.ts';
import { MOST_PLANTINGS } from './planting.ts';
import { meterReading, quantity, range, whole } from './quantity.ts';
import { id, isoDay, note } from './text.ts';

export const MINUTES_A_WEEK = 7 * 24 * 60;

/** Minutes of a whole week. */
export const weekMinutes = range(0, MINUTES_A_WEEK, 'minutesPerWeek');

/** Readings of a day that can come from elsewhere than a person's hand. */
export const SOURCED_READINGS = ['rain', 'eto', 'minTemperature', 'maxTemperature'] as const;

/** Where they come from then: a weather service, a file, or a line over a gap between the days before and after. */
export const READING_SOURCES = ['service', 'file', 'estimate'] as const;

const readingSource = v.picklist(READING_SOURCES);

/** Of all such readings of the day, or by reading; what is left out was typed. */
const daySource = v.union([
  readingSource,
  fields({
    rain: v.optional(readingSource),
    eto: v.optional(readingSource),
    minTemperature: v.optional(readingSource),
    maxTemperature: v.optional(readingSource),
  }),
]);

export function observedDaySchema(system: UnitSystem) {
  return fields({
    rain: v.optional(quantity('depth', system)),
    eto: v.optional(quantity('depth', system)),
    minTemperature: v.optional(quantity('temperature', system)),
    maxTemperature: v.optional(quantity('temperature', system)),
    dewPoint: v.optional(quantity('temperature', system)),
    minHumidityPercent: v.optional(range(0, 100, 'percent')),
    maxHumidityPercent: v.optional(range(0, 100, 'percent')),
    wind: v.optional(quantity('windSpeed', system)),
    radiationMj: v.optional(range(0, 50, 'MJ/m²')),
    sunshineHours: v.optional(range(0, 24, 'hours')),
    source: v.optional(daySource),
  });
}

export function observedWeekSchema(system: UnitSystem) {
  return fields({
    rain: v.optional(quantity('depth', system)),
    rainThrough: v.optional(isoDay),
    eto: v.optional(quantity('depth', system)),
    note: v.optional(note),
  });
}

/** What ran in a zone on one day, and the shut-offs that were open, by planting. */
export const dayRunSchema = fields({
  minutes: range(0, 24 * 60, 'minutes'),
  open: v.optional(v.pipe(v.array(id), v.maxLength(MOST_PLANTINGS))),
});

/** Minutes of the whole week where no more is known, else what ran on each of its days; on the rest of them nothing, or as computed. */
export const weekRunSchema = v.union([
  weekMinutes,
  fields({ days: v.record(isoDay, dayRunSchema), rest: v.optional(v.literal('computed')) }),
]);

/** By zone, then by a day of the week. */
export const runsSchema = v.record(id, v.record(isoDay, weekRunSchema));

/** As many as days of the longest season, and a few before it. */
const MOST_FORECASTS = 800;

export function forecastSchema(system: UnitSystem) {
  const forecastDay = fields({
    rain: v.optional(quantity('depth', system)),
    eto: v.optional(quantity('depth', system)),
    source: v.optional(readingSource),
  });
  return fields({ issued: isoDay, days: v.record(isoDay, forecastDay) });
}

export function logSchema(system: UnitSystem) {
  return fields({
    days: v.optional(v.record(isoDay, observedDaySchema(system))),
    weeks: v.optional(v.record(isoDay, observedWeekSchema(system))),
    runs: v.optional(runsSchema),
    meter: v.optional(v.record(isoDay, meterReading(system))),
    forecasts: v.optional(v.pipe(v.array(forecastSchema(system)), v.maxLength(MOST_FORECASTS))),
  });
}

export const choiceSchema = fields({
  minutes: v.optional(weekMinutes),
  closed: v.optional(v.boolean()),
  openDays: v.optional(v.record(id, whole(0, 7, 'days'))),
  note: v.optional(note),
});

/** By zone, then by a day of the week. */
export const choicesSchema = v.record(id, v.record(isoDay, choiceSchema));
