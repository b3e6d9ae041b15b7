/** Growing roots, mulch, rest, leaching and two stores in a season that can be worked by hand: the garden of plain-garden.ts, 5 mm a day. */
import { describe, expect, it } from 'vitest';
import type { GardenPlanting } from '../../../src/engine/garden.ts';
import { plantingDemand, tawOn } from '../../../src/engine/season/planting-demand.ts';
import { type PlantingWeek, plantingWeek } from '../../../src/engine/season/planting-week.ts';
import { runSeason } from '../../../src/engine/season/run-season.ts';
import type { PlantingSeason, ZoneSeason } from '../../../src/engine/season/season.ts';
import { zoneWeek } from '../../../src/engine/season/zone-week.ts';
import { seasonWeather } from '../../../src/engine/weather.ts';
import { FIRST_DAY, type PlantingChange, plainGarden, plainPlanting, plainZone } from '../../support/plain-garden.ts';

const LANDSCAPE = plainPlanting().coefficient as Extract<GardenPlanting['coefficient'], { kind: 'landscape' }>;

function weekOf(change: PlantingChange, week: number): PlantingWeek & { readonly minutes: number } {
  const zone = runSeason(plainGarden([plainZone({ plantings: [plainPlanting(change)] })])).zones[0] as ZoneSeason;
  return { ...plantingWeek(zone.plantings[0] as PlantingSeason, week), minutes: zoneWeek(zone, week).minutes };
}

describe('a bed sown on the first day, 7 days initial and 14 of development', () => {
  const change: PlantingChange = {
    coefficient: {
      kind: 'crop',
      name: { en: 'crop' },
      plantedOn: FIRST_DAY,
      stageDays: [7, 14, 30, 30],
      kcInitial: 0.5,
      kcMid: 0.5,
      kcEnd: 0.5,
      source: 'invented',
    },
    from: FIRST_DAY,
    rootZone: { initialDepthM: 0.15, startDepletion: 1 },
  };
  const demand = plantingDemand(plainPlanting(change), { availableWater: 0.15 }, seasonWeather(plainGarden()));

  // 150 mm in a metre (0.15): 0.15 m hold 22.5, half way 0.325 m hold 48.75, 0.5 m hold 75 (FAO-56 eq. 82).
  it.each([
    [0, 22.5],
    [6, 22.5],
    [13, 48.75],
    [20, 75],
    [60, 75],
  ])('on day %d its roots hold %d mm', (day, tawMm) => {
    expect(tawOn(demand, day)).toBeCloseTo(tawMm, 9);
    expect(demand.rawMm[day]).toBeCloseTo(tawMm / 2, 9);
  });

  it('starts half dry, and each new layer is as dry: 11.25 mm, then half of 52.5 in two weeks', () => {
    expect(weekOf(change, 0).depletionStartMm).toBeCloseTo(11.25, 9);
    expect(weekOf(change, 1).rootedMm + weekOf(change, 2).rootedMm).toBeCloseTo(26.25, 9);
    expect(weekOf(change, 3).rootedMm).toBe(0);
  });

  it('needs what it uses and what was missing in new soil: 17.5 and 13.125 mm in the second week', () => {
    const { neededMm, depletionStartMm, rootedMm } = weekOf(change, 1);
    expect(rootedMm).toBeCloseTo(13.125, 9);
    expect(neededMm).toBeCloseTo(depletionStartMm + 17.5 + 13.125, 6);
  });
});

describe('a mulched bed', () => {
  it('uses nine tenths of 17.5 mm a week under plastic', () => {
    expect(weekOf({ coefficient: { ...LANDSCAPE, mulchFactor: 0.9 } }, 3).demandMm).toBeCloseTo(15.75, 9);
  });

  it('has no rain where none comes through, and all of it elsewhere', () => {
    const rain = (rainFactor: number | undefined) => {
      const garden = plainGarden([plainZone({ plantings: [plainPlanting({ rainFactor })] })], {
        observed: { days: new Map([[FIRST_DAY + 22, { rainMm: 12 }]]), weeks: new Map() },
      });
      return plantingWeek(runSeason(garden).zones[0]?.plantings[0] as PlantingSeason, 3);
    };
    expect([rain(0).rainMm, rain(0).rainSoakedMm]).toEqual([0, 0]);
    expect([rain(undefined).rainMm, rain(undefined).rainSoakedMm]).toEqual([12, 12]);
  });
});

