import { weekdayOf } from '../calendar.ts';
import type { Garden } from '../garden.ts';
import type { Season, ZoneSeason } from '../season/season.ts';
import { minutesOnDay } from '../season/zone-week.ts';
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
    for (let day = 7 * week; day < 7 * week + 7; day += 1) {
      const alike = earlierAlike(of, day);
      minutesNeeded[day] = alike === undefined ? minutesOn(of, day) : (minutesNeeded[alike] as number);
    }
  }
  return { minutesNeeded, windowMinutes };
}

/** A day of the season (0 = its first) by the minute: which zones run together, and when. */
export function timingOn(of: SeasonFlows, day: number): DayTiming {
  return timed(of, runsOn(of, day), day);
}

interface ZoneOnDay {
  readonly index: number;
  readonly run: ReturnType<typeof zoneCycles>;
}

/** The zones that run on a day, by their index in the season. A zone none of whose lines is open need not run. */
function runsOn({ season, flows }: SeasonFlows, day: number): readonly ZoneOnDay[] {
  return season.zones
    .map((zone, index) => ({ index, run: zoneCycles(zone, day) }))
    .filter(({ index, run }) => run.cycles > 0 && ((flows[index] as Float64Array)[day] as number) > 0);
}

function minutesOn(of: SeasonFlows, day: number): number {
  const watering = runsOn(of, day);
  const flowsLpm = watering.map(({ index }) => of.flows[index]?.[day] as number);
  const zoneRuns = watering.map(({ run }) => run);
  return dayMinutes(zoneRuns, flowsLpm, of.sources.flowLpm[day] as number);
}

function timed({ season, sources, flows }: SeasonFlows, watering: readonly ZoneOnDay[], day: number): DayTiming {
  const runs = watering.map(({ index, run }): DayRun => ({ ...run, flowLpm: flows[index]?.[day] as number }));
  return dayTiming(runs, sources.flowLpm[day] as number, windowHoursOn(season.garden, day));
}

/** An earlier day of the same week on which the same zones run as long, with the same flows on the same source. */
function earlierAlike({ season, sources, flows }: SeasonFlows, day: number): number | undefined {
  for (let other = day - (day % 7); other < day; other += 1) {
    const sameSource = Object.is(sources.flowLpm[other], sources.flowLpm[day]);
    const isSame = (zone: ZoneSeason, index: number) =>
      flows[index]?.[other] === flows[index]?.[day] && minutesOnDay(zone, other) === minutesOnDay(zone, day);
    if (sameSource && season.zones.every(isSame)) return other;
  }
  return undefined;
}

function windowHoursOn({ span, supply }: Garden, day: number): number {
  return (supply.windowWeekdays >> weekdayOf(span.firstDay + day)) & 1 ? supply.windowHoursPerDay : 0;
}
