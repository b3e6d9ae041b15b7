/** Plants alike enough to share a number. */
import * as v from 'valibot';
import { CROP_IDS } from '../../engine/plants/crops.data.ts';
import { landscapeFactorRange } from '../../engine/plants/landscape-factor-range.ts';
import { PLANT_TYPE_IDS } from '../../engine/plants/plant-types.data.ts';
import { WATER_USE_CLASS_IDS } from '../../engine/plants/water-use-classes.data.ts';
import type { UnitSystem } from '../../engine/units.ts';
import { field, fields, maybe } from './fields.ts';
import { lineSchema } from './line.ts';
import { quantity, range, whole } from './quantity.ts';
import { id, isoDay, name, note } from './text.ts';

const MOST_LINES = 100;

const factor = (kind: 'species' | 'density' | 'microclimate') => {
  const { min, max } = landscapeFactorRange(kind);
  return range(min, max);
};

const landscape = {
  factor: maybe(factor('species'), 'Share of reference ET. Left out: the middle of the class, or the type’s own.'),
  density: maybe(factor('density'), 'Density factor kd. Left out: 1.'),
  microclimate: maybe(factor('microclimate'), 'Microclimate factor kmc. Left out: 1.'),
};

const stage = (which: string) => field(whole(1, 400, 'days'), `Days of the ${which} stage.`);
const coefficient = (which: string) => field(range(0, 2), `Crop coefficient Kc, ${which}.`);

export const needSchema = v.variant(
  'kind',
  [
    fields('a need by water-use class', {
      kind: v.literal('class', 'class'),
      class: v.picklist(WATER_USE_CLASS_IDS, `a water-use class: ${WATER_USE_CLASS_IDS.join(', ')}`),
      ...landscape,
    }),
    fields('a need by plant type', {
      kind: v.literal('type', 'type'),
      type: v.picklist(PLANT_TYPE_IDS, `a plant type: ${PLANT_TYPE_IDS.join(', ')}`),
      ...landscape,
    }),
    fields('a need by crop', {
      kind: v.literal('crop', 'crop'),
      crop: v.picklist(CROP_IDS, `a crop: ${CROP_IDS.join(', ')}`),
      plantedOn: field(isoDay, 'Day of planting; for a crop that stays, the day on which growth resumes.'),
      stages: maybe(
        fields('four stages', {
          initial: stage('initial'),
          development: stage('development'),
          mid: stage('mid-season'),
          late: stage('late-season'),
        }),
        'Days of each growth stage. Left out: the crop’s first published row.',
      ),
      coefficients: maybe(
        fields('three crop coefficients', {
          initial: coefficient('initial'),
          mid: coefficient('mid-season'),
          end: coefficient('at the end'),
        }),
        'Left out: the published ones.',
      ),
    }),
  ],
  'a need: a water-use class, a plant type or a crop',
);

function extentSchema(system: UnitSystem) {
  return v.variant(
    'kind',
    [
      fields('an area', {
        kind: v.literal('area', 'area'),
        area: field(quantity('area', system), 'Ground that the planting covers.'),
      }),
      fields('a count of plants with their canopy', {
        kind: v.literal('canopy', 'canopy'),
        count: field(whole(1, 10_000, 'plants'), 'Number of plants.'),
        diameter: field(quantity('diameter', system), 'Across the canopy of one plant.'),
      }),
    ],
    'an extent: an area, or a count of plants with their canopy diameter',
  );
}

export function plantingSchema(system: UnitSystem) {
  return fields('a planting', {
    id,
    name,
    need: needSchema,
    extent: extentSchema(system),
    rootDepth: maybe(
      quantity('rootDepth', system),
      'Left out: the crop’s smaller published depth, or the type’s usual.',
    ),
    allowedDepletion: maybe(range(0.05, 0.95), 'Share of the available water that may be used before watering.'),
    watering: maybe(
      v.picklist(['keep', 'refill'], 'keep or refill'),
      'keep: back to its target every week. refill: left alone until it would pass its allowed depletion, then filled.',
    ),
    target: maybe(
      range(0, 0.95),
      'Depletion that may remain after watering, as a share of the allowed depletion. Left out: 0, full.',
    ),
    startDepletion: maybe(
      range(0, 1),
      'Depletion on the first day, as a share of the allowed depletion. Left out: 0, full.',
    ),
    inGround: maybe(
      fields('first and last day in the ground', {
        from: maybe(isoDay, 'First day. Left out: an annual crop’s planting day, else the season’s first.'),
        to: maybe(isoDay, 'Last day. Left out: the end of an annual crop’s last stage, else the season’s last.'),
      }),
      'When the planting is there to be watered.',
    ),
    establishing: maybe(
      fields('until when, and the factor', {
        until: field(isoDay, 'Last day of establishing.'),
        factor: field(range(0.1, 5), 'Multiplies what the plants use until then.'),
      }),
      'New plants need other amounts until they are settled.',
    ),
    shutOff: maybe(v.boolean('true or false'), 'Whether a hand valve stands in front of this planting.'),
    lines: v.pipe(
      v.array(lineSchema(system), 'a list of lines'),
      v.maxLength(MOST_LINES, `at most ${MOST_LINES} lines`),
      v.description('Each from a day on: a bed re-laid in June has two.'),
    ),
    note: maybe(note, 'A note about the planting.'),
  });
}
