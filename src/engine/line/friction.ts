import { numberOnly } from '../number-only.ts';
import { requireNumber } from '../require-number.ts';
import { KPA_PER_METRE } from './elevation.ts';

/** Exponent of the flow in the Hazen-Williams formula. */
export const FRICTION_EXPONENT = 1.852;

const SECONDS_PER_HOUR = 3600;
const LITRES_PER_M3 = 1000;
const MM_PER_M = 1000;

export interface Pipe {
  readonly insideDiameterMm: number;
  readonly lengthM: number;
  /** Smoothness C of the Hazen-Williams formula: see `hazenWilliamsC`. */
  readonly hazenWilliamsC: number;
}

/**
 * Pressure lost in a pipe at a flow of 1 L/h, kPa: `frictionLossKpa` makes the loss at any flow of it.
 *
 * @throws RangeError where a diameter or C is not above 0, or a length is below it
 */
export function frictionCoefficient({ insideDiameterMm, lengthM, hazenWilliamsC }: Pipe): number {
  requireNumber('inside diameter (mm)', insideDiameterMm, { above: 0 });
  requireNumber('length of pipe (m)', lengthM, { atLeast: 0 });
  requireNumber('Hazen-Williams C', hazenWilliamsC, { above: 0 });
  const m3PerSecond = 1 / (SECONDS_PER_HOUR * LITRES_PER_M3);
  const headM =
    (10.67 * lengthM * (m3PerSecond / hazenWilliamsC) ** FRICTION_EXPONENT) / (insideDiameterMm / MM_PER_M) ** 4.87;
  return headM * KPA_PER_METRE;
}

/**
 * Pressure lost to friction along a pipe that carries the same flow from end to end, kPa; the flow is 0 or more, L/h.
 *
 * Hazen-Williams: hf = 10.67 L Q^1.852 / (C^1.852 d^4.87) in m, m3/s; all but Q^1.852 is the pipe's `frictionCoefficient`.
 * It agrees within 1 % with the US form 4.52 Q^1.852 / (C^1.852 d^4.871) psi/ft (gpm, inches; NFPA 13) and with the
 * 10.5 (Q/C)^1.852 L d^-4.87 feet form (USDA-NRCS National Engineering Handbook). The formula is for turbulent flow: in the
 * laminar trickle at the far end of a 14 mm dripline it reads low, by less than 0.2 kPa in all.
 */
export function frictionLossKpa(coefficient: number, flowLph: number): number {
  return numberOnly(coefficient * flowLph ** FRICTION_EXPONENT);
}
