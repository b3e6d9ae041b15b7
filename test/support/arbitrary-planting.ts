/** Random plantings: every need, extent, way of watering, and span in the ground. */
import fc from 'fast-check';
import { CROP_IDS } from '../../src/engine/plants/crops.data.ts';
import { PLANT_TYPE_IDS } from '../../src/engine/plants/plant-types.data.ts';
import { WATER_USE_CLASS_IDS } from '../../src/engine/plants/water-use-classes.data.ts';
import type { PlanNeed, PlanPlanting } from '../../src/plan/schema/plan-schema.ts';
import { arbitraryLines } from './arbitrary-line.ts';
import { amount, dayNear, type Frame, share, wordy } from './arbitrary-parts.ts';
import { arbitraryPlanGround } from './plan-ground.ts';

/** A planting whose id is not yet set. */
export function arbitraryPlanting(frame: Frame): fc.Arbitrary<PlanPlanting> {
  return fc
    .record(
      {
        id: fc.constant('planting'),
        name: wordy,
        need: arbitraryNeed(frame),
        extent: arbitraryExtent(frame),
        lines: arbitraryLines(frame),
        rootDepth: amount('rootDepth', frame, 0.1, 1.5),
        allowedDepletion: fc.constantFrom(0.2, 0.35, 0.5, 0.65),
        watering: fc.constantFrom<('keep' | 'refill')[]>('keep', 'refill'),
        target: fc.constantFrom(0, 0.25, 0.5),
        startDepletion: share,
        inGround: fc.record({ from: dayNear(frame, 30, 0), to: dayNear(frame, 0, 60) }, { requiredKeys: [] }),
        establishing: fc.record({ until: dayNear(frame, 0, 60), factor: fc.constantFrom(0.8, 1.2, 1.5) }),
        shutOff: fc.boolean(),
        ...arbitraryPlanGround(frame),
        note: wordy,
      },
      { requiredKeys: ['id', 'name', 'need', 'extent', 'lines'] },
    )
    .map(withDaysInOrder)
    .map(withLinesInOrder);
}

/** Days in the ground that run forwards and end after planting. */
function withDaysInOrder(planting: PlanPlanting): PlanPlanting {
  const { inGround, need } = planting;
  if (inGround?.to === undefined) return planting;
  const first = inGround.from ?? (need.kind === 'crop' ? need.plantedOn : undefined);
  if (first === undefined || first <= inGround.to) return planting;
  return { ...planting, inGround: inGround.from === undefined ? {} : { from: inGround.to, to: inGround.from } };
}

/** A line without a day of its own lies from the planting's first: it must not end before. */
function withLinesInOrder(planting: PlanPlanting): PlanPlanting {
  const first = planting.inGround?.from;
  const endsEarly = ({ from, to }: PlanPlanting['lines'][number]) =>
    to !== undefined && first !== undefined && from === undefined && to < first;
  return { ...planting, lines: planting.lines.map((line) => (endsEarly(line) ? { ...line, to: first } : line)) };
}

function arbitraryNeed(frame: Frame): fc.Arbitrary<PlanNeed> {
  const landscape = {
    factor: fc.constantFrom(0.05, 0.2, 0.5, 0.8, 1),
    density: fc.constantFrom(0.5, 0.9, 1.1, 1.3),
    microclimate: fc.constantFrom(0.5, 1, 1.4),
  };
  const days = fc.integer({ min: 1, max: 60 });
  const kc = fc.constantFrom(0.3, 0.6, 0.95, 1.15);
  return fc.oneof(
    fc.record(
      { kind: fc.constant('class' as const), class: fc.constantFrom(...WATER_USE_CLASS_IDS), ...landscape },
      { requiredKeys: ['kind', 'class'] },
    ),
    fc.record(
      { kind: fc.constant('type' as const), type: fc.constantFrom(...PLANT_TYPE_IDS), ...landscape },
      { requiredKeys: ['kind', 'type'] },
    ),
    fc.record(
      {
        kind: fc.constant('crop' as const),
        crop: fc.constantFrom(...CROP_IDS),
        plantedOn: dayNear(frame, 60, 0),
        stages: fc.record({ initial: days, development: days, mid: days, late: days }),
        coefficients: fc.record({ initial: kc, mid: kc, end: kc }),
      },
      { requiredKeys: ['kind', 'crop', 'plantedOn'] },
    ),
  );
}

function arbitraryExtent(frame: Frame): fc.Arbitrary<PlanPlanting['extent']> {
  return fc.oneof(
    fc.record({ kind: fc.constant('area' as const), area: amount('area', frame, 0.5, 200) }),
    fc.record(
      {
        kind: fc.constant('canopy' as const),
        count: fc.integer({ min: 1, max: 40 }),
        diameter: amount('diameter', frame, 0.1, 5),
        trunk: amount('diameter', frame, 0.03, 0.2),
      },
      { requiredKeys: ['kind', 'count', 'diameter'] },
    ),
  );
}
