import { describe, expect } from 'vitest';
import type { DayRun, Garden, GardenPlanting, GardenZone, WeekChoice } from '../../src/engine/garden.ts';
import { plantingFigure } from '../../src/engine/season/planting-week.ts';
import { runSeason } from '../../src/engine/season/run-season.ts';
import { PLANTING_FIELDS, type Season, SUPPLY_FIELDS } from '../../src/engine/season/season.ts';
import { zoneFigure } from '../../src/engine/season/zone-week.ts';
import { arbitraryGarden } from '../support/arbitrary-garden.ts';
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
      expect(litresByWeek(twice)).toEqual(litresByWeek(once).map((litres) => 2 * litres));
      expect(volumes(twice)).toEqual(volumes(once).map((litres) => 2 * litres));
      expect(depths(twice)).toEqual(depths(once));
      expect(minutes(twice)).toEqual(minutes(once));
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
      litresByWeek(runSeason(halves)).forEach((litres, week) => {
        expect(Math.abs(litres - (whole[week] ?? Number.NaN))).toBeLessThanOrEqual(1e-9 * litres);
      });
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
      litresByWeek(runSeason(halves)).forEach((litres, week) => {
        expect(Math.abs(litres - (whole[week] ?? Number.NaN))).toBeLessThanOrEqual(1e-9 * litres);
      });
    },
  });
});

/** What was open is open in both halves. */
function runsOfHalves(runs: WeekChoice['runs']): WeekChoice['runs'] {
  if (runs === undefined) return undefined;
  const halves = ({ minutes, open }: DayRun): DayRun => {
    return { minutes, open: open && new Set([...open].flatMap((id) => [id, `${id}-other`])) };
  };
  return new Map([...runs].map(([day, run]) => [day, halves(run)]));
}

function mapPlantings(garden: Garden, change: (planting: GardenPlanting) => GardenPlanting): Garden {
  return { ...garden, zones: garden.zones.map((zone) => ({ ...zone, plantings: zone.plantings.map(change) })) };
}

/** The same planting on more or less ground, with as much more or less line. */
function sized(planting: GardenPlanting, times: number): GardenPlanting {
  return {
    ...planting,
    areaM2: times * planting.areaM2,
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
