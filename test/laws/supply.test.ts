/** What a random garden asks of its supply, by the minute of a day and over the season. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fieldByWeek } from '../../src/engine/season/field-by-week.ts';
import { runSeason } from '../../src/engine/season/run-season.ts';
import { type Season, ZONE_FIELDS as Z, type ZoneSeason } from '../../src/engine/season/season.ts';
import { minutesOnDay, zoneFigure } from '../../src/engine/season/zone-week.ts';
import type { DayTiming } from '../../src/engine/supply/day-timing.ts';
import { seasonDayTiming, seasonSupply } from '../../src/engine/supply/season-supply.ts';
import { wateringDay, type ZoneCycles } from '../../src/engine/supply/watering-window.ts';
import { zoneCycles } from '../../src/engine/supply/zone-cycles.ts';
import { arbitraryLaidGarden } from '../support/laid-garden.ts';
import { law, sampled } from './law.ts';

const ROUNDING = 1e-6;

interface TimedDay {
  readonly season: Season;
  readonly day: number;
  readonly timing: DayTiming;
}

/** Zones that meet on the same days. */
const gardens = fc
  .noBias(arbitraryLaidGarden({ mostWeeks: 3, mostZones: 6, mostPlantings: 3 }))
  .map(({ zones, ...rest }) => ({
    ...rest,
    zones: zones.map((zone) => ({ ...zone, wateringDays: zone.wateringDays | 0b10010 })),
  }));

/** Of each garden some day, and the day on which most zones run. */
const days: readonly TimedDay[] = sampled(fc.tuple(gardens, fc.nat(20)), 300).flatMap(([garden, some]) => {
  const season = runSeason(garden);
  const { flows, drawL } = seasonSupply(season);
  const running = [...drawL.keys()].map((day) => flows.filter((flow) => (flow[day] as number) > 0).length);
  const busiest = running.indexOf(Math.max(...running));
  return [some % drawL.length, busiest].map((day) => ({ season, day, timing: seasonDayTiming(season, day) }));
});

describe('the timetable of two days of 300 random gardens', () => {
  it('runs each zone that has a line open its own minutes, in its own cycles, with its soil’s pauses', () => {
    for (const { season, day, timing } of days) {
      const { flows } = seasonSupply(season);
      for (const [index, zone] of season.zones.entries()) {
        const isOpen = (flows[index]?.[day] as number) > 0;
        const cycles = timing.timeline.filter(({ ids }) => ids.includes(zone.zone.id));
        const run = zoneCycles(zone, day);
        expect(cycles).toHaveLength(isOpen ? run.cycles : 0);
        expectNear(cycles.length * run.minutesPerCycle, isOpen ? minutesOnDay(zone, day) : 0);
        expectApart(cycles, run);
      }
    }
  });

  it('runs the week’s longest day in the cycles that the zone’s week tells', () => {
    for (const { season, day } of days) {
      const week = Math.floor(day / 7);
      for (const zone of season.zones) {
        if (minutesOnDay(zone, day) !== zoneFigure(zone, 'minutesPerDay', week)) continue;
        expect(zoneCycles(zone, day).cycles).toBe(zoneFigure(zone, 'cycles', week));
      }
    }
  });

  it('runs one group at a time, and together no more than the source gives', () => {
    for (const { season, day, timing } of days) {
      const { flows, sources } = seasonSupply(season);
      const sourceLpm = sources.flowLpm[day] as number;
      const flowOf = (id: string) => flows[season.zones.findIndex(({ zone }) => zone.id === id)]?.[day] as number;
      for (const [index, { ids, endMinute }] of timing.timeline.entries()) {
        const next = timing.timeline[index + 1]?.startMinute ?? Number.POSITIVE_INFINITY;
        expect(next).toBeGreaterThanOrEqual(endMinute - ROUNDING);
        const flowLpm = sum(ids.map(flowOf));
        if (ids.length > 1) expect(flowLpm).toBeLessThanOrEqual(sourceLpm * (1 + ROUNDING));
        expect(timing.tooGreat.includes(ids[0] ?? '')).toBe(flowLpm > sourceLpm * (1 + 1e-9));
      }
    }
  });

  it('says how much of the day it takes, how much of that it waits, and by how much it passes its window', () => {
    for (const { timing } of days) {
      const { minutesNeeded, minutesWaiting, minutesOver, windowMinutes, fits, timeline } = timing;
      const running = sum(timeline.map(({ startMinute, endMinute }) => endMinute - startMinute));
      expectNear(running + minutesWaiting, minutesNeeded);
      expectNear(minutesNeeded, Math.max(0, ...timeline.map(({ endMinute }) => endMinute)));
      expect(fits).toBe(minutesNeeded <= windowMinutes + ROUNDING);
      expectNear(minutesOver, fits ? 0 : minutesNeeded - windowMinutes);
    }
  });

  it('is no longer than that of a timer which waits out every pause', () => {
    for (const { season, day, timing } of days) {
      const runOf = (id: string) => {
        const zone = season.zones.find((candidate) => candidate.zone.id === id) as ZoneSeason;
        return zoneCycles(zone, day);
      };
      const groups = timing.groups.map((ids) => ids.map(runOf));
      const waiting = wateringDay({ groups, windowHours: 24, interleaves: false });
      expect(timing.minutesNeeded).toBeLessThanOrEqual(waiting.minutesNeeded + ROUNDING);
      const running = sum(timing.timeline.map(({ startMinute, endMinute }) => endMinute - startMinute));
      expectNear(waiting.minutesNeeded - waiting.minutesWaiting, running);
    }
  });

  it('is of every kind: groups and zones too great, pauses filled and waited out, days that fit and not', () => {
    const kinds = {
      groups: ({ timing }: TimedDay) => timing.groups.some((group) => group.length > 1),
      apart: ({ timing }: TimedDay) =>
        timing.groups.length > 1 + timing.tooGreat.length && timing.tooGreat.length === 0,
      alone: ({ timing }: TimedDay) => timing.tooGreat.length > 0,
      waits: ({ timing }: TimedDay) => timing.minutesWaiting > 1,
      fills: ({ timing }: TimedDay) => timing.timeline.length > timing.groups.length && timing.groups.length > 1,
      fits: ({ timing }: TimedDay) => timing.fits && timing.timeline.length > 0,
      over: ({ timing }: TimedDay) => !timing.fits,
      idle: ({ timing }: TimedDay) => timing.timeline.length === 0,
    };
    for (const [kind, is] of Object.entries(kinds)) expect([kind, days.filter(is).length > 3]).toEqual([kind, true]);
  });
});

