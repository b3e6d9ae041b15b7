import { saturationVapourPressure } from './saturation-vapour-pressure.ts';

/** Slope of the saturation vapour pressure curve at a temperature, kPa per degree C (FAO-56 eq. 13); 0.145 at 20 (Table 2.4). */
export function vapourPressureSlope(temperatureC: number): number {
  return (4098 * saturationVapourPressure(temperatureC)) / (temperatureC + 237.3) ** 2;
}
