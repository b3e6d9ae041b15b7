import type { TemperatureExtremes } from './air-temperature.ts';
import { meanSaturationVapourPressure, saturationVapourPressure } from './saturation-vapour-pressure.ts';

/** Actual vapour pressure ea from the dew point, kPa (FAO-56 eq. 14). */
export function vapourPressureFromDewPoint(dewPointC: number): number {
  return saturationVapourPressure(dewPointC);
}

/**
 * Actual vapour pressure from the day's highest and lowest relative humidity, kPa (FAO-56 eq. 17). The air is dampest when it
 * is coldest, so each humidity goes with the opposite extreme. 18 and 25 degrees C with 82 and 54 % give 1.70 (Example 5).
 */
export function vapourPressureFromHumidityExtremes(
  day: TemperatureExtremes & { readonly minHumidityPercent: number; readonly maxHumidityPercent: number },
): number {
  const atNight = (saturationVapourPressure(day.minTemperatureC) * day.maxHumidityPercent) / 100;
  const atNoon = (saturationVapourPressure(day.maxTemperatureC) * day.minHumidityPercent) / 100;
  return (atNight + atNoon) / 2;
}

/** Actual vapour pressure where only the highest relative humidity is trusted, kPa (FAO-56 eq. 18). */
export function vapourPressureFromMaxHumidity(day: {
  readonly minTemperatureC: number;
  readonly maxHumidityPercent: number;
}): number {
  return (saturationVapourPressure(day.minTemperatureC) * day.maxHumidityPercent) / 100;
}

/** Actual vapour pressure where only the mean relative humidity is known, kPa (FAO-56 eq. 19): the least good of the three. */
export function vapourPressureFromMeanHumidity(
  day: TemperatureExtremes & { readonly meanHumidityPercent: number },
): number {
  return (meanSaturationVapourPressure(day) * day.meanHumidityPercent) / 100;
}

/**
 * Actual vapour pressure where no humidity is known, kPa: the dew point is taken to be the day's lowest temperature (FAO-56
 * eq. 48). In dry places that reads too damp; the paper then lowers the dew point by 2 or 3 degrees.
 */
export function vapourPressureFromMinTemperature(minTemperatureC: number): number {
  return saturationVapourPressure(minTemperatureC);
}
