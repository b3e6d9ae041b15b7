/** One valve or timer station: everything in it runs together. */
import * as v from 'valibot';
import type { UnitSystem } from '../../engine/units.ts';
import { plantingSchema } from './planting.ts';
import { range, whole } from './quantity.ts';
import { soilTexture } from './site.ts';
import { weekdays } from './supply.ts';
import { id, name, note } from './text.ts';

const ruleSchema = v.variant(
  'kind',
  [
    v.strictObject({ kind: v.literal('thirstiest') }),
    v.strictObject({ kind: v.literal('area-weighted') }),
    v.strictObject({ kind: v.literal('planting'), planting: id }),
  ],
  'a rule: thirstiest, area-weighted or planting',
);

/** How much of what runs out stays where it is wanted: one figure or the other, so they can never both be applied. */
const applicationSchema = v.variant(
  'kind',
  [
    v.strictObject({ kind: v.literal('efficiency'), value: range(0.05, 1) }),
    v.strictObject({ kind: v.literal('distribution-uniformity'), value: range(0.05, 1) }),
    v.strictObject({ kind: v.literal('computed') }),
  ],
  'an application: efficiency, distribution-uniformity or computed',
);

export function zoneSchema(system: UnitSystem) {
  return v.strictObject({
    id,
    name,
    /** Left out: the site's. */
    soil: v.optional(soilTexture),
    slopePercent: v.optional(range(0, 100, '%')),
    /** A number is spread over the week; a list names the weekdays. */
    wateringDays: v.union([whole(1, 7, 'days a week'), weekdays], 'a whole number from 1 to 7, or a list of weekdays'),
    rule: v.optional(ruleSchema),
    timerStepMinutes: v.optional(range(0.1, 120, 'minutes')),
    /** Left out: from the soil's intake. */
    longestCycleMinutes: v.optional(range(1, 1440, 'minutes')),
    application: v.optional(applicationSchema),
    plantings: v.array(plantingSchema(system), 'a list of plantings'),
    note: v.optional(note),
  });
}
