/** A planting's season by day: its demand, its rain as it fell and as it is expected, and what a minute of its line brings. */
import { applicationRateMmPerHour } from '../application/application-rate.ts';
import { netMmPerMinute as netDepthOfMinute } from '../application/run-time.ts';
import type { GardenLine, GardenPlanting, GardenSite, GardenZone } from '../garden.ts';
import type { Weather } from '../weather.ts';
import type { PlantingDemand } from './planting-demand.ts';
import { type DaySpan, fillRain } from './planting-rain.ts';
import type { PlantingSeason } from './season.ts';
import type { ExpectedDays } from './week-outlook.ts';

export interface PlantingDays extends ExpectedDays {
  readonly demand: PlantingDemand;
  /** Rain that enters the root zone, mm. */
  readonly soakedMm: Float64Array;
}

/** Arrays of one number a day, to be filled: a season lends them from planting to planting. */
export interface DayBuffers {
  readonly soakedMm: Float64Array;
  readonly expectedRainMm: Float64Array;
  readonly netMmPerMinute: Float64Array;
  /** What each was filled from, all through the season: from the same it need not be filled again. */
  soakedFrom?: FilledFrom;
  netFrom?: FilledFrom;
}

type FilledFrom = readonly unknown[] | undefined;

export interface ZoneContext {
  readonly zone: GardenZone;
  readonly site: GardenSite;
  readonly weather: Weather;
}

/** A planting as far as its days hang on it. */
type Ground = Pick<PlantingSeason, 'planting' | 'demand' | 'rainShares'>;

/** All days of the season, in arrays of their own. */
export function plantingDays(ground: Ground, context: ZoneContext): PlantingDays {
  const { days } = context.weather;
  return fillDays(ground, context, dayBuffers(days), { first: 0, end: days });
}

/** Fills in some days of the season, `end` not included; the others are left as they are. */
export function fillDays(
  ground: Ground,
  { zone, weather }: ZoneContext,
  buffers: DayBuffers,
  days: DaySpan,
): PlantingDays {
  const { planting, demand, rainShares } = ground;
  const { soakedMm, expectedRainMm, netMmPerMinute } = buffers;
  const inGround = { first: Math.max(demand.first, days.first), end: Math.min(demand.end, days.end) };
  const isWhole = days.first === 0 && days.end === weather.days;
  const soakedFrom = isWhole ? [demand, rainShares, weather.rain] : undefined;
  if (!isSame(buffers.soakedFrom, soakedFrom)) {
    buffers.soakedFrom = soakedFrom;
    soakedMm.fill(0, days.first, days.end);
    expectedRainMm.fill(0, days.first, days.end);
    fillRain(soakedMm, expectedRainMm, inGround, rainShares, weather);
  }
  const netFrom = isWhole ? [demand, planting.lines, planting.areaM2, zone.efficiency] : undefined;
  if (!isSame(buffers.netFrom, netFrom)) {
    buffers.netFrom = netFrom;
    netMmPerMinute.fill(0, days.first, days.end);
    fillNet(netMmPerMinute, inGround, planting, { efficiency: zone.efficiency, firstDay: weather.firstDay });
  }
  return { demand, soakedMm, expectedRainMm, netMmPerMinute };
}

function fillNet(
  netMmPerMinute: Float64Array,
  inGround: DaySpan,
  planting: GardenPlanting,
  { efficiency, firstDay }: { readonly efficiency: number; readonly firstDay: number },
): void {
  const { lines } = planting;
  for (let index = 0; index < lines.length; index++) {
    const line = lines[index] as GardenLine;
    const until = lines[index + 1]?.from ?? Number.POSITIVE_INFINITY;
    const first = Math.max(inGround.first, line.from - firstDay);
    const end = Math.min(inGround.end, until - firstDay);
    const rate = applicationRateMmPerHour(line.flowLph, planting.areaM2);
    if (first < end) netMmPerMinute.fill(netDepthOfMinute(rate, efficiency), first, end);
  }
}

function isSame(before: FilledFrom, now: FilledFrom): boolean {
  if (before === undefined || now === undefined) return false;
  return now.every((part, index) => part === before[index]);
}

export function dayBuffers(days: number): DayBuffers {
  return {
    soakedMm: new Float64Array(days),
    expectedRainMm: new Float64Array(days),
    netMmPerMinute: new Float64Array(days),
  };
}

/** The line that lies on a day, if any. `lines` are in order of their first day. */
export function lineOn(planting: GardenPlanting, day: number): GardenLine | undefined {
  return planting.lines.findLast((line) => line.from <= day);
}
