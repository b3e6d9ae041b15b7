import { numberOnly } from '../number-only.ts';
import { meanTemperature, type TemperatureExtremes } from './air-temperature.ts';
import { evaporationEquivalent } from './evaporation-equivalent.ts';
import { psychrometricConstant } from './psychrometric-constant.ts';
import { meanSaturationVapourPressure } from './saturation-vapour-pressure.ts';
import { vapourPressureSlope } from './vapour-pressure-slope.ts';

/** Everything that FAO-56 eq. 6 asks for, over one day or as means of a month. */
export interface PenmanMonteithInputs extends TemperatureExtremes {
  /** ea, kPa. */
  readonly vapourPressureKpa: number;
  /** u2, m/s at 2 m; the paper would not have it below 0.5 (p. 63). */
  readonly windMs: number;
  /** Rn, MJ m-2 d-1. */
  readonly netRadiationMj: number;
  /** G, MJ m-2 d-1. */
  readonly soilHeatFluxMj: number;
  readonly elevationM: number;
}

/**
 * Reference evapotranspiration of well-watered short grass, mm/d: FAO Penman-Monteith (FAO-56 eq. 6).
 *
 * The same equation serves a day and the mean day of a month; they differ in the soil heat flux. Never negative: dew that the
 * equation would credit on a cold damp day is left out. Throws a RangeError where a number is missing or none.
 */
export function penmanMonteith(inputs: PenmanMonteithInputs): number {
  const meanC = meanTemperature(inputs);
  const slope = vapourPressureSlope(meanC);
  const gamma = psychrometricConstant(inputs.elevationM);
  const deficitKpa = meanSaturationVapourPressure(inputs) - inputs.vapourPressureKpa;
  const byRadiation = slope * evaporationEquivalent(inputs.netRadiationMj - inputs.soilHeatFluxMj);
  const byWind = gamma * (900 / (meanC + 273)) * inputs.windMs * deficitKpa;
  return Math.max(0, numberOnly((byRadiation + byWind) / (slope + gamma * (1 + 0.34 * inputs.windMs))));
}
