import { daysInMonth } from '../calendar.ts';
import { meanTemperature, type TemperatureExtremes } from './air-temperature.ts';
import { COMMON_YEAR, MONTHS, midMonthDayOfYear } from './mid-month-day-of-year.ts';
import { type ComputedReferenceEt, computedReferenceEt } from './reference-et.ts';
import { monthlySoilHeatFlux } from './soil-heat-flux.ts';
import { hasTemperatures, type WeatherReadings, type WeatherSite } from './weather-readings.ts';

/** A month's reference evapotranspiration from its normals: `etoMm` is the total of the month. */
export type MonthlyReferenceEt = ComputedReferenceEt;

/**
 * Monthly ETo totals from monthly mean weather, January first, by the choice of `dailyReferenceEt`: FAO Penman-Monteith (FAO-56 eq.
 * 6) in a month with humidity, wind, and radiation or sunshine, or where the site asks for it with less; else Hargreaves-Samani
 * (eq. 52). The middle of the month stands for all its days (Table 2.5), and the heat into the soil is taken from the months
 * before and after (eq. 43), December before January.
 *
 * Throws a RangeError for any other number of months than twelve, for a month without both temperatures, and for one whose highest
 * is below its lowest.
 */
export function monthlyReferenceEt(months: readonly WeatherReadings[], site: WeatherSite): MonthlyReferenceEt[] {
  if (months.length !== MONTHS) throw new RangeError(`months must be twelve, January first, not ${months.length}`);
  const complete = months.map(withTemperatures);
  const means = complete.map(meanTemperature);
  return complete.map((weather, month) => {
    const dayOfYear = midMonthDayOfYear(month);
    const eto = computedReferenceEt({ weather, site, dayOfYear, soilHeatFluxMj: soilHeatFluxOf(means, month) });
    return { ...eto, etoMm: eto.etoMm * daysInMonth(COMMON_YEAR, month) };
  });
}

function withTemperatures(readings: WeatherReadings, month: number): WeatherReadings & TemperatureExtremes {
  if (!hasTemperatures(readings)) {
    throw new RangeError(`month ${month + 1} needs its mean lowest and highest temperature`);
  }
  return readings;
}

function soilHeatFluxOf(monthlyMeansC: readonly number[], month: number): number {
  return monthlySoilHeatFlux({
    previousMeanC: monthlyMeansC[(month + MONTHS - 1) % MONTHS] as number,
    nextMeanC: monthlyMeansC[(month + 1) % MONTHS] as number,
  });
}
