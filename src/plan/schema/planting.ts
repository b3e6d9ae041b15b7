/** Plants alike enough to share a number. */
import * as v from 'valibot';
import { CROP_IDS } from '../../engine/plants/crops.data.ts';
import { landscapeFactorRange } from '../../engine/plants/landscape-factor-range.ts';
import { PLANT_TYPE_IDS } from '../../engine/plants/plant-types.data.ts';
import { WATER_USE_CLASS_IDS } from '../../engine/plants/water-use-classes.data.ts';
import { MIX_IDS } from '../../engine/soil/potting-mixes.data.ts';
import type { UnitSystem } from '../../engine/units.ts';
import { fields } from './fields.ts';
import { lineSchema } from './line.ts';
import { quantity, range, whole } from './quantity.ts';
import { id, isoDay, name, note } from './text.ts';

const MOST_LINES = 100;

/** Of a zone. */
export const MOST_PLANTINGS = 1000;

/** What of a planting can stand there without anybody having said so. */
export const ASSUMED_OF_PLANTING = ['need', 'plantedOn', 'extent', 'lines'] as const;

export type AssumedOfPlanting = (typeof ASSUMED_OF_PLANTING)[number];

const factor = (kind: 'species' | 'density' | 'microclimate') => {
  const { min, max } = landscapeFactorRange(kind);
  return range(min, max);
};

const landscape = {
  factor: v.optional(factor('species')),
  density: v.optional(factor('density')),
  microclimate: v.optional(factor('microclimate')),
};

const stage = whole(1, 400, 'days');
const coefficient = range(0, 2);

export const needSchema = v.variant('kind', [
  fields({
    kind: v.literal('class'),
    class: v.picklist(WATER_USE_CLASS_IDS),
    plant: v.optional(
      fields({
        name,
        botanical: v.optional(name),
        class: v.picklist(WATER_USE_CLASS_IDS),
      }),
    ),
    ...landscape,
  }),
  fields({
    kind: v.literal('type'),
    type: v.picklist(PLANT_TYPE_IDS),
    ...landscape,
  }),
  fields({
    kind: v.literal('crop'),
    crop: v.picklist(CROP_IDS),
    plantedOn: isoDay,
    stages: v.optional(
      fields({
        initial: stage,
        development: stage,
        mid: stage,
        late: stage,
      }),
    ),
    coefficients: v.optional(
      fields({
        initial: coefficient,
        mid: coefficient,
        end: coefficient,
      }),
    ),
  }),
]);

function extentSchema(system: UnitSystem) {
  return v.variant('kind', [
    fields({
      kind: v.literal('area'),
      area: quantity('area', system),
    }),
    fields({
      kind: v.literal('bed'),
      length: quantity('length', system),
      width: quantity('length', system),
    }),
    fields({
      kind: v.literal('rows'),
      rows: whole(1, 1000, 'rows'),
      length: quantity('length', system),
      apart: v.optional(quantity('spacing', system)),
    }),
    fields({
      kind: v.literal('canopy'),
      count: whole(1, 10_000, 'plants'),
      diameter: quantity('diameter', system),
      trunk: v.optional(quantity('diameter', system)),
    }),
  ]);
}

function containerSchema(system: UnitSystem) {
  return fields({
    volume: v.pipe(quantity('volume', system), v.gtValue(0)),
    count: v.optional(whole(1, 10_000)),
    mix: v.optional(v.picklist(MIX_IDS)),
    availableWater: v.optional(range(0.05, 0.6)),
    opening: v.optional(quantity('diameter', system)),
    rainShare: v.optional(range(0, 1)),
  });
}

const mulchSchema = v.variant('kind', [
  fields({
    kind: v.literal('organic'),
    cover: v.optional(range(0, 1)),
  }),
  fields({ kind: v.literal('plastic') }),
]);

const MONTHS = 12;

export function plantingSchema(system: UnitSystem) {
  return fields({
    id,
    name,
    need: needSchema,
    extent: extentSchema(system),
    rootDepth: v.optional(quantity('rootDepth', system)),
    allowedDepletion: v.optional(range(0.05, 0.95)),
    watering: v.optional(v.picklist(['keep', 'refill'])),
    target: v.optional(range(0, 0.95)),
    startDepletion: v.optional(range(0, 1)),
    inGround: v.optional(
      fields({
        from: v.optional(isoDay),
        to: v.optional(isoDay),
      }),
    ),
    establishing: v.optional(
      fields({
        until: isoDay,
        factor: range(0.1, 5),
      }),
    ),
    container: v.optional(containerSchema(system)),
    wettedShare: v.optional(range(0.05, 1)),
    mulch: v.optional(mulchSchema),
    leaflessMonths: v.optional(v.pipe(v.array(whole(1, MONTHS)), v.maxLength(MONTHS))),
    dryDownDays: v.optional(whole(0, 90, 'days')),
    soak: v.optional(v.boolean()),
    shutOff: v.optional(v.boolean()),
    lines: v.pipe(v.array(lineSchema(system)), v.maxLength(MOST_LINES)),
    note: v.optional(note),
    assumed: v.optional(v.pipe(v.array(v.picklist(ASSUMED_OF_PLANTING)), v.maxLength(ASSUMED_OF_PLANTING.length))),
  });
}
