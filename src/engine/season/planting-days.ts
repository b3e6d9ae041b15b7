/** A planting's season by day: its demand, its effective rain, and what a minute of its line brings. */
import type { GardenLine, GardenPlanting, GardenSite, GardenZone } from '../garden.ts';
import type { Weather } from '../weather.ts';
import { type PlantingDemand, plantingDemand } from './planting-demand.ts';
import { type DaySpan, fillRain, monthShares } from './planting-rain.ts';
import type { PlantingSeason } from './season.ts';

export interface PlantingDays {
  readonly demand: PlantingDemand;
  /** Rain that enters the root zone, mm. */
  readonly soakedMm: Float64Array;
  /** Net depth that a minute of the line brings on each day, mm; 0 without a line and out of the ground. */
  readonly netMmPerMinute: Float64Array;
}

/** Arrays of one number a day, to be filled: a season lends them from planting to planting. */
export interface DayRoom {
  readonly soakedMm: Float64Array;
  readonly netMmPerMinute: Float64Array;
}

export interface ZoneContext {
  readonly zone: GardenZone;
  readonly site: GardenSite;
  readonly weather: Weather;
}

/** `demand` is taken over where it is known already: it does not change with the rain. */
export function plantingDays(
  planting: GardenPlanting,
  context: ZoneContext,
  demand: PlantingDemand = plantingDemand(planting, context.zone.soil, context.weather),
): PlantingDays {
  const { site, weather } = context;
  const rainShares = monthShares(demand, site, weather);
  return fillDays({ planting, demand, rainShares }, context, dayRoom(weather.days), { first: 0, end: weather.days });
}

/** Fills in some days of the season, `end` not included; the others are left as they are. */
export function fillDays(
  { planting, demand, rainShares }: Pick<PlantingSeason, 'planting' | 'demand' | 'rainShares'>,
  { zone, weather }: ZoneContext,
  { soakedMm, netMmPerMinute }: DayRoom,
  days: DaySpan,
): PlantingDays {
  const ground = { first: Math.max(demand.first, days.first), end: Math.min(demand.end, days.end) };
  soakedMm.fill(0, days.first, days.end);
  fillRain(soakedMm, ground, rainShares, weather);
  netMmPerMinute.fill(0, days.first, days.end);
  for (let place = 0; place < planting.lines.length; place++) {
    const line = planting.lines[place] as GardenLine;
    const until = planting.lines[place + 1]?.from ?? Number.POSITIVE_INFINITY;
    const first = Math.max(ground.first, line.from - weather.firstDay);
    const end = Math.min(ground.end, until - weather.firstDay);
    if (first < end) netMmPerMinute.fill(grossMmPerMinute(line, planting) * zone.efficiency, first, end);
  }
  return { demand, soakedMm, netMmPerMinute };
}

export function dayRoom(days: number): DayRoom {
  return { soakedMm: new Float64Array(days), netMmPerMinute: new Float64Array(days) };
}

/** Gross depth over the planting's ground in a minute, mm: L/h over m2 is mm/h. */
export function grossMmPerMinute(line: GardenLine, planting: GardenPlanting): number {
  return line.flowLph / planting.areaM2 / 60;
}

/** The line that lies on a day, if any. `lines` are in order of their first day. */
export function lineOn(planting: GardenPlanting, day: number): GardenLine | undefined {
  return planting.lines.findLast((line) => line.from <= day);
}
