/** Rain of each day of the season, and how much of an observed day's rain soaks in. */
import type { DailyEto } from '../climate/daily-eto.ts';
import { monthlyToDaily } from '../climate/monthly-to-daily.ts';
import type { Garden } from '../garden.ts';
import { spreadWeekTotals } from '../spread-week-totals.ts';
import { dailyRainCountedMm } from './daily-threshold.ts';

export interface DailyRain {
  readonly mm: Float64Array;
  /** Index into RAIN_ORIGINS for each day. */
  readonly origin: Uint8Array;
  /** The rain of days that come from the normals, credited by the month; 0 on observed days. */
  readonly normalMm: Float64Array;
  /** Of an observed day's rain, what enters the root zone; 0 on days from the normals. */
  readonly soakedMm: Float64Array;
}

export const RAIN_ORIGINS = ['normals', 'observed-day', 'observed-week'] as const;
const NORMALS = 0;
const OBSERVED_DAY = 1;
const OBSERVED_WEEK = 2;

/**
 * A day's own figure wins over its week's, a week's over the normals. An observed day's rain below a fifth of its ETo
 * is ignored (FAO-56 p. 170); a week's total has no days to judge by and soaks in whole, less the site's runoff.
 */
export function dailyRain({ span, site, observed }: Garden, eto: DailyEto): DailyRain {
  const days = span.weeks * 7;
  const mm = monthlyToDaily({ monthlyTotals: site.climate.rainMm, firstDay: span.firstDay, dayCount: days });
  const origin = new Uint8Array(days).fill(NORMALS);
  const soakedMm = new Float64Array(days);
  const soaks = 1 - site.rain.runoffFraction;
  for (const [day, { rainMm }] of observed.days) {
    const index = day - span.firstDay;
    if (rainMm === undefined || index < 0 || index >= days) continue;
    mm[index] = rainMm;
    origin[index] = OBSERVED_DAY;
    soakedMm[index] = dailyRainCountedMm(rainMm, eto.mm[index] as number) * soaks;
  }
  const weekRain = new Map([...observed.weeks].map(([day, { rainMm }]) => [day, rainMm]));
  spreadWeekTotals(
    { span, totals: weekRain, isTaken: (index) => origin[index] === OBSERVED_DAY, daily: mm },
    (index) => {
      origin[index] = OBSERVED_WEEK;
      soakedMm[index] = (mm[index] as number) * soaks;
    },
  );
  const normalMm = mm.map((rainMm, index) => (origin[index] === NORMALS ? rainMm : 0));
  return { mm, origin, normalMm, soakedMm };
}
