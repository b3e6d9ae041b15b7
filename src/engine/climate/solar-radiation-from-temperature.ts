import { type TemperatureExtremes, temperatureRange } from './air-temperature.ts';

/** kRs of FAO-56 eq. 50: 0.16 where land masses dominate, 0.19 on the coast of a large water (p. 60). */
const ADJUSTMENT = { interior: 0.16, coastal: 0.19 } as const;

/** Where a place lies, for the estimate of radiation from temperatures. */
export type Setting = keyof typeof ADJUSTMENT;

export const SETTINGS = ['interior', 'coastal'] as const satisfies readonly Setting[];

/**
 * Solar radiation Rs from the day's range of temperature, MJ m-2 d-1 (FAO-56 eq. 50): clear days are wide, cloudy ones narrow.
 * Never above the clear sky's (p. 61). Over a few days' mean it is fair, for a single day rough.
 * Throws a RangeError where the highest temperature is below the lowest.
 */
export function solarRadiationFromTemperature(
  day: TemperatureExtremes & {
    readonly extraterrestrialMj: number;
    readonly clearSkyMj: number;
    readonly setting: Setting;
  },
): number {
  const estimate = ADJUSTMENT[day.setting] * Math.sqrt(temperatureRange(day)) * day.extraterrestrialMj;
  return Math.min(estimate, day.clearSkyMj);
}
