import { requireNumber } from '../require-number.ts';

export interface RoofYieldInput {
  /** Plan area of the roof: its footprint, not its slope. */
  readonly roofAreaM2: number;
  readonly rainMm: number;
  /** Share of the rain that arrives in the tank, 0..1: see `ROOF_SURFACES`. */
  readonly runoffCoefficient: number;
}

/**
 * Rain that a roof brings to its tank, L: area x rain x coefficient, for 1 mm on 1 m2 is 1 L. In US units 0.623
 * gal/(ft2 in).
 *
 * @throws RangeError where a value is negative or the coefficient is above 1
 */
export function roofYieldL({ roofAreaM2, rainMm, runoffCoefficient }: RoofYieldInput): number {
  requireNumber('roof area (m2)', roofAreaM2, { atLeast: 0 });
  requireNumber('rain (mm)', rainMm, { atLeast: 0 });
  requireNumber('runoff coefficient', runoffCoefficient, { atLeast: 0 });
  if (runoffCoefficient > 1)
    throw new RangeError(`The runoff coefficient is ${runoffCoefficient}; it must be at most 1.`);
  return roofAreaM2 * rainMm * runoffCoefficient;
}
