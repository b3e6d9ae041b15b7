import type { TemperatureExtremes } from './air-temperature.ts';

/** Share of sunlight that the reference grass throws back (FAO-56 eq. 38). */
const ALBEDO = 0.23;
/** Stefan-Boltzmann constant, MJ K-4 m-2 d-1 (FAO-56 eq. 39). */
const STEFAN_BOLTZMANN = 4.903e-9;
/** Kelvin at 0 degrees C as the paper prints it under eq. 39 (the standard has 273.15). */
const KELVIN_OFFSET = 273.16;
/**
 * Rs/Rso where no daylight tells the cloud: the middle of 0.4 to 0.6, which the paper takes for nights in humid climates
 * (p. 75, from memory). Reached in the polar night alone.
 */
const CLOUD_RATIO_WITHOUT_DAYLIGHT = 0.5;

/** Sunlight that the reference grass keeps, Rns, MJ m-2 d-1 (FAO-56 eq. 38). */
export function netSolarRadiation(solarMj: number): number {
  return (1 - ALBEDO) * solarMj;
}

/** Heat that a black body at a temperature sends out, sigma T^4, MJ m-2 d-1; 36.21 at 20 degrees C (FAO-56 Table 2.8). */
export function blackBodyRadiation(temperatureC: number): number {
  return STEFAN_BOLTZMANN * (temperatureC + KELVIN_OFFSET) ** 4;
}

/**
 * Heat that the grass loses to the sky, net of what the sky returns, Rnl, MJ m-2 d-1 (FAO-56 eq. 39). Damp air and cloud return
 * more. Rs/Rso is held at 1, as the paper asks.
 */
export function netLongwaveRadiation(
  day: TemperatureExtremes & {
    readonly vapourPressureKpa: number;
    readonly solarMj: number;
    readonly clearSkyMj: number;
  },
): number {
  const emitted = (blackBodyRadiation(day.minTemperatureC) + blackBodyRadiation(day.maxTemperatureC)) / 2;
  const dampness = 0.34 - 0.14 * Math.sqrt(day.vapourPressureKpa);
  const ratio = day.clearSkyMj > 0 ? Math.min(1, day.solarMj / day.clearSkyMj) : CLOUD_RATIO_WITHOUT_DAYLIGHT;
  return emitted * dampness * (1.35 * ratio - 0.35);
}

/** Energy left at the grass, Rn, MJ m-2 d-1 (FAO-56 eq. 40); negative on winter days. */
export function netRadiation(day: { readonly netSolarMj: number; readonly netLongwaveMj: number }): number {
  return day.netSolarMj - day.netLongwaveMj;
}
