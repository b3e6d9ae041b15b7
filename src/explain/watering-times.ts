/** How long each day's watering takes, with all its zones. */
import type { GardenSupply, GardenZone, SeasonSpan } from '../engine/garden.ts';
import { runThrough } from '../engine/run-through.ts';
import { fieldByWeek } from '../engine/season/field-by-week.ts';
import { type Season, ZONE_FIELDS as Z, type ZoneSeason } from '../engine/season/season.ts';
import { minutesOnDay } from '../engine/season/zone-week.ts';
import { dayMinutes } from '../engine/supply/day-minutes.ts';
import { sourceDays } from '../engine/supply/source-days.ts';
import type { ZoneCycles } from '../engine/supply/watering-window.ts';
import { windowHoursOn } from '../engine/supply/window-hours.ts';
import { zoneCycles } from '../engine/supply/zone-cycles.ts';
import { zoneFlows } from '../engine/supply/zone-flows.ts';

/** By day of the season. */
export interface WateringTimes {
  /** From the first start to the last end, with the pauses between cycles. */
  readonly minutesNeeded: Float64Array;
  /** 0 on a day on which no water may run. */
  readonly windowMinutes: Float64Array;
}

/** What a zone runs, by day and by week; kept apart, since figures of a season may be written over by the next. */
interface ZoneDays {
  readonly zone: GardenZone;
  readonly flowsLpm: Float64Array;
  readonly minutes: Float64Array;
  readonly origins: Uint8Array;
}

interface TimedSeason {
  readonly span: SeasonSpan;
  readonly zones: readonly ZoneDays[];
  readonly times: WateringTimes;
}

const known = new WeakMap<Season, WateringTimes>();
const knownDays = new WeakMap<ZoneSeason, ZoneDays>();
/** By supply, the season that was asked about last: of one that differs in a few days only those are worked out. */
const latest = new WeakMap<GardenSupply, TimedSeason>();

/** Minutes that each day's watering takes, from the first start to the last end, against its window. */
export function wateringTimes(season: Season): WateringTimes {
  return runThrough(timingDays(season));
}

/** The same in steps, so that a page can pause between any two. Yields what a step took, in zones looked at. */
export function* timingDays(season: Season): Generator<number, WateringTimes> {
  const before = known.get(season);
  if (before !== undefined) return before;
  const { span, supply } = season.garden;
  const zones: ZoneDays[] = [];
  // Said before it is done: what would take long for all zones is then not begun in one go.
  yield ZONE_EFFORT * season.zones.filter((zone) => !knownDays.has(zone)).length;
  for (const zone of season.zones) {
    const isNew = !knownDays.has(zone);
    zones.push(daysOf(zone, span.firstDay));
    if (isNew) yield 0;
  }
  const earlier = earlierOf(supply, span, zones.length);
  const moved = earlier && movedDays(earlier.zones, zones);
  const of = { season, zones, sourcesLpm: sourceDays(season.garden).flowLpm };
  const minutesNeeded = new Float64Array(7 * span.weeks);
  for (let day = 0; day < minutesNeeded.length; day += 1) {
    const isKept = moved?.[day] === 0;
    minutesNeeded[day] = isKept ? (earlier?.times.minutesNeeded[day] as number) : minutesOn(of, day, minutesNeeded);
    if (!isKept) yield zones.length;
  }
  const windowMinutes = minutesNeeded.map((_, day) => 60 * windowHoursOn(season.garden, day));
  const times = { minutesNeeded, windowMinutes };
  known.set(season, times);
  latest.set(supply, { span, zones, times });
  return times;
}

/** Rough: to read the days of one takes as long as looking at so many. */
const ZONE_EFFORT = 20;

