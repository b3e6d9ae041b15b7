/** What was observed (log) and what was decided for one zone and week (choices), by ISO day. */
import * as v from 'valibot';
import type { UnitSystem } from '../../engine/units.ts';
import { field, fields, maybe } from './fields.ts';
import { quantity, range, whole } from './quantity.ts';
import { id, isoDay, note } from './text.ts';

export const MINUTES_A_WEEK = 7 * 24 * 60;

/** Minutes of a whole week. */
export const weekMinutes = range(0, MINUTES_A_WEEK, 'minutesPerWeek');

export function observedDaySchema(system: UnitSystem) {
  return fields('the weather of a day', {
    rain: maybe(quantity('depth', system), 'Rain gauge.'),
    eto: maybe(quantity('depth', system), 'Reference evapotranspiration.'),
    minTemperature: maybe(quantity('temperature', system), 'Lowest air temperature.'),
    maxTemperature: maybe(quantity('temperature', system), 'Highest air temperature.'),
    dewPoint: maybe(quantity('temperature', system), 'Dew point.'),
    minHumidityPercent: maybe(range(0, 100, 'percent'), 'Lowest relative humidity.'),
    maxHumidityPercent: maybe(range(0, 100, 'percent'), 'Highest relative humidity.'),
    wind: maybe(quantity('windSpeed', system), 'Mean wind speed, at the site’s wind height.'),
    radiationMj: maybe(range(0, 50, 'MJ/m²'), 'Solar radiation.'),
    sunshineHours: maybe(range(0, 24, 'hours'), 'Hours of bright sunshine.'),
  });
}

export function observedWeekSchema(system: UnitSystem) {
  return fields('the weather of a week', {
    rain: maybe(quantity('depth', system), 'Rain of the whole week.'),
    eto: maybe(quantity('depth', system), 'Reference evapotranspiration of the whole week.'),
  });
}

export const runsSchema = v.record(id, v.record(isoDay, weekMinutes, 'minutes by week'), 'minutes by zone');

export function logSchema(system: UnitSystem) {
  return fields('a log', {
    days: maybe(v.record(isoDay, observedDaySchema(system), 'weather by day'), 'Weather by day.'),
    weeks: maybe(
      v.record(isoDay, observedWeekSchema(system), 'weather by week'),
      'Totals by week, under any day of the week (its first, when this kit writes it).',
    ),
    runs: maybe(runsSchema, 'Minutes really run in the whole week, by zone and a day of the week.'),
  });
}

export const choiceSchema = fields('the choices of a week', {
  minutes: maybe(weekMinutes, 'Minutes of the whole week, set by hand.'),
  closed: maybe(v.boolean('true or false'), 'Whether the zone stays shut for the week.'),
  openDays: maybe(
    v.record(id, whole(0, 7, 'days'), 'open days by planting'),
    'Watering days of the week on which a shut-off is open, by planting.',
  ),
  note: maybe(note, 'A note about the week.'),
});

/** By zone, then by a day of the week. */
export const choicesSchema = field(
  v.record(id, v.record(isoDay, choiceSchema, 'choices by week'), 'choices by zone'),
  'What was set by hand, by zone and a day of the week.',
);
