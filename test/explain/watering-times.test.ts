import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { weekdayOf } from '../../src/engine/calendar.ts';
import { runSeason } from '../../src/engine/season/run-season.ts';
import type { Season } from '../../src/engine/season/season.ts';
import { minutesOnDay } from '../../src/engine/season/zone-week.ts';
import { seasonDayTiming, seasonSupply } from '../../src/engine/supply/season-supply.ts';
import { wateringTimes } from '../../src/explain/watering-times.ts';
import { computeSeason } from '../../src/plan/compute-season.ts';
import { arbitrarySuppliedGarden } from '../support/garden-supply.ts';
import { oneBed, tomatoes, zone } from '../support/small-plans.ts';

/** Two alike beds that run an hour each on every watering day of the first week, Mon Wed Fri by hand. */
function twoBeds(gpm: number | undefined): Season {
  const beds = ['one', 'two'].map((id) =>
    zone({
      id,
      wateringDays: ['mon', 'wed', 'fri'],
      longestCycleMinutes: 600,
      plantings: [tomatoes({ id: `${id}-tomatoes` })],
    }),
  );
  const source = { name: 'Main', ...(gpm === undefined ? {} : { flow: { kind: 'typed', flow: gpm } as const }) };
  return computeSeason(
    oneBed({
      zones: beds,
      supply: { sources: [source], window: { weekdays: ['mon', 'wed', 'thu', 'fri'], hoursPerDay: 1.5 } },
      choices: { one: { '2027-06-07': { minutes: 180 } }, two: { '2027-06-07': { minutes: 180 } } },
    }),
  );
}

const firstWeek = (days: Float64Array) => [...days.slice(0, 7)];

describe('the time of watering', () => {
  it('is one zone after another where the source feeds one: 1.2 gpm each on 2 gpm', () => {
    const { minutesNeeded, windowMinutes } = wateringTimes(twoBeds(2));
    expect(firstWeek(minutesNeeded)).toEqual([120, 0, 120, 0, 120, 0, 0]);
    expect(firstWeek(windowMinutes)).toEqual([90, 0, 90, 90, 90, 0, 0]);
  });

  it('is both at once where it feeds both, and in turn where its flow is not known', () => {
    expect(firstWeek(wateringTimes(twoBeds(2.4)).minutesNeeded)).toEqual([60, 0, 60, 0, 60, 0, 0]);
    expect(firstWeek(wateringTimes(twoBeds(undefined)).minutesNeeded)).toEqual([120, 0, 120, 0, 120, 0, 0]);
  });

  it('has its timetable', () => {
    expect(seasonDayTiming(twoBeds(2), 2)).toMatchObject({
      groups: [['one'], ['two']],
      timeline: [
        { ids: ['one'], startMinute: 0, endMinute: 60 },
        { ids: ['two'], startMinute: 60, endMinute: 120 },
      ],
      fits: false,
      minutesOver: 30,
    });
  });

  it('of any garden is each day’s timetable; nothing runs on a day without watering; the window is the weekday’s', () => {
    let days = 0;
    fc.assert(
      fc.property(arbitrarySuppliedGarden({ mostWeeks: 4, mostZones: 5, mostPlantings: 2 }), (garden) => {
        const season = runSeason(garden);
        const { flows } = seasonSupply(season);
        const times = wateringTimes(season);
        times.minutesNeeded.forEach((minutes, day) => {
          const timing = seasonDayTiming(season, day);
          expect(minutes).toBeCloseTo(timing.minutesNeeded, 9);
          const isOpen = (garden.supply.windowWeekdays >> weekdayOf(garden.span.firstDay + day)) & 1;
          expect(times.windowMinutes[day]).toBeCloseTo(isOpen ? 60 * garden.supply.windowHoursPerDay : 0, 9);
          const running = season.zones.map((zone, index) =>
            (flows[index]?.[day] ?? 0) > 0 ? minutesOnDay(zone, day) : 0,
          );
          const total = running.reduce((sum, each) => sum + each, 0);
          expect(minutes).toBeGreaterThanOrEqual(Math.max(0, ...running) - 1e-6);
          if (total === 0) expect(minutes).toBe(0);
          if (total > 0) days += 1;
        });
      }),
      { numRuns: 100 },
    );
    expect(days).toBeGreaterThan(40);
  });
});
