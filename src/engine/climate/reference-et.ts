import { temperatureRange } from './air-temperature.ts';
import { extraterrestrialRadiation } from './extraterrestrial-radiation.ts';
import { hargreavesSamani } from './hargreaves-samani.ts';
import { penmanMonteithFromWeather } from './penman-monteith-from-weather.ts';
import { DAILY_SOIL_HEAT_FLUX_MJ } from './soil-heat-flux.ts';
import type { WeatherEstimate } from './weather-estimates.ts';
import { hasTemperatures, isComplete, isRead, type WeatherReadings, type WeatherSite } from './weather-readings.ts';

/** Where a reference evapotranspiration comes from. */
export type ReferenceEtMethod = 'observed' | 'penman-monteith' | 'hargreaves-samani';

/** A day's reference evapotranspiration and where it comes from. */
export interface ReferenceEt {
  /** Never negative. */
  readonly etoMm: number;
  readonly method: ReferenceEtMethod;
  /** What was estimated rather than measured, by the paper's rules (`WEATHER_ESTIMATES`). */
  readonly estimated: readonly WeatherEstimate[];
}

const NOTHING_ESTIMATED: readonly WeatherEstimate[] = [];

/**
 * A day's reference evapotranspiration, ETo, from the best that is known of the day:
 *
 * 1. ETo as observed (a weather station's own figure);
 * 2. FAO Penman-Monteith (FAO-56 eq. 6) where temperatures, humidity, wind, and radiation or sunshine were measured; or where the
 *    site asks for it with less (`whenIncomplete`);
 * 3. Hargreaves-Samani (FAO-56 eq. 52) where the extremes of temperature were.
 *
 * Undefined where none of them was. Throws a RangeError where an observed ETo is negative, and where the highest temperature is
 * below the lowest.
 */
export function dailyReferenceEt(
  weather: WeatherReadings & { readonly etoMm?: number | undefined },
  site: WeatherSite,
  dayOfYear: number,
): ReferenceEt | undefined {
  if (isRead(weather.etoMm)) return observed(weather.etoMm);
  if (!hasTemperatures(weather)) return undefined;
  return computedReferenceEt({ weather, site, dayOfYear, soilHeatFluxMj: DAILY_SOIL_HEAT_FLUX_MJ });
}

export type ComputedReferenceEt = ReferenceEt & { readonly method: Exclude<ReferenceEtMethod, 'observed'> };

/**
 * FAO Penman-Monteith or Hargreaves-Samani, as `dailyReferenceEt` chooses, mm/d. Throws a RangeError where the highest temperature is below
 * the lowest.
 */
export function computedReferenceEt(given: Parameters<typeof penmanMonteithFromWeather>[0]): ComputedReferenceEt {
  const { weather, site, dayOfYear } = given;
  temperatureRange(weather);
  if (isComplete(weather) || site.whenIncomplete === 'penman-monteith') {
    const { etoMm, estimated } = penmanMonteithFromWeather(given);
    return { etoMm, method: 'penman-monteith', estimated };
  }
  const { minTemperatureC, maxTemperatureC } = weather;
  const extraterrestrialMj = extraterrestrialRadiation({ latitudeDeg: site.latitudeDeg, dayOfYear });
  const etoMm = hargreavesSamani({ minTemperatureC, maxTemperatureC, extraterrestrialMj });
  return { etoMm, method: 'hargreaves-samani', estimated: NOTHING_ESTIMATED };
}

function observed(etoMm: number): ReferenceEt {
  if (etoMm < 0) throw new RangeError(`observed ETo must be 0 mm or more, not ${etoMm}`);
  return { etoMm, method: 'observed', estimated: NOTHING_ESTIMATED };
}
