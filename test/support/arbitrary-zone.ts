/** Random zones: every rule, way of giving watering days, and basis of efficiency. */
import fc from 'fast-check';
import { TEXTURE_IDS } from '../../src/engine/soil/textures.data.ts';
import type { PlanZone, Weekday } from '../../src/plan/schema/plan-schema.ts';
import { type Frame, hundredths, wordy } from './arbitrary-parts.ts';
import { arbitraryPlanting } from './arbitrary-planting.ts';

export const someWeekdays: fc.Arbitrary<Weekday[]> = fc.subarray<Weekday>(
  ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'],
  { minLength: 1 },
);

const someWateringDays = fc.oneof(fc.integer({ min: 1, max: 7 }), someWeekdays);

/** A zone whose ids are not yet set; the rule of one planting may name none. */
export function arbitraryZone(frame: Frame, mostPlantings: number): fc.Arbitrary<PlanZone> {
  return fc.record(
    {
      id: fc.constant('zone'),
      name: wordy,
      wateringDays: someWateringDays,
      wateringDaysByMonth: fc.dictionary(fc.integer({ min: 1, max: 12 }).map(String), someWateringDays, { maxKeys: 4 }),
      plantings: fc.array(arbitraryPlanting(frame), { maxLength: mostPlantings }),
      soil: fc.constantFrom(...TEXTURE_IDS),
      availableWater: hundredths(2, 40),
      slopePercent: fc.integer({ min: 0, max: 30 }),
      rule: fc.constantFrom<NonNullable<PlanZone['rule']>>(
        { kind: 'thirstiest' },
        { kind: 'area-weighted' },
        { kind: 'planting', planting: 'none' },
      ),
      timerStepMinutes: fc.constantFrom(0.5, 1, 5, 10),
      longestCycleMinutes: fc.integer({ min: 1, max: 120 }),
      startsADay: fc.integer({ min: 1, max: 24 }),
      application: fc.oneof(
        fc.record({ kind: fc.constant('efficiency' as const), value: fc.constantFrom(0.6, 0.81, 1) }),
        fc.record({ kind: fc.constant('distribution-uniformity' as const), value: fc.constantFrom(0.55, 0.8, 1) }),
        fc.record({ kind: fc.constant('computed' as const) }),
      ),
      cutOrder: fc.integer({ min: 1, max: 5 }),
      cutExempt: fc.boolean(),
      note: wordy,
    },
    { requiredKeys: ['id', 'name', 'wateringDays', 'plantings'] },
  );
}
