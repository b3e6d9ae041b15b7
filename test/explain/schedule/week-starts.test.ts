import { describe, expect, it } from 'vitest';
import type { Season } from '../../../src/engine/season/season.ts';
import { zoneCycles } from '../../../src/engine/supply/zone-cycles.ts';
import { placeRuns, type WeeklyRun } from '../../../src/explain/schedule/place-runs.ts';
import { weekStarts } from '../../../src/explain/schedule/week-starts.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { WEEKDAYS } from '../../../src/plan/schema/supply.ts';
import { DEMO_PLANS } from '../../support/demo-plans.ts';
import { mixedGarden } from '../../support/small-plans.ts';

const run = (change: Partial<WeeklyRun> = {}): WeeklyRun => ({
  mask: 0b0010101,
  minutesPerCycle: 25,
  cycles: 1,
  pauseMinutes: 0,
  flowLpm: 10,
  ...change,
});

describe('runs of a week in the day', () => {
  it('lets zones of other days start at the same minute, and those of the same day after one another', () => {
    const placed = placeRuns([run(), run({ mask: 0b0001010 }), run({ mask: 0b0000001 })], 0);
    expect(placed.map(({ startMinutes }) => startMinutes)).toEqual([[0], [0], [25]]);
  });

  it('runs a short zone in the pause of one that soaks', () => {
    const cycled = run({ minutesPerCycle: 12, cycles: 2, pauseMinutes: 30 });
    const [, short, long] = placeRuns([cycled, run({ minutesPerCycle: 8 }), run({ minutesPerCycle: 40 })], 0);
    expect(short?.startMinutes).toEqual([12]);
    expect(long?.startMinutes).toEqual([54]);
  });

  it('lets zones run together as far as the source feeds them', () => {
    const three = [run(), run(), run()];
    expect(placeRuns(three, 20).map(({ startMinutes }) => startMinutes)).toEqual([[0], [0], [25]]);
    expect(placeRuns(three, 30).map(({ startMinutes }) => startMinutes)).toEqual([[0], [0], [0]]);
  });
});

/** From and until of every cycle of a day, in order. */
function spansOn(season: Season, week: number, day: number): readonly (readonly [number, number])[] {
  const { zones } = weekStarts(season, week);
  return season.zones
    .flatMap((zone) => {
      const { minutesPerCycle, cycles, soakMinutes } = zoneCycles(zone, day);
      const starts = zones.get(zone.zone.id)?.startMinutes.slice(0, cycles) ?? [];
      expect(starts).toHaveLength(cycles);
      for (const [at, start] of starts.slice(1).entries()) {
        expect(start - (starts[at] ?? 0)).toBeGreaterThanOrEqual(minutesPerCycle + soakMinutes - 1e-6);
      }
      return starts.map((start) => [start, start + minutesPerCycle] as const);
    })
    .sort(([one], [other]) => one - other);
}

describe('start times of a week', () => {
  for (const plan of DEMO_PLANS) {
    it(`${plan.name}: no two zones of a day overlap where all fits, and each cycle keeps its pause`, () => {
      const season = computeSeason(plan);
      for (let day = 0; day < 7 * season.garden.span.weeks; day++) {
        const week = Math.floor(day / 7);
        const spans = spansOn(season, week, day);
        const free = spans.slice(1).map(([start], at) => start - (spans[at]?.[1] ?? 0));
        if (weekStarts(season, week).minutesOver === 0) expect(Math.min(0, ...free)).toBeCloseTo(0, 6);
      }
    });
  }

  it('counts from the opening of the window, else from five in the morning', () => {
    const plan = mixedGarden();
    const opening = (window?: { readonly hoursPerDay: number; readonly opensAt: string }) =>
      weekStarts(computeSeason({ ...plan, supply: { sources: [], ...(window && { window }) } }), 12);
    expect(opening()).toMatchObject({ opensAtMinute: 300, isAssumed: true });
    const evening = opening({ hoursPerDay: 6, opensAt: '21:30' });
    expect(evening).toMatchObject({ opensAtMinute: 1290, isAssumed: false, windowMinutes: 360 });
    expect(Math.min(...[...evening.zones.values()].flatMap(({ startMinutes }) => startMinutes))).toBe(1290);
  });

  it('takes the hours that a restriction leaves, in the weeks in which it is in force', () => {
    const plan = mixedGarden();
    const restrictions = [{ from: '2027-07-01', weekdays: [...WEEKDAYS], hoursPerDay: 2 }];
    const season = computeSeason({ ...plan, supply: { sources: [], window: { hoursPerDay: 6 }, restrictions } });
    expect([11, 12, 13].map((week) => weekStarts(season, week).windowMinutes)).toEqual([360, 120, 120]);
  });

  it('refuses a week that the season does not have', () => {
    expect(() => weekStarts(computeSeason(mixedGarden()), 30)).toThrow(RangeError);
  });
});
