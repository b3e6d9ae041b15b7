/**
 * Random gardens as the engine sees them, for its laws and its agreement with the oracle: they reach branches that no
 * plan document leads to. Every figure in them is invented.
 */
import fc from 'fast-check';
import { dayNumber } from '../../src/engine/calendar.ts';
import type {
  DayRun,
  Garden,
  GardenSupply,
  GardenZone,
  SeasonSpan,
  WeekChoice,
  ZoneRule,
} from '../../src/engine/garden.ts';
import { plainlyGrown } from './garden-ground.ts';
import { between, some } from './garden-numbers.ts';
import { arbitraryPlanting } from './garden-planting.ts';
import { arbitraryObserved, arbitrarySite } from './garden-weather.ts';
import { withFlows } from './with-flows.ts';

export interface GardenOptions {
  /** Left out: 16. */
  readonly mostWeeks?: number;
  /** Left out: 3. */
  readonly mostZones?: number;
  /** Left out: 4. */
  readonly mostPlantings?: number;
  /** All in the ground, all of it wetted, nothing on it, nobody at rest. */
  readonly isPlainGround?: boolean;
}

const WATER_FROM_THE_MAIN: GardenSupply = { sources: [], windowWeekdays: 127, windowHoursPerDay: 24 };

/** 1999-07-01 to 2031-12-31; and the winters of leap years. */
const firstDays = fc.oneof(
  { weight: 4, arbitrary: fc.integer({ min: 10_773, max: 22_644 }) },
  {
    weight: 1,
    arbitrary: fc
      .tuple(fc.constantFrom('2000-01-01', '2012-01-01', '2028-01-01'), fc.integer({ min: -60, max: 59 }))
      .map(([newYear, days]) => dayNumber(newYear) + days),
  },
);

export function arbitraryGarden(options: GardenOptions = {}): fc.Arbitrary<Garden> {
  const { mostWeeks = 16, mostZones = 3, mostPlantings = 4, isPlainGround = false } = options;
  return fc
    .record({ firstDay: firstDays, weeks: fc.integer({ min: 1, max: mostWeeks }) })
    .chain((span) =>
      fc.record({
        span: fc.constant(span),
        site: arbitrarySite(span),
        observed: arbitraryObserved(span),
        supply: fc.constant(WATER_FROM_THE_MAIN),
        zones: fc
          .array(arbitraryZone(span, mostPlantings), { maxLength: mostZones })
          .map((zones) =>
            zones.map((zone, index) => named(isPlainGround ? onPlainGround(zone) : zone, `zone-${index}`)),
          ),
      }),
    )
    .map(withFlows);
}

function onPlainGround(zone: GardenZone): GardenZone {
  return { ...zone, plantings: zone.plantings.map(plainlyGrown) };
}

export function arbitraryZone(span: SeasonSpan, mostPlantings: number): fc.Arbitrary<GardenZone> {
  return fc.record({
    id: fc.constant('zone'),
    name: fc.constant('Zone'),
    soil: fc.record({
      texture: fc.constant('loam'),
      availableWater: between(0.04, 0.2),
      intakeMmPerHour: fc.constant(10),
      slopePercent: fc.constant(0),
    }),
    wateringDays: fc.integer({ min: 1, max: 127 }),
    rule: arbitraryRule,
    timerStepMinutes: fc.constantFrom(0.1, 1, 1, 5, 15),
    longestCycleMinutes: fc.oneof(fc.constant(Number.POSITIVE_INFINITY), between(0.5, 60)),
    startsADay: fc.oneof(fc.integer({ min: 1, max: 8 }), fc.constantFrom(1, 24)),
    efficiency: fc.oneof(fc.constant(1), between(0.3, 1)),
    efficiencyBasis: fc.constant('efficiency' as const),
    plantings: fc.array(arbitraryPlanting(span), { maxLength: mostPlantings }),
    choices: arbitraryChoices(span),
  });
}

/** Names one of the zone's plantings, or none of them. */
const arbitraryRule: fc.Arbitrary<ZoneRule> = fc.oneof(
  fc.constant({ kind: 'thirstiest' as const }),
  fc.constant({ kind: 'area-weighted' as const }),
  fc.integer({ min: 0, max: 4 }).map((index) => ({ kind: 'planting' as const, plantingId: plantingId('zone', index) })),
);

function arbitraryChoices({ weeks }: SeasonSpan): fc.Arbitrary<Map<number, WeekChoice>> {
  const openDays = fc
    .array(fc.tuple(fc.integer({ min: 0, max: 4 }), fc.integer({ min: 0, max: 7 })), { maxLength: 3 })
    .map((days) => new Map(days.map(([index, count]) => [plantingId('zone', index), count])));
  const choice: fc.Arbitrary<WeekChoice> = fc.record({
    minutes: some(fc.oneof(fc.constant(0), between(0, 400))),
    minutesRun: fc.option(fc.oneof(fc.constant(0), between(0, 400)), { nil: undefined, freq: 2 }),
    closed: fc.constantFrom(undefined, undefined, false, true),
    runs: fc.oneof({ weight: 2, arbitrary: fc.constant(undefined) }, { weight: 1, arbitrary: arbitraryRuns }),
    openDays: some(openDays),
  });
  return fc
    .array(fc.tuple(fc.integer({ min: 0, max: weeks - 1 }), choice), { maxLength: 4 })
    .map((choices) => new Map(choices));
}

/** Runs by day of the week, with and without the shut-offs that were open. */
const arbitraryRuns: fc.Arbitrary<ReadonlyMap<number, DayRun>> = fc
  .array(
    fc.tuple(
      fc.integer({ min: 0, max: 6 }),
      fc.record({
        minutes: fc.oneof(fc.constant(0), between(0, 90)),
        open: some(
          fc
            .subarray([0, 1, 2, 3])
            .map((indices): ReadonlySet<string> => new Set(indices.map((index) => plantingId('zone', index)))),
        ),
      }),
    ),
    { maxLength: 4 },
  )
  .map((runs) => new Map(runs));

function plantingId(zoneId: string, index: number): string {
  return `${zoneId}/planting-${index}`;
}

/** Ids that tell zones and plantings apart, wherever they are named. */
function named(zone: GardenZone, id: string): GardenZone {
  const renamed = (old: string) => old.replace(/^zone\//, `${id}/`);
  return {
    ...zone,
    id,
    plantings: zone.plantings.map((planting, index) => ({ ...planting, id: plantingId(id, index) })),
    rule: zone.rule.kind === 'planting' ? { kind: 'planting', plantingId: renamed(zone.rule.plantingId) } : zone.rule,
    choices: new Map(
      [...zone.choices].map(([week, choice]) => {
        const openDays = choice.openDays && new Map([...choice.openDays].map(([old, count]) => [renamed(old), count]));
        const runs = choice.runs && new Map([...choice.runs].map(([day, run]) => [day, renamedRun(run, renamed)]));
        return [week, { ...choice, openDays, runs }];
      }),
    ),
  };
}

function renamedRun({ minutes, open }: DayRun, renamed: (old: string) => string): DayRun {
  return { minutes, open: open && new Set([...open].map(renamed)) };
}
