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

  it('every other morning where 0.43 in are there, 0.2133 in a day go and every day is a watering day, by 0.43 in', () => {
    // 25.4 mm are 1 in, so a minute brings 0.00315 in. Days 2, 4, 6, 8 and so on find 0.4267 in missing; two days more would take 0.64.
    const need = thirsty((0.2133 * 25.4) / 5, { watering: 'refill', rootZone: { depthM: (0.43 * 25.4) / 75 } });
    const week = weeksOf({ wateringDays: EVERY_DAY, timerStepMinutes: 0.001, plantings: [need] });
    expect([0, 1, 2].map((each) => week(each).shrubs.dueMask)).toEqual([0b1010100, 0b0101010, 0b1010101]);
    expect(week(0).zone.minutesDay2 * (0.08 / 25.4)).toBeCloseTo(0.4266, 5);
    expect(week(1).zone).toMatchObject({ minutesDay0: 0, minutesDay2: 0, minutesDay4: 0, minutesDay6: 0 });
    expect(week(1).shrubs.irrigationNetMm / 25.4).toBeCloseTo(3 * 0.4266, 4);
    expect(week(2).shrubs).toMatchObject({ shortDays: 0, state: 'met' });
  });

  it('never while it is full, however little its soil holds', () => {
    const week = weeksOf({ wateringDays: FIRST, plantings: [refilled({ rootZone: { depthM: 0.1 } })] });
    expect(week(0).shrubs.dueMask).toBe(0);
  });
});

describe('a refill that is due', () => {
  it('is filled on that morning: 35 mm, 437.5 min, a half goes up', () => {
    const week = weeksOf({ wateringDays: FIRST });
    expect(week(2).zone).toMatchObject({ minutes: 438, decidedMask: FIRST });
    expect(week(2).zone.minutesWanted).toBeCloseTo(437.5, 9);
    expect(week(2).shrubs).toMatchObject({ dueMask: FIRST, fillingMm: 0, state: 'met' });
    expect(week(2).shrubs.neededMm).toBeCloseTo(35, 9);
    // And again after two weeks.
    expect([3, 4, 5, 6].map((each) => week(each).shrubs.dueMask)).toEqual([0, FIRST, 0, FIRST]);
  });

  it.each([
    // 394 min are 31.52 mm: 3.48 are left of 35. 393 min are 31.44 mm: 3.56 are left.
    ['filled with nine tenths', 394, 'met', 0],
    ['still due with less, and short', 393, 'short', 35],
  ] as const)('is %s', (_, minutes, state, fillingMm) => {
    const { shrubs } = weeksOf({ wateringDays: FIRST, choices: new Map([[2, { minutes }]]) })(2);
    expect(shrubs.state).toBe(state);
    expect(shrubs.fillingMm).toBeCloseTo(fillingMm, 9);
  });

  it('and was left partly filled has the rest next week, whatever is missing by then', () => {
    // 200 min bring 16 mm: 19 are left of 35, 36.5 are missing on the next Monday: 456.25 min.
    const week = weeksOf({ wateringDays: FIRST, choices: new Map([[2, { minutes: 200 }]]) });
    expect(week(2).shrubs.depletionEndMm).toBeCloseTo(36.5, 9);
    expect(week(3).zone.minutes).toBe(456);
    expect(week(3).shrubs).toMatchObject({ dueMask: FIRST, fillingMm: 0, state: 'met' });
    expect(week(3).shrubs.neededMm).toBeCloseTo(36.5, 9);
  });

  it('and cannot be filled in a day is due on the next morning too', () => {
    // Four cycles of 50 min bring 16 mm a day. Day 15 finds 37.5 missing, day 16 24, day 17 10.5; on that day 131.25 min: three cycles of 44.
    const week = weeksOf({ wateringDays: EVERY_DAY, longestCycleMinutes: 50 })(2);
    expect(week.shrubs.dueMask).toBe(0b0001110);
    expect([week.zone.minutesDay1, week.zone.minutesDay2, week.zone.minutesDay4]).toEqual([200, 200, 0]);
    expect(week.zone.minutesDay3).toBe(132);
    expect(week.shrubs).toMatchObject({ fillingMm: 0, state: 'met' });
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

  // 30 mm are readily there: due above 22.5 on the first day of the week, above 20 on the fourth. Day 7 has 17.5 mm missing, day 10 has 25.
  it('that decides is open on the day it is expected to be due on, and has all of it then', () => {
    const { zone, shrubs } = weeksOf({ ...alone, plantings: [shallow(true)] })(1);
    // 312.5 min, a half up.
    expect([zone.minutesDay0, zone.minutesDay3]).toEqual([0, 313]);
    expect(shrubs).toMatchObject({ dueMask: 0b1000, openMask: 0b1000, fillingMm: 0, state: 'met' });
    expect(weeksOf(alone)(1).shrubs.dueMask).toBe(0b1000);
  });

  it('is open on all watering days of the week where the zone’s minutes do not fill it on those from then on', () => {
    // The bed has 109 min on each: 8.72 mm of the 25. On day 10 16.28 are missing; 7.56 are left after its run, more than a tenth.
    const { shrubs } = weeksOf(beside)(1);
    expect(shrubs).toMatchObject({ dueMask: 0b1000, openMask: FIRST_AND_FOURTH, openDays: 2, state: 'short' });
    expect(shrubs.fillingMm).toBeCloseTo(25 - 8.72, 9);
    // Still due, it is open from the next week's first day on.
    expect(weeksOf(beside)(2).shrubs.dueMask & FIRST).toBe(FIRST);
  });

  it('is open on no day of a week in which it is not', () => {
    expect(weeksOf(beside)(0).shrubs).toMatchObject({ dueMask: 0, openMask: 0, openDays: 0 });
  });
});
