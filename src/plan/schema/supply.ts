/** Where the water comes from, when it may run, and how much of it there is. */
import * as v from 'valibot';
import type { UnitSystem } from '../../engine/units.ts';
import { fields } from './fields.ts';
import { quantity, range } from './quantity.ts';
import { isoDay, name } from './text.ts';

/** Monday first, as in ISO 8601. */
export const WEEKDAYS = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'] as const;

const MOST_SOURCES = 100;

export const weekdays = v.pipe(v.array(v.picklist(WEEKDAYS)), v.minLength(1), v.maxLength(7));

/** The source's flow: read off a meter or a sheet, or from a bucket test (a pail of known volume and a watch). */
function flowSchema(system: UnitSystem) {
  return v.variant('kind', [
    fields({
      kind: v.literal('typed'),
      flow: quantity('supplyFlow', system),
    }),
    fields({
      kind: v.literal('bucket'),
      volume: v.pipe(quantity('volume', system), v.gtValue(0)),
      seconds: range(0.5, 3600, 'seconds'),
    }),
  ]);
}

export function supplySchema(system: UnitSystem) {
  return fields({
    sources: v.pipe(
      v.array(
        fields({
          from: v.optional(isoDay),
          name,
          flow: v.optional(flowSchema(system)),
          pressure: v.optional(quantity('pressure', system)),
        }),
      ),
      v.maxLength(MOST_SOURCES),
    ),
    window: v.optional(
      fields({
        weekdays: v.optional(weekdays),
        hoursPerDay: range(0.1, 24, 'hours'),
      }),
    ),
    allowance: v.optional(
      fields({
        perWeek: v.optional(quantity('volume', system)),
        perSeason: v.optional(quantity('volume', system)),
      }),
    ),
    tank: v.optional(
      fields({
        capacity: quantity('volume', system),
        start: quantity('volume', system),
        roofArea: v.optional(quantity('area', system)),
        runoffCoefficient: v.optional(range(0, 1)),
      }),
    ),
  });
}
