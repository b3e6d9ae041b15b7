/** One valve or timer station: everything in it runs together. */
import * as v from 'valibot';
import type { UnitSystem } from '../../engine/units.ts';
import { field, fields, maybe } from './fields.ts';
import { plantingSchema } from './planting.ts';
import { range, whole } from './quantity.ts';
import { soilTexture } from './site.ts';
import { weekdays } from './supply.ts';
import { id, name, note } from './text.ts';

export const MOST_PLANTINGS = 1000;

const ruleSchema = v.variant(
  'kind',
  [
    fields('the rule thirstiest', { kind: v.literal('thirstiest', 'thirstiest') }),
    fields('the rule area-weighted', { kind: v.literal('area-weighted', 'area-weighted') }),
    fields('the rule of one planting', {
      kind: v.literal('planting', 'planting'),
      planting: field(id, 'Id of the planting of this zone that decides.'),
    }),
  ],
  'a rule: thirstiest, area-weighted or planting',
);

/** How much of what runs out stays where it is wanted: one figure or the other, so they can never both be applied. */
const applicationSchema = v.variant(
  'kind',
  [
    fields('an efficiency', {
      kind: v.literal('efficiency', 'efficiency'),
      value: field(range(0.05, 1), 'Share of the water that counts as net.'),
    }),
    fields('a distribution uniformity', {
      kind: v.literal('distribution-uniformity', 'distribution-uniformity'),
      value: field(range(0.05, 1), 'Mean of the lowest quarter over the mean of all.'),
    }),
    fields('a computed uniformity', { kind: v.literal('computed', 'computed') }),
  ],
  'an application: efficiency, distribution-uniformity or computed',
);

export function zoneSchema(system: UnitSystem) {
  return fields('a zone', {
    id,
    name,
    soil: maybe(soilTexture, 'Left out: the site’s.'),
    slopePercent: maybe(range(0, 100, 'percent'), 'Left out: the site’s.'),
    wateringDays: v.pipe(
      v.union([whole(1, 7, 'daysPerWeek'), weekdays], 'a whole number from 1 to 7, or a list of weekdays'),
      v.description('A number is spread over the days on which water may run; a list names the weekdays.'),
    ),
    rule: maybe(ruleSchema, 'Whose need sets the minutes where plantings differ. Left out: thirstiest.'),
    timerStepMinutes: maybe(range(0.1, 120, 'minutes'), 'Smallest step of the timer. Left out: 1.'),
    longestCycleMinutes: maybe(
      range(1, 1440, 'minutes'),
      'Longest run before a pause. Left out: from the soil’s intake.',
    ),
    application: maybe(applicationSchema, 'Left out: the usual efficiency of drip or spray.'),
    plantings: v.pipe(
      v.array(plantingSchema(system), 'a list of plantings'),
      v.maxLength(MOST_PLANTINGS, `at most ${MOST_PLANTINGS} plantings`),
      v.description('Plants alike enough to share a number.'),
    ),
    note: maybe(note, 'A note about the zone.'),
  });
}
