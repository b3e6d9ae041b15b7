import {
  vapourPressureFromDewPoint,
  vapourPressureFromHumidityExtremes,
  vapourPressureFromMaxHumidity,
  vapourPressureFromMeanHumidity,
  vapourPressureFromMinTemperature,
} from './actual-vapour-pressure.ts';
import type { TemperatureExtremes } from './air-temperature.ts';
import type { WeatherEstimate } from './weather-estimates.ts';
import { isRead, type WeatherReadings } from './weather-readings.ts';

/**
 * Actual vapour pressure from the best humidity reading that is there, kPa, in the paper's order of trust (FAO-56 pp. 36-39): as
 * measured, dew point, both extremes of relative humidity, the highest alone, the mean; else from the lowest temperature. What
 * was estimated is added to `estimated`.
 */
export function vapourPressureOf(weather: WeatherReadings & TemperatureExtremes, estimated: WeatherEstimate[]): number {
  const { vapourPressureKpa, dewPointC, maxHumidityPercent, minHumidityPercent, meanHumidityPercent } = weather;
  const { minTemperatureC, maxTemperatureC } = weather;
  if (isRead(vapourPressureKpa)) return vapourPressureKpa;
  if (isRead(dewPointC)) return vapourPressureFromDewPoint(dewPointC);
  if (isRead(maxHumidityPercent) && isRead(minHumidityPercent)) {
    return vapourPressureFromHumidityExtremes({
      minTemperatureC,
      maxTemperatureC,
      minHumidityPercent,
      maxHumidityPercent,
    });
  }
  if (isRead(maxHumidityPercent)) {
    estimated.push('vapour-pressure-from-max-humidity');
    return vapourPressureFromMaxHumidity({ minTemperatureC, maxHumidityPercent });
  }
  if (isRead(meanHumidityPercent)) {
    estimated.push('vapour-pressure-from-mean-humidity');
    return vapourPressureFromMeanHumidity({ minTemperatureC, maxTemperatureC, meanHumidityPercent });
  }
  estimated.push('vapour-pressure-from-min-temperature');
  return vapourPressureFromMinTemperature(minTemperatureC);
}
