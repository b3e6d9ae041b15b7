/** Rain of each day of the season, and how much of an observed day's rain soaks in. */
import type { DailyEto } from '../climate/daily-eto.ts';
import { monthlyToDaily } from '../climate/monthly-to-daily.ts';
import { latestForecast } from '../forecast.ts';
import type { Garden } from '../garden.ts';
import { dailyRainCountedMm } from './daily-threshold.ts';
import { placeWeekTotal, weekTotals } from './week-total.ts';

export interface DailyRain {
  readonly mm: Float64Array;
  /** Index into RAIN_ORIGINS for each day. */
  readonly origin: Uint8Array;
  /** The normals of each day, times what is expected of it, of observed days too. */
  readonly expectedMm: Float64Array;
  /** What the normals say of each day. */
  readonly normalMm: Float64Array;
  /** Of an observed or forecast day's rain, what enters the root zone; 0 on days from the normals. */
  readonly soakedMm: Float64Array;
}

export const RAIN_ORIGINS = ['normals', 'observed-day', 'observed-week', 'forecast'] as const;
export const NORMALS = 0;
const OBSERVED_DAY = 1;
const OBSERVED_WEEK = 2;
const FORECAST = 3;

/**
 * A day's own figure wins over its week's total, that over what was forecast, that over the normals. An observed day's rain below a fifth of its ETo is
 * ignored (FAO-56 p. 170).
 */
export function dailyRain({ span, site, observed }: Garden, eto: DailyEto): DailyRain {
  const { firstDay, weeks } = span;
  const days = weeks * 7;
  const { climate } = site;
  const normalMm = monthlyToDaily({ monthlyTotals: climate.rainMm, firstDay, dayCount: days });
  const expectedMm = normalMm.map((mm, day) => mm * (site.timesUsual?.rain[day] ?? 1));
  const mm = expectedMm.slice();
  const origin = new Uint8Array(days).fill(NORMALS);
  for (const [day, { rainMm }] of observed.days) {
    const index = day - firstDay;
    if (rainMm === undefined || index < 0 || index >= days) continue;
    mm[index] = rainMm;
    origin[index] = OBSERVED_DAY;
  }
  for (const total of weekTotals(span, observed.weeks)) {
    placeWeekTotal(total, { firstDay, climate }, mm, (day) => origin[day] === OBSERVED_DAY);
    for (let day = total.first; day < total.end; day++) {
      if (origin[day] === NORMALS) origin[day] = OBSERVED_WEEK;
    }
  }
  for (const [day, { rainMm }] of latestForecast(observed.forecasts)) {
    const index = day - firstDay;
    if (rainMm === undefined || origin[index] !== NORMALS) continue;
    mm[index] = rainMm;
    origin[index] = FORECAST;
  }
  const soaks = 1 - site.rain.runoffFraction;
  const soakedMm = mm.map((rainMm, day) =>
    origin[day] === NORMALS ? 0 : dailyRainCountedMm(rainMm, eto.mm[day] as number) * soaks,
  );
  return { mm, origin, expectedMm, normalMm, soakedMm };
}
