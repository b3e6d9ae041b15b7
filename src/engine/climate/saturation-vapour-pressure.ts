import type { TemperatureExtremes } from './air-temperature.ts';

/** Pressure of water vapour in air that can hold no more, e0(T), kPa (FAO-56 eq. 11); 20 degrees C gives 2.338 (Table 2.3). */
export function saturationVapourPressure(temperatureC: number): number {
  return 0.6108 * Math.exp((17.27 * temperatureC) / (temperatureC + 237.3));
}

/**
 * Mean saturation vapour pressure of a day or month, es, kPa: the mean at both extremes (FAO-56 eq. 12). The value at the mean
 * temperature would be too low, since the relation is curved.
 */
export function meanSaturationVapourPressure({ minTemperatureC, maxTemperatureC }: TemperatureExtremes): number {
  return (saturationVapourPressure(minTemperatureC) + saturationVapourPressure(maxTemperatureC)) / 2;
}