describe('over a season', () => {
  law('water closes at the meter and in the tank: what came in is what was drawn, ran over, or is there', {
    on: arbitraryLaidGarden({ mostWeeks: 8, mostPlantings: 2 }),
    runs: 200,
    holds: (garden) => {
      const season = runSeason(garden);
      const { drawL, meteredL, tank, allowance } = seasonSupply(season);
      const { tank: asGiven, allowanceLitresPerWeek, allowanceLitresPerSeason } = garden.supply;
      const litres = sum(season.zones.flatMap(({ figures }) => [...fieldByWeek(figures, Z.litres)]));
      expectNear(sum(drawL), litres);
      if (tank === undefined || asGiven === undefined) {
        expect([asGiven, tank]).toEqual([undefined, undefined]);
        expectNear(sum(meteredL), litres);
      } else {
        const roofL = sum(season.weather.rain.mm) * asGiven.roofAreaM2 * asGiven.runoffCoefficient;
        expectNear(sum(meteredL), sum(tank.besidesL));
        const cameL = asGiven.startLitres + roofL + sum(tank.besidesL);
        expectNear(cameL, litres + sum(tank.overflowL) + (tank.levelL.at(-1) as number));
      }
      const isAllowed = allowanceLitresPerWeek !== undefined || allowanceLitresPerSeason !== undefined;
      expect(allowance !== undefined).toBe(isAllowed);
      expectNear(allowance?.cumulativeL.at(-1) ?? sum(meteredL), sum(meteredL));
    },
  });
});

/** Each cycle is as long as it must be, at least, and so is each pause to the next. */
function expectApart(
  cycles: DayTiming['timeline'],
  { minutesPerCycle, soakMinutes }: Pick<ZoneCycles, 'minutesPerCycle' | 'soakMinutes'>,
): void {
  for (const [index, { startMinute, endMinute }] of cycles.entries()) {
    expect(endMinute - startMinute).toBeGreaterThanOrEqual(minutesPerCycle - ROUNDING);
    const next = cycles[index + 1]?.startMinute ?? Number.POSITIVE_INFINITY;
    expect(next - endMinute).toBeGreaterThanOrEqual(soakMinutes - ROUNDING);
  }
}

function sum(values: ArrayLike<number>): number {
  return Array.from(values).reduce((total, value) => total + value, 0);
}

function expectNear(one: number, other: number): void {
  if (!(Math.abs(one - other) <= 1e-9 * Math.max(1, Math.abs(other)))) expect.fail(`${one} is not ${other}`);
}
