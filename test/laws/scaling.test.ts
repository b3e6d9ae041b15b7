import { describe, expect, it } from 'vitest';
import type { DayRun, Garden, GardenLine, GardenPlanting, GardenZone, WeekChoice } from '../../src/engine/garden.ts';
import { plantingFigure } from '../../src/engine/season/planting-week.ts';
import { runSeason } from '../../src/engine/season/run-season.ts';
import { PLANTING_FIELDS, type Season, SUPPLY_FIELDS } from '../../src/engine/season/season.ts';
import { zoneFigure } from '../../src/engine/season/zone-week.ts';
import { arbitraryGarden } from '../support/arbitrary-garden.ts';
import { arbitraryLimitedGarden } from '../support/limited-garden.ts';
import { expectNear, expectSame } from '../support/same-figures.ts';
import { withFlows } from '../support/with-flows.ts';
import { law } from './law.ts';
import { litresByWeek } from './weeks-of.ts';

const VOLUMES = Object.keys(SUPPLY_FIELDS) as (keyof typeof SUPPLY_FIELDS)[];
const DEPTHS = Object.keys(PLANTING_FIELDS).filter((field) => field !== 'flowLpm') as (keyof typeof PLANTING_FIELDS)[];

describe('size', () => {
  law('twice the area with twice the flow takes twice the water, in the same minutes, to the last bit', {
    on: arbitraryGarden(),
    runs: 1_000,
    holds: (garden) => {
      const once = runSeason(garden);
      const twice = runSeason(mapPlantings(garden, (planting) => sized(planting, 2)));
      const doubled = (litres: readonly number[]) => litres.map((each) => 2 * each);
      expectSame(litresByWeek(twice), doubled(litresByWeek(once)));
      expectSame(volumes(twice), doubled(volumes(once)));
      expectSame(depths(twice), depths(once));
      expectSame(minutes(twice), minutes(once));
    },
  });

  law('a zone cut into two equal halves takes the same water in all', {
    on: arbitraryGarden({ mostZones: 2 }),
    runs: 1_000,
    holds: (garden) => {
      const half = (zone: GardenZone, suffix: string): GardenZone => ({
        ...zone,
        id: `${zone.id}${suffix}`,
        plantings: zone.plantings.map((planting) => sized(planting, 0.5)),
      });
      const halves = { ...garden, zones: garden.zones.flatMap((zone) => [half(zone, '-left'), half(zone, '-right')]) };
      const whole = litresByWeek(runSeason(garden));
      expectNear(litresByWeek(runSeason(withFlows(halves))), whole, 0);
    },
  });

  law('a planting cut into two equal halves of the same zone takes the same water in all', {
    on: arbitraryGarden({ mostZones: 1 }),
    runs: 1_000,
    holds: (garden) => {
      const halves = {
        ...garden,
        zones: garden.zones.map((zone) => ({
          ...zone,
          plantings: zone.plantings.flatMap((planting) => {
            const half = sized(planting, 0.5);
            return [half, { ...half, id: `${half.id}-other` }];
          }),
          choices: new Map(
            [...zone.choices].map(([week, choice]) => {
              const both = [...(choice.openDays ?? [])].flatMap(
                ([id, days]) =>
                  [
                    [id, days],
                    [`${id}-other`, days],
                  ] as const,
              );
              return [week, { ...choice, openDays: new Map(both), runs: runsOfHalves(choice.runs) }];
            }),
          ),
        })),
      };
      const whole = litresByWeek(runSeason(garden));
      expectNear(litresByWeek(runSeason(withFlows(halves))), whole, 0);
    },
  });
});

/** The exponent of the flow in the Hazen-Williams formula. */
const EXPONENT = 1.852;

