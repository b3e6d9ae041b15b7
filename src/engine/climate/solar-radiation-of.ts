import type { TemperatureExtremes } from './air-temperature.ts';
import { solarRadiationFromSunshine } from './solar-radiation-from-sunshine.ts';
import { type Setting, solarRadiationFromTemperature } from './solar-radiation-from-temperature.ts';
import type { WeatherEstimate } from './weather-estimates.ts';
import { isRead, type WeatherReadings } from './weather-readings.ts';

/** What the sky would send, and how long, on the day in question. */
export interface Sky {
  readonly extraterrestrialMj: number;
  readonly clearSkyMj: number;
  readonly daylightHours: number;
}

/**
 * Solar radiation from the best reading that is there, MJ m-2 d-1: as measured, from sunshine (FAO-56 eq. 35), else from the range
 * of temperature (eq. 50). What was estimated is added to `estimated`.
 */
export function solarRadiationOf(
  weather: WeatherReadings & TemperatureExtremes & { readonly setting: Setting },
  sky: Sky,
  estimated: WeatherEstimate[],
): number {
  const { radiationMj, sunshineHours, minTemperatureC, maxTemperatureC, setting } = weather;
  if (isRead(radiationMj)) return radiationMj;
  const { extraterrestrialMj, clearSkyMj, daylightHours } = sky;
  if (isRead(sunshineHours)) {
    estimated.push('radiation-from-sunshine');
    return solarRadiationFromSunshine({ sunshineHours, daylightHours, extraterrestrialMj });
  }
  estimated.push('radiation-from-temperature');
  return solarRadiationFromTemperature({ minTemperatureC, maxTemperatureC, extraterrestrialMj, clearSkyMj, setting });
}
