/** Plants alike enough to share a number. */
import * as v from 'valibot';
import { CROP_IDS } from '../../engine/plants/crops.data.ts';
import { PLANT_TYPE_IDS } from '../../engine/plants/plant-types.data.ts';
import { WATER_USE_CLASS_IDS } from '../../engine/plants/water-use-classes.data.ts';
import type { UnitSystem } from '../../engine/units.ts';
import { lineSchema } from './line.ts';
import { quantity, range, whole } from './quantity.ts';
import { id, isoDay, name, note } from './text.ts';

const landscape = {
  /** Left out: the middle of the class's range. */
  factor: v.optional(range(0, 2)),
  density: v.optional(range(0.5, 1.3)),
  microclimate: v.optional(range(0.5, 1.4)),
};

const needSchema = v.variant(
  'kind',
  [
    v.strictObject({
      kind: v.literal('class'),
      class: v.picklist(WATER_USE_CLASS_IDS, `a water-use class: ${WATER_USE_CLASS_IDS.join(', ')}`),
      ...landscape,
    }),
    v.strictObject({
      kind: v.literal('type'),
      type: v.picklist(PLANT_TYPE_IDS, `a plant type: ${PLANT_TYPE_IDS.join(', ')}`),
      ...landscape,
    }),
    v.strictObject({
      kind: v.literal('crop'),
      crop: v.picklist(CROP_IDS, `a crop: ${CROP_IDS.join(', ')}`),
      plantedOn: isoDay,
      /** Days of each growth stage; left out: the crop's first published row. */
      stages: v.optional(
        v.strictObject({
          initial: whole(1, 400, 'days'),
          development: whole(1, 400, 'days'),
          mid: whole(1, 400, 'days'),
          late: whole(1, 400, 'days'),
        }),
      ),
      coefficients: v.optional(v.strictObject({ initial: range(0, 2), mid: range(0, 2), end: range(0, 2) })),
    }),
  ],
  'a need: a water-use class, a plant type or a crop',
);

function extentSchema(system: UnitSystem) {
  return v.variant(
    'kind',
    [
      v.strictObject({ kind: v.literal('area'), area: quantity('area', system) }),
      v.strictObject({
        kind: v.literal('canopy'),
        count: whole(1, 10_000, 'plants'),
        diameter: quantity('diameter', system),
      }),
    ],
    'an extent: an area, or a count of plants with their canopy diameter',
  );
}

export function plantingSchema(system: UnitSystem) {
  return v.strictObject({
    id,
    name,
    need: needSchema,
    extent: extentSchema(system),
    rootDepth: v.optional(quantity('rootDepth', system)),
    allowedDepletion: v.optional(range(0.05, 0.95)),
    watering: v.optional(v.picklist(['keep', 'refill'], 'keep or refill')),
    /** Depletion that may remain after watering, as a share of the allowed depletion; 0 = full. */
    target: v.optional(range(0, 0.95)),
    startDepletion: v.optional(range(0, 1)),
    inGround: v.optional(v.strictObject({ from: v.optional(isoDay), to: v.optional(isoDay) })),
    establishing: v.optional(v.strictObject({ until: isoDay, factor: range(0.1, 5) })),
    shutOff: v.optional(v.boolean('true or false')),
    lines: v.array(lineSchema(system), 'a list of lines'),
    note: v.optional(note),
  });
}