describe('days of rest', () => {
  const rest = (kind: 'frozen' | 'dry-down') =>
    weekOf({ rest: [{ from: FIRST_DAY + 21, to: FIRST_DAY + 41, kind }] }, 4);

  it('in frozen ground ask for nothing and use nothing', () => {
    expect(rest('frozen')).toMatchObject({ minutes: 0, demandMm: 0, neededMm: 0, state: 'met' });
  });

  it('before harvest ask for nothing, use what is there, and are not short', () => {
    const { minutes, usedMm, shortDays, state } = rest('dry-down');
    expect({ minutes, shortDays, state }).toEqual({ minutes: 0, shortDays: 0, state: 'met' });
    expect(usedMm).toBeCloseTo(17.5, 6);
  });
});

it('a leaching fraction of 0.2 brings a quarter more, which drains: AW = ET / (1 - LF), FAO-29 eq. 7 from memory', () => {
  const { irrigationNetMm, irrigationDrainedMm, usedMm, state } = weekOf({ leachingFraction: 0.2 }, 5);
  expect(irrigationNetMm).toBeCloseTo(usedMm / 0.8, 0);
  expect(irrigationDrainedMm).toBeCloseTo(irrigationNetMm - usedMm, 6);
  expect(state).toBe('met');
});

// 15 mm down, 2.5 mm a day, runs of 50 minutes by hand on two days: 4 mm each, of which a fifth passes straight through though 15 mm are missing.
it('a leaching fraction of 0.2 lets a fifth of each run pass a soil that is dry: 15 + 17.5 - 2 x 3.2 mm', () => {
  const plantings = [plainPlanting({ leachingFraction: 0.2, rootZone: { startDepletion: 0.4 } })];
  const zone = plainZone({ plantings, choices: new Map([[0, { minutes: 100 }]]) });
  const [season] = runSeason(plainGarden([zone])).zones as readonly [ZoneSeason];
  const week = plantingWeek(season.plantings[0] as PlantingSeason, 0);
  expect(week.irrigationNetMm).toBeCloseTo(8, 9);
  expect(week.irrigationDrainedMm).toBeCloseTo(1.6, 9);
  expect(week.depletionEndMm).toBeCloseTo(26.1, 9);
  expect(week.shortDays).toBe(0);
});

describe('ground of which 0.4 is wetted', () => {
  // 2.5 mm a day: the rest has 37.5 mm readily, and gives its 2.5 mm a day over itself for 15 days.
  it('lasts 15 days on its other ground, then draws all from the wetted part, 6.25 mm a day over it', () => {
    expect(weekOf({ wettedShare: 0.4 }, 1).dryEndMm).toBeCloseTo(35, 6);
    expect(weekOf({ wettedShare: 0.4 }, 3).dryEndMm).toBeCloseTo(37.5, 6);
    expect(weekOf({ wettedShare: 0.4 }, 5)).toMatchObject({ state: 'met', shortDays: 0 });
    expect(weekOf({ wettedShare: 0.4 }, 5).usedMm).toBeCloseTo(17.5, 6);
    expect(weekOf({ wettedShare: 0.4 }, 5).irrigationNetMm).toBeCloseTo(17.5, 0);
  });

  it('with all of it wetted is as one store, to the last digit', () => {
    const { wettedEndMm, dryEndMm, depletionEndMm } = weekOf({ wettedShare: 1 }, 5);
    expect([wettedEndMm, dryEndMm]).toEqual([depletionEndMm, depletionEndMm]);
    expect(weekOf({ wettedShare: 1 }, 5)).toEqual(weekOf({}, 5));
  });
});
