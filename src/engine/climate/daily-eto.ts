/** Reference evapotranspiration of each day of the season. */
import { dayOfYear } from '../calendar.ts';
import type { Garden, GardenSite, ObservedDay } from '../garden.ts';
import { spreadWeekTotals } from '../spread-week-totals.ts';
import { monthlyReferenceEt } from './monthly-reference-et.ts';
import { monthlyToDaily } from './monthly-to-daily.ts';
import { dailyReferenceEt } from './reference-et.ts';

export interface DailyEto {
  readonly mm: Float64Array;
  /** Index into ETO_METHODS for each day. */
  readonly method: Uint8Array;
}

export const ETO_METHODS = ['normals', 'observed', 'penman-monteith', 'hargreaves-samani', 'observed-week'] as const;
const NORMALS = ETO_METHODS.indexOf('normals');
const OBSERVED_WEEK = ETO_METHODS.indexOf('observed-week');

/** A day's own observation wins over its week's, a week's over the normals. */
export function dailyEto({ span, site, observed }: Garden): DailyEto {
  const days = span.weeks * 7;
  const monthlyTotals = monthlyEtoMm(site);
  const mm = monthlyToDaily({ monthlyTotals, firstDay: span.firstDay, dayCount: days });
  const method = new Uint8Array(days);
  for (const [day, weather] of observed.days) {
    const place = day - span.firstDay;
    if (place < 0 || place >= days || !hasReferenceEt(weather)) continue;
    const { etoMm, method: used } = dailyReferenceEt(weather, site, { dayOfYear: dayOfYear(day) });
    mm[place] = etoMm;
    method[place] = ETO_METHODS.indexOf(used);
  }
  const weekEto = new Map([...observed.weeks].map(([day, { etoMm }]) => [day, etoMm]));
  spreadWeekTotals(
    { span, totals: weekEto, isTaken: (place) => isOfDay(method[place] as number), daily: mm },
    (place) => {
      method[place] = OBSERVED_WEEK;
    },
  );
  return { mm, method };
}

function isOfDay(method: number): boolean {
  return method !== NORMALS && method !== OBSERVED_WEEK;
}

/** Monthly totals as given, else from the months' temperatures and what else is known of them. */
export function monthlyEtoMm(site: GardenSite): readonly number[] {
  const { climate } = site;
  if (climate.etoMm !== undefined) return climate.etoMm;
  const months = Array.from({ length: 12 }, (_, month) => ({
    minTemperatureC: climate.minTemperatureC?.[month],
    maxTemperatureC: climate.maxTemperatureC?.[month],
    dewPointC: climate.dewPointC?.[month],
    windMs: climate.windMs?.[month],
    sunshineHours: climate.sunshineHours?.[month],
  }));
  return monthlyReferenceEt(months, site).map(({ etoMm }) => etoMm);
}

function hasReferenceEt({ etoMm, minTemperatureC, maxTemperatureC }: ObservedDay): boolean {
  return etoMm !== undefined || (minTemperatureC !== undefined && maxTemperatureC !== undefined);
}
