/** Where the water comes from, when it may run, and how much of it there is. */
import * as v from 'valibot';
import type { UnitSystem } from '../../engine/units.ts';
import { quantity, range } from './quantity.ts';
import { isoDay, name } from './text.ts';

/** Monday first, as in ISO 8601. */
export const WEEKDAYS = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'] as const;

export const weekdays = v.pipe(
  v.array(v.picklist(WEEKDAYS, 'a weekday: mon, tue, wed, thu, fri, sat or sun'), 'a list of weekdays'),
  v.minLength(1, 'at least one weekday'),
);

/** The source's flow: read off a meter or a sheet, or from a bucket test (a pail of known volume and a watch). */
function flowSchema(system: UnitSystem) {
  return v.variant(
    'kind',
    [
      v.strictObject({ kind: v.literal('typed'), flow: quantity('supplyFlow', system) }),
      v.strictObject({
        kind: v.literal('bucket'),
        volume: v.pipe(quantity('volume', system), v.gtValue(0, 'a bucket that holds something')),
        seconds: range(0.5, 3600, 'seconds'),
      }),
    ],
    'a flow that is typed or from a bucket test',
  );
}

export function supplySchema(system: UnitSystem) {
  return v.strictObject({
    sources: v.array(
      v.strictObject({
        /** Left out: from the season's first day. */
        from: v.optional(isoDay),
        name,
        flow: v.optional(flowSchema(system)),
        pressure: v.optional(quantity('pressure', system)),
      }),
      'a list of sources',
    ),
    window: v.optional(v.strictObject({ weekdays: v.optional(weekdays), hoursPerDay: range(0.1, 24, 'hours') })),
    allowance: v.optional(
      v.strictObject({
        perWeek: v.optional(quantity('volume', system)),
        perSeason: v.optional(quantity('volume', system)),
      }),
    ),
    tank: v.optional(
      v.strictObject({
        capacity: quantity('volume', system),
        start: quantity('volume', system),
        roofArea: v.optional(quantity('area', system)),
        runoffCoefficient: v.optional(range(0, 1)),
      }),
    ),
  });
}
