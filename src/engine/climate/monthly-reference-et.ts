import { daysInMonth } from '../calendar.ts';
import { meanTemperature, type TemperatureExtremes, temperatureRange } from './air-temperature.ts';
import { extraterrestrialRadiation } from './extraterrestrial-radiation.ts';
import { hargreavesSamani } from './hargreaves-samani.ts';
import { COMMON_YEAR, MONTHS, midMonthDayOfYear } from './mid-month-day-of-year.ts';
import { penmanMonteithFromWeather } from './penman-monteith-from-weather.ts';
import type { ReferenceEtMethod } from './reference-et.ts';
import { monthlySoilHeatFlux } from './soil-heat-flux.ts';
import type { WeatherEstimate } from './weather-estimates.ts';
import { hasTemperatures, isComplete, type WeatherReadings, type WeatherSite } from './weather-readings.ts';

/** A month's reference evapotranspiration from its normals. */
export interface MonthlyReferenceEt {
  /** Total of the month, never negative. */
  readonly etoMm: number;
  readonly method: Exclude<ReferenceEtMethod, 'observed'>;
  readonly estimated: readonly WeatherEstimate[];
}

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
    const days = daysInMonth(COMMON_YEAR, month);
    if (isComplete(weather) || site.whenIncomplete === 'penman-monteith') {
      const soilHeatFluxMj = soilHeatFluxOf(means, month);
      const { etoMm, estimated } = penmanMonteithFromWeather({ weather, site, dayOfYear, soilHeatFluxMj });
      return { etoMm: etoMm * days, method: 'penman-monteith', estimated };
    }
    const { minTemperatureC, maxTemperatureC } = weather;
    const extraterrestrialMj = extraterrestrialRadiation({ latitudeDeg: site.latitudeDeg, dayOfYear });
    const etoMm = hargreavesSamani({ minTemperatureC, maxTemperatureC, extraterrestrialMj });
    return { etoMm: etoMm * days, method: 'hargreaves-samani', estimated: [] };
  });
}

function withTemperatures(readings: WeatherReadings, month: number): WeatherReadings & TemperatureExtremes {
  if (!hasTemperatures(readings)) {
    throw new RangeError(`month ${month + 1} needs its mean lowest and highest temperature`);
  }
  temperatureRange(readings);
  return readings;
}

function soilHeatFluxOf(monthlyMeansC: readonly number[], month: number): number {
  return monthlySoilHeatFlux({
    previousMeanC: monthlyMeansC[(month + MONTHS - 1) % MONTHS] as number,
    nextMeanC: monthlyMeansC[(month + 1) % MONTHS] as number,
  });
}
