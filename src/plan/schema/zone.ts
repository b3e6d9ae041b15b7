/** One valve or timer station: everything in it runs together. */
import * as v from 'valibot';
import type { UnitSystem } from '../../engine/units.ts';
import { TYPED_APPLICATIONS } from './application.ts';
import { fields } from './fields.ts';
import { MOST_PLANTINGS, plantingSchema } from './planting.ts';
import { range, whole } from './quantity.ts';
import { soilAvailableWater, soilTexture } from './site.ts';
import { weekdays } from './supply.ts';
import { id, monthNumber, name, note } from './text.ts';

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

/** One figure or the other, so they can never both be applied. */
const applicationSchema = v.variant('kind', [...TYPED_APPLICATIONS, fields({ kind: v.literal('computed') })]);

const MOST_CUT_ORDER = 100;

const wateringDaysSchema = v.union([whole(1, 7, 'daysPerWeek'), weekdays]);

export function zoneSchema(system: UnitSystem) {
  return fields({
    id,
    name,
    soil: v.optional(soilTexture),
    availableWater: v.optional(soilAvailableWater),
    slopePercent: v.optional(range(0, 100, 'percent')),
    wateringDays: wateringDaysSchema,
    wateringDaysByMonth: v.optional(v.record(monthNumber, wateringDaysSchema)),
    rule: v.optional(ruleSchema),
    timerStepMinutes: v.optional(range(0.1, 120, 'minutes')),
    longestCycleMinutes: v.optional(range(1, 1440, 'minutes')),
    startsADay: v.optional(whole(1, MOST_STARTS, 'startsPerDay')),
    application: v.optional(applicationSchema),
    cutOrder: v.optional(whole(1, MOST_CUT_ORDER)),
    cutExempt: v.optional(v.boolean()),
    plantings: v.pipe(v.array(plantingSchema(system)), v.maxLength(MOST_PLANTINGS)),
    note: v.optional(note),
  });
}
