/** By hand, in the garden of plain-garden.ts: the bed's zone runs 109 min on the fourth and the seventh day, 8.72 mm each. */
import { describe, expect, it } from 'vitest';
import type { WeekChoice } from '../../../src/engine/garden.ts';
import { openMasks } from '../../../src/engine/season/open-days.ts';
import { plantingWeek } from '../../../src/engine/season/planting-week.ts';
import { runSeason } from '../../../src/engine/season/run-season.ts';
import type { PlantingSeason } from '../../../src/engine/season/season.ts';
import { plainGarden, plainPlanting, plainZone, thirsty } from '../../support/plain-garden.ts';

describe('open masks', () => {
  it('are k of the watering days, spread evenly and ending on the last', () => {
    expect(openMasks(0b1010100)).toEqual([0, 0b1000000, 0b1010000, 0b1010100]);
    expect(openMasks(0b1)).toEqual([0, 1]);
    // Three of seven: the days at the ends of thirds, 7/3, 14/3 and 7 rounded up.
    expect(openMasks(127)[3]).toBe(0b1010100);
  });
});

function shrubsIn(factor: number, choice: WeekChoice = {}) {
  const plantings = [plainPlanting(), thirsty(factor, { id: 'shrubs', hasShutOff: true })];
  const zone = plainZone({ plantings, choices: new Map([[0, choice]]) });
  return plantingWeek(runSeason(plainGarden([zone])).zones[0]?.plantings[1] as PlantingSeason, 0);
}

describe('a shut-off', () => {
  it.each([
    // 7 x 0.5 = 3.5 mm on the seventh day alone: 43.75 min.
    ['the last day alone where that is enough', 0.1, 0b1000000],
    // 7 x 1.25 = 8.75 mm: 109.375 min, more than 109.
    ['both days where one misses by less than a minute', 0.25, 0b1001000],
    ['all days where none are enough', 0.9, 0b1001000],
    ['no day where nothing is asked for', 0, 0],
  ])('is open on %s', (_, factor, openMask) => {
    expect(shrubsIn(factor).openMask).toBe(openMask);
  });

  it.each([
    [0, 0],
    [1, 0b1000000],
    [2, 0b1001000],
    [5, 0b1001000],
  ])('set by hand to %i days is open on so many, at most on all', (days, openMask) => {
    expect(shrubsIn(0.1, { openDays: new Map([['shrubs', days]]) }).openMask).toBe(openMask);
  });

  it('set by hand for another changes nothing', () => {
    expect(shrubsIn(0.1, { openDays: new Map([['bed', 2]]) }).openMask).toBe(0b1000000);
  });

  it('goes by the minutes of a week set by hand, and stays closed where nothing runs', () => {
    // 30 min a day: 43.75 on one day are too many, on two 0.08 x 60 = 4.8 mm suffice.
    expect(shrubsIn(0.1, { minutes: 60 }).openMask).toBe(0b1001000);
    expect(shrubsIn(0.1, { minutes: 0 })).toMatchObject({ openMask: 0, openDays: 0 });
    expect(shrubsIn(0.1, { closed: true, openDays: new Map([['shrubs', 2]]) }).openMask).toBe(0);
  });
});
