import { numberOnly } from '../number-only.ts';
import { meanTemperature, type TemperatureExtremes, temperatureRange } from './air-temperature.ts';
import { evaporationEquivalent } from './evaporation-equivalent.ts';

/**
 * Reference evapotranspiration from temperatures alone, mm/d (Hargreaves and Samani 1985; FAO-56 eq. 52).
 *
 * For where no humidity, wind or radiation is known. Single days are rough: the paper would average over a week or more
 * (p. 61). It reads high in humid places and low in windy ones. Lyon in July (26.6 and 14.8 degrees C) gives 5.0 (Example 20).
 *
 * Never negative: a mean below -17.8 degrees C gives 0, and so does the polar night. Throws a RangeError where the highest
 * temperature is below the lowest, or where a number is missing or none.
 */
export function hargreavesSamani(day: TemperatureExtremes & { readonly extraterrestrialMj: number }): number {
  const eto =
    0.0023 *
    (meanTemperature(day) + 17.8) *
    Math.sqrt(temperatureRange(day)) *
    evaporationEquivalent(day.extraterrestrialMj);
  return Math.max(0, numberOnly(eto));
}
