/**
 * Random valid plans for property tests, made to reach every branch: all needs, extents, lines and layouts, shut-offs, keep and
 * refill, plantings that come and go, observed weather, every rule and rain method, hand-set and run minutes, both units.
 */
import fc from 'fast-check';
import { dayNumber, isoDate } from '../../src/engine/calendar.ts';
import type { UnitSystem } from '../../src/engine/units.ts';
import type { Plan, PlanZone } from '../../src/plan/schema/plan-schema.ts';
import { type Frame, some, wordy } from './arbitrary-parts.ts';
import { arbitraryChoices, arbitraryLog } from './arbitrary-records.ts';
import { arbitrarySite } from './arbitrary-site.ts';
import { arbitrarySupply } from './arbitrary-supply.ts';
import { arbitraryZone } from './arbitrary-zone.ts';
import { plainlyPlanted } from './plan-ground.ts';

export interface PlanOptions {
  readonly units?: UnitSystem;
  /** Left out: 5. */
  readonly mostZones?: number;
  /** Left out: 4. */
  readonly mostPlantings?: number;
  /** Left out: 60. */
  readonly mostWeeks?: number;
  /** All in the ground, all of it wetted, nothing on it, nobody at rest. */
  readonly isPlainGround?: boolean;
}

/** A valid plan. */
export function arbitraryPlan(options: PlanOptions = {}): fc.Arbitrary<Plan> {
  return arbitraryFrame(options)
    .chain((frame) =>
      arbitraryZones(frame, options).chain((zones) =>
        fc.record({
          format: fc.constant('runnel-plan' as const),
          version: fc.constant(2 as const),
          units: fc.constant(frame.units),
          name: wordy,
          notes: some(wordy),
          season: fc.constant({ firstDay: isoDate(frame.firstDay), weeks: frame.weeks }),
          site: arbitrarySite(frame),
          supply: some(arbitrarySupply(frame)),
          zones: fc.constant(zones),
          log: some(arbitraryLog(frame, zones)),
          choices: some(arbitraryChoices(frame, zones)),
        }),
      ),
    )
    .map((plan) => (options.isPlainGround === true ? onPlainGround(plan) : plan))
    .map(asRead);
}

function onPlainGround({ supply, ...plan }: Plan): Plan {
  const { leachingFraction, ...rest } = supply ?? { sources: [] };
  const zones = plan.zones.map((zone) => ({ ...zone, plantings: zone.plantings.map(plainlyPlanted) }));
  const { minTemperature, ...climate } = plan.site.climate;
  const mild = minTemperature && {
    minTemperature: minTemperature.map((low) => Math.max(low, plan.units === 'us' ? 32 : 0)),
  };
  const site = { ...plan.site, climate: { ...climate, ...mild } };
  return { ...plan, site, zones, ...(supply && { supply: rest }) };
}

function arbitraryFrame({ units, mostWeeks = 60 }: PlanOptions): fc.Arbitrary<Frame> {
  return fc.record({
    units: units === undefined ? fc.constantFrom<UnitSystem[]>('us', 'metric') : fc.constant(units),
    firstDay: fc.integer({ min: dayNumber('2019-12-01'), max: dayNumber('2030-12-31') }),
    weeks: fc.integer({ min: 1, max: mostWeeks }),
  });
}

function arbitraryZones(frame: Frame, { mostZones = 5, mostPlantings = 4 }: PlanOptions): fc.Arbitrary<PlanZone[]> {
  return fc.array(arbitraryZone(frame, mostPlantings), { maxLength: mostZones }).map(withIds);
}

/** As it comes out of a file: plain objects, and no field that is undefined. */
function asRead(plan: Plan): Plan {
  return JSON.parse(JSON.stringify(plan));
}

/** Ids that tell zones and plantings apart; the rule of one planting names one that is there. */
function withIds(zones: readonly PlanZone[]): PlanZone[] {
  return zones.map((zone, index) => {
    const plantings = zone.plantings.map((planting, at) => ({ ...planting, id: `planting-${index}-${at}` }));
    const { rule, ...rest } = zone;
    const deciding = plantings.at(-1)?.id;
    const named = rule?.kind === 'planting';
    return {
      ...rest,
      id: `zone-${index}`,
      plantings,
      ...(rule === undefined || (named && deciding === undefined)
        ? {}
        : { rule: named ? { kind: 'planting', planting: deciding ?? '' } : rule }),
    };
  });
}
