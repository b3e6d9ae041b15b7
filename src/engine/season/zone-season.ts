/** One zone through its season: as a whole, or from the week on which its rain moved. */
import type { GardenZone } from '../garden.ts';
import { type DayRoom, dayRoom, fillDays, type ZoneContext } from './planting-days.ts';
import { demandRoom, type PlantingDemand, plantingDemand } from './planting-demand.ts';
import { monthShares } from './planting-rain.ts';
import {
  PLANTING_FIELDS as P,
  PLANTING_FIELD_COUNT,
  type PlantingSeason,
  ZONE_FIELD_COUNT,
  type ZoneSeason,
} from './season.ts';
import { runZoneWeek, zoneRun } from './zone-run.ts';

/** Daily arrays lent to one zone after another: place p to its p-th planting. */
export type ZoneRoom = DayRoom[];

/** Weeks of a season, both included. */
export interface WeekSpan {
  readonly first: number;
  readonly last: number;
}

/** `known` holds the demands of the zone's plantings, in order, where they are known from a run with the same ETo. */
export function zoneSeason(context: ZoneContext, room: ZoneRoom, known?: readonly PlantingDemand[]): ZoneSeason {
  const { zone, site, weather } = context;
  const weeks = weather.days / 7;
  const demandMm = known === undefined ? demandRoom(weather.days, zone.plantings.length) : [];
  const season = inBlocks(zone, weeks, new Float64Array(figureCount(zone) * weeks), (planting, place) => {
    const demand = known?.[place] ?? plantingDemand(planting, zone.soil, weather, demandMm[place]);
    return { demand, rainShares: monthShares(demand, site, weather) };
  });
  runWeeks(season, context, room, 0);
  return season;
}

/**
 * The season of a zone of which nothing changed but the rain of some weeks: weeks before them are taken over, and those
 * after them from the week on at whose end every planting is as dry as it was.
 */
export function zoneSeasonAfterRain(
  context: ZoneContext,
  room: ZoneRoom,
  before: ZoneSeason,
  changed: WeekSpan,
): ZoneSeason {
  const { zone, weeks, plantings } = before;
  const figures = new Float64Array(before.figures.buffer.slice(0));
  const season = inBlocks(zone, weeks, figures, (_, place) => plantings[place] as PlantingSeason);
  // A planting that is filled deep and seldom looks a week ahead.
  const from = Math.max(0, changed.first - 1);
  runWeeks(season, context, room, from, (week) => week >= changed.last && isAsDry(season, before, week));
  return season;
}

function figureCount({ plantings }: GardenZone): number {
  return ZONE_FIELD_COUNT + plantings.length * PLANTING_FIELD_COUNT;
}

/** Lays the figures of a zone and its plantings out in one block. */
function inBlocks(
  zone: GardenZone,
  weeks: number,
  figures: Float64Array,
  fixed: (planting: GardenZone['plantings'][number], place: number) => Pick<PlantingSeason, 'demand' | 'rainShares'>,
): ZoneSeason {
  const size = PLANTING_FIELD_COUNT * weeks;
  const start = ZONE_FIELD_COUNT * weeks;
  return {
    zone,
    weeks,
    figures: figures.subarray(0, start),
    plantings: zone.plantings.map((planting, place) => {
      const { demand, rainShares } = fixed(planting, place);
      const own = figures.subarray(start + place * size, start + (place + 1) * size);
      return { planting, demand, rainShares, weeks, figures: own };
    }),
  };
}

function runWeeks(
  season: ZoneSeason,
  context: ZoneContext,
  room: ZoneRoom,
  from: number,
  isDone: (week: number) => boolean = never,
): void {
  const { weeks, plantings } = season;
  const days = plantings.map((planting, place) => {
    room[place] ??= dayRoom(weeks * 7);
    return fillDays(planting, context, room[place], from * 7);
  });
  const run = zoneRun(season, days, context.weather.rain.mm, from);
  for (let week = from; week < weeks; week++) {
    runZoneWeek(run, week);
    if (isDone(week)) return;
  }
}

function never(): boolean {
  return false;
}

/** Whether every planting ends the week with the depletion it had before, to the last digit. */
function isAsDry(season: ZoneSeason, before: ZoneSeason, week: number): boolean {
  const place = P.depletionEndMm * season.weeks + week;
  return season.plantings.every(({ figures }, at) => figures[place] === before.plantings[at]?.figures[place]);
}
