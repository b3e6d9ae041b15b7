/**
 * A planting that is filled deep and seldom, by hand, in the garden of plain-garden.ts: 2.5 mm a day go, a minute brings 0.08 mm;
 * of 75 mm 37.5 are readily there. From full, the morning of day d finds 2.5 d mm missing.
 */
import { describe, expect, it } from 'vitest';
import type { GardenZone } from '../../../src/engine/garden.ts';
import { plantingWeek } from '../../../src/engine/season/planting-week.ts';
import { isFilled } from '../../../src/engine/season/refill.ts';
import { runSeason } from '../../../src/engine/season/run-season.ts';
import type { PlantingSeason, ZoneSeason } from '../../../src/engine/season/season.ts';
import { zoneWeek } from '../../../src/engine/season/zone-week.ts';
import { type PlantingChange, plainGarden, plainPlanting, plainZone, thirsty } from '../../support/plain-garden.ts';

const FIRST = 0b1;
const FIRST_AND_FOURTH = 0b1001;
const EVERY_DAY = 127;

const refilled = (change: PlantingChange = {}) => plainPlanting({ id: 'shrubs', watering: 'refill', ...change });

function weeksOf(zone: Partial<GardenZone>) {
  const season = runSeason(plainGarden([plainZone({ plantings: [refilled()], ...zone })])).zones[0] as ZoneSeason;
  return (week: number) => ({
    zone: zoneWeek(season, week),
    shrubs: plantingWeek(season.plantings.at(-1) as PlantingSeason, week),
  });
}

describe('a refill is due', () => {
  it.each<[string, number, number, number]>([
    // 7 days take 17.5 mm: left alone with more than 20 mm missing it would pass 37.5. Day 7 has 17.5 missing, day 14 has 35.
    ['of one day a week', FIRST, 14, FIRST],
    // 3 days take 7.5 mm, 4 take 10: due above 30 and 27.5. Day 7: 17.5, day 10: 25, day 14: 35.
    ['of two days a week', FIRST_AND_FOURTH, 14, FIRST],
    // Above 35: day 14 has 35, which is not above; day 15 has 37.5.
    ['of every day', EVERY_DAY, 15, 0b10],
  ])('on the watering morning after which it would pass its allowed depletion: %s', (_, wateringDays, day, bit) => {
    const week = weeksOf({ wateringDays });
    for (let before = 0; before < Math.floor(day / 7); before++) {
      expect(week(before).shrubs).toMatchObject({ dueMask: 0, neededMm: 0, state: 'met', shortDays: 0 });
      expect(week(before).zone.minutes).toBe(0);
    }
    const { dueMask } = week(Math.floor(day / 7)).shrubs;
    expect(dueMask & -dueMask).toBe(bit);
  });

  it('on the third morning where 0.43 in are there, 0.2133 in a day go and every day is a watering day', () => {
    // A third day would take 0.64 in of 0.43. 25.4 mm are 1 in.
    const need = thirsty((0.2133 * 25.4) / 5, { watering: 'refill', rootZone: { depthM: (0.43 * 25.4) / 75 } });
    const { shrubs } = weeksOf({ wateringDays: EVERY_DAY, plantings: [need] })(0);
    expect(shrubs.dueMask & -shrubs.dueMask).toBe(0b100);
    expect(shrubs.shortDays).toBe(0);
  });

  it('never while it is full, however little its soil holds', () => {
    const week = weeksOf({ wateringDays: FIRST, plantings: [refilled({ rootZone: { depthM: 0.1 } })] });
    expect(week(0).shrubs.dueMask).toBe(0);
  });
});

describe('a refill that is due', () => {
  it('is filled to the brim: 35 mm and the day’s own 2.5, 468.75 min', () => {
    const { zone, shrubs } = weeksOf({ wateringDays: FIRST })(2);
    expect(zone).toMatchObject({ minutes: 469, decidedMask: FIRST });
    expect(zone.minutesWanted).toBeCloseTo(468.75, 9);
    expect(shrubs).toMatchObject({ dueMask: FIRST, fillingMm: 0, state: 'met', missedMm: 0 });
    expect(shrubs.neededMm).toBeCloseTo(37.5, 9);
    // And again after two weeks.
    const week = weeksOf({ wateringDays: FIRST });
    expect([3, 4, 5, 6].map((each) => week(each).shrubs.dueMask)).toEqual([0, FIRST, 0, FIRST]);
  });

  it.each([
    // 426 min are 34.08 mm: 3.42 are left of 35. 423 min are 33.84 mm: 3.66 are left.
    ['filled with nine tenths', 426, 'met', 0],
    ['still due with less, and short', 423, 'short', 35],
  ] as const)('is %s', (_, minutes, state, fillingMm) => {
    const { shrubs } = weeksOf({ wateringDays: FIRST, choices: new Map([[2, { minutes }]]) })(2);
    expect(shrubs.state).toBe(state);
    expect(shrubs.fillingMm).toBeCloseTo(fillingMm, 9);
  });

  it('and was left partly filled has the rest next week, whatever is missing by then', () => {
    // 200 min bring 16 mm of 37.5: 21.5 are left, 36.5 on Monday and 2.5 more that day: 487.5 min, a half goes up.
    const week = weeksOf({ wateringDays: FIRST, choices: new Map([[2, { minutes: 200 }]]) });
    expect(week(2).shrubs.depletionEndMm).toBeCloseTo(36.5, 9);
    expect(week(3).zone.minutes).toBe(488);
    expect(week(3).shrubs).toMatchObject({ dueMask: FIRST, fillingMm: 0, state: 'met' });
  });

  it('counts as filled at a tenth of what was missing', () => {
    expect(isFilled(3.5, 35)).toBe(true);
    expect(isFilled(3.6, 35)).toBe(false);
  });
});

describe('a refill behind a shut-off', () => {
  const shallow = (hasShutOff: boolean) => refilled({ hasShutOff, rootZone: { depthM: 0.4 } });
  const beside = { wateringDays: FIRST_AND_FOURTH, plantings: [plainPlanting(), shallow(true)] };
  const alone = { wateringDays: FIRST_AND_FOURTH, plantings: [shallow(false)] };

  it('is due from the week’s first watering morning on where it is expected to be later in the week', () => {
    // 30 mm are readily there: due above 22.5 on the first day of the week, above 20 on the fourth. Day 7 has 17.5 mm missing, day 10 has 25.
    expect(weeksOf(beside)(1).shrubs.dueMask).toBe(FIRST_AND_FOURTH);
    expect(weeksOf(alone)(1).shrubs.dueMask).toBe(0b1000);
  });

  it('is open on no day of a week in which it is not', () => {
    expect(weeksOf(beside)(0).shrubs).toMatchObject({ dueMask: 0, openMask: 0, openDays: 0 });
  });
});
