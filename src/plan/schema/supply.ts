/** Where the water comes from, when it may run, and how much of it there is. */
import * as v from 'valibot';
import type { UnitSystem } from '../../engine/units.ts';
import { fields } from './fields.ts';
import { quantity, range } from './quantity.ts';
import { isoDay, name, timeOfDay } from './text.ts';

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
      share: v.optional(range(0.1, 1)),
    }),
  ]);
}

const MOST_RESTRICTIONS = 20;
const MOST_CUTS = 50;

/** From a day to a day, water may run on these weekdays alone. */
const restrictionSchema = fields({
  name: v.optional(name),
  from: v.optional(isoDay),
  to: v.optional(isoDay),
  weekdays,
  hoursPerDay: v.optional(range(0.1, 24, 'hours')),
});

/** Less water in the weeks that begin on its days: a share of what was computed is taken away, or so much is left. */
function cutSchema(system: UnitSystem) {
  return v.pipe(
    fields({
      from: isoDay,
      to: isoDay,
      share: v.optional(range(0, 1)),
      perWeek: v.optional(quantity('volume', system)),
    }),
    // Checked with the other relations; here for those who read the JSON Schema alone.
    v.metadata({ oneOf: [{ required: ['share'] }, { required: ['perWeek'] }] }),
  );
}

/** So much money for so much water. */
function priceSchema(system: UnitSystem) {
  return fields({
    amount: range(0, 1_000_000),
    per: v.pipe(quantity('volume', system), v.gtValue(0)),
    currency: v.pipe(v.string(), v.regex(/^[A-Z]{3}$/)),
  });
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
          waterHeight: v.optional(quantity('waterHeight', system)),
        }),
      ),
      v.maxLength(MOST_SOURCES),
    ),
    window: v.optional(
      fields({
        weekdays: v.optional(weekdays),
        opensAt: v.optional(timeOfDay),
        hoursPerDay: range(0.1, 24, 'hours'),
      }),
    ),
    allowance: v.optional(
      fields({
        perWeek: v.optional(quantity('volume', system)),
        perSeason: v.optional(quantity('volume', system)),
        perArea: v.optional(quantity('waterPerArea', system)),
      }),
    ),
    price: v.optional(priceSchema(system)),
    restrictions: v.optional(v.pipe(v.array(restrictionSchema), v.maxLength(MOST_RESTRICTIONS))),
    cuts: v.optional(v.pipe(v.array(cutSchema(system)), v.maxLength(MOST_CUTS))),
    leachingFraction: v.optional(range(0, 0.5)),
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
