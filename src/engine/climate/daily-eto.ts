/** Reference evapotranspiration of each day of the season. */
import { dayOfYear } from '../calendar.ts';
import { latestForecast } from '../forecast.ts';
import type { Garden, GardenSite } from '../garden.ts';
import { spreadWeekTotals } from '../spread-week-totals.ts';
import { monthlyReadings } from './monthly-readings.ts';
import { monthlyReferenceEt } from './monthly-reference-et.ts';
import { monthlyToDaily } from './monthly-to-daily.ts';
import { dailyReferenceEt } from './reference-et.ts';

export interface DailyEto {
  readonly mm: Float64Array;
  /** The normals of each day, times what is expected of it; the same array as `mm` where nothing was observed. */
  readonly expectedMm: Float64Array;
  /** What the normals say of each day. */
  readonly normalMm: Float64Array;
  /** Index into ETO_METHODS for each day. */
  readonly method: Uint8Array;
}

export const ETO_METHODS = [
  'normals',
  'observed',
  'penman-monteith',
  'hargreaves-samani',
  'observed-week',
  'forecast',
] as const;
export const NORMALS = ETO_METHODS.indexOf('normals');
const OBSERVED_WEEK = ETO_METHODS.indexOf('observed-week');
const FORECAST = ETO_METHODS.indexOf('forecast');

/** A day's own observation wins over its week's, a week's over what was forecast, that over the normals. */
export function dailyEto({ span, site, observed }: Garden): DailyEto {
  const { firstDay, weeks } = span;
  const days = weeks * 7;
  const normalMm = monthlyToDaily({ monthlyTotals: monthlyEtoMm(site), firstDay, dayCount: days });
  const expectedMm = normalMm.map((mm, day) => mm * (site.timesUsual?.eto[day] ?? 1));
  const mm = expectedMm.slice();
  const method = new Uint8Array(days);
  for (const [day, weather] of observed.days) {
    const index = day - firstDay;
    if (index < 0 || index >= days) continue;
    const seen = dailyReferenceEt(weather, site, dayOfYear(day));
    if (seen === undefined) continue;
    mm[index] = seen.etoMm;
    method[index] = ETO_METHODS.indexOf(seen.method);
  }
  const weekEto = new Map([...observed.weeks].map(([day, { etoMm }]) => [day, etoMm]));
  spreadWeekTotals(
    {
      span,
      totals: weekEto,
      isTaken: (index) => method[index] !== NORMALS && method[index] !== OBSERVED_WEEK,
      daily: mm,
    },
    (index) => {
      method[index] = OBSERVED_WEEK;
    },
  );
  for (const [day, { etoMm }] of latestForecast(observed.forecasts)) {
    const index = day - firstDay;
    // What mornings expect of it is a share of the normals.
    if (etoMm === undefined || method[index] !== NORMALS || expectedMm[index] === 0) continue;
    mm[index] = etoMm;
    method[index] = FORECAST;
  }
  const isObserved = method.some((id) => id !== NORMALS);
  return { mm: isObserved ? mm : expectedMm, expectedMm, normalMm, method };
}

/** Monthly totals as given, else from the months' temperatures and what else is known of them. */
export function monthlyEtoMm(site: GardenSite): readonly number[] {
  const { climate } = site;
  if (climate.etoMm !== undefined) return climate.etoMm;
  return monthlyReferenceEt(monthlyReadings(climate), site).map(({ etoMm }) => etoMm);
}
