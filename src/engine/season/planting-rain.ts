/** Effective rain of a planting, day by day. */
import type { GardenSite } from '../garden.ts';
import { monthlyEffectiveRainMm, type RainMonth } from '../rain/effective-rain.ts';
import type { Weather } from '../weather.ts';
import type { PlantingDemand } from './planting-demand.ts';

/** Days of the season, from its first day counted; `end` is the day after the last. */
export interface DaySpan {
  readonly first: number;
  readonly end: number;
}

/**
 * Fills in the rain that enters the root zone on some days in the ground, mm. On days from normals the month's effective
 * rain is shared in proportion to the day's rain; on observed days it is the day's own, and the balance decides what
 * stays.
 */
export function fillRain(
  soakedMm: Float64Array,
  { first, end }: DaySpan,
  rainShares: readonly number[],
  { months, rain }: Weather,
): void {
  const { normalMm, soakedMm: observedMm } = rain;
  for (let month = 0; month < rainShares.length; month++) {
    const share = rainShares[month] as number;
    const until = Math.min(end, months.starts[month + 1] as number);
    for (let day = Math.max(first, months.starts[month] as number); day < until; day++) {
      soakedMm[day] = (normalMm[day] as number) * share + (observedMm[day] as number);
    }
  }
}

/** For each month of the season, the share of its normal rain that counts, 0 to 1. */
export function monthShares(demand: PlantingDemand, site: GardenSite, weather: Weather): readonly number[] {
  return weather.months.calendarMonth.map((_, month) => monthShare(demand, site, weather, month));
}

/** Share of a month's normal rain that counts, 0 to 1; `month` is a place in the season's months. */
export function monthShare(demand: PlantingDemand, site: GardenSite, weather: Weather, month: number): number {
  const given = rainMonth(demand, site, weather, month);
  return given === undefined ? 0 : monthlyEffectiveRainMm(site.rain.method, given) / given.rainMm;
}

/**
 * What a month's effective rain is reckoned from; undefined in a month without rain or without the planting. The month's
 * ETc is taken as if its days in the ground were the whole month, so that a season that starts in mid-month credits by
 * the same share. The usable storage is the readily available water.
 */
export function rainMonth(
  demand: PlantingDemand,
  site: GardenSite,
  weather: Weather,
  month: number,
): RainMonth | undefined {
  const { months } = weather;
  const rainMm = site.climate.rainMm[months.calendarMonth[month] as number] as number;
  const from = Math.max(demand.first, months.starts[month] as number);
  const until = Math.min(demand.end, months.starts[month + 1] as number);
  if (from >= until || rainMm === 0) return undefined;
  let etcMm = 0;
  let rawMm = 0;
  for (let day = from; day < until; day++) {
    etcMm += demand.etcMm[day] as number;
    rawMm += demand.rawMm[day] as number;
  }
  const days = until - from;
  return {
    rainMm,
    etcMm: (etcMm / days) * (months.lengthDays[month] as number),
    usableStorageMm: rawMm / days,
    fraction: site.rain.fraction,
  };
}
