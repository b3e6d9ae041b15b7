/** What was observed (log) and what was decided for one zone and week (choices), by ISO day. */
import * as v from 'valibot';
import type { UnitSystem } from '../../engine/units.ts';
import { quantity, range, whole } from './quantity.ts';
import { id, isoDay, note } from './text.ts';

/** Minutes of a whole week. */
export const weekMinutes = range(0, 7 * 24 * 60, 'minutes a week');

export function observedDaySchema(system: UnitSystem) {
  return v.strictObject({
    rain: v.optional(quantity('depth', system)),
    eto: v.optional(quantity('depth', system)),
    minTemperature: v.optional(quantity('temperature', system)),
    maxTemperature: v.optional(quantity('temperature', system)),
    dewPoint: v.optional(quantity('temperature', system)),
    minHumidityPercent: v.optional(range(0, 100, '%')),
    maxHumidityPercent: v.optional(range(0, 100, '%')),
    wind: v.optional(quantity('windSpeed', system)),
    radiationMj: v.optional(range(0, 50, 'MJ/m2')),
    sunshineHours: v.optional(range(0, 24, 'hours')),
  });
}

export function observedWeekSchema(system: UnitSystem) {
  return v.strictObject({
    rain: v.optional(quantity('depth', system)),
    eto: v.optional(quantity('depth', system)),
  });
}

export function logSchema(system: UnitSystem) {
  return v.strictObject({
    /** By day. */
    days: v.optional(v.record(isoDay, observedDaySchema(system), 'weather by day')),
    /** Week totals, by any day of the week (its first, when this kit writes it). */
    weeks: v.optional(v.record(isoDay, observedWeekSchema(system), 'weather by week')),
    /** Minutes really run, by zone and week. */
    runs: v.optional(v.record(id, v.record(isoDay, weekMinutes, 'minutes by week'), 'minutes by zone')),
  });
}

export const choiceSchema = v.strictObject({
  minutes: v.optional(weekMinutes),
  closed: v.optional(v.boolean('true or false')),
  /** Open watering days of the week, by planting. */
  openDays: v.optional(v.record(id, whole(0, 7, 'days'), 'open days by planting')),
  note: v.optional(note),
});

/** By zone, then by a day of the week. */
export const choicesSchema = v.record(id, v.record(isoDay, choiceSchema, 'choices by week'), 'choices by zone');
