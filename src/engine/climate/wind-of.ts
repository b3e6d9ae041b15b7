import type { WeatherEstimate } from './weather-estimates.ts';
import { isRead, type WeatherReadings, type WeatherSite, windHeightOf } from './weather-readings.ts';
import { STANDARD_WIND_HEIGHT_M, windAtTwoMetres } from './wind-at-two-metres.ts';

/** Mean of some 2,000 weather stations, m/s (FAO-56 p. 63). */
const WIND_WHERE_UNKNOWN_MS = 2;
/** Below it the equation reads too low, since still air over warm grass stirs itself (FAO-56 p. 63). */
const LEAST_WIND_MS = 0.5;

/**
 * Wind at 2 m for FAO-56 eq. 6, m/s: the reading taken to 2 m, at least 0.5; 2 where none is there (p. 63). What was estimated is
 * added to `estimated`.
 */
export function windOf(readings: WeatherReadings, site: WeatherSite, estimated: WeatherEstimate[]): number {
  if (!isRead(readings.windMs)) {
    estimated.push('wind-assumed');
    return WIND_WHERE_UNKNOWN_MS;
  }
  const heightM = windHeightOf(site);
  if (heightM !== STANDARD_WIND_HEIGHT_M) estimated.push('wind-from-height');
  const windMs = windAtTwoMetres({ windMs: readings.windMs, heightM });
  if (windMs >= LEAST_WIND_MS) return windMs;
  estimated.push('wind-raised');
  return LEAST_WIND_MS;
}
