/** One valve or timer station: everything in it runs together. */
import * as v from 'valibot';
import type { UnitSystem } from '../../engine/units.ts';
import { fields } from './fields.ts';
import { MOST_PLANTINGS, plantingSchema } from './planting.ts';
import { range, whole } from './quantity.ts';
import { soilTexture } from './site.ts';
import { weekdays } from './supply.ts';
import { id, name, note } from './text.ts';

/** One an hour: more than garden timers have. */
const MOST_STARTS = 24;

const ruleSchema = v.variant('kind', [
  fields({ kind: v.literal('thirstiest') }),
  fields({ kind: v.literal('area-weighted') }),
  fields({
    kind: v.literal('planting'),
    planting: id,
  }),
]);

/** How much of what runs out stays where it is wanted: one figure or the other, so they can never both be applied. */
const applicationSchema = v.variant('kind', [
  fields({
    kind: v.literal('efficiency'),
    value: range(0.05, 1),
  }),
  fields({
    kind: v.literal('distribution-uniformity'),
    value: range(0.05, 1),
  }),
  fields({ kind: v.literal('computed') }),
]);

export function zoneSchema(system: UnitSystem) {
  return fields({
    id,
    name,
    soil: v.optional(soilTexture),
    slopePercent: v.optional(range(0, 100, 'percent')),
    wateringDays: v.union([whole(1, 7, 'daysPerWeek'), weekdays]),
    rule: v.optional(ruleSchema),
    timerStepMinutes: v.optional(range(0.1, 120, 'minutes')),
    longestCycleMinutes: v.optional(range(1, 1440, 'minutes')),
    startsADay: v.optional(whole(1, MOST_STARTS, 'startsPerDay')),
    application: v.optional(applicationSchema),
    plantings: v.pipe(v.array(plantingSchema(system)), v.maxLength(MOST_PLANTINGS)),
    note: v.optional(note),
  });
}
