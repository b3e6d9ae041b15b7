import { describe, expect } from 'vitest';
import { countDays } from '../../src/engine/season/days-mask.ts';
import {
  openMinutes,
  openRunMask,
  plantingFigure,
  plantingState,
  plantingWeek,
  refillOf,
} from '../../src/engine/season/planting-week.ts';
import { runSeason } from '../../src/engine/season/run-season.ts';
import type { PLANTING_FIELDS, PlantingSeason, ZONE_FIELDS, ZoneSeason } from '../../src/engine/season/season.ts';
import type { PlantingVolume } from '../../src/engine/season/volume-depths.ts';
import { zoneRuns } from '../../src/engine/season/zone-runs.ts';
import { runMask, zoneFigure, zoneWeek } from '../../src/engine/season/zone-week.ts';
import { daysFrom } from '../oracle/watering-days.ts';
import { arbitraryGarden } from '../support/arbitrary-garden.ts';
import { law } from './law.ts';

describe('a cell', () => {
  law('says of each figure what the figure says when it is read alone, and of no week outside the season anything', {
    on: arbitraryGarden({ mostWeeks: 8 }),
    runs: 150,
    holds: (garden) => {
      const { weeks } = garden.span;
      for (const zone of runSeason(garden).zones) {
        const alone = (field: string) => zoneFigure(zone, field as keyof typeof ZONE_FIELDS, weeks - 1);
        expect(numbersOf(zoneWeek(zone, weeks - 1), alone)).toEqual(numbersOf(zoneWeek(zone, weeks - 1)));
        for (const outside of [-1, weeks, 0.5]) expect(() => zoneWeek(zone, outside)).toThrow('is outside the season');
        for (const planting of zone.plantings) {
          const cell = plantingWeek(planting, weeks - 1);
          const one = (field: string) =>
            plantingFigure(planting, field as PlantingVolume | keyof typeof PLANTING_FIELDS, weeks - 1);
          expect(numbersOf(cell, one)).toEqual(numbersOf(cell));
        }
      }
    },
  });

  law('tells its runs by day, and what a line and a refill had of them, as its figures have it', {
    on: arbitraryGarden({ mostWeeks: 8 }),
    runs: 150,
    holds: (garden) => {
      for (const zone of runSeason(garden).zones) {
        for (let week = 0; week < zone.weeks; week++) {
          expectRuns(zone, week);
          for (const planting of zone.plantings) expectRunsOf(planting, zone, week);
        }
      }
    },
  });
});

/** Runs that add up to the week, each day once. */
function expectRuns(zone: ZoneSeason, week: number): void {
  const runs = zoneRuns(zone, week);
  const minutes = runs.reduce((sum, run) => sum + countDays(run.mask) * run.minutes, 0);
  expect(minutes).toBeCloseTo(zoneFigure(zone, 'minutes', week), 6);
  expect(runs.reduce((mask, run) => mask + run.mask, 0)).toBe(runMask(zone, week));
  for (const { cycles } of runs) expect(cycles).toBeGreaterThanOrEqual(1);
}

function expectRunsOf(planting: PlantingSeason, zone: ZoneSeason, week: number): void {
  const figure = (field: keyof typeof PLANTING_FIELDS) => plantingFigure(planting, field, week);
  expect(countDays(openRunMask(zone, planting, week))).toBe(figure('openDays'));
  expect(openMinutes(zone, planting, week)).toBeLessThanOrEqual(zoneFigure(zone, 'minutes', week) + 1e-6);
  const refill = refillOf(planting, week);
  expect(refill === undefined).toBe(figure('dueMask') === 0 && figure('fillingMm') === 0);
  if (refill === undefined || planting.planting.watering === 'keep') return;
  // A week that ends with the filling still owed is no week that was met, where there was a morning to fill it and it did not go to rest.
  const rests = daysFrom(7 * week, 7 * week + 6).some((day) => planting.demand.rest?.[day]);
  if (refill !== 'filled' && figure('dueMask') !== 0 && !rests)
    expect(['dry', 'short']).toContain(plantingState(planting, week));
}

/** The cell's numbers by name, or what stands elsewhere under those names; its own place in the season apart. */
function numbersOf(cell: object, elsewhere?: (field: string) => number): Readonly<Record<string, number>> {
  const numbers = Object.entries(cell).filter(([field, value]) => field !== 'week' && typeof value === 'number');
  return Object.fromEntries(numbers.map(([field, value]) => [field, elsewhere?.(field) ?? value]));
}
