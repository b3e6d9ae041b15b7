import { weekdayOf } from '../calendar.ts';
import type { Garden } from '../garden.ts';
import type { Season } from '../season/season.ts';
import { dayMinutes } from './day-minutes.ts';
import { type DayRun, type DayTiming, dayTiming } from './day-timing.ts';
import type { SourceDays } from './source-days.ts';
import { zoneCycles } from './zone-cycles.ts';

/** Minutes that each day's watering takes, from the first start to the last end, against its window. */
export interface WateringTimes {
  readonly minutesNeeded: Float64Array;
  /** 0 on a day on which no water may run. */
  readonly windowMinutes: Float64Array;
}

export interface SeasonFlows {
  readonly season: Season;
  readonly sources: SourceDays;
  /** Of each zone, by day, L/min. */
  readonly flows: readonly Float64Array[];
}

export function wateringTimes(of: SeasonFlows): WateringTimes {
  const { garden } = of.season;
  const days = 7 * garden.span.weeks;
  const minutesNeeded = new Float64Array(days);
  const windowMinutes = Float64Array.from({ length: days }, (_, day) => 60 * windowHoursOn(garden, day));
  for (let week = 0; week < garden.span.weeks; week += 1) {
    const runs = weekRuns(of, week);
    for (let day = 7 * week; day < 7 * week + 7; day += 1) {
      const alike = earlierAlike(of, runs, day);
      minutesNeeded[day] = alike === undefined ? minutesOn(of, runs, day) : (minutesNeeded[alike] as number);
    }
  }
  return { minutesNeeded, windowMinutes };
}

/** A day of the season (0 = its first) by the minute: which zones run together, and when. */
export function timingOn(of: SeasonFlows, day: number): DayTiming {
  return timed(of, wateringOn(of, weekRuns(of, Math.floor(day / 7)), day), day);
}

interface WeekRun {
  readonly index: number;
  readonly run: ReturnType<typeof zoneCycles>;
}

/** The zones that run in a week, by their index in the season. */
function weekRuns({ season }: SeasonFlows, week: number): readonly WeekRun[] {
  return season.zones
    .map((zone, index) => ({ index, run: zoneCycles(zone, week) }))
    .filter(({ run }) => run.cycles > 0);
}

function minutesOn(of: SeasonFlows, runs: readonly WeekRun[], day: number): number {
  const watering = wateringOn(of, runs, day);
  const flowsLpm = watering.map(({ index }) => of.flows[index]?.[day] as number);
  const zoneRuns = watering.map(({ run }) => run);
  return dayMinutes(zoneRuns, flowsLpm, of.sources.flowLpm[day] as number);
}

function timed({ season, sources, flows }: SeasonFlows, watering: readonly WeekRun[], day: number): DayTiming {
  const runs = watering.map(({ index, run }): DayRun => ({ ...run, flowLpm: flows[index]?.[day] as number }));
  return dayTiming(runs, sources.flowLpm[day] as number, windowHoursOn(season.garden, day));
}

/** A zone none of whose lines is open on a day need not run. */
function wateringOn({ flows }: SeasonFlows, runs: readonly WeekRun[], day: number): readonly WeekRun[] {
  return runs.filter(({ index }) => ((flows[index] as Float64Array)[day] as number) > 0);
}

/** An earlier day of the same week on which the same zones run with the same flows on the same source. */
function earlierAlike({ sources, flows }: SeasonFlows, runs: readonly WeekRun[], day: number): number | undefined {
  for (let other = day - (day % 7); other < day; other += 1) {
    const sameSource = Object.is(sources.flowLpm[other], sources.flowLpm[day]);
    if (sameSource && runs.every(({ index }) => flows[index]?.[other] === flows[index]?.[day])) return other;
  }
  return undefined;
}

function windowHoursOn({ span, supply }: Garden, day: number): number {
  return (supply.windowWeekdays >> weekdayOf(span.firstDay + day)) & 1 ? supply.windowHoursPerDay : 0;
}
