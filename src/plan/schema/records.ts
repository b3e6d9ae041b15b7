/** What was observed (log) and what was decided for one zone and week (choices), by ISO day. */
import * as v from 'valibot';
import type { UnitSystem } from '../../engine/units.ts';
import { fields } from './fields.ts';
import { quantity, range, whole } from './quantity.ts';
import { id, isoDay, note } from './text.ts';

export const MINUTES_A_WEEK = 7 * 24 * 60;

/** Minutes of a whole week. */
export const weekMinutes = range(0, MINUTES_A_WEEK, 'minutesPerWeek');

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
  });
}

export function observedWeekSchema(system: UnitSystem) {
  return fields({
    rain: v.optional(quantity('depth', system)),
    eto: v.optional(quantity('depth', system)),
  });
}

export const runsSchema = v.record(id, v.record(isoDay, weekMinutes));

export function logSchema(system: UnitSystem) {
  return fields({
    days: v.optional(v.record(isoDay, observedDaySchema(system))),
    weeks: v.optional(v.record(isoDay, observedWeekSchema(system))),
    runs: v.optional(runsSchema),
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