function daysOf(zone: ZoneSeason, firstDay: number): ZoneDays {
  const before = knownDays.get(zone);
  if (before !== undefined) return before;
  const { figures, weeks } = zone;
  const days = {
    zone: zone.zone,
    flowsLpm: zoneFlows(zone, firstDay),
    minutes: Float64Array.from({ length: 7 * weeks }, (_, day) => minutesOnDay(zone, day)),
    origins: Uint8Array.from(fieldByWeek(figures, Z.origin)),
  };
  knownDays.set(zone, days);
  return days;
}

function earlierOf(supply: GardenSupply, span: SeasonSpan, zones: number): TimedSeason | undefined {
  const earlier = latest.get(supply);
  const isLike = earlier?.span.firstDay === span.firstDay && earlier.span.weeks === span.weeks;
  return isLike && earlier.zones.length === zones ? earlier : undefined;
}

/** 1 for each day on which some zone runs otherwise than before. */
function movedDays(before: readonly ZoneDays[], now: readonly ZoneDays[]): Uint8Array {
  const moved = new Uint8Array(now[0]?.minutes.length ?? 0);
  for (const [index, own] of now.entries()) {
    const other = before[index] as ZoneDays;
    if (other === own) continue;
    if (!runsAlike(own.zone, other.zone)) return moved.fill(1);
    const { flowsLpm, minutes, origins } = own;
    for (let day = 0; day < moved.length; day += 1) {
      if (flowsLpm[day] !== other.flowsLpm[day] || minutes[day] !== other.minutes[day]) moved[day] = 1;
    }
    origins.forEach((origin, week) => {
      if (origin !== other.origins[week]) moved.fill(1, 7 * week, 7 * week + 7);
    });
  }
  return moved;
}

/** Whether the same minutes are the same cycles with the same pauses. */
function runsAlike(zone: GardenZone, other: GardenZone): boolean {
  return (
    zone.plantings === other.plantings &&
    zone.soil === other.soil &&
    zone.timerStepMinutes === other.timerStepMinutes &&
    zone.longestCycleMinutes === other.longestCycleMinutes &&
    zone.startsADay === other.startsADay
  );
}

interface SeasonDays {
  readonly season: Season;
  readonly zones: readonly ZoneDays[];
  /** By day; NaN where it is not known. */
  readonly sourcesLpm: Float64Array;
}

/** Of a day like an earlier one of its week what that takes. */
function minutesOn({ season, zones, sourcesLpm }: SeasonDays, day: number, minutesNeeded: Float64Array): number {
  for (let other = day - (day % 7); other < day; other += 1) {
    const isSame = ({ flowsLpm, minutes }: ZoneDays) =>
      flowsLpm[other] === flowsLpm[day] && minutes[other] === minutes[day];
    if (Object.is(sourcesLpm[other], sourcesLpm[day]) && zones.every(isSame)) return minutesNeeded[other] as number;
  }
  const runs: ZoneCycles[] = [];
  const flowsLpm: number[] = [];
  for (const [index, own] of zones.entries()) {
    const flowLpm = own.flowsLpm[day] as number;
    const run = flowLpm > 0 ? cyclesOn(season.zones[index] as ZoneSeason, own, day) : undefined;
    if (run === undefined || run.cycles === 0) continue;
    runs.push(run);
    flowsLpm.push(flowLpm);
  }
  return dayMinutes(runs, flowsLpm, sourcesLpm[day] as number);
}

const cycles = new WeakMap<ZoneDays, Map<number, ZoneCycles>>();

/** The same minutes are the same cycles on every day on which they come from the same hand. */
function cyclesOn(zone: ZoneSeason, own: ZoneDays, day: number): ZoneCycles {
  const runs = cycles.get(own) ?? new Map<number, ZoneCycles>();
  cycles.set(own, runs);
  const key = (own.minutes[day] as number) + HAND * (own.origins[Math.floor(day / 7)] as number);
  const run = runs.get(key) ?? zoneCycles(zone, day);
  runs.set(key, run);
  return run;
}

/** More minutes than a day of any season has. */
const HAND = 1e6;