describe('size at pressure', () => {
  let behindTubes = 0;

  law('twice the runs behind a solid line that loses as much at twice the flow take twice the water', {
    on: arbitraryLimitedGarden({ mostWeeks: 2, mostZones: 2 }),
    runs: 200,
    holds: (limited) => {
      // Emitters that stand singly are one run, which twice as many make longer.
      const garden = mapPlantings(limited, (planting) => ({ ...planting, lines: planting.lines.filter(isLaidInRuns) }));
      const twice = mapPlantings(garden, (planting) => ({
        ...planting,
        areaM2: 2 * planting.areaM2,
        lines: planting.lines.map((line) => (line.emitters > 0 ? twoForOne(line) : shortened(line))),
      }));
      const before = litresByWeek(runSeason({ ...garden, supply: { ...garden.supply, cuts: [] } }));
      const after = litresByWeek(runSeason({ ...twice, supply: { ...twice.supply, cuts: [] } }));
      expectNear(
        after,
        before.map((litres) => 2 * litres),
        0,
      );
      if (before.some((litres) => litres > 0) && garden.zones.some(isBehindTube)) behindTubes += 1;
    },
  });

  it('is that of many gardens whose lines lie behind a tube at a known pressure', () => {
    expect(behindTubes).toBeGreaterThan(10);
  });
});

function isLaidInRuns({ emitters, runs }: GardenLine): boolean {
  return !(emitters > 0) || runs !== undefined;
}

function twoForOne(line: GardenLine): GardenLine {
  const { emitters, flowLph, runs = 1, lengthM = 0 } = line;
  return { ...line, emitters: 2 * emitters, flowLph: 2 * flowLph, runs: 2 * runs, lengthM: 2 * lengthM };
}

/** Friction grows with the length and with the flow to the power; the climb stays. */
function shortened(line: GardenLine): GardenLine {
  const { lengthM = 0, riseMPerM } = line;
  return { ...line, lengthM: lengthM / 2 ** EXPONENT, riseMPerM: riseMPerM * 2 ** EXPONENT };
}

function isBehindTube({ plantings }: GardenZone): boolean {
  return plantings.some(
    ({ lines, flows }) =>
      lines.some(({ emitters, lengthM = 0 }) => !(emitters > 0) && lengthM > 0) &&
      flows.some(({ pressureKpa }) => pressureKpa !== undefined),
  );
}

/** What was open is open in both halves. */
function runsOfHalves(runs: WeekChoice['runs']): WeekChoice['runs'] {
  if (runs === undefined) return undefined;
  const halves = ({ minutes, open }: DayRun): DayRun => {
    return { minutes, open: open && new Set([...open].flatMap((id) => [id, `${id}-other`])) };
  };
  return new Map([...runs].map(([day, run]) => [day, halves(run)]));
}

function mapPlantings(garden: Garden, change: (planting: GardenPlanting) => GardenPlanting): Garden {
  return withFlows({
    ...garden,
    zones: garden.zones.map((zone) => ({ ...zone, plantings: zone.plantings.map(change) })),
  });
}

/** The same planting on more or less ground, with as much more or less line; in as many more or fewer pots. */
function sized(planting: GardenPlanting, times: number): GardenPlanting {
  const { container } = planting;
  return {
    ...planting,
    areaM2: times * planting.areaM2,
    ...(container && { container: { ...container, count: times * container.count } }),
    lines: planting.lines.map((line) => ({ ...line, emitters: times * line.emitters, flowLph: times * line.flowLph })),
  };
}

function volumes({ zones, garden }: Season): readonly number[] {
  return zones.flatMap((zone) =>
    VOLUMES.flatMap((field) =>
      weeks(garden).flatMap((week) => [
        zoneFigure(zone, field, week),
        ...zone.plantings.map((planting) => plantingFigure(planting, field, week)),
      ]),
    ),
  );
}

function depths({ zones, garden }: Season): readonly number[] {
  return zones.flatMap(({ plantings }) =>
    plantings.flatMap((planting) =>
      DEPTHS.flatMap((field) => weeks(garden).map((week) => plantingFigure(planting, field, week))),
    ),
  );
}

function minutes({ zones, garden }: Season): readonly number[] {
  return zones.flatMap((zone) => weeks(garden).map((week) => zoneFigure(zone, 'minutes', week)));
}

function weeks({ span }: Garden): readonly number[] {
  return Array.from({ length: span.weeks }, (_, week) => week);
}
