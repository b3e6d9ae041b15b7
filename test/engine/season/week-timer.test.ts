import { describe, expect, it } from 'vitest';
import { plantingDemand } from '../../../src/engine/season/planting-demand.ts';
import { plantingWeek } from '../../../src/engine/season/planting-week.ts';
import { runSeason } from '../../../src/engine/season/run-season.ts';
import type { PlantingSeason, ZoneSeason } from '../../../src/engine/season/season.ts';
import { runsNeeded } from '../../../src/engine/season/week-timer.ts';
import { zoneWeek } from '../../../src/engine/season/zone-week.ts';
import { seasonWeather } from '../../../src/engine/weather.ts';
import { plainGarden, plainZone, thirsty } from '../../support/plain-garden.ts';

/**
 * Ten pots of 10 L: 3 L each in mix of 0.30, half of it readily; 2 m2 of canopy make 15 mm of it, and coefficient 1.2 on days of 5 mm takes 6 mm
 * (worked by hand; 0.30 and the half as in the pot's day).
 */
const pots = (factor: number) =>
  thirsty(factor, {
    container: { count: 10, volumeLitres: 10, mix: 'potting', openingM: 0.25, rainShare: 1 },
    areaM2: 2,
    rootZone: { depthM: 0.05, availableWater: 0.3, allowedDepletion: 0.5 },
  });

const seasonOf = (factor: number, startsADay = 4) =>
  runSeason(plainGarden([plainZone({ wateringDays: 127, startsADay, plantings: [pots(factor)] })]))
    .zones[0] as ZoneSeason;

describe('runs a day that containers need', () => {
  const garden = plainGarden();
  const needed = (factor: number) =>
    runsNeeded(
      {
        demand: plantingDemand(pots(factor), { availableWater: 0.15 }, seasonWeather(garden)),
        netMmPerMinute: new Float64Array(70).fill(1),
      },
      { start: 7, mask: 127 },
    );

  it.each([
    [1, 1],
    [1.5, 1],
    [1.6, 2],
    [3, 2],
    [3.1, 3],
  ])('a coefficient of %d takes 5 times that in mm of 7.5: %d', (factor, runs) => {
    expect(needed(factor)).toBe(runs);
  });

  it('are the runs of the zone, its cycles a multiple of them, and nothing is short or lost', () => {
    const season = seasonOf(2.4);
    const { runsADay, cycles, minutesPerDay } = zoneWeek(season, 4);
    expect(runsADay).toBe(2);
    expect(cycles % 2).toBe(0);
    expect(minutesPerDay).toBeGreaterThan(0);
    const week = plantingWeek(season.plantings[0] as PlantingSeason, 4);
    expect(week.state).toBe('met');
    expect(week.shortDays).toBe(0);
    expect(week.usedMm).toBeCloseTo(7 * 12, 6);
    expect(week.irrigationDrainedMm).toBeLessThan(1);
  });

  it('are at most the starts of the timer: with one start the pot cannot last, and is short', () => {
    const season = seasonOf(2.4, 1);
    expect(zoneWeek(season, 4).runsADay).toBe(1);
    expect(plantingWeek(season.plantings[0] as PlantingSeason, 4).shortDays).toBe(7);
  });

  it('are one in the ground', () => {
    const season = runSeason(plainGarden()).zones[0] as ZoneSeason;
    expect(zoneWeek(season, 4).runsADay).toBe(1);
  });
});
