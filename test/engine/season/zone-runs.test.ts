/**
 * By hand, with the plain garden: 2.5 mm go each day, a minute brings 0.08 mm, water on Thursday and Sunday, goal 0 mm.
 * Thursday: 7.5 mm down, 10 mm more by Sunday's end: 17.5 / (2 * 0.08) = 109.4 min.
 */
import { describe, expect, it } from 'vitest';
import type { Garden, GardenZone, WeekChoice } from '../../../src/engine/garden.ts';
import { openMinutes, openRunMask, refillOf } from '../../../src/engine/season/planting-week.ts';
import { runSeason } from '../../../src/engine/season/run-season.ts';
import type { PlantingSeason, ZoneSeason } from '../../../src/engine/season/season.ts';
import { zoneRuns } from '../../../src/engine/season/zone-runs.ts';
import { minutesOnDay, runMask, zoneFigure } from '../../../src/engine/season/zone-week.ts';
import { FIRST_DAY, plainGarden, plainPlanting, plainZone } from '../../support/plain-garden.ts';

const THURSDAY = 0b0001000;
const SUNDAY = 0b1000000;

function zoneOf(zone: Partial<GardenZone> = {}, rainMm: Readonly<Record<number, number>> = {}): ZoneSeason {
  const days: Garden['observed']['days'] = new Map(
    Object.entries(rainMm).map(([day, mm]) => [FIRST_DAY + Number(day), { rainMm: mm }]),
  );
  return runSeason(plainGarden([plainZone(zone)], { observed: { days, weeks: new Map() } })).zones[0] as ZoneSeason;
}

const chosen = (week: number, choice: WeekChoice) => ({ choices: new Map([[week, choice]]) });
const only = ({ plantings }: ZoneSeason) => plantings[0] as PlantingSeason;

describe('the runs of a week', () => {
  it('are one where the days are alike', () => {
    expect(zoneRuns(zoneOf(), 0)).toEqual([{ mask: THURSDAY | SUNDAY, minutes: 109, cycles: 1 }]);
  });

  // Friday's 10 mm fill what Thursday left; Saturday and Sunday use 5 mm: 62.5 min, a half goes up.
  it('stand apart where rain was read between them', () => {
    const zone = zoneOf({}, { 4: 10 });
    expect(zoneRuns(zone, 0)).toEqual([
      { mask: THURSDAY, minutes: 109, cycles: 1 },
      { mask: SUNDAY, minutes: 63, cycles: 1 },
    ]);
    expect([...Array(7).keys()].map((day) => minutesOnDay(zone, day))).toEqual([0, 0, 0, 109, 0, 0, 63]);
    expect(openMinutes(zone, only(zone), 0)).toBe(172);
  });

  // A step of 90 min: Thursday runs one. After Saturday's rain Sunday asks for 2.5 / 0.08 = 31 min, less than half a step.
  it('leave a skipped day out', () => {
    const zone = zoneOf({ timerStepMinutes: 90 }, { 4: 10, 5: 10 });
    expect(zoneRuns(zone, 0)).toEqual([{ mask: THURSDAY, minutes: 90, cycles: 1 }]);
    expect(zoneFigure(zone, 'skippedMask', 0)).toBe(SUNDAY);
    expect(runMask(zone, 0)).toBe(THURSDAY);
    expect(openRunMask(zone, only(zone), 0)).toBe(THURSDAY);
    expect(openMinutes(zone, only(zone), 0)).toBe(90);
  });

  it('of a logged week are those of its days, whatever the watering days are, in the cycles that each needs', () => {
    const runs = new Map([
      [1, { minutes: 30 }],
      [3, { minutes: 12 }],
      [4, { minutes: 30 }],
    ]);
    expect(zoneRuns(zoneOf({ longestCycleMinutes: 15, ...chosen(2, { runs }) }), 2)).toEqual([
      { mask: 0b0010010, minutes: 30, cycles: 2 },
      { mask: THURSDAY, minutes: 12, cycles: 1 },
    ]);
  });

  it('are none in a closed week', () => {
    expect(zoneRuns(zoneOf(chosen(1, { closed: true })), 1)).toEqual([]);
  });
});

describe('a planting behind a shut-off', () => {
  it('gets the minutes of its open days alone', () => {
    const runs = new Map([
      [3, { minutes: 40, open: new Set<string>() }],
      [6, { minutes: 50, open: new Set(['bed']) }],
    ]);
    const zone = zoneOf({ plantings: [plainPlanting({ hasShutOff: true })], ...chosen(0, { runs }) });
    expect(openRunMask(zone, only(zone), 0)).toBe(SUNDAY);
    expect(openMinutes(zone, only(zone), 0)).toBe(50);
  });
});

/*
 * 37.5 mm are readily available. A Sunday's morning is due above 37.5 - 4 * 2.5 = 27.5 mm, a Thursday's above 30. Left alone, it is 25 mm
 * down on the second Thursday and 32.5 mm on the second Sunday.
 */
describe('a refill', () => {
  const refilled = (change: Partial<GardenZone> = {}) =>
    zoneOf({ plantings: [plainPlanting({ watering: 'refill' })], ...change });

  it('is none until it is due, and filled by as many minutes as that takes', () => {
    const zone = refilled();
    expect(refillOf(only(zone), 0)).toBeUndefined();
    expect(refillOf(only(zone), 1)).toBe('filled');
    // 32.5 mm that morning: 406.25 min.
    expect(zoneRuns(zone, 1)).toEqual([{ mask: SUNDAY, minutes: 406, cycles: 1 }]);
  });

  it('is left partly filled by less, and due by nothing', () => {
    expect(refillOf(only(refilled(chosen(1, { minutes: 20 }))), 1)).toBe('partly-filled');
    expect(refillOf(only(refilled(chosen(1, { minutes: 0 }))), 1)).toBe('due');
  });

  it('is no matter of a planting that is kept', () => {
    expect(refillOf(only(zoneOf()), 1)).toBeUndefined();
  });
});
