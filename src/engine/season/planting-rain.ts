/** Effective rain of a planting, day by day. */

import type { GardenSite } from '../garden-weather.ts';
import { NORMALS } from '../rain/daily-rain.ts';
import { monthlyEffectiveRainMm, type RainMonth } from '../rain/effective-rain.ts';
import type { Weather } from '../weather.ts';
import { countDays } from './days-mask.ts';
import { keptRainShares, type RainKeeper } from './kept-rain.ts';
import { rainOfYears, type YearsOfRain } from './years-of-rain.ts';

/** Days of the season, from its first day counted; `end` is the day after the last. */
export interface DaySpan {
  readonly first: number;
  readonly end: number;
}

/**
 * Fills in the rain that enters the root zone on some days in the ground, mm, as it fell and as the normals let expect. A day that
 * nobody read has its share of the normals; on observed days rain is the day's own, and the balance decides what stays.
 */
export function fillRain(
  soakedMm: Float64Array,
  expectedRainMm: Float64Array,
  { first, end }: DaySpan,
  { rainShares, rainFactor }: { readonly rainShares: readonly number[]; readonly rainFactor: number },
  { months, rain }: Weather,
): void {
  for (let month = 0; month < rainShares.length; month++) {
    const share = rainFactor * (rainShares[month] as number);
    const until = Math.min(end, months.starts[month + 1] as number);
    for (let day = Math.max(first, months.starts[month] as number); day < until; day++) {
      const expected = (rain.expectedMm[day] as number) * share;
      expectedRainMm[day] = expected;
      soakedMm[day] = rain.origin[day] === NORMALS ? expected : rainFactor * (rain.soakedMm[day] as number);
    }
  }
}

/** For each month of the season, the share of its normal rain that counts, 0 to 1. */
export function monthShares(
  keeper: RainKeeper,
  site: GardenSite,
  weather: Weather,
  years = () => yearsOfRain(site, weather),
): readonly number[] {
  // Where it never rains no years need be made.
  if (site.rain.method !== 'balance' || weather.rain.expectedMm.every((mm) => mm === 0)) {
    return weather.months.calendarMonth.map((_, month) => monthShare(keeper, site, weather, month));
  }
  return keptRainShares(keeper, years());
}

export function yearsOfRain(site: GardenSite, weather: Weather): YearsOfRain {
  const { rain, eto, months } = weather;
  return rainOfYears(
    { years: weather.years(), months, normalMm: rain.normalMm },
    eto.expectedMm,
    site.rain.runoffFraction,
  );
}

/** Share of a month's normal rain that counts by a monthly method, 0 to 1; `month` is an index into the season's months. */
export function monthShare(keeper: RainKeeper, site: GardenSite, weather: Weather, month: number): number {
  const given = rainMonth(keeper, site, weather, month);
  return given === undefined ? 0 : monthlyEffectiveRainMm(site.rain.method, given) / given.rainMm;
}

/**
 * What a month's effective rain is reckoned from; undefined in a month without rain or without the planting. The month's expected
 * ETc is taken as if its days in the ground were the whole month, so that a season that starts in mid-month credits by the same
 * share. The usable storage is what is drawn between waterings, at most the readily available water; all of that where there is none.
 */
export function rainMonth(
  { demand, isRefill, wateringDays }: RainKeeper,
  site: GardenSite,
  { months }: Weather,
  month: number,
): RainMonth | undefined {
  const rainMm = site.climate.rainMm[months.calendarMonth[month] as number] as number;
  const from = Math.max(demand.first, months.starts[month] as number);
  const until = Math.min(demand.end, months.starts[month + 1] as number);
  if (from >= until || rainMm === 0) return undefined;
  let etcMm = 0;
  let rawMm = 0;
  for (let day = from; day < until; day++) {
    etcMm += demand.expectedEtcMm[day] as number;
    rawMm += demand.expectedRawMm[day] as number;
  }
  const days = until - from;
  const waterings = countDays(wateringDays);
  const drawnMm = ((etcMm / days) * 7) / waterings;
  return {
    rainMm,
    etcMm: (etcMm / days) * (months.lengthDays[month] as number),
    usableStorageMm: isRefill || waterings === 0 ? rawMm / days : Math.min(rawMm / days, drawnMm),
    fraction: site.rain.fraction,
  };
}
